import { isObject, quantityOf, type Written, withFigure } from "./written";

/** Figures that mean something only together: an opening has a width and a height. */
export type Typed = Readonly<Record<string, string>>;

/** The figures as typed, by key; empty where nothing is written. */
export function typedOf(value: unknown, keys: readonly string[]): Typed {
  const written = isObject(value) ? value : {};
  return Object.fromEntries(keys.map((key) => [key, quantityOf(written[key])]));
}

/** The document's form: nothing where all are empty; null while some are missing. Whatever else is in it, and where figures come from, stays. */
export function writtenTogether(before: unknown, typed: Typed, keys: readonly string[]): { readonly value: Written | undefined } | null {
  const filled = keys.filter((key) => (typed[key] ?? "").trim() !== "");
  if (filled.length === 0) return { value: undefined };
  if (filled.length < keys.length) return null;
  const written = isObject(before) ? before : {};
  return { value: { ...written, ...Object.fromEntries(keys.map((key) => [key, withFigure(written[key], typed[key] ?? "")])) } };
}

/** An object with one key changed; nothing where it comes to nothing. */
export function withKey(before: unknown, key: string, value: unknown): Written | undefined {
  const { [key]: _, ...rest } = isObject(before) ? before : ({} as Written);
  const isNothing = value === undefined || value === "" || value === false || (Array.isArray(value) && value.length === 0);
  const after = isNothing ? rest : { ...(isObject(before) ? before : {}), [key]: value };
  return Object.keys(after).length === 0 ? undefined : after;
}

/** Lines as typed, one to a line; blank ones are none. */
export const linesOf = (typed: string): readonly string[] =>
  typed
    .split("\n")
    .map((line) => line.trim())
    .filter((line) => line !== "");
