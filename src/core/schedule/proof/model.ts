import { type Clock, type ElapsedMinute, never } from "../../base";
import { holdsThrough } from "../needs";
import type { Net } from "../network";
import type { Capacity, Problem } from "../problem";
import { type Runs, runsOf } from "../runs";
import type { StartMap } from "./start-map";
import { startMaps } from "./start-maps";
import type { Barred } from "./starts";

/** Side `from` at least b makes side `to` at least b + `lag`: a wait between starts, or the same wait read backwards. */
export interface Lag {
  readonly from: number;
  readonly to: number;
  readonly lag: number;
}

/** A wait that a clock stretches: the end of `to` is not before `ahead(end of from)`; and the end of `from` not after `back(end of to)`. */
export interface Arc {
  readonly from: number;
  readonly to: number;
  readonly fromEnd: number;
  readonly toEnd: number;
  readonly ahead: (t: number) => number;
  readonly back: (t: number) => number;
}

/** Something held from the start of job `out` (-1: from the beginning) to the finish of job `back` (-1: for good). */
export interface Task {
  readonly out: number;
  readonly back: number;
  readonly number: number;
  /** Held only while these run; null: through pauses. */
  readonly runs: Runs | null;
}

/** A number that may never be passed, less what `base` says is not there at times. */
export interface Shared {
  readonly level: number;
  readonly times: Int32Array;
  /** level - what there is, from each time on. */
  readonly missing: Int32Array;
  readonly tasks: readonly Task[];
  /** Says nothing that the others and the waits do not say of any two tasks: only for reasoning about many at once. */
  readonly implied?: boolean;
}

/** A problem as the search sees it: variable j is the start of job j; the last one is the finish of all. */
export interface Model {
  readonly jobs: number;
  /** Minutes of work by each job's own clock. */
  readonly amount: Int32Array;
  readonly maps: readonly StartMap[];
  readonly low: Int32Array;
  readonly high: Int32Array;
  readonly lags: readonly Lag[];
  readonly arcs: readonly Arc[];
  readonly shared: readonly Shared[];
}

/**
 * Compiles a problem for finishing at or before `target`. `low` and `high` are starts that links and dates alone allow. Null when some job has no start
 * left by its own calendar, dates and the hours at which what it needs is there.
 */
export function modelOf(p: Problem, net: Net, low: Int32Array, high: Int32Array, least: number, target: number): Model | null {
  const lows = new Int32Array(p.jobs + 1);
  const highs = new Int32Array(p.jobs + 1);
  const demands = Array.from({ length: p.jobs }, (): number[] => []);
  for (let d = 0; d < p.demands.length; d += 3) if (p.amount[p.demands[d]!]! > 0) demands[p.demands[d]!]!.push(d);
  const asked = (j: number): string => demands[j]!.map((d) => `${p.demands[d + 1]}:${p.demands[d + 2]}`).join();
  const maps = startMaps(p, low, high, asked, (j) => barredFor(p, demands[j]!, target));
  if (maps === null) return null;
  for (let j = 0; j < p.jobs; j++) {
    const map = maps[j]!;
    lows[j] = map.from[0]!;
    highs[j] = map.to[map.size - 1]!;
  }
  lows[p.jobs] = least;
  highs[p.jobs] = target;
  const lags: Lag[] = [];
  const arcs: Arc[] = [];
  const wait = (from: number, fromEnd: number, to: number, toEnd: number, amount: number, clock: Clock | null, most: boolean): void => {
    const a = offset(maps[from], fromEnd);
    const b = offset(maps[to], toEnd);
    if (a !== null && b !== null && (clock === null || (amount === 0 && !most) || plain(clock))) {
      const lag = a - b + (most ? -amount : amount);
      lags.push({ from: 2 * from, to: 2 * to, lag }, { from: 2 * to + 1, to: 2 * from + 1, lag });
      return;
    }
    const ahead = (t: number): number => (most ? clock!.unlimit(t as ElapsedMinute, amount) : clock!.advance(t as ElapsedMinute, amount));
    const back = (t: number): number => (most ? clock!.limit(t as ElapsedMinute, amount) : clock!.retreat(t as ElapsedMinute, amount));
    const still = clock === null || (amount === 0 && !most);
    arcs.push({ from, to, fromEnd, toEnd, ahead: still ? same : ahead, back: still ? same : back });
  };
  const place = new Int32Array(p.jobs);
  for (let k = 0; k < p.jobs; k++) place[net.order[k]!] = k;
  const followed = new Uint8Array(p.jobs);
  const { links } = p;
  for (let l = 0; l < links.count; l++) {
    const from = links.from[l]!;
    const to = links.to[l]!;
    const clock = p.clocks[links.clock[l]!]!;
    if (links.least[l]! >= 0) {
      wait(from, links.fromEnd[l]!, to, links.toEnd[l]!, links.least[l]!, clock, false);
      if (links.fromEnd[l] === 1 && place[to]! > place[from]!) followed[from] = 1;
    }
    if (links.most[l]! >= 0) wait(to, links.toEnd[l]!, from, links.fromEnd[l]!, links.most[l]!, clock, true);
  }
  for (let j = 0; j < p.jobs; j++) if (followed[j] === 0) wait(j, 1, p.jobs, 0, 0, null, false);
  return { jobs: p.jobs, amount: p.amount, maps, low: lows, high: highs, lags, arcs, shared: [...capacities(p, demands), ...stocks(p)] };
}

