import { expect, test } from "vitest";
import { type Build, readDocument } from "../../core/build";
import { type Plan, plan } from "../../core/plan";
import wall from "../../examples/garden-wall.json";
import type { Link } from "../../worker";
import { type Engine, Planner } from "./planner";

const build = readDocument(wall).build as Build;

/** A worker that says what it was asked, and how the clock stood still or ran. */
async function planner(step_ms: number | (() => number)) {
  const asked: string[] = [];
  let now = 0;
  const made = new Planner(
    linkTo(async (ask) => {
      asked.push(ask);
      return fromWorker;
    }),
    () => {
      now += typeof step_ms === "number" ? step_ms : step_ms();
      return now;
    },
    async () => plan,
  );
  await made.ready();
  return { asked, planner: made };
}

const fromWorker = { plan: { engine: "worker" } as Plan };
const linkTo = (ask: (what: string) => Promise<unknown>): Link => ({ ask }) as unknown as Link;
const still = (): number => 0;

test("a plan of usual size is made at once, and the same document is not planned twice", async () => {
  const { planner: quick, asked } = await planner(1);
  const document = { ...wall };
  const first = quick.plan({ document, build });
  expect(first).toHaveProperty("status", "planned");
  expect(quick.plan({ document, build })).toBe(first);
  expect(asked).toEqual([]);
});

test("where plans take long, those after the first are left to the worker, tried ones apart", async () => {
  const { planner: slow, asked } = await planner(200);
  for (let count = 0; count < 5; count += 1) expect(slow.plan({ document: { ...wall }, build })).not.toBeInstanceOf(Promise);
  expect(await slow.plan({ document: { ...wall }, build })).toHaveProperty("engine", "worker");
  expect(await slow.plan({ document: { ...wall }, build, trial: true })).toHaveProperty("engine", "worker");
  expect(asked).toEqual(["plan", "trial"]);
});

test("a single slow plan leaves the next one in the page", async () => {
  let asked = 0;
  // Each plan reads the clock twice; the fourth plan is slow.
  const { planner: once, asked: told } = await planner(() => {
    asked += 1;
    return asked === 8 ? 500 : 1;
  });
  for (let count = 0; count < 8; count += 1) expect(once.plan({ document: { ...wall }, build })).not.toBeInstanceOf(Promise);
  expect(told).toEqual([]);
});

test("before the engine is there the worker makes the plan, which is not made again after", async () => {
  const waiting = new Planner(
    linkTo(async () => fromWorker),
    still,
    async () => plan,
  );
  const document = { ...wall };
  expect(await waiting.plan({ document, build })).toHaveProperty("engine", "worker");
  await waiting.ready();
  expect(waiting.plan({ document, build })).toHaveProperty("engine", "worker");
  expect(waiting.plan({ document: { ...wall }, build })).toHaveProperty("status", "planned");
});

test("a worker that is lost at the start leaves the plan to the engine, fetched then", async () => {
  let fetched = 0;
  const alone = new Planner(
    linkTo(async () => null),
    still,
    async () => {
      fetched += 1;
      return plan;
    },
  );
  expect(await alone.plan({ document: { ...wall }, build })).toHaveProperty("status", "planned");
  expect(fetched).toBe(1);
});

test("a worker that says nothing is not waited for once the engine is there", async () => {
  const alone = new Planner(
    linkTo(() => new Promise(() => {})),
    still,
    async () => plan,
  );
  const first = alone.plan({ document: { ...wall }, build });
  await alone.ready();
  expect(await first).toHaveProperty("status", "planned");
});

test("with neither worker nor engine there is no plan, and the engine is asked for again", async () => {
  let works = false;
  const fetch = async (): Promise<Engine> => {
    if (!works) throw new Error("not there");
    return plan;
  };
  const none = new Planner(
    linkTo(async () => null),
    still,
    fetch,
  );
  expect(await none.plan({ document: { ...wall }, build })).toBeNull();
  works = true;
  expect(await none.plan({ document: { ...wall }, build })).toHaveProperty("status", "planned");
});
