import type { Model } from "./model";
import { Usage } from "./usage";

/** Waits by the job they lead to, packed: its start is not before the other's start and `lag`. */
export interface Waits {
  readonly at: Int32Array;
  readonly other: Int32Array;
  readonly lag: Int32Array;
}

/** A model of fixed lengths, waits and numbers, and the same read from its end. */
export interface Ground {
  readonly model: Model;
  readonly jobs: number;
  readonly low: Int32Array;
  readonly length: Int32Array;
  readonly before: Waits;
  readonly after: Waits;
  /** By job: what it takes of which shared number, in turn. */
  readonly needs: readonly Int32Array[];
}

/** Null where lengths, waits or numbers change over time. */
export function groundOf(model: Model): Ground | null {
  const { maps, shared, jobs } = model;
  if (model.arcs.length > 0 || maps.some((map) => map.size > 1)) return null;
  if (shared.some((s) => s.times.length > 1 || s.tasks.some((t) => t.out !== t.back || t.runs !== null))) return null;
  const length = Int32Array.from(maps, (map) => map.length[0]!);
  const lags = model.lags.filter((l) => (l.from & 1) === 0 && l.to >> 1 < jobs);
  const needs = Array.from({ length: jobs }, (): number[] => []);
  shared.forEach((s, k) => {
    for (const t of s.tasks) needs[t.out]!.push(k, t.number);
  });
  return {
    model,
    jobs,
    low: model.low,
    length,
    before: waitsOf(
      jobs,
      lags.map((l) => [l.to >> 1, l.from >> 1, l.lag]),
    ),
    // Read from the end a job starts where it ended: the wait between two starts changes by the difference of their lengths.
    after: waitsOf(
      jobs,
      lags.map((l) => [l.from >> 1, l.to >> 1, l.lag + length[l.to >> 1]! - length[l.from >> 1]!]),
    ),
    needs: needs.map((list) => Int32Array.from(list)),
  };
}

function waitsOf(jobs: number, rows: readonly (readonly [number, number, number])[]): Waits {
  const sorted = [...rows].sort((a, b) => a[0] - b[0]);
  const at = new Int32Array(jobs + 1);
  for (const r of sorted) at[r[0] + 1]!++;
  for (let j = 0; j < jobs; j++) at[j + 1]! += at[j]!;
  return { at, other: Int32Array.from(sorted, (r) => r[1]), lag: Int32Array.from(sorted, (r) => r[2]) };
}

/**
 * Serial generation: of the jobs whose predecessors are placed the one with the lowest key, at the first time at which there is enough of everything (Kelley
 * 1963). Null when waits form a ring.
 */
export function generate(g: Ground, waits: Waits, low: Int32Array, key: Int32Array): Int32Array | null {
  const { jobs, length, needs, model } = g;
  const start = new Int32Array(jobs).fill(-1);
  const usage = model.shared.map((s) => new Usage(s.times, s.missing));
  const byKey = Int32Array.from(key.keys()).sort((a, b) => key[a]! - key[b]! || a - b);
  let open = jobs;
  while (open > 0) {
    let placed = 0;
    for (let k = 0; k < open; k++) {
      const j = byKey[k]!;
      const t = placed > 0 ? -1 : ready(waits, start, j, low[j]!);
      if (t < 0) {
        byKey[k - placed] = j;
        continue;
      }
      start[j] = roomFor(g, usage, j, t);
      for (let n = 0; n < needs[j]!.length; n += 2) usage[needs[j]![n]!]!.add(start[j]!, start[j]! + length[j]!, needs[j]![n + 1]!);
      placed = 1;
    }
    if (placed === 0) return null;
    open--;
  }
  return start;
}

/** The earliest start by waits alone; -1 while something that comes before is not placed. */
function ready(waits: Waits, start: Int32Array, j: number, low: number): number {
  let t = low;
  for (let k = waits.at[j]!; k < waits.at[j + 1]!; k++) {
    const other = start[waits.other[k]!]!;
    if (other < 0) return -1;
    t = Math.max(t, other + waits.lag[k]!);
  }
  return t;
}

function roomFor(g: Ground, usage: readonly Usage[], j: number, from: number): number {
  const needs = g.needs[j]!;
  let t = from;
  for (let agreed = 0, n = 0; agreed < needs.length; n = (n + 2) % needs.length) {
    const s = needs[n]!;
    const later = usage[s]!.firstRoom(t, g.length[j]!, g.model.shared[s]!.level - needs[n + 1]!);
    agreed = later > t ? 2 : agreed + 2;
    t = later;
  }
  return t;
}