const same = (t: number): number => t;

/** What an end of a job is later than its start, where that never changes. The finish of all is both. */
function offset(map: StartMap | undefined, end: number): number | null {
  if (map === undefined || end === 0) return 0;
  return map.size === 1 ? map.length[0]! : null;
}

/** Whether a clock is plain time, asked at a few instants. */
function plain(clock: Clock): boolean {
  if (clock.fromBeginning) return false;
  return [0, 1_003, 100_003, 1_000_007].every((t) => clock.reading(t as ElapsedMinute) === t && clock.runEnd(t as ElapsedMinute) >= never);
}

function barredFor(p: Problem, demands: readonly number[], target: number): Barred[] {
  const out: Barred[] = [];
  for (const d of demands) {
    const c = p.capacities[p.demands[d + 1]!]!;
    const number = p.demands[d + 2]!;
    const working = !holdsThrough(p, p.demands[d + 1]!, number);
    for (let i = 0; i < c.times.length; i++) {
      const from = i === 0 ? 0 : c.times[i]!;
      if (c.levels[i]! < number && from <= target) out.push({ from, to: c.times[i + 1] ?? never, working });
    }
  }
  return out;
}

function capacities(p: Problem, demands: readonly (readonly number[])[]): Shared[] {
  return p.capacities.flatMap((c, index) => {
    const tasks: Task[] = [];
    for (let j = 0; j < p.jobs; j++) {
      for (const d of demands[j]!) {
        const number = p.demands[d + 2]!;
        if (p.demands[d + 1] !== index || number === 0) continue;
        const clock = p.clocks[p.clock[j]!]!;
        const through = holdsThrough(p, index, number) || clock.fromBeginning === true || clock.runEnd(0 as ElapsedMinute) >= never;
        tasks.push({ out: j, back: j, number, runs: through ? null : runsOf(clock) });
      }
    }
    return tasks.length === 0 ? [] : [sharedOf(c, tasks)];
  });
}

function sharedOf(c: Capacity, tasks: readonly Task[]): Shared {
  const level = c.levels.reduce((a, b) => Math.max(a, b), 0);
  const times = c.times.slice();
  if (times.length === 0) return { level: 0, times: Int32Array.of(0), missing: Int32Array.of(0), tasks };
  times[0] = 0;
  return { level, times, missing: c.levels.map((n) => level - n), tasks };
}

/** A stock as a number shared over time: what is still to be delivered is held from the beginning, what is lost is held for good. */
function stocks(p: Problem): Shared[] {
  return p.stocks.flatMap((stock, s) => {
    const tasks: Task[] = stock.arrivals.map((a) => ({ out: -1, back: a.job, number: a.number, runs: null }));
    for (const x of p.spans) {
      if (x.stock !== s) continue;
      const lost = x.back < 0 ? x.number : x.loss;
      if (lost > 0) tasks.push({ out: x.out, back: -1, number: lost, runs: null });
      if (x.number > lost) tasks.push({ out: x.out, back: x.back, number: x.number - lost, runs: null });
    }
    if (!p.spans.some((x) => x.stock === s)) return [];
    const level = stock.arrivals.reduce((sum, a) => sum + a.number, stock.inHand);
    return [{ level, times: Int32Array.of(0), missing: Int32Array.of(0), tasks }];
  });
}
