import { type Clock, type ElapsedMinute, never } from "../../base";
import type { Problem } from "../problem";
import { StartMap } from "./start-map";

/** Minutes [from, to) at which a job may not be at work, whether or not they fall into its pauses. */
export interface Barred {
  readonly from: number;
  readonly to: number;
  /** Its own pauses do not count. */
  readonly working: boolean;
}

/** Starts from which a barred minute is one of work. */
interface Hole {
  readonly from: number;
  readonly to: number;
}

interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly length: number;
}

/** The starts of job `j` between `low` and `high` by its clock, without those that would have it at work when it may not be; null when none is left. */
export function startsOf(p: Problem, j: number, low: number, high: number, barred: readonly Barred[]): StartMap | null {
  const clock = p.clocks[p.clock[j]!]!;
  const all = clock.fromBeginning ? changing(clock, p.amount[j]!, low, high) : steady(clock, p.amount[j]!, p.unbroken[j] === 1, low, high);
  if (all.length === 0) return null;
  const map = mapOf(all);
  const holes: Hole[] = [];
  for (const b of barred) {
    const hole = startsInto(map, clock, b);
    if (hole !== null) holes.push(hole);
  }
  if (holes.length === 0) return map;
  const left = without(all, holes);
  return left.length === 0 ? null : mapOf(left);
}

/** A clock that gathers one a minute while it runs: the length changes where a start or its finish passes a pause. */
function steady(clock: Clock, amount: number, unbroken: boolean, low: number, high: number): Stretch[] {
  const out: Stretch[] = [];
  let s = clock.begin(low as ElapsedMinute);
  while (s <= high) {
    const end = clock.runEnd(s);
    if (unbroken || amount === 0) {
      const to = Math.min(end - Math.max(1, amount), high);
      if (to >= s) add(out, s, to, amount);
      s = clock.begin(end);
      continue;
    }
    const finish = clock.advance(s, amount);
    if (finish >= never) break;
    const room = clock.runEnd((finish - 1) as ElapsedMinute) - finish;
    const to = Math.min(end - 1, s + room, high);
    add(out, s, to, finish - s);
    s = clock.begin((to + 1) as ElapsedMinute);
  }
  return out;
}

/** A clock that counts from where it is asked: its runs are the stretches in which the length stays the same, or are halved until it does. */
function changing(clock: Clock, amount: number, low: number, high: number): Stretch[] {
  const out: Stretch[] = [];
  const part = (from: number, to: number): void => {
    const first = clock.advance(from as ElapsedMinute, amount);
    const last = clock.advance(to as ElapsedMinute, amount);
    if (first >= never) return;
    if (last - first === to - from) {
      add(out, from, to, first - from);
      return;
    }
    const middle = (from + to) >> 1;
    part(from, middle);
    part(middle + 1, to);
  };
  for (let s = clock.begin(low as ElapsedMinute); s <= high; s = clock.begin(clock.runEnd(s))) part(s, Math.min(clock.runEnd(s) - 1, high));
  return out;
}

function add(out: Stretch[], from: number, to: number, length: number): void {
  const before = out[out.length - 1];
  if (before !== undefined && before.length === length && before.to + 1 === from) out[out.length - 1] = { from: before.from, to, length };
  else out.push({ from, to, length });
}

/** The starts from which some barred minute is one of work. */
function startsInto(map: StartMap, clock: Clock, b: Barred): Hole | null {
  let { from, to } = b;
  if (b.working && !clock.fromBeginning) {
    from = clock.begin(from as ElapsedMinute);
    if (from >= to) return null;
    const t = to as ElapsedMinute;
    to = clock.reading(t) - clock.reading((t - 1) as ElapsedMinute) > 0 ? to : clock.retreat(t, 1) + 1;
  }
  const first = map.lastToFinish(from) + 1;
  return first < to ? { from: first, to: to - 1 } : null;
}

function without(all: readonly Stretch[], holes: Hole[]): Stretch[] {
  holes.sort((a, b) => a.from - b.from);
  const out: Stretch[] = [];
  let h = 0;
  for (const s of all) {
    let from = s.from;
    while (h < holes.length && holes[h]!.to < from) h++;
    for (let k = h; k < holes.length && holes[k]!.from <= s.to && from <= s.to; k++) {
      if (holes[k]!.from > from) out.push({ from, to: holes[k]!.from - 1, length: s.length });
      from = Math.max(from, holes[k]!.to + 1);
    }
    if (from <= s.to) out.push({ from, to: s.to, length: s.length });
  }
  return out;
}

function mapOf(all: readonly Stretch[]): StartMap {
  const from = new Int32Array(all.length);
  const to = new Int32Array(all.length);
  const length = new Int32Array(all.length);
  for (let k = 0; k < all.length; k++) {
    const stretch = all[k]!;
    from[k] = stretch.from;
    to[k] = stretch.to;
    length[k] = stretch.length;
  }
  return new StartMap(from, to, length);
}
