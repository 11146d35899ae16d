import * as v from "valibot";
import { document as documentSchema } from "./schema/document";
import { isObject, settle, shapeOf } from "./schema/shape";

const widest = 110;
const indent = "  ";
type Shape = ReturnType<typeof shapeOf>;
const open: Shape = shapeOf(v.unknown());

interface Printed {
  /** On one line. */
  readonly flat: string;
  /** Over several, where it has parts. */
  readonly lines: (margin: string) => string;
}

/** Known keys in the schema's order, then the others in their own; nothing for a value that JSON has no word for. */
function ordered(shape: Shape, value: Readonly<Record<string, unknown>>): [string, unknown, Shape][] {
  const entries = shape.entries ?? {};
  const known = Object.keys(entries).filter((key) => Object.hasOwn(value, key));
  const others = Object.keys(value).filter((key) => !Object.hasOwn(entries, key));
  return [...known, ...others]
    .filter((key) => value[key] !== undefined)
    .map((key) => [key, value[key], (Object.hasOwn(entries, key) ? entries[key] : shape.value) ?? open]);
}

function print(shape: Shape, value: unknown): Printed {
  const at = settle(shape, value);
  if (Array.isArray(value)) {
    const item = at.type === "array" && at.item ? at.item : open;
    return container(
      "[",
      "]",
      value.map((member: unknown) => print(item, member === undefined ? null : member)),
      false,
    );
  }
  if (isObject(value)) {
    const members = ordered(at, value).map(([key, inner, innerShape]): Printed => {
      const printed = print(innerShape, inner);
      const name = `${JSON.stringify(key)}: `;
      return { flat: name + printed.flat, lines: (margin) => name + place(printed, margin, name.length) };
    });
    return container("{", "}", members, true);
  }
  const text = JSON.stringify(value) ?? "null";
  return { flat: text, lines: () => text };
}

/** On one line where it has the room, else over several. */
function place(printed: Printed, margin: string, used: number): string {
  return margin.length + used + printed.flat.length < widest ? printed.flat : printed.lines(margin);
}

function container(left: string, right: string, members: readonly Printed[], padded: boolean): Printed {
  const pad = padded ? " " : "";
  const flat = members.length === 0 ? left + right : left + pad + members.map((member) => member.flat).join(", ") + pad + right;
  return {
    flat,
    lines: (margin) => {
      if (members.length === 0) return left + right;
      const inner = margin + indent;
      return `${left}\n${members.map((member) => inner + place(member, inner, 0)).join(",\n")}\n${margin}${right}`;
    },
  };
}

const memory = new WeakMap<object, WeakMap<object, string>>();

/** The text of one member of a list; an object written before is not written again (documents are never changed in place). */
function memberText(item: Shape, member: unknown, margin: string): string {
  if (typeof member !== "object" || member === null) return place(print(item, member), margin, 0);
  let known = memory.get(item);
  if (!known) {
    known = new WeakMap();
    memory.set(item, known);
  }
  const before = known.get(member);
  if (before !== undefined) return before;
  const text = place(print(item, member), margin, 0);
  known.set(member, text);
  return text;
}

/** Lists of objects are always written over several lines, so that a changed member is a changed line. */
function top(value: unknown): string {
  if (!isObject(value)) return print(open, value).lines("");
  const parts = ordered(shapeOf(documentSchema), value).map(([key, inner, innerShape]) => {
    const name = `${indent}${JSON.stringify(key)}: `;
    if (!Array.isArray(inner) || !inner.some((member) => typeof member === "object")) {
      return name + place(print(innerShape, inner), indent, name.length - indent.length);
    }
    const margin = indent + indent;
    const item = settle(innerShape, inner).item ?? open;
    return `${name}[\n${inner.map((member: unknown) => margin + memberText(item, member, margin)).join(",\n")}\n${indent}]`;
  });
  return parts.length === 0 ? "{}" : `{\n${parts.join(",\n")}\n}`;
}

/**
 * The one canonical text of a document: known keys in a fixed order, unknown ones after them in their own, short objects on one line. Reading it and
 * writing it again gives the same bytes.
 */
export function write(document: unknown): string {
  return `${top(document)}\n`;
}
