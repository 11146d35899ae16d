/** From the first number on, up to but not including the second. */
export type Interval = readonly [from: number, to: number];

/** The same stretch of numbers as disjoint intervals in order, none empty, none touching the next. */
export function merge(intervals: readonly Interval[]): Interval[] {
  const sorted = intervals.filter(([from, to]) => from < to).sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const merged: [number, number][] = [];
  for (const [from, to] of sorted) {
    const last = merged.at(-1);
    if (last && from <= last[1]) last[1] = Math.max(last[1], to);
    else merged.push([from, to]);
  }
  return merged;
}

/** The first two intervals (by position) that share a number, or null. */
export function firstOverlap(intervals: readonly Interval[]): readonly [number, number] | null {
  const order = intervals.map((_, i) => i).sort((a, b) => startOf(intervals, a) - startOf(intervals, b));
  for (let i = 1; i < order.length; i++) {
    const before = order[i - 1] as number;
    const after = order[i] as number;
    if (startOf(intervals, after) < (intervals[before]?.[1] ?? 0)) return before < after ? [before, after] : [after, before];
  }
  return null;
}

const startOf = (intervals: readonly Interval[], i: number): number => intervals[i]?.[0] ?? 0;

/** How much the intervals cover together, counting what they share once. */
export function covered(intervals: readonly Interval[]): number {
  return merge(intervals).reduce((sum, [from, to]) => sum + to - from, 0);
}
