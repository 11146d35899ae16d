import type { Problem, WitnessPart } from "./problem";

/** Everything a problem says of some jobs, of all where not said: first their lengths, then dates, the links between them, and all capacities and stocks. */
export function partsOf(p: Problem, isIn: (job: number) => boolean = () => true): WitnessPart[] {
  const parts: WitnessPart[] = [];
  const jobs = [...p.clock.keys()].filter(isIn);
  for (const job of jobs) parts.push({ kind: "job", job });
  for (const job of jobs) {
    if (p.release[job]! > 0) parts.push({ kind: "release", job });
    if (p.due[job]! < p.horizon) parts.push({ kind: "due", job });
    if (p.fixed[job]! >= 0) parts.push({ kind: "fixed", job });
  }
  for (let link = 0; link < p.links.count; link++) {
    if (!isIn(p.links.from[link]!) || !isIn(p.links.to[link]!)) continue;
    if (p.links.least[link]! >= 0) parts.push({ kind: "link", link, side: "least" });
    if (p.links.most[link]! >= 0) parts.push({ kind: "link", link, side: "most" });
  }
  p.capacities.forEach((_, index) => void parts.push({ kind: "capacity", index }));
  p.stocks.forEach((_, index) => void parts.push({ kind: "stock", index }));
  return parts;
}
