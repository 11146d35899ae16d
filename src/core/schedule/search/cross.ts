import type { Chance } from "./chance";
import { fewJobs, type Ground, type Member } from "./member";

/** Places in time at which the load of a schedule is looked at, at most. */
const mostPlaces = 1024;
/** The share of a schedule that is taken over, and how often a place for it is tried, in problems of few jobs and others. */
const leastShare = 0.2;
const mostShare = 0.4;
const triesOfFew = 2;
const tries = 3;
/** How likely a job changes places with the next. */
const shake = 0.05;

/**
 * Peak crossover (Valls, Ballestin & Quintanilla 2008, EJOR 185:495-508; the window in time after Debels & Vanhoucke 2007, Operations Research 55:457-469): the
 * stretch in which the second schedule makes most more use of what there is than the first goes over, the jobs around it come as in the first. In small problems it
 * goes over as one block, in larger ones the jobs of both take turns in it: what has measured best.
 */
export class Crossing {
  private readonly load: Float64Array = new Float64Array(mostPlaces + 2);
  private readonly taken: Uint8Array;

  constructor(
    private readonly ground: Ground,
    private readonly chance: Chance,
  ) {
    this.taken = new Uint8Array(ground.jobs);
  }

  /** Writes the child of two members into `child`. */
  cross(first: Member, second: Member, child: Int32Array): void {
    const { taken } = this;
    const jobs = child.length;
    const block = jobs < fewJobs;
    const [from, to] = this.denser(second, first);
    const a = first.list;
    const b = second.list;
    let low = 0;
    while (low < jobs && second.start[b[low]!]! < from) low++;
    let high = low;
    while (high < jobs && second.start[b[high]!]! < to) high++;
    taken.fill(0);
    for (let k = low; k < high; k++) taken[b[k]!] = 1;
    let at = 0;
    for (let k = 0; k < jobs; k++) {
      if (block && k === low) for (let m = low; m < high; m++) child[at++] = b[m]!;
      if (taken[a[k]!] === 0) child[at++] = a[k]!;
      if (!block && k >= low && k < high) child[at++] = b[k]!;
    }
    this.shake(child);
  }

  /** A stretch of time in which `m` has more load than `than`: of a few, the one with most more. */
  private denser(m: Member, than: Member): readonly [number, number] {
    const { load, chance, ground } = this;
    const scale = Math.max(1, Math.ceil(m.finish / mostPlaces));
    const places = Math.ceil(m.finish / scale);
    load.fill(0, 0, places + 2);
    this.add(m, 1, scale, places);
    this.add(than, -1, scale, places);
    // Twice: from changes to loads, from loads to sums.
    for (let t = 1; t <= places; t++) load[t]! += load[t - 1]!;
    for (let t = 1; t <= places; t++) load[t]! += load[t - 1]!;
    const length = Math.max(1, Math.floor(places * (leastShare + (mostShare - leastShare) * chance.fraction())));
    let best = 0;
    let most = Number.NEGATIVE_INFINITY;
    for (let k = ground.jobs < fewJobs ? triesOfFew : tries; k > 0; k--) {
      const t = chance.below(places - length + 1);
      const sum = load[t + length]! - load[t]!;
      if (sum <= most) continue;
      most = sum;
      best = t;
    }
    return [best * scale, (best + length) * scale];
  }

  /** Adds the changes of load at starts and ends, `sign` times; what is later than all places comes after the last. */
  private add(m: Member, sign: 1 | -1, scale: number, places: number): void {
    const { load } = this;
    const { jobs, weight } = this.ground;
    const { start, end } = m;
    for (let j = 0; j < jobs; j++) {
      const from = scale === 1 ? start[j]! : (start[j]! / scale) | 0;
      const to = scale === 1 ? end[j]! : (end[j]! / scale) | 0;
      const w = sign * weight[j]!;
      load[Math.min(from, places) + 1]! += w;
      load[Math.min(to, places) + 1]! -= w;
    }
  }

  private shake(list: Int32Array): void {
    for (let k = 0; k + 1 < list.length; k++) {
      if (this.chance.fraction() >= shake) continue;
      const j = list[k]!;
      list[k] = list[k + 1]!;
      list[k + 1] = j;
    }
  }
}
