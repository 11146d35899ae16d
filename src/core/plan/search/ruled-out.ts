import type { Finding, Statement, WayOut } from "../../base";
import type { Build, Step } from "../../build";
import type { NetworkPart, Refusal, WitnessPart } from "../../schedule";
import type { Bound } from "../bound";
import { finding } from "../findings";
import { plan } from "../plan-of";
import { placeOf, statementOf } from "../windows";

const isOfNetwork = (part: WitnessPart): part is NetworkPart => part.kind !== "capacity" && part.kind !== "stock";

/** What a proof has ruled out, in the builder's terms, with ways out that were tried on the whole build. */
export function ruledOut(bound: Bound, { parts, minimal }: ReturnType<Refusal["result"]>): Finding {
  const at = placeOf(bound, parts.filter(isOfNetwork));
  return {
    ...finding("plan.ruled-out", "stop", at < 0 ? {} : { list: "steps", id: bound.build.steps[at]!.id }, { minimal }),
    because: parts.map((part) => (isOfNetwork(part) ? statementOf(bound, part) : shared(bound, part))),
    waysOut: waysOut(bound, parts),
  };
}

function shared({ build, problem, crews }: Bound, part: Exclude<WitnessPart, NetworkPart>): Statement {
  if (part.kind === "stock") {
    const { id, inHand, arrivals } = problem.stocks[part.index]!;
    return { rule: "window.stock", detail: { of: id, number: arrivals.reduce((sum, a) => sum + a.number, inHand) } };
  }
  const { kind, id, levels } = problem.capacities[part.index]!;
  const number = levels.reduce((a, b) => Math.max(a, b), 0);
  if (kind === "equipment") return { rule: "window.equipment", detail: { of: id, number } };
  if (kind === "room" || kind === "alone") return { rule: `window.${kind}`, place: id, detail: kind === "room" ? { number } : {} };
  const { people, roles } = crews.pools[part.index]!;
  return { rule: "window.people", detail: { people, roles: people.length === build.people.length ? [] : roles } };
}

/** A latest or a fixed date moved to where it would fall without it, or a written wait dropped, where the build then has a plan. */
function waysOut(bound: Bound, parts: readonly WitnessPart[]): WayOut[] {
  const out: WayOut[] = [];
  const waits = new Set<string>();
  for (const part of parts) {
    if (part.kind === "link") {
      const way = dropped(bound, part, waits);
      if (way !== null) out.push(way);
    } else if ((part.kind === "due" || part.kind === "fixed") && part.job < bound.build.steps.length) {
      const way = moved(bound, part.kind, part.job);
      if (way !== null && !out.some((one) => JSON.stringify(one.edits) === JSON.stringify(way.edits))) out.push(way);
    }
  }
  return out;
}

function moved({ build, dueOf, fixedOf, clocks, problem }: Bound, kind: "due" | "fixed", job: number): WayOut | null {
  const of = (kind === "due" ? dueOf : fixedOf)[job];
  const key = of === "deadline" ? "deadline" : of === "fixed" ? "fixed" : null;
  if (key === null) return null;
  const step = build.steps[job]!;
  const free = plan(withStep(build, job, { ...step, [key]: null }));
  if (free.status !== "planned") return null;
  const { start, finish } = free.steps[job]!;
  const { time } = clocks;
  const suits = (moment: string): boolean => plan(withStep(build, job, { ...step, [key]: moment })).status === "planned";
  let to = time.momentOf(start);
  if (key === "deadline") {
    // The first day that suits: that of the plan without a date may be long after it.
    let day = time.dayOf(finish - 1);
    for (let tooSoon = time.dayOf(problem.due[job]! - 1); day - tooSoon > 1; ) {
      const middle = ((tooSoon + day) >> 1) as typeof day;
      if (suits(time.dateOf(middle))) day = middle;
      else tooSoon = middle;
    }
    to = time.dateOf(day);
  }
  if (!suits(to)) return null;
  return { kind: "move-date", detail: { step: step.id, key, to }, edits: [{ path: ["steps", `id=${step.id}`, key], value: to }] };
}

const withStep = (build: Build, at: number, step: Step): Build => ({ ...build, steps: build.steps.with(at, step) });

function dropped({ build, access, row }: Bound, part: Extract<NetworkPart, { kind: "link" }>, seen: Set<string>): WayOut | null {
  const r = row[part.link]!;
  if (r < 0) return null;
  const { id } = access.statements[access.arcs.reason[r]!]!;
  const wait = build.waits.find((w) => w.id === id && !w.plain);
  if (wait === undefined || seen.has(`${wait.id} ${part.side}`)) return null;
  seen.add(`${wait.id} ${part.side}`);
  const both = wait.least !== null && wait.most !== null;
  const left = both ? build.waits.map((w) => (w === wait ? { ...w, [part.side]: null } : w)) : build.waits.filter((w) => w !== wait);
  if (plan({ ...build, waits: left }).status !== "planned") return null;
  const path = ["waits", `id=${wait.id}`];
  return { kind: "drop-wait", detail: { wait: wait.id, side: part.side }, edits: [{ path: both ? [...path, part.side] : path }] };
}
