import { isObject, textOf, type Written } from "../../write/written";

/** Lumber as written, short ("2x4") or in full, as one object. */
export const lumberOf = (value: unknown): Written => (isObject(value) ? value : { size: textOf(value) || "2x4" });

/** The same with one key changed; what says nothing but its size is written short. */
export function lumberWith(value: unknown, key: string, to: unknown): unknown {
  const { [key]: _before, ...rest } = lumberOf(value);
  const all = to === undefined || to === "" ? rest : { ...rest, [key]: to };
  const { size, ...more } = all;
  return Object.keys(more).length === 0 ? size : { size, ...more };
}
