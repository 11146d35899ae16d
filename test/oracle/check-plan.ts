import type { Build } from "../../src/core/build";
import { type Plan, plan, verifyPlan } from "../../src/core/plan";
import type { Answers } from "./brute";
import type { Faults } from "./check-access";
import { faultsOfRefusal } from "./check-refusal";
import { formulaOf } from "./formula";
import { holdsAt, inTime, windowGaps, workGaps } from "./times";

/** Work and calendars that never stop: then plain elapsed time says all. */
const alwaysOn = (build: Build) => build.steps.every((s) => s.calendar === "always");

/** What the judges have against a plan: its status, and every date against every rule of the build. Tells where dates are refuted that can be met. */
export function faultsOfPlan(build: Build, known: Answers, wronglyRefuted: () => void): Faults {
  const made = plan(build);
  if ((made.status === "no-order") === known.possible)
    return [`plan: ${made.status} though an order is ${known.possible ? "" : "not "}possible`];
  if (made.status === "no-dates" && alwaysOn(build)) {
    if (inTime(build)?.possible) wronglyRefuted();
    return faultsOfRefusal(build, made);
  }
  if (made.status !== "planned") return [];
  return [
    ...verifyPlan(build, made).map((f) => `plan: its own second look finds ${JSON.stringify(f)}`),
    ...faultsOfDates(build, made),
    ...faultsOfHands(build, made),
  ];
}

function faultsOfDates(build: Build, made: Plan): Faults {
  const start = made.steps.map((s) => s.start);
  const finish = made.steps.map((s) => s.finish);
  const formula = formulaOf(build);
  const parts = "all" in formula ? formula.all : [formula];
  const said = JSON.stringify(made.steps.map((s) => [s.start, s.finish]));
  const own = [...windowGaps(build), ...(alwaysOn(build) ? workGaps(build) : [])];
  return [...parts, ...own].filter((f) => !holdsAt(f, start, finish)).map((f) => `plan: dates ${said} break ${JSON.stringify(f)}`);
}

/** Nobody works twice at once: at every start the hands asked for by what is at work then are no more than the people there are. */
function faultsOfHands(build: Build, made: Plan): Faults {
  const stretches = made.steps.flatMap((s, i) =>
    s.pieces.map(([from, to]) => ({ from, to, hands: build.steps[i]!.hands.reduce((n, h) => n + h.number, 0) })),
  );
  return stretches
    .map(({ from }) => ({ from, hands: stretches.filter((s) => s.from <= from && from < s.to).reduce((n, s) => n + s.hands, 0) }))
    .filter(({ hands }) => hands > build.people.length)
    .map(({ from, hands }) => `plan: ${hands} hands at minute ${from}, ${build.people.length} people`);
}
