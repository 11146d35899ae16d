import { type ElapsedMinute, never } from "../base";
import { latest, type Net } from "./network";
import { partsOf } from "./parts";
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
  return { jobs, parts: partsOf(p, (j) => isIn[j] === 1) };
}
