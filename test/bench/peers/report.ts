import { check } from "../schedule/check";
import type { DataSet, Instance } from "../schedule/files";
import type { Answer } from "./answer";

export interface Entry {
  readonly solver: string;
  readonly instance: Instance;
  readonly answer: Answer;
}

/** One solver on one set. */
export interface Compared {
  readonly set: string;
  readonly solver: string;
  readonly instances: number;
  readonly proved: number;
  readonly infeasibleFound: number;
  /** Percent over the best known finish, of those for which a schedule was found and one is known. */
  readonly devBestPercent: number | null;
  readonly withoutSchedule: number;
  readonly wrong: number;
  readonly wallSeconds: number;
  readonly cpuSeconds: number;
  /** What the solver says its search took, its own translation left out. */
  readonly ownSeconds: number;
  /** Total wall time by that of the engine here. */
  readonly timesOurs: number;
}

/** Sums by solver, the engine here first. Schedules are checked from the file. */
export function compared(set: DataSet, entries: readonly Entry[]): Compared[] {
  const names = [...new Set(entries.map((e) => e.solver))].sort((a, b) => Number(b === "ours") - Number(a === "ours"));
  const seconds = (name: string, of: (a: Answer) => number): number =>
    entries.filter((e) => e.solver === name).reduce((sum, e) => sum + of(e.answer), 0);
  const ours = seconds("ours", (a) => a.seconds);
  return names.map((solver) => {
    const list = entries.filter((e) => e.solver === solver);
    const over: number[] = [];
    let wrong = 0;
    for (const { instance, answer } of list) {
      const { ub, lb, feasible } = instance.known;
      const finish = answer.start === null ? null : check(instance.row, set.calendars, answer.start);
      if (typeof finish === "string" || (finish !== null && lb !== null && finish < lb)) wrong++;
      else if (answer.status === "infeasible" && (feasible === true || ub !== null)) wrong++;
      else if (answer.status === "proved" && finish !== null && ub !== null && finish > ub) wrong++;
      if (typeof finish === "number" && ub !== null && ub > 0) over.push((100 * (finish - ub)) / ub);
    }
    const count = (status: Answer["status"]): number => list.filter((e) => e.answer.status === status).length;
    const wallSeconds = seconds(solver, (a) => a.seconds);
    return {
      set: set.set,
      solver,
      instances: list.length,
      proved: count("proved"),
      infeasibleFound: count("infeasible"),
      devBestPercent: over.length === 0 ? null : rounded(over.reduce((a, b) => a + b, 0) / over.length),
      withoutSchedule: count("not-found"),
      wrong,
      wallSeconds: rounded(wallSeconds),
      cpuSeconds: rounded(seconds(solver, (a) => a.cpuSeconds)),
      ownSeconds: rounded(seconds(solver, (a) => a.ownSeconds ?? 0)),
      timesOurs: rounded(wallSeconds / Math.max(1e-9, ours)),
    };
  });
}

export function linesOf(set: string, instances: number, sums: readonly Compared[]): string[] {
  const row = (cells: readonly unknown[]): string =>
    `  ${cells.map((c, k) => (k === 0 ? String(c).padEnd(8) : String(c).padStart(11))).join("")}`;
  return [
    `${set}: ${instances} instances`,
    row(["solver", "proved", "infeasible", "over best %", "no schedule", "wrong", "total s", "cpu s", "search s", "times ours"]),
    ...sums.map((s) =>
      row([
        s.solver,
        s.proved,
        s.infeasibleFound,
        s.devBestPercent ?? "–",
        s.withoutSchedule,
        s.wrong,
        s.wallSeconds,
        s.cpuSeconds,
        s.ownSeconds,
        s.timesOurs,
      ]),
    ),
  ];
}

function rounded(n: number): number {
  return Number(n.toFixed(2));
}
