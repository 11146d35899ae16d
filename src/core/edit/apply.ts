import type { DocumentEdit } from "../base";
import { type Container, isContainer, type Located, locate, put, taken } from "./container";

/** A document after edits, with the edits that lead back to the very same bytes. */
export interface Applied {
  readonly document: unknown;
  readonly inverse: readonly DocumentEdit[];
}

type Path = readonly string[];

/** What stands at the end of a path that is not there yet. */
function build(path: Path, value: unknown): unknown {
  const [first, ...rest] = path;
  if (first === undefined) return value;
  const inner = build(rest, value);
  if (first.startsWith("id="))
    return [typeof inner === "object" && inner !== null && rest.length > 0 ? { id: first.slice(3), ...inner } : inner];
  return /^\+\d+$/.test(first) ? [inner] : { [first]: inner };
}

interface Step {
  readonly value: unknown;
  /** Relative to the value; null where nothing changed. */
  readonly inverse: DocumentEdit | null;
}

function remove(container: Container, spot: Located): Step {
  if (!spot.exists) return { value: container, inverse: null };
  const value = taken(container, spot);
  const old = (container as Readonly<Record<string, unknown>>)[spot.key];
  if (Array.isArray(container)) return { value, inverse: { path: [`+${spot.key}`], value: old } };
  const restored = put(value as Container, { ...spot, exists: false }, old);
  const sameOrder = Object.keys(restored).join("\n") === Object.keys(container).join("\n");
  return { value, inverse: sameOrder ? { path: [spot.key], value: old } : { path: [], value: container } };
}

function set(container: Container, spot: Located, value: unknown): Step {
  if (!spot.exists) return { value: put(container, spot, value), inverse: { path: [spot.key] } };
  const old = (container as Readonly<Record<string, unknown>>)[spot.key];
  if (Object.is(old, value)) return { value: container, inverse: null };
  return { value: put(container, spot, value), inverse: { path: [spot.key], value: old } };
}

function at(whole: unknown, path: Path, edit: DocumentEdit): Step {
  const [first, ...rest] = path;
  const unchanged: Step = { value: whole, inverse: null };
  const removes = edit.value === undefined;
  if (first === undefined)
    return removes || Object.is(whole, edit.value) ? unchanged : { value: edit.value, inverse: { path: [], value: whole } };
  if (!isContainer(whole)) return removes ? unchanged : { value: build(path, edit.value), inverse: { path: [], value: whole } };
  const spot = locate(whole, first);
  if (!spot) return unchanged;
  if (rest.length === 0) return removes ? remove(whole, spot) : set(whole, spot, edit.value);
  if (!spot.exists)
    return removes ? unchanged : set(whole, spot, first.startsWith("id=") ? onlyMember(build(path, edit.value)) : build(rest, edit.value));
  const inner = at((whole as Readonly<Record<string, unknown>>)[spot.key], rest, edit);
  if (!inner.inverse) return unchanged;
  return { value: put(whole, spot, inner.value), inverse: { ...inner.inverse, path: [spot.key, ...inner.inverse.path] } };
}

const onlyMember = (list: unknown): unknown => (list as readonly unknown[])[0];

/**
 * Applies edits one after the other. Nothing is changed in place: what an edit does not touch is the same object as before. Path members name
 * a key of an object; in a list `id=x` names the member with that id (or the text x), `3` a position, `+3` a new member before that position. Setting what
 * is not there makes it (a list member goes last; a bare number not in a list is a key); removing what is not there, or a name where a list stands, does nothing.
 */
export function apply(document: unknown, edits: readonly DocumentEdit[]): Applied {
  let now = document;
  const inverse: DocumentEdit[] = [];
  for (const edit of edits) {
    const step = at(now, edit.path, edit);
    now = step.value;
    if (step.inverse) inverse.push(step.inverse);
  }
  return { document: now, inverse: inverse.reverse() };
}
