import { type ElapsedMinute, never } from "../base";
import { latest, type Net } from "./network";
import type { Problem, WitnessPart } from "./problem";

/** The jobs that have to be done by some date, their own or that of what waits for them, and everything a problem says of these alone. */
export interface Dated {
  readonly jobs: readonly number[];
  /** First the lengths of `jobs`, in their order. */
  readonly parts: readonly WitnessPart[];
}

/**
 * What has to do with latest and fixed dates: all else can come after that, as far as waits say. What these parts rule out nothing else can mend; a schedule of them
 * may still find no room for the rest.
 */
export function datedParts(p: Problem, net: Net): Dated {
  const late = latest(p, net, never as ElapsedMinute);
  const waitsFor = new Uint8Array(p.jobs);
  for (let l = 0; l < p.links.count; l++) if (p.links.least[l]! >= 0) waitsFor[p.links.to[l]!] = 1;
  const brings = new Set(p.stocks.flatMap(({ arrivals }) => arrivals.map(({ job }) => job)));
  const isIn = Uint8Array.from({ length: p.jobs }, (_, j) => (late.finish[j]! < never || (brings.has(j) && waitsFor[j] === 0) ? 1 : 0));
  const jobs = [...isIn.keys()].filter((j) => isIn[j] === 1);
  const parts: WitnessPart[] = jobs.map((job) => ({ kind: "job", job }));
  for (const job of jobs) {
    if (p.release[job]! > 0) parts.push({ kind: "release", job });
    if (p.due[job]! < p.horizon) parts.push({ kind: "due", job });
    if (p.fixed[job]! >= 0) parts.push({ kind: "fixed", job });
  }
  for (let link = 0; link < p.links.count; link++) {
    if (isIn[p.links.from[link]!] === 0 || isIn[p.links.to[link]!] === 0) continue;
    if (p.links.least[link]! >= 0) parts.push({ kind: "link", link, side: "least" });
    if (p.links.most[link]! >= 0) parts.push({ kind: "link", link, side: "most" });
  }
  p.capacities.forEach((_, index) => void parts.push({ kind: "capacity", index }));
  p.stocks.forEach((_, index) => void parts.push({ kind: "stock", index }));
  return { jobs, parts };
}
