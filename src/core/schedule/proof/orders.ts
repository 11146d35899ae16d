import type { Model } from "./model";
import { type Trail, Why } from "./trail";

/**
 * Two jobs that can never be at work together, as one variable each: 1 when the first ends before the second starts, 0 the other way round. Only for jobs
 * of one length; others are left to the time-table.
 */
export interface Pair {
  readonly first: number;
  readonly second: number;
}

/** More than so many pairs cost more than they tell. */
const mostPairs = 20_000;

/** Pairs that what they share leaves no room for together, and whose order the waits alone do not settle. */
export function pairsOf(m: Model): Pair[] {
  const seen = new Set<number>();
  const out: Pair[] = [];
  for (const s of m.shared) {
    for (let a = 0; a < s.tasks.length; a++) {
      for (let b = a + 1; b < s.tasks.length; b++) {
        const i = s.tasks[a]!;
        const j = s.tasks[b]!;
        if (i.number + j.number <= s.level || i.out < 0 || j.out < 0 || i.out !== i.back || j.out !== j.back || i.out === j.out) continue;
        if (i.runs !== null || j.runs !== null || m.maps[i.out]!.size > 1 || m.maps[j.out]!.size > 1) continue;
        const first = Math.min(i.out, j.out);
        const second = Math.max(i.out, j.out);
        if (seen.has(first * m.jobs + second)) continue;
        seen.add(first * m.jobs + second);
        const before = m.low[first]! + m.maps[first]!.length[0]! <= m.high[second]!;
        const after = m.low[second]! + m.maps[second]!.length[0]! <= m.high[first]!;
        if (before && after && out.length < mostPairs) out.push({ first, second });
      }
    }
  }
  return out;
}

/** Propagates the orders of pairs: both ways between what is decided and when the two may start. Variable of pair k: `base + k`. */
export class Orders {
  private readonly at: Int32Array;
  /** By job: pair, 2 * pair + 1 where the job is its second. */
  private readonly of: Int32Array;

  constructor(
    private readonly trail: Trail,
    readonly pairs: readonly Pair[],
    readonly base: number,
    private readonly length: Int32Array,
  ) {
    this.at = new Int32Array(base + 1);
    for (const p of pairs) {
      this.at[p.first + 1]!++;
      this.at[p.second + 1]!++;
    }
    for (let j = 0; j < base; j++) this.at[j + 1]! += this.at[j]!;
    const fill = this.at.slice();
    this.of = new Int32Array(2 * pairs.length);
    pairs.forEach((p, k) => {
      this.of[fill[p.first]!++] = 2 * k;
      this.of[fill[p.second]!++] = 2 * k + 1;
    });
  }

  rise(side: number): boolean {
    const x = side >> 1;
    if (x >= this.base) return this.trail.bound[side]! < ((side & 1) === 0 ? 1 : 0) || this.apply(x - this.base, (side & 1) === 0);
    const { trail, of, pairs, length, base } = this;
    const up = (side & 1) === 0;
    const b = up ? trail.low(x) : trail.high(x);
    for (let k = this.at[x]!; k < this.at[x + 1]!; k++) {
      const code = of[k]!;
      const pair = code >> 1;
      const isFirst = (code & 1) === 0;
      const other = isFirst ? pairs[pair]!.second : pairs[pair]!.first;
      const v = base + pair;
      const { bound } = trail;
      // Side of the variable that says that x comes first; the other one that it comes second.
      const xFirst = isFirst ? 2 * v : 2 * v + 1;
      const firstSet = bound[xFirst]! === (isFirst ? 1 : 0);
      const secondSet = bound[xFirst ^ 1]! === (isFirst ? 0 : 1);
      if (up) {
        if (firstSet) {
          if (!trail.raise(2 * other, b + length[x]!, Why.order, pair, 0)) return false;
        } else if (!secondSet && b + length[x]! > trail.high(other)) {
          if (!trail.raise(xFirst ^ 1, isFirst ? 0 : 1, Why.pair, pair, b)) return false;
        }
      } else if (secondSet) {
        if (!trail.raise(2 * other + 1, -(b - length[other]!), Why.order, pair, 0)) return false;
      } else if (!firstSet && trail.low(other) + length[other]! > b) {
        if (!trail.raise(xFirst, isFirst ? 1 : 0, Why.pair, pair, trail.low(other))) return false;
      }
    }
    return true;
  }

  private apply(pair: number, firstBefore: boolean): boolean {
    const { trail, length } = this;
    const { first, second } = this.pairs[pair]!;
    const a = firstBefore ? first : second;
    const b = firstBefore ? second : first;
    return (
      trail.raise(2 * b, trail.low(a) + length[a]!, Why.order, pair, 0) &&
      trail.raise(2 * a + 1, -(trail.high(b) - length[a]!), Why.order, pair, 0)
    );
  }
}
