import type { Side } from "./side";

/**
 * Serial schedule generation (Kelley 1963) over a flat array of what is free in every unit of time: a job goes to the first time at which waits and capacities
 * allow it, after all it waits for. Allocates nothing while it runs.
 */
export class Pass {
  private readonly free: Int32Array;
  private start: Int32Array;
  private used: number;

  constructor(private readonly side: Side) {
    this.free = new Int32Array(side.packed.words * (side.span + 1));
    this.used = side.span + 1;
    this.start = new Int32Array(side.jobs);
  }

  /** Places all jobs in the order of `list`, but what a job waits for before it. Writes the starts and returns the finish of all. */
  run(list: Int32Array, start: Int32Array): number {
    const { words, full } = this.side.packed;
    const { free } = this;
    if (words === 1) free.fill(full[0]!, 0, this.used);
    else for (let w = 0; w < words; w++) for (let t = w; t < words * this.used; t += words) free[t] = full[w]!;
    start.fill(-1);
    this.start = start;
    this.used = 0;
    if (words === 1) for (let k = 0; k < list.length; k++) if (start[list[k]!]! < 0) this.place(list[k]!);
    if (words > 1) for (let k = 0; k < list.length; k++) if (start[list[k]!]! < 0) this.placeWide(list[k]!);
    return this.used;
  }

  private place(j: number): void {
    const { side, free, start } = this;
    const { at, other, lag } = side;
    let t = side.low[j]!;
    for (let k = at[j]!; k < at[j + 1]!; k++) {
      const before = other[k]!;
      if (start[before]! < 0) this.place(before);
      const x = start[before]! + lag[k]!;
      if (x > t) t = x;
    }
    const length = side.length[j]!;
    const demand = side.packed.demand[j]!;
    const guard = side.packed.guard[0]!;
    let end = t + length;
    if (demand !== 0) {
      // From the end of the stretch back: the first unit without room says how far all of it must move; what was looked at is not looked at again.
      let seen = t;
      let u = end - 1;
      while (u >= seen) {
        if (((free[u]! - demand) & guard) === guard) {
          u--;
          continue;
        }
        t = u + 1;
        seen = end;
        end = t + length;
        u = end - 1;
      }
      for (u = t; u < end; u++) free[u] = (free[u]! - demand) | 0;
    }
    start[j] = t;
    if (end > this.used) this.used = end;
  }

  /** The same where what is free takes more than one word. */
  private placeWide(j: number): void {
    const { side, free, start } = this;
    const { words, demand } = side.packed;
    const { at, other, lag } = side;
    let t = side.low[j]!;
    for (let k = at[j]!; k < at[j + 1]!; k++) {
      const before = other[k]!;
      if (start[before]! < 0) this.placeWide(before);
      const x = start[before]! + lag[k]!;
      if (x > t) t = x;
    }
    const length = side.length[j]!;
    let end = t + length;
    let seen = t;
    let u = end - 1;
    while (u >= seen) {
      if (this.fits(j, u)) {
        u--;
        continue;
      }
      t = u + 1;
      seen = end;
      end = t + length;
      u = end - 1;
    }
    for (u = t; u < end; u++) for (let w = 0; w < words; w++) free[words * u + w] = (free[words * u + w]! - demand[words * j + w]!) | 0;
    start[j] = t;
    if (end > this.used) this.used = end;
  }

  private fits(j: number, u: number): boolean {
    const { words, demand, guard } = this.side.packed;
    for (let w = 0; w < words; w++) if (((this.free[words * u + w]! - demand[words * j + w]!) & guard[w]!) !== guard[w]) return false;
    return true;
  }
}
