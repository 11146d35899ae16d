import { never } from "../../base";
import type { Model } from "../proof/model";
import type { Holds } from "./holds";
import { Lows } from "./lows";
import { Steps } from "./steps";
import type { Waits } from "./waits";

/** Times that jobs are taken out again in one pass, a job. */
const mostUndone = 4;

/**
 * Serial generation for problems of any kind: a job goes to its first start at which waits and everything shared allow it, after what it waits for. One that
 * comes too late for a most-wait raises the earliest start of those it counts from; they and all that start later are placed anew (the unscheduling step of
 * Franck, Neumann & Schwindt 2001, OR Spektrum 23:297-324, from memory).
 */
export class ModelPass {
  readonly start: Int32Array;
  readonly end: Int32Array;
  /** Jobs that were placed in the last pass, counted each time. */
  placed = 0;
  private readonly floor: Int32Array;
  private readonly lows: Lows;
  private readonly steps: readonly Steps[];
  private readonly visiting: Uint8Array;
  private readonly fixed: readonly number[];
  private undone = 0;
  private missing = 0;

  constructor(
    private readonly model: Model,
    private readonly waits: Waits,
    private readonly holds: Holds,
  ) {
    this.start = new Int32Array(model.jobs);
    this.end = new Int32Array(model.jobs);
    this.floor = new Int32Array(model.jobs);
    this.lows = new Lows(model, waits, this.start);
    this.steps = model.shared.map((s) => new Steps(s.times, s.missing));
    this.visiting = new Uint8Array(model.jobs);
    this.fixed = [...model.maps.keys()]
      .filter((j) => model.low[j] === model.high[j])
      .sort((a, b) => model.low[a]! - model.low[b]! || a - b);
  }

  /** Places jobs along a list; the number of those for which there was no place (0: a schedule). Starts of the others are what waits say. */
  run(list: Int32Array): number {
    const { start, end, floor, lows, model } = this;
    start.fill(-1);
    floor.set(model.low.subarray(0, model.jobs));
    this.placed = 0;
    this.undone = 0;
    this.clear();
    let fine = lows.begin(floor);
    while (fine) {
      const before = this.undone;
      this.missing = 0;
      fine = this.fixed.every((j) => start[j]! >= 0 || this.stand(j)) && this.walk(list);
      // What found no stock may find some once others have brought it: as long as each round places more.
      for (let left = model.jobs + 1; fine && this.undone === before && this.missing > 0 && this.missing < left; ) {
        left = this.missing;
        this.missing = 0;
        fine = this.walk(list);
      }
      if (this.undone === before) break;
    }
    let open = 0;
    for (let j = 0; j < model.jobs; j++) {
      if (start[j]! >= 0) continue;
      open++;
      start[j] = lows.low[j]!;
      end[j] = model.maps[j]!.finish(lows.low[j]!);
    }
    return open;
  }

  /** False where the pass has to be given up. Ends early when jobs were taken out. */
  private walk(list: Iterable<number>): boolean {
    const before = this.undone;
    for (const j of list) {
      if (this.start[j]! < 0 && !this.place(j)) return false;
      if (this.undone !== before) return true;
    }
    return true;
  }

  /** Places a job after what it waits for. */
  private place(j: number): boolean {
    const { waits, start, visiting } = this;
    visiting[j] = 1;
    const undone = this.undone;
    let fine = true;
    for (const other of waits.before[j]!) {
      if (!fine || this.undone !== undone || start[other]! >= 0 || visiting[other] === 1) continue;
      fine = this.place(other);
    }
    visiting[j] = 0;
    if (!fine || this.undone !== undone || start[j]! >= 0) return fine;
    if (waits.before[j]!.some((other) => start[other]! < 0 && visiting[other] === 0)) {
      this.missing++;
      return true;
    }
    return this.stand(j);
  }

  private stand(j: number): boolean {
    const { lows, start } = this;
    const s = this.room(j, lows.low[j]!);
    if (s < 0) {
      this.missing++;
      return true;
    }
    if (s >= never) return false;
    if (!lows.raise(j, s)) return false;
    if (lows.pushed.length > 0) return this.takeOut();
    start[j] = s;
    this.end[j] = this.model.maps[j]!.finish(s);
    this.placed++;
    this.take(j);
    return true;
  }

  /** The first start at or after `t` with room for everything; `never`: there is none; -1: only what is still to come may make some. */
  private room(j: number, t: number): number {
    const map = this.model.maps[j]!;
    let s = map.atOrAfter(t);
    const asked = this.holds.asked[j]!;
    for (let agreed = 0, k = 0; s < never && agreed < asked.length; k = k + 1 === asked.length ? 0 : k + 1) {
      const a = asked[k]!;
      const to = a.own ? map.finish(s) : never;
      const until = this.steps[a.shared]!.blocked(s, to, this.model.shared[a.shared]!.level - a.number, a.runs);
      if (until < 0) {
        agreed++;
        continue;
      }
      if (until >= never) return a.own ? never : -1;
      s = map.atOrAfter(until);
      agreed = 0;
    }
    return s;
  }

  private take(j: number): void {
    const { holds, steps, start, end } = this;
    for (const h of holds.takes[j]!) {
      const back = h.back === j ? end[j]! : h.back >= 0 && start[h.back]! >= 0 ? end[h.back]! : never;
      steps[h.shared]!.add(start[j]!, back, h.number);
    }
    for (const r of holds.returns[j]!) {
      if (r.out < 0) steps[r.shared]!.add(end[j]!, never, -r.number);
      else if (start[r.out]! >= 0) steps[r.shared]!.add(Math.max(end[j]!, start[r.out]!), never, -r.number);
    }
  }

  private clear(): void {
    this.steps.forEach((s) => {
      s.reset();
    });
    for (const list of this.holds.returns) for (const r of list) if (r.out < 0) this.steps[r.shared]!.add(0, never, r.number);
  }

  /** Takes out the jobs that were pushed, and all that start after the first of them. */
  private takeOut(): boolean {
    const { start, floor, lows, model } = this;
    if (++this.undone > mostUndone * model.jobs) return false;
    let first: number = never;
    for (const h of lows.pushed) {
      first = Math.min(first, start[h]!);
      floor[h] = Math.max(floor[h]!, lows.low[h]!);
    }
    for (const h of lows.pushed) start[h] = -1;
    for (let j = 0; j < model.jobs; j++) if (start[j]! > first) start[j] = -1;
    this.clear();
    // One after the other, as they were placed: what comes back is known only of jobs that stand.
    const stood = start.slice();
    start.fill(-1);
    for (let j = 0; j < model.jobs; j++) {
      if (stood[j]! < 0) continue;
      start[j] = stood[j]!;
      this.take(j);
    }
    return lows.begin(floor);
  }
}
