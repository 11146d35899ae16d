import { expect, test } from "vitest";
import { realistic } from "../../../test/bench/realistic";
import { access } from "../access";
import { buildClocks } from "../pour";
import { justified, SerialPasses, type Solution, verify } from "../schedule";
import { datesFor } from "./dates";
import { lastOf } from "./last-of";

/** When the last step is done, in days: as planned, and where the plan had begun with the most urgent first or in the order as written. */
function finishes(steps: number, start: number): { planned: number; urgent: number; written: number } {
  const build = realistic(steps, start);
  const { bound, result } = datesFor(build, access(build), buildClocks(build));
  expect(verify(bound.problem, result.solution!)).toEqual([]);
  const passes = new SerialPasses(bound.problem);
  const days = ({ finish }: Solution): number => lastOf(finish, build.steps.length) / 1440;
  const begun = (first: Solution): number => days(justified(passes, first, build.steps.length, 2));
  return {
    planned: days(result.solution!),
    urgent: begun(passes.solve(1, null).solution!),
    written: begun(passes.schedule(bound.problem.rank)!),
  };
}

test("where sheets go from bay to bay a first plan begins in the order as written", () => {
  const { planned, urgent, written } = finishes(300, 2);
  expect(planned).toBe(written);
  expect(planned).toBeLessThan(urgent);
});

test("where the order as written finishes later it begins with the most urgent", () => {
  const { planned, urgent, written } = finishes(150, 5);
  expect(planned).toBe(urgent);
  expect(planned).toBeLessThan(written);
});
