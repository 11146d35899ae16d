import type { Build } from "../../src/core/build";
import { type End, type Formula, formulaOf, type Gap } from "./formula";

const none = Number.NEGATIVE_INFINITY;

/** Minutes from the epoch for a moment written without a zone; these builds stand in UTC. */
export const minuteOf = (build: Build, moment: string): number =>
  (Date.parse(`${moment.length === 10 ? `${moment}T00:00` : moment}Z`) - Date.parse(`${build.start}T00:00Z`)) / 60_000;

/** Node 0 is the epoch, then each step's start and finish. */
const node = (step: number, end: End): number => (step < 0 ? 0 : 1 + 2 * step + (end === "finish" ? 1 : 0));

export const gap = (from: number, fromEnd: End, to: number, toEnd: End, least_min: number): Gap => ({
  from,
  fromEnd,
  to,
  toEnd,
  least_min,
  order: false,
});

/** Work of each step, on a calendar that never stops. */
export const workGaps = (build: Build): Gap[] =>
  build.steps.flatMap(({ work: { likely_min } }, s) => [
    gap(s, "start", s, "finish", likely_min),
    gap(s, "finish", s, "start", -likely_min),
  ]);

/** Nothing before the epoch, notes before, deadlines, fixed starts. */
export function windowGaps(build: Build): Gap[] {
  return build.steps.flatMap((step, s) => {
    const own = [gap(-1, "finish", s, "start", 0)];
    if (step.notBefore !== null) own.push(gap(-1, "finish", s, "start", minuteOf(build, step.notBefore)));
    if (step.deadline !== null) own.push(gap(s, "finish", -1, "finish", -minuteOf(build, step.deadline)));
    if (step.fixed !== null)
      own.push(gap(-1, "finish", s, "start", minuteOf(build, step.fixed)), gap(s, "start", -1, "finish", -minuteOf(build, step.fixed)));
    return own;
  });
}

// One step is before the other or it is not, also where neither takes any time: an order costs a little, and what is at most gives way by more than all of
// them together. All amounts are whole minutes, so neither decides anything else.
const orderCosts = 1e-4;
const mostGives = 1e-2;
const cost = (g: Gap): number => g.least_min + (g.order ? orderCosts : g.least_min < 0 ? -mostGives : 0);

/** Earliest times by plain Bellman-Ford, to the minute; null when some gaps run in a ring that gains time. */
export function earliest(nodes: number, gaps: readonly Gap[]): Float64Array | null {
  const at = new Float64Array(nodes).fill(none);
  at[0] = 0;
  for (let round = 0; round <= nodes; round++) {
    let moved = false;
    for (const g of gaps) {
      const from = at[node(g.from, g.fromEnd)]!;
      const to = node(g.to, g.toEnd);
      if (from + cost(g) > at[to]!) {
        at[to] = from + cost(g);
        moved = true;
      }
    }
    if (!moved) return at[0] === 0 ? at : null;
    if (at[0]! > 0) return null;
  }
  return null;
}

/** Whether the formula holds of given starts and finishes, minutes since the epoch. */
export function holdsAt(formula: Formula, start: ArrayLike<number>, finish: ArrayLike<number>): boolean {
  const at = (s: number, end: End) => (s < 0 ? 0 : (end === "start" ? start[s] : finish[s])!);
  if ("all" in formula) return formula.all.every((f) => holdsAt(f, start, finish));
  if ("any" in formula) return formula.any.some((f) => holdsAt(f, start, finish));
  return at(formula.from, formula.fromEnd) + formula.least_min <= at(formula.to, formula.toEnd);
}

export interface InTime {
  readonly possible: boolean;
  /** Minutes since the epoch: start and finish of each step, as early as this way of settling the choices allows. */
  readonly start: readonly number[];
}

/** Whether work, windows and all that the build says can be met, on calendars that never stop; null as in `settle`. */
export const inTime = (build: Build): InTime | null => settle(build, [...workGaps(build), ...windowGaps(build)], formulaOf(build));

/**
 * Whether some way of settling every "or" of the formula leaves gaps that earliest times can meet, trying them all.
 * @returns null when more than `budget` ways were looked at
 */
export function settle(build: Build, gaps: readonly Gap[], formula: Formula, budget = 20_000): InTime | null {
  const nodes = 1 + 2 * build.steps.length;
  let looks = 0;
  const find = (known: readonly Gap[], open: readonly Formula[]): Float64Array | null => {
    if (++looks > budget) return null;
    const taken = [...known];
    const left: (readonly Formula[])[] = [];
    const todo = [...open];
    for (let f = todo.pop(); f !== undefined; f = todo.pop()) {
      if ("all" in f) todo.push(...f.all);
      else if (!("any" in f)) taken.push(f);
      else if (f.any.length === 1) todo.push(f.any[0]!);
      else left.push(f.any);
    }
    const at = earliest(nodes, taken);
    if (at === null || left.some((any) => any.length === 0)) return null;
    const met = (f: Formula): boolean =>
      "all" in f ? f.all.every(met) : "any" in f ? f.any.some(met) : at[node(f.from, f.fromEnd)]! + cost(f) <= at[node(f.to, f.toEnd)]!;
    const first = left.find((any) => !any.some(met));
    if (first === undefined) return at;
    const rest = left.filter((any) => any !== first).map((any): Formula => ({ any }));
    for (const option of first) {
      const found = find(taken, [...rest, option]);
      if (found !== null) return found;
    }
    return null;
  };
  const at = find(gaps, [formula]);
  if (at === null && looks > budget) return null;
  return { possible: at !== null, start: at === null ? [] : build.steps.map((_, s) => at[node(s, "start")]!) };
}
