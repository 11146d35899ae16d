import type { HandsNeed } from "../../core/build";

const numbers = ["nobody", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];

/** "two people", "six people: one for the hose". */
export function peopleWords(hands: readonly HandsNeed[]): string {
  const count = hands.reduce((sum, need) => sum + need.number, 0);
  if (count === 0) return "nobody of the crew";
  const all = `${numbers[count] ?? count} ${count === 1 ? "person" : "people"}`;
  const roles = hands.filter((need) => need.role !== "hands" && need.number > 0);
  const special = roles.map((need) => `${numbers[need.number] ?? need.number} for the ${need.role}`);
  return special.length > 0 && count > 0 ? `${all}: ${special.join(", ")}` : all;
}
