import type { ElapsedMinute } from "../../base";
import { lastAtMost, type Problem, runsOf } from "../../schedule";

/** What there is of some people, in minutes times people, apart by which clocks of their jobs run meanwhile. */
export interface Usable {
  /** What there is of each sort of minute from the epoch up to `t`; no more at once than jobs that can be at work together ask for. */
  upTo(t: number): Float64Array;
  /** The most that a job can take of each sort. */
  mostOf(job: number): Float64Array;
}

/** A stretch of time in which somebody is there, some clock runs, and neither changes. */
interface Piece {
  readonly from: number;
  readonly to: number;
  readonly there: number;
  readonly running: ReadonlySet<number>;
  /** The same, to be compared. */
  readonly text: string;
}

/** Pieces in turn, and where each ends. */
interface Course {
  readonly pieces: readonly Piece[];
  readonly ends: Int32Array;
}

/** Minutes of one sort, and minutes times people, up to the end of each piece. */
interface Sort {
  readonly running: ReadonlySet<number>;
  readonly minutes: Float64Array;
  readonly work: Float64Array;
}

/** Beyond so many sorts the others are one, in which any job may be at work. */
const mostSorts = 8;

/**
 * An hour in which people are there is worth no more than what can be done in it: over lunch only those work who pour, no more of them than the one mixer keeps
 * busy, and a pour that may not stop takes of that hour what its length makes it take and no more. Clocks and people are followed up to `until`.
 *
 * @param demand by job, of this capacity
 * @param jobs those that ask for any
 */
export function usableOf(p: Problem, capacity: number, demand: Int32Array, jobs: readonly number[], until: number): Usable {
  const pieces = piecesOf(p, capacity, [...new Set(jobs.map((j) => p.clock[j]!))], until);
  const course = { pieces, ends: Int32Array.from(pieces, ({ to }) => to) };
  const sorts = sortsOf(p, capacity, demand, jobs, pieces);
  const minutes = sorts.map((sort) => sort.minutes);
  const work = sorts.map((sort) => sort.work);
  const known = new Map<string, Float64Array>();
  const minutesOf = (job: number): Float64Array => {
    if (p.unbroken[job] === 0 || p.fixed[job]! >= 0)
      return Float64Array.from(sorts, ({ running }) => (running.has(p.clock[job]!) ? p.amount[job]! : 0));
    return mostInOneGo(course, minutes, p.clock[job]!, p.amount[job]!);
  };
  const mostOf = (job: number): Float64Array => {
    const kind = `${p.clock[job]} ${p.unbroken[job] === 1 && p.fixed[job]! < 0} ${p.amount[job]}`;
    const most = known.get(kind) ?? minutesOf(job);
    known.set(kind, most);
    return most.map((of) => of * demand[job]!);
  };
  return { upTo: (t) => gathered(course, work, t), mostOf };
}

function piecesOf(p: Problem, capacity: number, clocks: readonly number[], until: number): Piece[] {
  const { times, levels } = p.capacities[capacity]!;
  const changes = new Set<number>([0, until]);
  for (const t of times) changes.add(t);
  for (const c of clocks) {
    const runs = runsOf(p.clocks[c]!);
    for (let r = 0; runs.has(r) && runs.from(r) < until; r++) changes.add(runs.from(r)).add(runs.to(r));
  }
  const instants = [...changes].filter((t) => t >= 0 && t <= until).sort((a, b) => a - b);
  const out: Piece[] = [];
  let level = -1;
  for (let k = 0; k + 1 < instants.length; k++) {
    const [from, to] = [instants[k]!, instants[k + 1]!];
    while (level + 1 < times.length && times[level + 1]! <= from) level++;
    const there = level < 0 ? 0 : levels[level]!;
    if (there <= 0) continue;
    const running = clocks.filter((c) => p.clocks[c]!.runEnd(from as ElapsedMinute) > from);
    if (running.length > 0) out.push({ from, to, there, running: new Set(running), text: running.join(" ") });
  }
  return out;
}

