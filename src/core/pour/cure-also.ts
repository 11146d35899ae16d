import { writtenId } from "../base";
import { type Amount, type Build, pourOf } from "../build";
import type { CureContext } from "./cure-context";
import type { AlsoWaits } from "./result";

/** Whether an amount is one of this concrete: of its strength or warmth, or time that counts from when it was placed. */
const isOf = (amount: Amount | null, pourStep: string, counts: boolean): amount is Amount =>
  amount !== null && (pourOf(amount.on) === null ? counts : pourOf(amount.on) === pourStep);

function waitsOf({ build, pour, dates }: CureContext): AlsoWaits[] {
  const { steps, pieces, at } = build;
  const placed = at.step.get(pour.step) ?? -1;
  const isPutBy = (piece: string): boolean => pieces[at.piece.get(piece as never) ?? -1]?.up === placed;
  const rows: AlsoWaits[] = [];
  const add = (step: number, amount: Amount | null, by: AlsoWaits["by"]): void => {
    const planned = dates.start[step];
    if (planned !== undefined && amount !== null) rows.push({ step, planned, amount: amount.text, by });
  };
  steps.forEach((step, s) => {
    for (const { piece, once } of step.leansOn) if (isOf(once, pour.step, isPutBy(piece))) add(s, once, "leans");
  });
  for (const { from, to, least, removal } of build.waits)
    if (removal === undefined && isOf(least, pour.step, from === pour.step) && (least?.amount ?? 0) > 0)
      add(at.step.get(to) ?? -1, least, "waits");
  return rows;
}

/** Of steps alike the one that comes first, once for each thing it waits for. */
function onceEach(rows: readonly AlsoWaits[], build: Build): AlsoWaits[] {
  const seen = new Set<string>();
  return [...rows]
    .sort((a, b) => a.planned - b.planned || a.step - b.step)
    .filter(({ step, amount }) => {
      const key = `${writtenId(build.steps[step]?.id ?? "")} ${amount}`;
      return !seen.has(key) && seen.add(key) !== undefined;
    });
}

/** What waits for this concrete by what steps and waits say themselves, beside what is written with the pour; by date, of several alike the first. */
export const alsoWaits = (c: CureContext): readonly AlsoWaits[] => onceEach(waitsOf(c), c.build);
