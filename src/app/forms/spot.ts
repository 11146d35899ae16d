import type { Desk } from "../state";
import { isObject, listOf, objectsOf, textOf, type Written } from "../write/written";

/** One object of the document as its fields read and write it: a pour, an element, a part of its form. */
export interface Spot {
  /** Leads to it in the document. */
  readonly path: readonly string[];
  /** What a change of it is called in the undo list. */
  readonly name: string;
  readonly written: Written;
  get(...keys: readonly string[]): unknown;
  text(...keys: readonly string[]): string;
  /** Writes at a key, or at keys inside one another; nothing to write takes it out. Sentences where it cannot be. */
  put(keys: string | readonly string[], value: unknown): readonly string[];
  inside(...keys: readonly string[]): Spot;
}

const isNothing = (value: unknown): boolean => value === undefined || value === "";

/** The value at keys inside one another. */
function within(value: unknown, keys: readonly string[]): unknown {
  return keys.reduce<unknown>((inner, key) => (isObject(inner) ? inner[key] : undefined), value);
}

export function spotOn(desk: Desk, path: readonly string[], value: unknown, name: string): Spot {
  const written = isObject(value) ? value : {};
  return {
    path,
    name,
    written,
    get: (...keys) => within(written, keys),
    text: (...keys) => textOf(within(written, keys)),
    put(keys, to) {
      const at = [...path, ...(typeof keys === "string" ? [keys] : keys)];
      return desk.attempt([isNothing(to) ? { path: at } : { path: at, value: to }], `change ${name}`, at.join(" "));
    },
    inside: (...keys) => spotOn(desk, [...path, ...keys], within(written, keys), name),
  };
}

/** A pour as written; null where the document has none of that id (any more). */
export function pourSpot(desk: Desk, id: string): Spot | null {
  const pour = listOf(desk.document, "pours").find((one) => one.id === id);
  return pour ? spotOn(desk, ["pours", `id=${id}`], pour, textOf(pour.name) || id) : null;
}

/** One of its elements. */
export function elementSpot(desk: Desk, pour: Spot, id: string): Spot | null {
  const element = objectsOf(pour.written.elements).find((one) => one.id === id);
  return element ? spotOn(desk, [...pour.path, "elements", `id=${id}`], element, textOf(element.name) || id) : null;
}