function sortsOf(p: Problem, capacity: number, demand: Int32Array, jobs: readonly number[], pieces: readonly Piece[]): Sort[] {
  const sets = new Map(pieces.map(({ text, running }) => [text, running]));
  const texts = [...sets.keys()];
  const apart = texts.length > mostSorts ? texts.slice(0, mostSorts - 1) : texts;
  const rest = new Set(texts.slice(apart.length));
  const any = new Set([...rest].flatMap((text) => [...sets.get(text)!]));
  const sortOf = (running: ReadonlySet<number>, isOwn: (piece: Piece) => boolean): Sort => {
    const cap = atOnce(
      p,
      capacity,
      demand,
      jobs.filter((j) => running.has(p.clock[j]!)),
    );
    const sort: Sort = { running, minutes: new Float64Array(pieces.length), work: new Float64Array(pieces.length) };
    pieces.forEach((piece, k) => {
      const minutes = isOwn(piece) ? piece.to - piece.from : 0;
      sort.minutes[k] = (sort.minutes[k - 1] ?? 0) + minutes;
      sort.work[k] = (sort.work[k - 1] ?? 0) + minutes * Math.min(piece.there, cap);
    });
    return sort;
  };
  const sorts = apart.map((text) => sortOf(sets.get(text)!, (piece) => piece.text === text));
  return rest.size === 0 ? sorts : [...sorts, sortOf(any, ({ text }) => rest.has(text))];
}

/** The most of a capacity that some jobs can take at once: all of them, or as many as go with what all of them share besides. */
function atOnce(p: Problem, capacity: number, demand: Int32Array, jobs: readonly number[]): number {
  const own = new Set(jobs);
  const asking = new Map<number, { readonly jobs: Set<number>; each: number }>();
  for (let d = 0; d < p.demands.length; d += 3) {
    const [job, other, number] = [p.demands[d]!, p.demands[d + 1]!, p.demands[d + 2]!];
    if (other === capacity || number === 0 || !own.has(job)) continue;
    const so = asking.get(other) ?? { jobs: new Set<number>(), each: 0 };
    so.jobs.add(job);
    so.each = Math.max(so.each, demand[job]! / number);
    asking.set(other, so);
  }
  let most = jobs.reduce((sum, j) => sum + demand[j]!, 0);
  for (const [other, so] of asking) {
    const there = p.capacities[other]!.levels.reduce((a, b) => Math.max(a, b), 0);
    if (so.jobs.size === jobs.length) most = Math.min(most, Math.floor(so.each * there + 1e-9));
  }
  return most;
}

/** What is gathered of each sort from the epoch up to `t`, of sums up to the end of each piece. */
function gathered({ pieces, ends }: Course, sums: readonly Float64Array[], t: number): Float64Array {
  const low = lastAtMost(ends, t) + 1;
  const next = pieces[low];
  return Float64Array.from(sums, (sum) => {
    const before = low === 0 ? 0 : sum[low - 1]!;
    return next === undefined || t <= next.from ? before : before + ((sum[low]! - before) * (t - next.from)) / (next.to - next.from);
  });
}

/** The most minutes of each sort that a job without pauses can lie in: it begins or ends where something changes. */
function mostInOneGo(course: Course, minutes: readonly Float64Array[], clock: number, length: number): Float64Array {
  const { pieces } = course;
  const most = new Float64Array(minutes.length);
  const look = (from: number): void => {
    const before = gathered(course, minutes, from);
    gathered(course, minutes, from + length).forEach((of, s) => {
      most[s] = Math.max(most[s]!, of - before[s]!);
    });
  };
  for (let first = 0; first < pieces.length; ) {
    if (!pieces[first]!.running.has(clock)) {
      first++;
      continue;
    }
    let next = first + 1;
    while (next < pieces.length && pieces[next]!.from === pieces[next - 1]!.to && pieces[next]!.running.has(clock)) next++;
    const [from, to] = [pieces[first]!.from, pieces[next - 1]!.to];
    for (let k = first; k < next; k++)
      for (const start of [pieces[k]!.from, pieces[k]!.to - length]) if (start >= from && start + length <= to) look(start);
    first = next;
  }
  return most;
}
