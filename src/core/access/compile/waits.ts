import type { DetailValue } from "../../base";
import { type Amount, amountOf, type Wait } from "../../build";
import { fromPour, otherPour } from "./amounts";
import { never, type Program } from "./program";

/** No time at all, for a link between ends that has no amount of its own and yet does not order. */
const noTime: Amount = { on: { kind: "elapsed" }, amount: 0, text: "0 min", from: null };

/** Written waits and choices. Only a wait from a finish to a start that asks for more than a most is a precedence; the rest bind time. */
export function compileWaits(program: Program): void {
  const { build, facts } = program;
  build.waits.forEach((wait, i) => {
    const fact = facts.add(
      { rule: "wait", id: wait.id, step: wait.from, other: wait.to, detail: amounts(wait, { plain: wait.plain }) },
      "waits",
      i,
    );
    program.each(fact, -1, linksOf(program, wait));
  });
  build.choices.forEach((choice, i) => {
    const fact = facts.add({ rule: "choice", id: choice.id, detail: { either: choice.either.map((e) => e.name) } }, "choices", i);
    const selectors = choice.either.map(() => program.selector());
    program.clause(fact, -1, selectors);
    choice.either.forEach(({ waits }, e) => {
      for (const wait of waits) program.each(fact, selectors[e] as number, linksOf(program, wait), build.at.step.get(wait.from));
    });
  });
}

/** Details, and beside them amounts and ends, as written, where they are not the usual ones. */
export function amounts({ least, most, fromEnd, toEnd }: Wait, detail: Record<string, DetailValue> = {}): Record<string, DetailValue> {
  if (least !== null) detail.least = amountOf(least);
  if (most !== null) detail.most = amountOf(most);
  if (fromEnd !== "finish") detail.fromEnd = fromEnd;
  if (toEnd !== "start") detail.toEnd = toEnd;
  return detail;
}

/** The links of a wait, all of which hold: one, and one more for each amount that is the strength of another pour. */
function linksOf(program: Program, { from: first, to: second, fromEnd, toEnd, least, most }: Wait): number[] {
  const { build } = program;
  const from = build.at.step.get(first);
  const to = build.at.step.get(second);
  if (from === undefined || to === undefined) return [never];
  const ends = [fromEnd === "finish" ? 1 : 0, toEnd === "finish" ? 1 : 0] as const;
  const leastPour = otherPour(build, least, from, ends[0]);
  const mostPour = otherPour(build, most, from, ends[0]);
  const later = leastPour < 0 ? [] : [fromPour(program, leastPour, to, ends[1], least, null)];
  if (mostPour >= 0) later.push(fromPour(program, mostPour, to, ends[1], null, most));
  const ownLeast = leastPour < 0 ? program.amount(least) : -1;
  const ownMost = mostPour < 0 ? program.amount(most) : -1;
  // With only a most, and that from elsewhere, nothing is said of the first step's own end.
  if (least === null && most !== null && ownMost < 0) return later;
  const mostOnly = least === null && most !== null;
  if (fromEnd === "finish" && toEnd === "start" && !mostOnly) return [program.before(from, to, ownLeast, ownMost), ...later];
  const atLeast = ownLeast < 0 && !mostOnly ? program.amount(noTime) : ownLeast;
  return [program.timed(from, ends[0], to, ends[1], atLeast, ownMost), ...later];
}
