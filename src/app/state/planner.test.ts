import { expect, test } from "vitest";
import { type Build, readDocument } from "../../core/build";
import type { Plan } from "../../core/plan";
import wall from "../../examples/garden-wall.json";
import type { Link } from "../../worker";
import { Planner } from "./planner";

const build = readDocument(wall).build as Build;

/** A worker that says what it was asked, and how the clock stood still or ran. */
function planner(step_ms: number | (() => number)) {
  const asked: string[] = [];
  const link = {
    ask: async (ask: string) => {
      asked.push(ask);
      return { plan: { engine: "worker" } as Plan };
    },
  } as unknown as Link;
  let now = 0;
  return {
    asked,
    planner: new Planner(link, () => {
      now += typeof step_ms === "number" ? step_ms : step_ms();
      return now;
    }),
  };
}

test("a plan of usual size is made at once, and the same document is not planned twice", () => {
  const { planner: quick, asked } = planner(1);
  const document = { ...wall };
  const first = quick.plan({ document, build });
  expect(first).toHaveProperty("status", "planned");
  expect(quick.plan({ document, build })).toBe(first);
  expect(asked).toEqual([]);
});

test("where plans take long, those after the first are left to the worker, tried ones apart", async () => {
  const { planner: slow, asked } = planner(200);
  for (let count = 0; count < 5; count += 1) expect(slow.plan({ document: { ...wall }, build })).not.toBeInstanceOf(Promise);
  expect(await slow.plan({ document: { ...wall }, build })).toHaveProperty("engine", "worker");
  expect(await slow.plan({ document: { ...wall }, build, trial: true })).toHaveProperty("engine", "worker");
  expect(asked).toEqual(["plan", "trial"]);
});

test("a single slow plan leaves the next one in the page", () => {
  let asked = 0;
  // Each plan reads the clock twice; the fourth plan is slow.
  const { planner: once, asked: told } = planner(() => {
    asked += 1;
    return asked === 8 ? 500 : 1;
  });
  for (let count = 0; count < 8; count += 1) expect(once.plan({ document: { ...wall }, build })).not.toBeInstanceOf(Promise);
  expect(told).toEqual([]);
});
