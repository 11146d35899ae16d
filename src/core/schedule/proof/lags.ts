import type { Arc, Lag } from "./model";
import type { StartMap } from "./start-map";
import { type Trail, Why } from "./trail";

/**
 * Waits of one length: whenever a side rises, what follows from it rises with it. An amount asked of what was reached is that amount less the wait asked of
 * what it was reached from, so nothing need be remembered to explain a move.
 */
export class Lags {
  private readonly at: Int32Array;
  readonly to: Int32Array;
  readonly from: Int32Array;
  readonly lag: Int32Array;

  constructor(
    private readonly trail: Trail,
    lags: readonly Lag[],
  ) {
    const sides = 2 * trail.variables;
    this.at = new Int32Array(sides + 1);
    for (const l of lags) this.at[l.from + 1]!++;
    for (let s = 0; s < sides; s++) this.at[s + 1]! += this.at[s]!;
    const fill = this.at.slice();
    this.to = new Int32Array(lags.length);
    this.from = new Int32Array(lags.length);
    this.lag = new Int32Array(lags.length);
    for (const l of lags) {
      const k = fill[l.from]!++;
      this.to[k] = l.to;
      this.from[k] = l.from;
      this.lag[k] = l.lag;
    }
  }

  rise(side: number): boolean {
    const { trail, at, to, lag } = this;
    const b = trail.bound[side]!;
    for (let k = at[side]!; k < at[side + 1]!; k++) {
      const other = to[k]!;
      if (b + lag[k]! > trail.bound[other]! && !trail.raise(other, b + lag[k]!, Why.lag, k, 0)) return false;
    }
    return true;
  }
}

/** Waits that a clock stretches, and waits from or to finishes that come later over a weekend. */
export class Arcs {
  private readonly out: number[][];
  private readonly into: number[][];

  constructor(
    private readonly trail: Trail,
    private readonly arcs: readonly Arc[],
    private readonly maps: readonly (StartMap | undefined)[],
  ) {
    this.out = Array.from({ length: trail.variables }, () => []);
    this.into = Array.from({ length: trail.variables }, () => []);
    arcs.forEach((a, k) => {
      this.out[a.from]!.push(k);
      this.into[a.to]!.push(k);
    });
  }

  rise(side: number): boolean {
    const { trail } = this;
    const x = side >> 1;
    if ((side & 1) === 0) {
      for (const k of this.out[x]!) {
        if (!trail.raise(2 * this.arcs[k]!.to, this.ahead(k, trail.low(x)), Why.arc, 2 * k, 0)) return false;
      }
      return true;
    }
    for (const k of this.into[x]!) {
      if (!trail.raise(2 * this.arcs[k]!.from + 1, -this.behind(k, trail.high(x)), Why.arc, 2 * k + 1, 0)) return false;
    }
    return true;
  }

  /** No start of `to` below this goes with a start of `from` at or after `s`, one of its starts. */
  ahead(k: number, s: number): number {
    const a = this.arcs[k]!;
    const reached = a.ahead(a.fromEnd === 0 ? s : this.maps[a.from]!.finish(s));
    return a.toEnd === 0 ? reached : this.maps[a.to]!.lastToFinish(reached - 1) + 1;
  }

  /** No start of `from` above this goes with a start of `to` at or before `s`. */
  behind(k: number, s: number): number {
    const a = this.arcs[k]!;
    const allowed = a.back(a.toEnd === 0 ? s : this.maps[a.to]!.finish(s));
    return a.fromEnd === 0 ? allowed : this.maps[a.from]!.lastToFinish(allowed);
  }

  /** What a move by arc `k >> 1` to at least `b` rests on, as a side and a bound in `out`. */
  why(code: number, b: number, out: Int32Array): void {
    const k = code >> 1;
    const a = this.arcs[k]!;
    if ((code & 1) === 0) {
      // Starting a minute earlier, the other would have had to be so much earlier: later than that it must have been.
      const before = this.maps[a.to]?.atOrBefore(b - 1) ?? b - 1;
      out[0] = 2 * a.from;
      out[1] = this.behind(k, before) + 1;
      return;
    }
    const after = this.maps[a.from]?.atOrAfter(1 - b) ?? 1 - b;
    out[0] = 2 * a.to + 1;
    out[1] = 1 - this.ahead(k, after);
  }
}
