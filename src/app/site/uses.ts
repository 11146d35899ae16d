import { listOf, objectsOf, textOf, type Written } from "../write/written";

/** Something that uses, holds or brings an equipment or a stock. */
export interface Use {
  readonly list: "steps" | "pieces" | "deliveries" | "pours";
  readonly id: string;
  readonly name: string;
  /** How many; null where that is not counted by the piece (bags of a pour). */
  readonly number: number | null;
}

const nameOf = (thing: Written): string => textOf(thing.name) || textOf(thing.id).replaceAll("-", " ");
const entries = [
  ["steps", "equipment"],
  ["pieces", "uses"],
  ["deliveries", "brings"],
] as const;

/** Everything that speaks of it, in document order: steps, then pieces, then deliveries, then pours bought in bags of it. */
export function usesOf(document: unknown, id: string): readonly Use[] {
  const counted = entries.flatMap(([list, key]) =>
    listOf(document, list).flatMap((member) =>
      objectsOf(member[key])
        .filter((entry) => entry.of === id)
        .map((entry): Use => {
          const number = typeof entry.number === "number" ? entry.number : 1;
          return { list, id: textOf(member.id), name: nameOf(member), number };
        }),
    ),
  );
  const pours = listOf(document, "pours").filter((pour) => pour.sacks === id);
  return [...counted, ...pours.map((pour): Use => ({ list: "pours", id: textOf(pour.id), name: nameOf(pour), number: null }))];
}
