import { lastChances } from "../access";
import type { ElapsedMinute, Finding } from "../base";
import { type Build, pourOf } from "../build";
import type { Clocks } from "../clock";
import { buildClocks, siteAir } from "../pour";
import type { Problem, Result, Solution } from "../schedule";
import type { Bound } from "./bound";
import { clashFindings } from "./clashes";
import { engine } from "./engine";
import { dateFindings, finding, historyFindings, needsFindings } from "./findings";
import { heldChain } from "./held-chain";
import { asDone } from "./history";
import { type Ordered, orderWithDates } from "./order";
import { passedDates, withoutDates } from "./passed";
import { handsOf } from "./places";
import type { ClosingDate, Plan, StepDates } from "./plan";
import { readingOf } from "./reading";
import { setAside } from "./set-aside";
import { siteDays } from "./site-days";
import { standsOf } from "./stands";
import { bookingDates, deliveryDates } from "./supplies";
import { tailOf } from "./tail";
import { visitsOf, waitDates } from "./waits";
import { windowFinding } from "./windows";

/**
 * Dates for every step and delivery of a build, and why. Pure and deterministic. What cannot be planned comes back with a status and findings, and with
 * empty lists of dates.
 */
export function plan(written: Build): Plan {
  const build = asDone(written);
  const made = planned(build);
  if (build === written) return made;
  return { ...made, handMinutes: handMinutesOf(written), findings: [...made.findings, ...historyFindings(written)] };
}

function planned(build: Build): Plan {
  const clocks = buildClocks(build);
  const ordered = orderWithDates(build, clocks);
  const { bound, result } = ordered;
  if (bound === null || result === null) {
    if (ordered.givenUp) return undated(build, ordered, "not-found", ordered.access.findings);
    return undated(build, ordered, "no-order", [...ordered.access.findings, ...datesBeside(build, ordered.access.findings)]);
  }
  const clashes = clashFindings(bound);
  const before = [...ordered.access.findings, ...needsFindings(bound), ...clashes];
  if (result.status === "infeasible") {
    const status = ordered.givenUp && clashes.length === 0 ? "not-found" : "no-dates";
    return undated(build, ordered, status, [...before, ...refuted(ordered)]);
  }
  if (clashes.length > 0) return undated(build, ordered, "no-dates", before);
  if (result.solution === null) return undated(build, ordered, "not-found", [...before, notFound(bound, result)]);
  return dated(ordered, bound, clocks, result.solution, result.earliest, before);
}

/** Why dates cannot hold, in whatever order: a minimal set. Dates that have passed meanwhile are told one by one, with what would stand in the way without them. */
function refuted({ bound, result, overall, refused }: Ordered): readonly Finding[] {
  const passed = passedDates(bound!);
  if (passed.length === 0) return overall ?? [windowFinding(bound!, result!.witness, refused)];
  const rest = withoutDates(bound!, passed);
  const others = orderWithDates(rest, buildClocks(rest));
  return [
    ...passed.map(({ kind, job }) =>
      windowFinding(
        bound!,
        [
          { kind: "release", job },
          { kind, job },
        ],
        0,
      ),
    ),
    ...(others.result?.status === "infeasible" && !others.givenUp ? refuted(others) : []),
  ];
}

/** Dates that cannot hold whatever is done about the blocks of order, told beside them: of the build without what those ask. */
function datesBeside(build: Build, blocks: readonly Finding[]): readonly Finding[] {
  const rest = setAside(build, blocks);
  if (rest === null) return [];
  const ordered = orderWithDates(rest, buildClocks(rest));
  const { bound, result, givenUp } = ordered;
  if (bound === null || result === null) return [];
  return [...clashFindings(bound), ...(result.status === "infeasible" && !givenUp ? refuted(ordered) : [])];
}

