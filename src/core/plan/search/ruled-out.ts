import type { Apply } from "../../access";
import { type Finding, type Statement, type WayOut, writtenId } from "../../base";
import { isCure } from "../../build";
import type { NetworkPart, Refusal, WitnessPart } from "../../schedule";
import type { Bound } from "../bound";
import { finding } from "../findings";
import { type DateKey, datedSteps, dateEdits, movedTogether, withDates } from "../moved-dates";
import { plan } from "../plan-of";
import { placeOf, statementOf } from "../windows";
import { moreWays } from "./more-ways";
import { hasPlan, type Trying } from "./trying";

const isOfNetwork = (part: WitnessPart): part is NetworkPart => part.kind !== "capacity" && part.kind !== "stock";

/**
 * What a proof has ruled out, in the builder's terms, with ways out that were tried on the whole build.
 * @param edited makes edits in the document the build was read from; null: there is none, and nothing is offered that only a document can say
 */
export function* ruledOut(bound: Bound, { parts, minimal }: ReturnType<Refusal["result"]>, edited: Apply | null): Trying<Finding> {
  const at = placeOf(bound, parts.filter(isOfNetwork));
  const waysOut = yield* written(bound, parts);
  if (edited !== null) waysOut.push(...(yield* moreWays(bound, parts, edited)));
  return {
    ...finding("plan.ruled-out", "stop", at < 0 ? {} : { list: "steps", id: bound.build.steps[at]!.id }, { minimal }),
    because: parts.map((part) => (isOfNetwork(part) ? statementOf(bound, part) : shared(bound, part))),
    waysOut,
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
function* written(bound: Bound, parts: readonly WitnessPart[]): Trying<WayOut[]> {
  const out: WayOut[] = [];
  const waits = new Set<string>();
  for (const part of parts) {
    if (part.kind === "link") {
      const way = yield* dropped(bound, part, waits);
      if (way !== null) out.push(way);
    } else if ((part.kind === "due" || part.kind === "fixed") && part.job < bound.build.steps.length) {
      const way = yield* moved(bound, part.kind, part.job);
      if (way !== null && !out.some((one) => JSON.stringify(one.edits) === JSON.stringify(way.edits))) out.push(way);
    }
  }
  return out;
}

function* moved(bound: Bound, kind: "due" | "fixed", job: number): Trying<WayOut | null> {
  const { build, dueOf, fixedOf } = bound;
  const of = (kind === "due" ? dueOf : fixedOf)[job];
  if (of !== "deadline" && of !== "fixed") return null;
  const [own = [], ...more] = movedTogether(build, job, of);
  // Copies that are fixed stay on different days; a latest date can be one for all.
  for (const steps of of === "deadline" ? [own, ...more] : [own]) {
    const to = yield* suits(bound, steps, job, of);
    if (to !== null)
      return { kind: "move-date", detail: { ...datedSteps(build, steps, job), key: of, to }, edits: dateEdits(build, steps, of, to) };
  }
  return null;
}

/** The first day by which, or the moment at which, the build has a plan with the date of these steps moved there; null: it has none. */
function* suits({ build, clocks, problem }: Bound, steps: readonly number[], job: number, key: DateKey): Trying<string | null> {
  const { time } = clocks;
  yield 1;
  const free = plan(withDates(build, steps, key, null));
  if (free.status !== "planned") return null;
  let to = time.momentOf(free.steps[job]!.start);
  if (key === "deadline") {
    // The first day that suits: that of the plan without a date may be long after it.
    let day = time.dayOf(Math.max(...steps.map((s) => free.steps[s]!.finish)) - 1);
    for (let tooSoon = time.dayOf(problem.due[job]! - 1); day - tooSoon > 1; ) {
      const middle = ((tooSoon + day) >> 1) as typeof day;
      if (yield* hasPlan(withDates(build, steps, key, time.dateOf(middle)))) day = middle;
      else tooSoon = middle;
    }
    to = time.dateOf(day);
  }
  return (yield* hasPlan(withDates(build, steps, key, to))) ? to : null;
}

function* dropped({ build, access, row }: Bound, part: Extract<NetworkPart, { kind: "link" }>, seen: Set<string>): Trying<WayOut | null> {
  const r = row[part.link]!;
  if (r < 0) return null;
  const { id = "" } = access.statements[access.arcs.reason[r]!]!;
  const wait = build.waits.find((w) => w.id === id && !w.plain);
  if (wait === undefined || (part.side === "least" && isCure(wait.least)) || seen.has(`${writtenId(id)} ${part.side}`)) return null;
  seen.add(`${writtenId(id)} ${part.side}`);
  const both = wait.least !== null && wait.most !== null;
  // What is written once for all copies of a group is dropped for all of them.
  const own = (w: { readonly id: string }): boolean => writtenId(w.id) === writtenId(id);
  const left = both ? build.waits.map((w) => (own(w) ? { ...w, [part.side]: null } : w)) : build.waits.filter((w) => !own(w));
  if (!(yield* hasPlan({ ...build, waits: left }))) return null;
  const path = ["waits", `id=${writtenId(id)}`];
  return { kind: "drop-wait", detail: { wait: wait.id, side: part.side }, edits: [{ path: both ? [...path, part.side] : path }] };
}
