/** Running stretches, flat: from, to, from, to ...; half-open, in order, apart from each other. */
export type Runs = readonly number[];

/** Says when something runs inside [from, to), cut at both ends. Pure: the same answer every time. */
export type RunSource = (from: number, to: number) => Runs;

/** Joins what touches or overlaps. `runs` in order of their starts, empty stretches allowed. */
export function joined(runs: Runs): Runs {
  const out: number[] = [];
  for (let i = 0; i < runs.length; i += 2) {
    const from = runs[i] as number;
    const to = runs[i + 1] as number;
    if (to <= from) continue;
    const last = out.length - 1;
    if (last > 0 && from <= (out[last] as number)) out[last] = Math.max(out[last] as number, to);
    else out.push(from, to);
  }
  return out;
}

/** Cuts runs to [from, to). */
export function cut(runs: Runs, from: number, to: number): Runs {
  const out: number[] = [];
  for (let i = 0; i < runs.length; i += 2) {
    const a = Math.max(from, runs[i] as number);
    const b = Math.min(to, runs[i + 1] as number);
    if (a < b) out.push(a, b);
  }
  return out;
}

/** How many of the sources run, over [from, to): `levels[i]` from `times[i]` until `times[i + 1]` (the last until `to`). */
export interface Levels {
  readonly times: Int32Array;
  readonly levels: Int32Array;
}

export function levelsOf(sources: readonly RunSource[], from: number, to: number): Levels {
  const each = sources.map((source) => source(from, to));
  const size = each.reduce((sum, runs) => sum + runs.length, 0);
  // One sorted list of changes, an end before a start at the same minute.
  const changes = new Float64Array(size);
  let filled = 0;
  for (const runs of each) for (let i = 0; i < runs.length; i += 1) changes[filled++] = (runs[i] as number) * 2 + (i % 2 === 0 ? 1 : 0);
  changes.sort();
  const times = new Int32Array(size + 1);
  const levels = new Int32Array(size + 1);
  times[0] = from;
  let count = 1;
  let level = 0;
  for (let i = 0; i < size; ) {
    const at = Math.floor((changes[i] as number) / 2);
    for (; i < size && Math.floor((changes[i] as number) / 2) === at; i += 1) level += (changes[i] as number) > at * 2 ? 1 : -1;
    if (at >= to) break;
    if (at === from) levels[0] = level;
    else if (level !== levels[count - 1]) {
      times[count] = at;
      levels[count++] = level;
    }
  }
  return { times: times.slice(0, count), levels: levels.slice(0, count) };
}

/** Runs while at least `number` of the sources run. */
export function atLeast(number: number, sources: readonly RunSource[]): RunSource {
  if (number <= 0) return (from, to) => (from < to ? [from, to] : []);
  if (number > sources.length) return () => [];
  const only = sources[0];
  if (sources.length === 1 && only !== undefined) return only;
  return (from, to) => {
    const { times, levels } = levelsOf(sources, from, to);
    const out: number[] = [];
    for (let i = 0; i < times.length; i += 1) {
      if ((levels[i] as number) < number) continue;
      out.push(times[i] as number, i + 1 < times.length ? (times[i + 1] as number) : to);
    }
    return joined(out);
  };
}

/** Runs while all of them run. */
export function both(...sources: readonly RunSource[]): RunSource {
  return atLeast(sources.length, sources);
}

/** Runs while any of them runs. */
export function either(...sources: readonly RunSource[]): RunSource {
  return atLeast(1, sources);
}
