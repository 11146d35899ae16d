import type { Model } from "../proof/model";

/** What follows from the start of a job for those of others, packed by job: lags between starts, and waits that a clock stretches. */
export interface Waits {
  readonly lagAt: Int32Array;
  readonly lagTo: Int32Array;
  readonly lag: Int32Array;
  readonly arcs: readonly (readonly Model["arcs"][number][])[];
  /** Jobs that have to go before, by job. */
  readonly before: readonly Int32Array[];
}

/** `place`: each job's place in an order in which waits lead forward where they can. */
export function waitsOf(m: Model, place: Int32Array): Waits {
  const lags = m.lags.filter((l) => (l.from & 1) === 0 && l.to >> 1 < m.jobs && l.from >> 1 < m.jobs);
  const lagAt = new Int32Array(m.jobs + 1);
  for (const l of lags) lagAt[(l.from >> 1) + 1]!++;
  for (let j = 0; j < m.jobs; j++) lagAt[j + 1]! += lagAt[j]!;
  const fill = lagAt.slice();
  const lagTo = new Int32Array(lags.length);
  const lag = new Int32Array(lags.length);
  const arcs = Array.from({ length: m.jobs }, (): Model["arcs"][number][] => []);
  const before = Array.from({ length: m.jobs }, (): number[] => []);
  for (const l of lags) {
    const [from, to] = [l.from >> 1, l.to >> 1];
    lagTo[fill[from]!] = to;
    lag[fill[from]!++] = l.lag;
    if (l.lag > 0 || (l.lag === 0 && place[from]! < place[to]!)) before[to]!.push(from);
  }
  for (const a of m.arcs) {
    if (a.from >= m.jobs || a.to >= m.jobs) continue;
    arcs[a.from]!.push(a);
    const t = m.low[a.from]!;
    if (a.ahead(t) >= t && place[a.from]! < place[a.to]!) before[a.to]!.push(a.from);
  }
  return { lagAt, lagTo, lag, arcs, before: before.map((list) => Int32Array.from(new Set(list))) };
}
