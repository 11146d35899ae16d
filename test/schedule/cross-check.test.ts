import Logic from "logic-solver";
import { afterAll, describe, expect, test } from "vitest";
import { type Problem, proofOf, refusalOf, verify, type WitnessPart } from "../../src/core/schedule";
import { allParts, bruteFinish, nameOf } from "./brute";
import { featuresOf, plainer } from "./features";
import { SatProblem } from "./sat";
import { smallProblem } from "./small-problem";

/**
 * Small problems with every feature, each answered three times: by the proof, by trying every minute, and by a general solver of propositional logic
 * (logic-solver, which is MiniSat). The three share the readings of the clocks and nothing else.
 */
const batch = 50;
const toOneSolver = 5;
const met = new Map<string, number>();
const count = (name: string): unknown => met.set(name, (met.get(name) ?? 0) + 1);

/** By the proof of the problem, or by the links alone where they suffice. */
function partsOf(p: Problem): readonly WitnessPart[] {
  const { witness } = proofOf(p).result();
  if (witness.length > 0) return witness;
  const search = refusalOf(p);
  while (!search.done) search.step(100);
  expect(search.result().minimal).toBe(true);
  return search.result().parts;
}

function crossCheck(number: number, solver: Logic.Solver): void {
  const p = smallProblem(number);
  const all = allParts(p);
  const sat = new SatProblem(p, solver, `p${number}`);
  const finish = bruteFinish(p, all);
  const said = `problem ${number}`;
  expect(sat.finish(all), `${said}: by the general solver`).toBe(finish);

  const search = proofOf(p);
  search.step(100_000);
  const { status, solution, bound } = search.result();
  expect(search.done, said).toBe(true);
  expect(status, said).toBe(finish < 0 ? "infeasible" : "proved");
  for (const name of featuresOf(p)) count(name);
  for (const [name, q] of plainer(p)) if (bruteFinish(q, all) !== finish) count(`decided by ${name}`);
  count(status);
  if (finish >= 0) {
    expect(verify(p, solution!), said).toEqual([]);
    expect(Math.max(...solution!.finish), said).toBe(finish);
    expect(bound, said).toBe(finish);
    return;
  }
  const parts = partsOf(p);
  expect(bruteFinish(p, parts, true), `${said}: the witness alone`).toBe(-1);
  expect(sat.canBe(parts), `${said}: the witness alone, by the general solver`).toBe(false);
  for (const part of parts) {
    const rest = parts.filter((other) => other !== part);
    expect(bruteFinish(p, rest, true), `${said}: without ${nameOf(part)}`).toBeGreaterThanOrEqual(0);
    expect(sat.canBe(rest), `${said}: without ${nameOf(part)}, by the general solver`).toBe(true);
  }
  for (const kind of new Set(parts.map((part) => (part.kind === "link" ? part.side : part.kind)))) count(`refused by ${kind}`);
  count(parts.some((part) => "index" in part) ? "refused by people, places or stock" : "refused by links and dates");
}

describe("500 small problems, answered three ways alike", () => {
  test.each(Array.from({ length: 10 }, (_, k) => k * batch))("from number %i on", (from) => {
    for (let k = 0; k < batch; k += toOneSolver) {
      const solver = new Logic.Solver();
      for (let number = from + k; number < from + k + toOneSolver; number++) crossCheck(number, solver);
    }
  });

  afterAll(() => {
    const few = Object.entries(atLeast).filter(([name, number]) => (met.get(name) ?? 0) < number);
    expect(
      few.map(([name]) => `${name}: ${met.get(name) ?? 0}`),
      "met too seldom to check anything",
    ).toEqual([]);
    expect([...met.keys()].filter((name) => !(name in atLeast))).toEqual([]);
  });
});

/** In how many of the problems each feature must occur, and decide the answer; each answer come out; each kind of part be needed for a refusal. */
const atLeast: Record<string, number> = {
  proved: 240,
  infeasible: 200,
  "pausing job": 400,
  "unbroken job": 180,
  "job without length": 110,
  release: 250,
  due: 180,
  fixed: 100,
  "least wait": 40,
  "least wait on a calendar": 110,
  "least wait on strength": 50,
  "most wait": 35,
  "most wait on a calendar": 80,
  "most wait on strength": 40,
  "wait FS": 140,
  "wait SS": 80,
  "wait FF": 70,
  "wait SF": 80,
  "people who are away for a while": 280,
  "equipment through pauses": 280,
  "place taken alone": 250,
  "place shared": 150,
  "stock over a span": 250,
  "stock for good": 100,
  loss: 150,
  arrival: 180,
  "decided by pauses of jobs": 180,
  "decided by unbroken jobs": 12,
  "decided by releases": 50,
  "decided by dues": 15,
  "decided by fixed starts": 40,
  "decided by clocks of waits": 15,
  "decided by least waits": 70,
  "decided by most waits": 12,
  "decided by people who go away": 40,
  "decided by people free in pauses": 5,
  "decided by equipment held through pauses": 10,
  "decided by places alone": 10,
  "decided by what comes back to stock": 15,
  "decided by loss": 10,
  "decided by arrivals": 20,
  "refused by links and dates": 90,
  "refused by people, places or stock": 100,
  "refused by job": 130,
  "refused by least": 40,
  "refused by most": 10,
  "refused by release": 35,
  "refused by due": 20,
  "refused by fixed": 50,
  "refused by capacity": 50,
  "refused by stock": 50,
};
