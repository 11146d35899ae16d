import type { Fastener, Lumber, Pour, Sheathing, Source } from "../build";
import { grades } from "../concrete";

/** What of a member is not known: `memory` is a table's value nobody has seen in print; the others are the builder's to settle. */
export type Doubt = "grade" | "section" | "figure" | "soil" | "plank" | "memory";

const isGuess = (from: Source | null): boolean => from === "own guess";

export function doubtsOfLumber(lumber: Lumber, isMemory: boolean): readonly Doubt[] {
  const unknown = lumber.grade === null || grades[lumber.grade] === undefined || isGuess(lumber.from);
  const doubts: Doubt[] = unknown ? ["grade"] : isMemory ? ["memory"] : [];
  if (lumber.salvaged && lumber.measured_mm === null) doubts.push("section");
  return doubts;
}

/** Its class and the way its grain runs may have been taken as usual, by the key of its element (see `Pour.assumed`). */
export function doubtsOfSheathing(sheathing: Sheathing, pour: Pour, element: string): readonly Doubt[] {
  const key = `elements.${element}.form.sheathing.`;
  return isGuess(sheathing.from) || pour.assumed.some((one) => one.startsWith(key)) ? ["figure"] : [];
}

/** A bolt or tie whose figure nobody stands for is a guess, as is one that is called so. */
export const doubtsOfFastener = (by: Fastener): readonly Doubt[] => (by.from === null || isGuess(by.from) ? ["figure"] : []);

export const doubtsOfSoil = (from: Source | null): readonly Doubt[] => (from === null || isGuess(from) ? ["soil"] : []);
