import { type Clock, type ElapsedMinute, never } from "../../base";
import type { Problem } from "../problem";
import { pack } from "./pack";
import { type Side, sidesOf, type Wait } from "./side";

/** A problem of fixed lengths, least waits and constant capacities, in units of time that all its amounts share. */
export interface Plain {
  readonly unit_min: number;
  readonly sides: readonly [Side, Side];
  /** Whether what is read from the end may start too early for a release. */
  readonly released: boolean;
}

/** Units of time for which a flat array is kept. */
const mostSpan = 100_000;
const mostLevel = 1 << 30;

/** Null where the problem is of another kind, or longer than a flat array should be. Every demand must be within what there is. */
export function plainOf(p: Problem): Plain | null {
  const plain = p.clocks.map(alwaysRuns);
  if (p.spans.length > 0 || p.stocks.some((s) => s.inHand < 0)) return null;
  if (p.due.some((d) => d < never) || p.fixed.some((f) => f >= 0) || p.clock.some((c) => !plain[c])) return null;
  const waits = waitsOf(p, plain);
  const levels = p.capacities.map(levelOf);
  if (waits === null || levels.some((n) => n < 0 || n >= mostLevel)) return null;
  const unit = common([...p.amount, ...p.release, ...waits.map((w) => w[2])]);
  const length = p.amount.map((a) => a / unit);
  const low = p.release.map((r) => Math.max(0, r) / unit);
  const scaled = waits.map(([from, to, lag]): Wait => [from, to, lag / unit]);
  const span = sum(length) + sum(scaled.map((w) => Math.max(0, w[2] - length[w[0]]!))) + low.reduce((a, b) => Math.max(a, b), 0);
  if (span > mostSpan) return null;
  const asked = demandsOf(p);
  const weight = Int32Array.from(asked, (numbers) =>
    Math.round(numbers.reduce((all, n, r) => all + (n > 0 ? (1000 * n) / levels[r]! : 0), 0) / Math.max(1, levels.length)),
  );
  const sides = sidesOf({ jobs: p.jobs, length, low, packed: pack(levels, asked), weight, span }, scaled);
  return sides === null ? null : { unit_min: unit, sides, released: low.some((t) => t > 0) };
}

/** Whether a clock is plain time, asked at a few instants. */
function alwaysRuns(clock: Clock): boolean {
  if (clock.fromBeginning) return false;
  return [0, 1_003, 100_003, 1_000_007].every((n) => {
    const t = n as ElapsedMinute;
    return clock.begin(t) === t && clock.runEnd(t) >= never && clock.reading(t) - clock.reading(0 as ElapsedMinute) === n;
  });
}

/** Least waits as lags between starts; null where a most-wait or a clock with pauses is among them. */
function waitsOf(p: Problem, plain: readonly boolean[]): Wait[] | null {
  const { links } = p;
  const out: Wait[] = [];
  for (let l = 0; l < links.count; l++) {
    const [from, to, least] = [links.from[l]!, links.to[l]!, links.least[l]!];
    if (links.most[l]! >= 0 || (least > 0 && !plain[links.clock[l]!])) return null;
    if (least < 0) continue;
    out.push([from, to, least + (links.fromEnd[l] === 1 ? p.amount[from]! : 0) - (links.toEnd[l] === 1 ? p.amount[to]! : 0)]);
  }
  return out;
}

/** -1 where the level changes. */
function levelOf(c: Problem["capacities"][number]): number {
  const first = c.levels[0] ?? 0;
  return c.levels.every((n) => n === first) ? first : -1;
}

/** By job, what it takes of every capacity; what takes no time takes nothing. */
function demandsOf(p: Problem): Int32Array[] {
  const out = Array.from({ length: p.jobs }, () => new Int32Array(p.capacities.length));
  for (let d = 0; d < p.demands.length; d += 3) {
    const j = p.demands[d]!;
    if (p.amount[j]! > 0) out[j]![p.demands[d + 1]!]! += p.demands[d + 2]!;
  }
  return out;
}

/** The largest number that divides all; 1 where all are 0. */
function common(numbers: readonly number[]): number {
  let unit = 0;
  for (const n of numbers) {
    let [a, b] = [Math.abs(n), unit];
    while (b > 0) [a, b] = [b, a % b];
    unit = a;
  }
  return Math.max(1, unit);
}

function sum(list: ArrayLike<number>): number {
  let all = 0;
  for (let k = 0; k < list.length; k++) all += list[k]!;
  return all;
}
