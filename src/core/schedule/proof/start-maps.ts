import type { ElapsedMinute } from "../../base";
import type { Problem } from "../problem";
import { StartMap } from "./start-map";
import { type Barred, startsOf } from "./starts";

/**
 * The starts of every job between its `low` and `high`. Jobs that go by one clock, take as long and are barred from the same hours share theirs, which are
 * worked out once for all of them and cut to each. @param alike what bars a job, as a text; @param barred the hours themselves
 */
export function startMaps(
  p: Problem,
  low: Int32Array,
  high: Int32Array,
  alike: (job: number) => string,
  barred: (job: number) => readonly Barred[],
): readonly StartMap[] | null {
  const kinds = new Map<string, number[]>();
  for (let j = 0; j < p.jobs; j++) {
    const key = `${p.clock[j]} ${p.amount[j]} ${p.unbroken[j]} ${alike(j)}`;
    const kind = kinds.get(key);
    if (kind === undefined) kinds.set(key, [j]);
    else kind.push(j);
  }
  const maps = new Array<StartMap>(p.jobs);
  const bars = new Map<string, readonly Barred[]>();
  /** Most hours at which people are missing are pauses of the clock as well. */
  const barredAtWork = (j: number): readonly Barred[] => {
    const key = `${p.clock[j]} ${alike(j)}`;
    const clock = p.clocks[p.clock[j]!]!;
    const known =
      bars.get(key) ?? barred(j).filter((b) => !b.working || clock.fromBeginning || clock.begin(b.from as ElapsedMinute) < b.to);
    bars.set(key, known);
    return known;
  };
  for (const jobs of kinds.values()) {
    const from = jobs.reduce((least, j) => Math.min(least, low[j]!), low[jobs[0]!]!);
    const to = jobs.reduce((most, j) => Math.max(most, high[j]!), high[jobs[0]!]!);
    const all = startsOf(p, jobs[0]!, from, to, barredAtWork(jobs[0]!));
    for (const j of jobs) {
      const own = all === null ? null : cut(all, low[j]!, high[j]!);
      if (own === null) return null;
      maps[j] = own;
    }
  }
  return maps;
}

/** Those of the starts that lie between two; null where none does. */
function cut(all: StartMap, low: number, high: number): StartMap | null {
  let first = 0;
  let end = all.size;
  while (first < end && all.to[first]! < low) first++;
  while (end > first && all.from[end - 1]! > high) end--;
  if (first === end) return null;
  if (first === 0 && end === all.size && all.from[0]! >= low && all.to[end - 1]! <= high) return all;
  const from = all.from.slice(first, end);
  const to = all.to.slice(first, end);
  from[0] = Math.max(from[0]!, low);
  to[to.length - 1] = Math.min(to[to.length - 1]!, high);
  return new StartMap(from, to, all.length.slice(first, end));
}
