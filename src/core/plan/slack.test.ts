import fc from "fast-check";
import { expect, it } from "vitest";
import { buildOf } from "../../../test/fixtures/make";
import { bandedDocument } from "../../../test/schedule/random-document";
import type { ElapsedMinute } from "../base";
import { readDocument } from "../build";
import { clocksOf } from "../clock";
import { earliest, fitFinish, netOf, type Problem } from "../schedule";
import { plan } from ".";
import { namesOf } from "./names";
import { orderWithDates } from "./order";
import { byStart, stretchesOf } from "./stretches";
import { turnsOf, withTurns } from "./turns";

it("slack: later by it keeps the finish and every date, with everybody served in the plan's order; one minute more does not", () => {
  let asked = 0;
  let some = 0;
  let late = 0;
  fc.assert(
    fc.property(fc.nat(1_000_000), (n) => {
      const { build, findings } = readDocument(bandedDocument(n));
      if (build === null || findings.some((f) => f.severity === "stop")) return;
      const made = plan(build);
      if (made.status !== "planned") return;
      const clocks = clocksOf(build);
      const { bound, result } = orderWithDates(build, clocks);
      const { problem } = bound!;
      // As dated by the plan: what only waits may be later than it was found.
      const solution = { start: result!.solution!.start.slice(), finish: result!.solution!.finish.slice() };
      made.steps.forEach((step, j) => {
        if (step.start !== solution.start[j]) late++;
        solution.start[j] = step.start;
        solution.finish[j] = step.finish;
      });
      const order = byStart(problem, solution);
      const named = namesOf(
        build,
        clocks,
        order,
        Array.from({ length: problem.jobs }, (_, j) => stretchesOf(problem, solution, j)),
      );
      const served = withTurns(problem, turnsOf(bound!, solution, order, named), problem.clocks.indexOf(clocks.elapsed));
      const finish = Math.max(...solution.finish.subarray(0, build.steps.length));
      expect(made.finish).toBe(finish);
      const due = problem.due.map((d, j) => (j < build.steps.length ? Math.min(d, finish) : d));
      const replay = (j: number, by: number): boolean => {
        const clock = problem.clocks[problem.clock[j]!]!;
        const least = solution.start.slice();
        const s = fitFinish(problem, j, clock.advance(solution.finish[j]! as ElapsedMinute, by));
        least[j] = Math.max(least[j]!, s);
        const tight: Problem = { ...served, due };
        return earliest(tight, netOf(tight), least).broken < 0;
      };
      made.steps.forEach((step, j) => {
        asked++;
        if (step.slack > 0) some++;
        expect(replay(j, step.slack)).toBe(true);
        expect(replay(j, step.slack + 1)).toBe(false);
      });
    }),
    { numRuns: 250, seed: 5 },
  );
  expect(asked).toBeGreaterThan(500);
  expect(some).toBeGreaterThan(200);
  expect(late).toBeGreaterThan(0);
});

it("slack does not grow with a delivery that comes after everything and that no step needs", () => {
  const step = (id: string, work: string) => ({ id, name: id, work, hands: 1 });
  const steps = [step("long", "8 h"), step("short", "2 h")];
  const slacks = (deliveries: readonly Record<string, unknown>[]) => plan(buildOf({ steps, deliveries })).steps.map((s) => s.slack);
  expect(slacks([])).toEqual([0, 360]);
  expect(slacks([{ id: "shed", name: "Shed", promised: "2027-05-01" }])).toEqual([0, 360]);
});
