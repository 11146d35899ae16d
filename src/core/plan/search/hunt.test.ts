import { expect, test } from "vitest";
import { realistic } from "../../../../test/bench/realistic";
import { plan } from "../plan-of";
import { verifyPlan } from "../verify/verify-plan";
import { PlanSearch } from "./plan-search";

const build = realistic(140, 1);

const searched = (units: number): PlanSearch => {
  const search = new PlanSearch(build);
  while (!search.done && search.rung < 10_000) search.step(units);
  return search;
};

// Jobs in the midst have their turn after some 2,500 units.
test("the last jobs of a large build and jobs in its midst are put anew: the plan is better, keeps everything, and is the same wherever the search pauses", () => {
  const search = searched(1);
  const { finish, finishWas, bound } = search.sought();
  expect(finish).toBeLessThan(finishWas!);
  expect(bound!.at).toBeLessThanOrEqual(finish!);
  const made = plan({ ...build, served: search.served()! });
  expect(made.finish).toBe(finish);
  expect(verifyPlan(build, made)).toEqual([]);
  expect(searched(333).served()).toEqual(search.served());
});

test("a portion asked for by the unit never takes in a whole stage", () => {
  const search = new PlanSearch(build);
  let seen = 0;
  for (let tried = 0; tried < 700; tried = search.sought().tried) {
    search.step(1);
    // A bred schedule, a clash, or one of the last few of a portion.
    expect(search.sought().tried - tried).toBeLessThanOrEqual(40);
    seen++;
  }
  expect(seen).toBeGreaterThan(50);
});
