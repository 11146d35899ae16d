import { isObject, textOf } from "../write/written";
import type { Option } from "./option";

/** Where a figure may come from; any other words will do as well. */
export const sources: readonly Option[] = ["drawing", "product sheet", "inspector", "supplier", "measured", "code", "own guess"].map(
  (name) => ({ id: name, name }),
);

/** Where a figure as written is said to come from; empty where it does not say. */
export const sourceOf = (value: unknown): string => (isObject(value) ? textOf(value.from) : "");

/** The same figure with another source; without one it is written short again where nothing else stands beside it. */
export function withSource(value: unknown, from: string): unknown {
  const source = from.trim();
  if (!isObject(value)) return source === "" || value === undefined ? value : { is: value, from: source };
  if (source !== "") return { ...value, from: source };
  const { from: _, ...rest } = value;
  return Object.keys(rest).join() === "is" ? rest.is : rest;
}
