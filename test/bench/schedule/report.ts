import { check } from "./check";
import type { DataSet, Instance } from "./files";
import type { Asked, Outcome } from "./run";

/** One object a set, as `--json` writes it. */
export interface Sums {
  readonly set: string;
  readonly mode: string;
  readonly instances: number;
  readonly devCpmPercent: number | null;
  readonly devBestPercent: number | null;
  readonly equalBest: number;
  readonly proved: number;
  readonly infeasibleFound: number;
  readonly wrong: number;
  readonly schedules: number;
  readonly conflicts: number;
  readonly wallSeconds: number;
}

export interface Judged {
  readonly instance: Instance;
  readonly outcome: Outcome;
  readonly makespan: number | null;
  /** What is wrong with the answer; null: nothing. */
  readonly wrong: string | null;
}

/** Judges an answer by the file's own words and by what is known of the instance. */
export function judge(set: DataSet, instance: Instance, outcome: Outcome): Judged {
  const { lb, ub, feasible } = instance.known;
  const checked = outcome.start === null ? null : check(instance.row, set.calendars, outcome.start);
  const makespan = typeof checked === "number" ? checked : null;
  let wrong: string | null = typeof checked === "string" ? checked : null;
  if (outcome.status === "infeasible" && (feasible === true || ub !== null)) wrong = "said to be infeasible, but a schedule is known";
  if (makespan !== null) {
    if (feasible === false) wrong = "a schedule for what is known to be infeasible";
    if (lb !== null && makespan < lb) wrong = `finishes at ${makespan}, before the known bound ${lb}`;
    if (outcome.status === "proved" && ub !== null && makespan > ub) wrong = `${makespan} said to be proved, but ${ub} is known`;
  }
  if (ub !== null && outcome.bound > ub) wrong = `bound ${outcome.bound} is above the known ${ub}`;
  if ((outcome.status === "proved" || outcome.status === "planned") && outcome.start === null)
    wrong = "no schedule beside a status that has one";
  return { instance, outcome, makespan, wrong };
}

export function sum(set: DataSet, asked: Asked, all: readonly Judged[], wallSeconds: number): Sums {
  const over = (of: (j: Judged) => number | null): number | null => {
    const list = all.flatMap((j) => {
      const base = of(j);
      return base === null || base <= 0 || j.makespan === null ? [] : [(100 * (j.makespan - base)) / base];
    });
    return list.length === 0 ? null : round(list.reduce((a, b) => a + b, 0) / list.length, 4);
  };
  const count = (of: (j: Judged) => boolean): number => all.filter(of).length;
  return {
    set: set.set,
    mode: asked.mode,
    instances: all.length,
    devCpmPercent: over((j) => j.instance.known.critical),
    devBestPercent: over((j) => j.instance.known.ub),
    equalBest: count((j) => j.makespan !== null && j.makespan === j.instance.known.ub),
    proved: count((j) => j.outcome.status === "proved"),
    infeasibleFound: count((j) => j.outcome.status === "infeasible"),
    wrong: count((j) => j.wrong !== null),
    schedules: all.reduce((a, j) => a + j.outcome.schedules, 0),
    conflicts: all.reduce((a, j) => a + j.outcome.conflicts, 0),
    wallSeconds: round(wallSeconds, 3),
  };
}

/** Lines to read: the set's sums, then whatever is wrong. */
export function lines(s: Sums, all: readonly Judged[]): string[] {
  const percent = (n: number | null): string => (n === null ? "none known" : `${n.toFixed(2)} %`);
  const work = s.mode === "proof" ? s.conflicts : s.schedules;
  const median = [...all].map((j) => j.outcome.seconds).sort((a, b) => a - b)[all.length >> 1] ?? 0;
  return [
    `${s.set}, ${s.mode}: ${s.instances} instances`,
    `  over the critical path ${percent(s.devCpmPercent)}, over the best known ${percent(s.devBestPercent)}, equal to the best known ${s.equalBest}`,
    `  proved ${s.proved}, infeasible found ${s.infeasibleFound}, wrong ${s.wrong}`,
    `  ${s.mode === "proof" ? "conflicts" : "schedules"} ${work}, ${Math.round(work / Math.max(1e-9, s.wallSeconds))} a second; wall time ${s.wallSeconds.toFixed(1)} s, median ${(1000 * median).toFixed(0)} ms an instance`,
    ...all.flatMap((j) => (j.wrong === null ? [] : [`  WRONG ${j.instance.name}: ${j.wrong}`])),
  ];
}

function round(n: number, digits: number): number {
  return Number(n.toFixed(digits));
}
