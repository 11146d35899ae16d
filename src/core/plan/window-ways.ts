import { type ElapsedMinute, never, type WayOut } from "../base";
import { earliest, type NetworkPart, netOf, type Problem } from "../schedule";
import type { Bound, DateOf } from "./bound";

/**
 * Ways out of dates that cannot hold: each single change is made to the whole network and kept only when the network then has times. A date is moved to
 * the first day on which it works; a wait that somebody wrote is dropped.
 */
export function windowWaysOut(bound: Bound, witness: readonly NetworkPart[]): WayOut[] {
  const out: WayOut[] = [];
  const tried = new Set<string>();
  for (const part of witness) {
    const way = part.kind === "link" ? dropped(bound, part) : part.kind === "job" ? null : moved(bound, part.kind, part.job);
    if (way === null) continue;
    const key = JSON.stringify(way.edits);
    if (tried.has(key)) continue;
    tried.add(key);
    out.push(way);
  }
  return out;
}

function dropped(bound: Bound, part: Extract<NetworkPart, { readonly kind: "link" }>): WayOut | null {
  const row = bound.row[part.link]!;
  if (row < 0) return null;
  const { id } = bound.access.statements[bound.access.arcs.reason[row]!]!;
  const wait = bound.build.waits.find((w) => w.id === id && !w.plain);
  if (wait === undefined) return null;
  const { links } = bound.problem;
  const least = links.least.slice();
  const most = links.most.slice();
  for (let l = 0; l < links.count; l++) {
    if (bound.row[l] !== row) continue;
    if (part.side === "least") least[l] = -1;
    else most[l] = -1;
  }
  if (!holds({ ...bound.problem, links: { ...links, least, most } })) return null;
  const path = ["waits", `id=${wait.id}`];
  const both = wait.least !== null && wait.most !== null;
  return { kind: "drop-wait", detail: { wait: wait.id, side: part.side }, edits: [{ path: both ? [...path, part.side] : path }] };
}

const keyOf: Partial<Record<DateOf, string>> = { "not-before": "notBefore", deadline: "deadline", fixed: "fixed" };

function moved(bound: Bound, kind: "release" | "due" | "fixed", job: number): WayOut | null {
  const { problem, build, clocks } = bound;
  const steps = build.steps.length;
  const of = (kind === "release" ? bound.releaseOf : kind === "due" ? bound.dueOf : bound.fixedOf)[job]!;
  const free: Problem = { ...problem, release: problem.release.slice(), due: problem.due.slice(), fixed: problem.fixed.slice() };
  free.fixed[job] = -1;
  if (of === "fixed" || of === "booking" || kind === "due") free.due[job] = never;
  if (kind !== "due") free.release[job] = 0;
  const times = earliest(free, netOf(free));
  if (times.broken >= 0) return null;
  const at = (kind === "due" && of === "deadline" ? times.finish : times.start)[job]! as ElapsedMinute;
  const day = clocks.time.dateOf(clocks.time.dayOf(kind === "due" && of === "deadline" ? at - 1 : at));
  // An hour is kept where the builder wrote one and it is what the network asks for; else the date says enough.
  const to = kind === "fixed" ? clocks.time.momentOf(at) : day;
  if (job >= steps) {
    if (of !== "promised") return null;
    return {
      kind: "move-date",
      detail: { delivery: build.deliveries[job - steps]!.id, to },
      edits: [{ path: ["deliveries", `id=${build.deliveries[job - steps]!.id}`, "promised"], value: to }],
    };
  }
  if (of === "booking") {
    const booking = build.bookings.find((b) => b.step === build.steps[job]!.id && b.date !== null)!;
    return {
      kind: "move-date",
      detail: { booking: booking.id, to },
      edits: [{ path: ["bookings", `id=${booking.id}`, "date"], value: to }],
    };
  }
  const key = keyOf[of];
  if (key === undefined) return null;
  return {
    kind: "move-date",
    detail: { step: build.steps[job]!.id, key, to },
    edits: [{ path: ["steps", `id=${build.steps[job]!.id}`, key], value: to }],
  };
}

function holds(p: Problem): boolean {
  return earliest(p, netOf(p)).broken < 0;
}
