import type { Packed } from "./pack";

/** Least waits between starts. */
export type Wait = readonly [from: number, to: number, lag: number];

/**
 * A plain problem read from its beginning, or from its end: jobs of fixed length, waits by the job they lead to, packed (its start is not before the other's
 * start and `lag`), and numbers that never change. Times are in units of the problem.
 */
export interface Side {
  readonly jobs: number;
  readonly length: Int32Array;
  readonly low: Int32Array;
  readonly at: Int32Array;
  readonly other: Int32Array;
  readonly lag: Int32Array;
  /** Jobs so that waits lead forward. */
  readonly order: Int32Array;
  /** Earliest starts by waits alone. */
  readonly head: Int32Array;
  readonly packed: Packed;
  /** By job: the share it takes of all there is, in thousandths. */
  readonly weight: Int32Array;
  /** No schedule of a pass ends later. */
  readonly span: number;
}

export type Shape = Pick<Side, "jobs" | "length" | "low" | "packed" | "weight" | "span">;

/** Both readings; null where waits form a ring. */
export function sidesOf(shape: Shape, waits: readonly Wait[]): readonly [Side, Side] | null {
  const { length } = shape;
  const ahead = sideOf(shape, waits);
  // Read from the end a job starts where it ended: the wait between two starts changes by the difference of their lengths.
  const back = waits.map(([from, to, lag]): Wait => [to, from, lag + length[to]! - length[from]!]);
  const behind = sideOf({ ...shape, low: new Int32Array(shape.jobs) }, back);
  return ahead === null || behind === null ? null : [ahead, behind];
}

function sideOf(shape: Shape, waits: readonly Wait[]): Side | null {
  const { jobs } = shape;
  const at = new Int32Array(jobs + 1);
  for (const [, to] of waits) at[to + 1]!++;
  for (let j = 0; j < jobs; j++) at[j + 1]! += at[j]!;
  const fill = at.slice();
  const other = new Int32Array(waits.length);
  const lag = new Int32Array(waits.length);
  for (const [from, to, by] of waits) {
    other[fill[to]!] = from;
    lag[fill[to]!++] = by;
  }
  const order = orderOf(jobs, waits);
  if (order === null) return null;
  const head = shape.low.slice();
  for (const j of order) for (let k = at[j]!; k < at[j + 1]!; k++) head[j] = Math.max(head[j]!, head[other[k]!]! + lag[k]!);
  return { ...shape, at, other, lag, order, head };
}

function orderOf(jobs: number, waits: readonly Wait[]): Int32Array | null {
  const waiting = new Int32Array(jobs);
  const next = Array.from({ length: jobs }, (): number[] => []);
  for (const [from, to] of waits) {
    waiting[to]!++;
    next[from]!.push(to);
  }
  const order: number[] = [];
  for (let j = 0; j < jobs; j++) if (waiting[j] === 0) order.push(j);
  for (let k = 0; k < order.length; k++) for (const j of next[order[k]!]!) if (--waiting[j]! === 0) order.push(j);
  return order.length < jobs ? null : Int32Array.from(order);
}
