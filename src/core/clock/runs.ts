/** Running stretches, flat: from, to, from, to ...; half-open, in order, apart from each other. */
export type Runs = readonly number[] | Int32Array;

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
  const { distinct, times: alike } = counted(sources);
  const each = distinct.map((source) => source(from, to));
  const next = new Int32Array(each.length);
  const size = each.reduce((sum, runs) => sum + runs.length, 0);
  const times = new Int32Array(size + 1);
  const levels = new Int32Array(size + 1);
  times[0] = from;
  let count = 1;
  let level = 0;
  for (;;) {
    let at = to;
    for (let k = 0; k < each.length; k += 1) at = Math.min(at, each[k]?.[next[k] as number] ?? to);
    if (at >= to) break;
    for (let k = 0; k < each.length; k += 1) {
      while (each[k]?.[next[k] as number] === at) {
        level += (next[k] as number) % 2 === 0 ? (alike[k] as number) : -(alike[k] as number);
        next[k] = (next[k] as number) + 1;
      }
    }
    if (at === from) levels[0] = level;
    else if (level !== levels[count - 1]) {
      times[count] = at;
      levels[count++] = level;
    }
  }
  return { times: times.slice(0, count), levels: levels.slice(0, count) };
}

/** Each source once, with how often it is there: people who keep the same hours share a calendar. */
function counted(sources: readonly RunSource[]): { readonly distinct: readonly RunSource[]; readonly times: readonly number[] } {
  const distinct: RunSource[] = [];
  const times: number[] = [];
  for (const source of sources) {
    const k = distinct.indexOf(source);
    if (k < 0) {
      distinct.push(source);
      times.push(1);
    } else times[k] = (times[k] as number) + 1;
  }
  return { distinct, times };
}

const always: RunSource = (from, to) => (from < to ? [from, to] : []);

/** Runs while at least `number` of the sources run. */
export function atLeast(number: number, sources: readonly RunSource[]): RunSource {
  if (number <= 0) return always;
  if (number > sources.length) return () => [];
  const only = sources[0];
  if (only !== undefined && sources.every((source) => source === only)) return only;
  if (number === sources.length) return both(...sources);
  return (from, to) => {
    const at = levelsOf(sources, from, to);
    const out: number[] = [];
    for (let i = 0; i < at.times.length; i += 1) {
      if ((at.levels[i] as number) < number) continue;
      out.push(at.times[i] as number, i + 1 < at.times.length ? (at.times[i + 1] as number) : to);
    }
    return joined(out);
  };
}

/** Runs while all of them run. */
export function both(...sources: readonly RunSource[]): RunSource {
  const [first = always, ...others] = sources;
  return (from, to) => {
    let runs = first(from, to);
    for (const source of others) if (runs.length > 0) runs = shared(runs, source(from, to));
    return runs;
  };
}

function shared(a: Runs, b: Runs): Runs {
  const out: number[] = [];
  const [lengthA, lengthB] = [a.length, b.length];
  for (let i = 0, j = 0; i < lengthA && j < lengthB; ) {
    const from = Math.max(a[i] as number, b[j] as number);
    const endA = a[i + 1] as number;
    const endB = b[j + 1] as number;
    if (from < Math.min(endA, endB)) out.push(from, Math.min(endA, endB));
    if (endA <= endB) i += 2;
    if (endB <= endA) j += 2;
  }
  return out;
}

/** Runs while any of them runs. */
export function either(...sources: readonly RunSource[]): RunSource {
  return atLeast(1, sources);
}
