import { type Earliest, earliest, type Net, netOf } from "./network";
import type { NetworkPart, Problem, WitnessPart } from "./problem";
import { problemOfParts } from "./reduced";

/**
 * Why the times of a network cannot hold together: parts of which none can be left out. Starts from what moved the broken job, drops what can go
 * (lengths of work first, then dates, then waits, each from the back), and keeps a part only when the rest can hold without it.
 */
export function witness(p: Problem, net: Net, failed: Earliest): NetworkPart[] {
  const parts = causes(p, net, failed);
  let kept = parts;
  for (let size = kept.length >> 1; size >= 1; size >>= 1) {
    for (let from = 0; from < kept.length; ) {
      const without = [...kept.slice(0, from), ...kept.slice(from + size)];
      if (cannotHold(p, without)) kept = without;
      else from += size;
    }
  }
  return kept.sort((a, b) => weight(a) - weight(b) || place(a) - place(b));
}

/** Everything that took part in moving the broken job, in the order in which it is tried to be dropped. */
function causes(p: Problem, net: Net, failed: Earliest): NetworkPart[] {
  const seen = new Uint8Array(p.jobs);
  const todo = [failed.broken];
  seen[failed.broken] = 1;
  const parts: NetworkPart[] = [];
  const visit = (job: number): void => {
    if (seen[job] === 0) {
      seen[job] = 1;
      todo.push(job);
    }
  };
  for (let v = todo.pop(); v !== undefined; v = todo.pop()) {
    parts.push({ kind: "job", job: v });
    if (p.release[v]! > 0) parts.push({ kind: "release", job: v });
    if (p.fixed[v]! >= 0) parts.push({ kind: "fixed", job: v });
    for (let k = net.adj.inAt[v]!; k < net.adj.inAt[v + 1]!; k++) {
      const l = net.adj.in[k]!;
      if (failed.moved[2 * l] === 0) continue;
      parts.push({ kind: "link", link: l, side: "least" });
      visit(p.links.from[l]!);
    }
    for (let k = net.adj.outAt[v]!; k < net.adj.outAt[v + 1]!; k++) {
      const l = net.adj.out[k]!;
      if (failed.moved[2 * l + 1] === 0) continue;
      parts.push({ kind: "link", link: l, side: "most" });
      visit(p.links.to[l]!);
    }
  }
  if (failed.by === "due") parts.push({ kind: "due", job: failed.broken });
  return parts.sort((a, b) => weight(b) - weight(a) || place(b) - place(a));
}

function weight(part: NetworkPart): number {
  return part.kind === "link" ? 0 : part.kind === "job" ? 2 : 1;
}

function place(part: NetworkPart): number {
  return part.kind === "link" ? 2 * part.link + (part.side === "most" ? 1 : 0) : part.job;
}

/** True when the links and dates among the parts alone, on the same clocks, already have no times. A job whose length is not among them takes any time. */
export function cannotHold(p: Problem, parts: readonly WitnessPart[]): boolean {
  const rest = problemOfParts(
    p,
    parts.filter((part) => part.kind !== "capacity" && part.kind !== "stock"),
  );
  return earliest(rest, netOf(rest)).broken >= 0;
}
