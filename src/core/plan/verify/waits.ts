import type { ElapsedMinute } from "../../base";
import { type Amount, pourOf, type Wait } from "../../build";
import type { Case, Fault } from "./fault";
import { strengthAt } from "./reach";

/** Written waits, and of every choice at least one alternative with all its waits. */
export function checkWaits(c: Case): Fault[] {
  const out: Fault[] = [];
  for (const wait of c.build.waits) {
    for (const rule of brokenSides(c, wait))
      out.push({ rule, step: wait.from, other: wait.to, of: wait.id, at: endOf(c, wait.to, wait.toEnd) });
  }
  for (const choice of c.build.choices) {
    if (!choice.either.some((e) => e.waits.every((w) => brokenSides(c, w).length === 0)))
      out.push({ rule: "choice", of: choice.id, at: 0 });
  }
  return out;
}

function brokenSides(c: Case, wait: Wait): string[] {
  const from = endOf(c, wait.from, wait.fromEnd);
  const to = endOf(c, wait.to, wait.toEnd);
  const out: string[] = [];
  const ordinary = wait.fromEnd === "finish" && wait.toEnd === "start";
  if (wait.least !== null ? after(c, from, wait.least) > to : ordinary && wait.most === null && from > to) out.push("least");
  // Too late as soon as more than the most is there.
  if (wait.most !== null && after(c, from, { ...wait.most, amount: wait.most.amount + 1 }) <= to) out.push("most");
  return out;
}

/** Strength and warm time count from the finish of the pour they name, wherever the wait begins; the wait's own end is then a bare precedence. */
function after(c: Case, from: number, amount: Amount): number {
  const pour = pourOf(amount.on);
  if (pour !== null) return Math.max(from, strengthAt(c, pour, amount));
  return c.clocks.of(amount.on).advance(from as ElapsedMinute, amount.amount);
}

function endOf(c: Case, step: string, end: "start" | "finish"): number {
  return (end === "start" ? c.start : c.finish)[c.build.at.step.get(step)!]!;
}
