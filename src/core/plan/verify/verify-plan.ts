import type { Build } from "../../build";
import { buildClocks } from "../../pour";
import { asDone } from "../history";
import type { Plan } from "../plan";
import { caseOf, type Fault } from "./fault";
import { checkHoldPoints } from "./hold-points";
import { checkHolding } from "./holding";
import { checkReach } from "./reach";
import { checkTable } from "./table";
import { checkThings } from "./things";
import { checkWaits } from "./waits";
import { checkPeople, checkWork, workedStretches } from "./work";

/**
 * The second look at a plan, from the build alone: dates, work, people, things, places, reach, holding and waits, each rule in its own plain way. Shares
 * with what made the plan the document's types and the clocks, and nothing else. Slow; an empty list is a sound plan.
 */
export function verifyPlan(written: Build, plan: Plan): Fault[] {
  if (plan.status !== "planned") return [];
  const build = asDone(written);
  const c = caseOf(build, buildClocks(build), plan);
  const worked = workedStretches(c);
  return [
    ...checkWork(c, worked),
    ...checkPeople(c, worked),
    ...checkThings(c, worked),
    ...checkReach(c),
    ...checkHolding(c),
    ...checkHoldPoints(c),
    ...checkWaits(c),
    ...checkTable(c, plan),
  ];
}