/** What holds each step and the chain are read where everything is as early as it can be; the dates are those in which what only waits is late. */
function dated(ordered: Ordered, bound: Bound, clocks: Clocks, earlier: Solution, early: Solution, before: readonly Finding[]): Plan {
  const { build, access, problem } = bound;
  const steps = build.steps.length;
  const { first, held, chain } = heldChain(bound, clocks, earlier);
  const tail = tailOf(bound, first, held);
  const reading = tail === null ? first : readingOf(bound, clocks, tail.solution);
  const { solution, stretches, named, served, net, finish, late } = reading;
  const onChain = new Set(chain.map((link) => link.job));
  const deliveries = deliveryDates(bound, served, net, solution, late);
  const shown: Solution = { start: solution.start.slice(), finish: solution.finish.slice() };
  deliveries.forEach((d, i) => {
    shown.start[steps + i] = d.arrives;
    shown.finish[steps + i] = d.arrives;
  });
  const personIds = build.people.map((p) => p.id);
  const stepDates = build.steps.map(
    (_, s): StepDates => ({
      start: solution.start[s]! as ElapsedMinute,
      finish: solution.finish[s]! as ElapsedMinute,
      earliestStart: early.start[s]! as ElapsedMinute,
      latestStart: late.start[s]! as ElapsedMinute,
      latestFinish: late.finish[s]! as ElapsedMinute,
      slack: slackOf(problem, solution, late, s),
      holder: tail?.why.get(s) ?? held[s]!.holder,
      onChain: onChain.has(s),
      pieces: stretches[s]!,
      people: named.people[s]!.map((i) => personIds[i]!),
    }),
  );
  const closings = lastChances(build, access)
    .map(({ piece, step, before, forGood }): ClosingDate => {
      const { down } = build.pieces[piece]!;
      return {
        piece,
        step,
        before,
        forGood,
        at: solution.start[step]! as ElapsedMinute,
        opensAgain: down < 0 ? null : (solution.finish[down]! as ElapsedMinute),
      };
    })
    .sort((a, b) => a.at - b.at || a.piece - b.piece);
  const visits = visitsOf(bound, solution);
  const made: Omit<Plan, "findings"> = {
    engine,
    rung: ordered.served ? build.served!.rung : 0,
    status: "planned",
    ids: build.steps.map((s) => s.id),
    deliveryIds: build.deliveries.map((d) => d.id),
    buildStart: build.start,
    access,
    steps: stepDates,
    deliveries,
    bookings: bookingDates(bound, solution),
    finish,
    chain,
    closings,
    stands: standsOf(build, clocks, bound.stores, shown),
    days: siteDays(bound, stepDates, deliveries, closings, visits),
    visits,
    waits: waitDates(bound, solution),
    handMinutes: handMinutesOf(build),
    assumes: assumptionsOf(bound),
  };
  return { ...made, findings: [...before, ...handOvers(bound, named.short), ...dateFindings(bound, made)] };
}

/** Minutes on the step's own clock by which its finish can be later, everything that follows served in the plan's order. */
function slackOf(p: Problem, s: Solution, late: Solution, j: number): number {
  const clock = p.clocks[p.clock[j]!]!;
  return Math.max(0, clock.reading(late.finish[j]! as ElapsedMinute) - clock.reading(s.finish[j]! as ElapsedMinute));
}

function handOvers(bound: Bound, short: readonly number[]): Finding[] {
  const { build } = bound;
  return short.map((s) =>
    finding(
      "plan.hand-over",
      "note",
      { list: "steps", id: build.steps[s]!.id, key: "hands" },
      { step: build.steps[s]!.id, wanted: handsOf(build, s) },
    ),
  );
}

function notFound(bound: Bound, result: Result): Finding {
  const { build, problem } = bound;
  const steps = build.steps.length;
  const { job, of } = result.stuck!;
  const id = job < steps ? build.steps[job]!.id : build.deliveries[job - steps]!.id;
  const [lacks, what] =
    of.kind === "capacity"
      ? [problem.capacities[of.index]!.kind, problem.capacities[of.index]!.id]
      : of.kind === "stock"
        ? ["stock", problem.stocks[of.index]!.id]
        : of.kind === "link"
          ? ["wait", build.steps[problem.links.from[of.index]!]?.id ?? ""]
          : [of.kind === "due" ? "deadline" : "calendar", ""];
  return finding(
    "plan.not-found",
    "stop",
    { list: job < steps ? "steps" : "deliveries", id },
    { step: id, lacks, of: what, boundAt: result.bound },
  );
}

function undated(build: Build, ordered: Ordered, status: Plan["status"], findings: readonly Finding[]): Plan {
  return {
    engine,
    rung: 0,
    status,
    ids: build.steps.map((s) => s.id),
    deliveryIds: build.deliveries.map((d) => d.id),
    buildStart: build.start,
    findings,
    access: ordered.access,
    steps: [],
    deliveries: [],
    bookings: [],
    finish: 0 as ElapsedMinute,
    chain: [],
    closings: [],
    stands: { pieces: [], places: [], stock: [] },
    days: [],
    visits: [],
    waits: [],
    handMinutes: handMinutesOf(build),
    assumes: [],
  };
}

const handMinutesOf = (build: Build): number =>
  build.steps.reduce((sum, step, s) => sum + (step.begun?.whole_min ?? step.work.likely_min) * handsOf(build, s), 0);

function assumptionsOf(bound: Bound): string[] {
  const { access, build } = bound;
  const out: string[] = [];
  if (access.amounts.some((a) => pourOf(a.on) !== null)) out.push(siteAir(build).known ? "plan.strength-at-site" : "plan.strength-at-20");
  if (build.people.length === 0) out.push("plan.nobody-named");
  return out;
}
