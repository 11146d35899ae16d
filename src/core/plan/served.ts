import type { Access, RefusedLink } from "../access";
import type { Build } from "../build";
import { byKey, type Problem } from "../schedule";
import type { Bound } from "./bound";

/** Place of every step among those that are served in turn; -1: not among them. */
function placesOf(build: Build): Int32Array {
  const place = new Int32Array(build.steps.length).fill(-1);
  (build.served?.steps ?? []).forEach((id, k) => {
    const s = build.at.step.get(id) ?? -1;
    if (s >= 0 && place[s]! < 0) place[s] = k;
  });
  return place;
}

/** A priority (lower first) that serves jobs in the order that the build names. What it does not name comes just before what waits for it, else last. */
export function servedKey(build: Build, problem: Problem): Int32Array {
  const { jobs, links, rank } = problem;
  const place = placesOf(build);
  const last = 2 * (build.served?.steps.length ?? 0) + 1;
  const key = new Int32Array(jobs).fill(last);
  for (let s = 0; s < place.length; s++) if (place[s]! >= 0) key[s] = 2 * place[s]! + 1;
  const into: number[][] = Array.from({ length: jobs }, () => []);
  for (let l = 0; l < links.count; l++) if (links.least[l]! >= 0) into[links.to[l]!]!.push(links.from[l]!);
  const order = byKey(jobs, (j) => rank[j]!);
  for (let k = jobs - 1; k >= 0; k--) {
    const to = order[k]!;
    for (const from of into[to]!)
      if ((from >= place.length || place[from]! < 0) && key[from]! >= key[to]!) key[from] = key[to]! - (key[to]! & 1);
  }
  return key;
}

/** Releases with those of steps that wait on purpose; null where none does. */
export function servedFrom({ build, problem, clocks }: Bound): Int32Array | null {
  const from = Object.entries(build.served?.from ?? {});
  if (from.length === 0) return null;
  const release = problem.release.slice();
  for (const [id, moment] of from) {
    const s = build.at.step.get(id) ?? -1;
    if (s < 0 || build.steps[s]!.done !== null || problem.fixed[s]! >= 0) continue;
    release[s] = Math.max(release[s]!, clocks.time.minuteOf(moment) ?? 0);
  }
  return release;
}

/** Chosen precedences that go against the order in which steps are served, each to be handed back by itself. */
export function againstServed(build: Build, { arcs }: Access): RefusedLink[] {
  const place = placesOf(build);
  const out: RefusedLink[] = [];
  for (let r = 0; r < arcs.count; r++) {
    if (arcs.forced[r] === 1 || arcs.orders[r] === 0 || arcs.fromEnd[r] !== 1 || arcs.toEnd[r] !== 0) continue;
    const from = place[arcs.from[r]!]!;
    const to = place[arcs.to[r]!]!;
    if (from >= 0 && to >= 0 && from > to) out.push([arcs.from[r]!, arcs.to[r]!, arcs.link?.[r] ?? -1]);
  }
  return out;
}

/** Ids of steps in the order in which they start, ties as `order` has them. */
export function servedSteps(build: Build, start: Int32Array, order: Int32Array): string[] {
  const at = new Int32Array(build.steps.length);
  order.forEach((s, k) => {
    at[s] = k;
  });
  return build.steps
    .map((_, s) => s)
    .sort((a, b) => start[a]! - start[b]! || at[a]! - at[b]!)
    .map((s) => build.steps[s]!.id);
}
