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
    if (s.implied) continue;
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
  /** Beside it, the other job of the pair. */
  private readonly other: Int32Array;

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
    this.other = new Int32Array(2 * pairs.length);
    pairs.forEach((p, k) => {
      this.other[fill[p.first]!] = p.second;
      this.of[fill[p.first]!++] = 2 * k;
      this.other[fill[p.second]!] = p.first;
      this.of[fill[p.second]!++] = 2 * k + 1;
    });
  }

  rise(side: number): boolean {
    const x = side >> 1;
    if (x >= this.base) return this.trail.bound[side]! < ((side & 1) === 0 ? 1 : 0) || this.apply(x - this.base, (side & 1) === 0);
    const { trail, of, other: others, length, base } = this;
    const { bound } = trail;
    const end = this.at[x + 1]!;
    const own = length[x]!;
    if ((side & 1) === 0) {
      const ended = bound[side]! + own;
      for (let k = this.at[x]!; k < end; k++) {
        const code = of[k]!;
        const other = others[k]!;
        // Side of the pair's variable that says that x comes first, with the bound that says so; the other side says that it comes second.
        const xFirst = 2 * base + code;
        const isFirst = 1 - (code & 1);
        if (bound[xFirst]! === isFirst) {
          if (ended > bound[2 * other]! && !trail.raise(2 * other, ended, Why.order, code >> 1, 0)) return false;
        } else if (ended + bound[2 * other + 1]! > 0 && bound[xFirst ^ 1]! !== 1 - isFirst) {
          if (!trail.raise(xFirst ^ 1, 1 - isFirst, Why.pair, code >> 1, ended - own)) return false;
        }
      }
      return true;
    }
    const latest = -bound[side]!;
    for (let k = this.at[x]!; k < end; k++) {
      const code = of[k]!;
      const other = others[k]!;
      const xFirst = 2 * base + code;
      const isFirst = 1 - (code & 1);
      if (bound[xFirst ^ 1]! === 1 - isFirst) {
        if (
          length[other]! - latest > bound[2 * other + 1]! &&
          !trail.raise(2 * other + 1, length[other]! - latest, Why.order, code >> 1, 0)
        )
          return false;
      } else if (bound[2 * other]! + length[other]! > latest && bound[xFirst]! !== isFirst) {
        if (!trail.raise(xFirst, isFirst, Why.pair, code >> 1, bound[2 * other]!)) return false;
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
