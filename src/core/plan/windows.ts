import type { Finding, Statement } from "../base";
import { amountOf, type LocalMoment } from "../build";
import type { NetworkPart } from "../schedule";
import type { Bound, DateOf } from "./bound";
import { hoursEnd, outOfHours } from "./hours-end";
import { windowWaysOut } from "./window-ways";

/**
 * A witness of the scheduler as a finding, in the builder's own terms, with ways out that were tried. `refused` more orders were tried when this one rests
 * on a precedence that was only chosen; dates refuted every one of them in some such way.
 */
export function windowFinding(bound: Bound, witness: readonly NetworkPart[], refused: number): Finding {
  const { build } = bound;
  const steps = build.steps.length;
  const lone = witness.length === 1 ? witness[0]! : null;
  if (lone?.kind === "job" && lone.job < steps) {
    const step = build.steps[lone.job]!;
    return {
      code: "plan.calendar-never",
      severity: "stop",
      where: { list: "steps", id: step.id, key: "calendar" },
      detail: { step: step.id, calendar: step.calendar, minutes: step.work.likely_min, unbroken: step.unbroken },
    };
  }
  const late = outOfHours(bound, witness);
  if (late >= 0) {
    const { lastAt, people } = hoursEnd(bound, late)!;
    const step = build.steps[late]!.id;
    const first = witness.filter((part) => part.kind === "job" && part.job === late);
    return {
      code: "plan.hours-end",
      severity: "stop",
      where: { list: "steps", id: step },
      detail: { step, lastAt, people, otherOrders: refused },
      because: [...first, ...witness.filter((part) => !first.includes(part))].map((part) => statementOf(bound, part)),
      waysOut: windowWaysOut(bound, witness, people),
    };
  }
  const at = placeOf(bound, witness);
  return {
    code: "plan.windows",
    severity: "stop",
    where: at < 0 ? {} : { list: "steps", id: build.steps[at]!.id },
    detail: { otherOrders: refused },
    because: witness.map((part) => statementOf(bound, part)),
    waysOut: windowWaysOut(bound, witness, false),
  };
}

/** The step at which a builder would look: the first with a date, else the one that a longest wait counts from; -1: none. */
export function placeOf(bound: Bound, witness: readonly NetworkPart[]): number {
  const steps = bound.build.steps.length;
  for (const part of witness) if (part.kind !== "link" && part.kind !== "job" && part.job < steps) return part.job;
  for (const part of witness) if (part.kind === "link" && part.side === "most") return bound.problem.links.from[part.link]!;
  return -1;
}

/** What a part of a witness says, in the builder's terms. */
export function statementOf(bound: Bound, part: NetworkPart): Statement {
  const { build, access, clocks, problem } = bound;
  const steps = build.steps.length;
  const named = (job: number): { step?: string; id?: string } =>
    job < steps ? { step: build.steps[job]!.id } : { id: build.deliveries[job - steps]!.id };
  if (part.kind === "link") {
    const row = bound.row[part.link]!;
    const from = problem.links.from[part.link]!;
    const to = problem.links.to[part.link]!;
    if (row < 0) return { rule: "window.needs", step: build.steps[to]!.id, detail: { delivery: build.deliveries[from - steps]!.id } };
    const reason = access.statements[access.arcs.reason[row]!]!;
    const at = part.side === "least" ? access.arcs.least[row]! : access.arcs.most[row]!;
    if (at < 0) return reason;
    return {
      rule: part.side === "least" ? "window.least" : "window.most",
      step: build.steps[from]!.id,
      other: build.steps[to]!.id,
      ...(reason.id === undefined ? {} : { id: reason.id }),
      ...(reason.piece === undefined ? {} : { piece: reason.piece }),
      detail: {
        amount: amountOf(access.amounts[at]!),
        fromEnd: problem.links.fromEnd[part.link] === 0 ? "start" : "finish",
        toEnd: problem.links.toEnd[part.link] === 0 ? "start" : "finish",
        because: reason.rule,
      },
    };
  }
  if (part.kind === "job") {
    const job = part.job;
    const calendar = job < steps ? build.steps[job]!.calendar : build.deliveries[job - steps]!.calendar;
    const end = job < steps ? hoursEnd(bound, job) : null;
    return {
      rule: "window.length",
      ...named(job),
      detail: { minutes: problem.amount[job]!, calendar, unbroken: problem.unbroken[job] === 1, ...end },
    };
  }
  const of = { release: bound.releaseOf, due: bound.dueOf, fixed: bound.fixedOf }[part.kind][part.job] ?? "not-before";
  // A date without an hour becomes an earliest start and a latest finish; the builder wrote one date.
  const rule = of === "fixed" || of === "booking" ? "window.fixed" : `window.${part.kind}`;
  const date = writtenDate(bound, part.job, of) ?? clocks.time.momentOf(problem[part.kind][part.job]!);
  return { rule, ...named(part.job), detail: { date, of } };
}

/** As the builder wrote it: what lies before the build begins is counted from its first day. */
function writtenDate({ build }: Bound, job: number, of: DateOf): LocalMoment | null {
  const step = build.steps[job];
  if (step === undefined) return of === "promised" ? build.deliveries[job - build.steps.length]!.promised : null;
  if (of === "booking") return build.bookings.find((b) => b.step === step.id && b.date !== null)?.date ?? null;
  return of === "fixed" ? step.fixed : of === "deadline" ? step.deadline : of === "not-before" ? step.notBefore : null;
}
