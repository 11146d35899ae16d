import type { Option } from "../parts/option";
import { idsOf, textOf } from "./written";

/** What a way lets through, as one choice; its id is the document's list with blanks between. */
export const passes: readonly Option[] = [
  { id: "sight", name: "eyes only" },
  { id: "hand", name: "a hand" },
  { id: "arm", name: "an arm with a tool" },
  { id: "hose", name: "a hose or vibrator" },
  { id: "arm hose", name: "an arm, a hose" },
  { id: "person", name: "a person" },
  { id: "person unit", name: "a person, pieces as one" },
  { id: "machine", name: "a machine" },
];

/** The choice that stands for the list as written, or the list itself where none does. */
export function passesText(value: unknown): string {
  const kinds = idsOf(value);
  const same = passes.find((choice) => choice.id.split(" ").sort().join(" ") === [...kinds].sort().join(" "));
  return same?.id ?? kinds.join(" ");
}

/** The place that a way leads through, as written short or in full. */
export function throughOf(value: unknown): string {
  return typeof value === "object" && value !== null && "place" in value ? textOf(value.place) : textOf(value);
}

/** The same with another place; what must get there stays as written. */
export function throughTo(value: unknown, place: string): unknown {
  return place !== "" && typeof value === "object" && value !== null ? { ...value, place } : place;
}
