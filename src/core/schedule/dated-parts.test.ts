import { expect, test } from "vitest";
import { constant, problemOf } from "../../../test/schedule/problem-of";
import { datedParts, netOf, problemOfParts, proofOf } from ".";

/** Jobs 0 to 1 lead to a date, 2 comes after it, 3 stands alone, 4 brings what 1 takes. */
const problem = (due: number) =>
  problemOf({
    jobs: [{ amount: 30 }, { amount: 30, due }, { amount: 30 }, { amount: 500 }, { amount: 0, release: 40 }],
    links: [
      { from: 0, to: 1, least: 0 },
      { from: 1, to: 2, least: 0 },
    ],
    capacities: [constant("man", "people", 1)],
    demands: [
      [0, 0, 1],
      [1, 0, 1],
      [2, 0, 1],
      [3, 0, 1],
    ],
    stocks: [{ id: "sheets", inHand: 0, arrivals: [{ job: 4, number: 2 }] }],
    spans: [{ stock: 0, number: 2, loss: 0, out: 1, back: -1 }],
    horizon: 10_000,
  });

test("what leads to a date, what brings things for it, and nothing that can come after", () => {
  const p = problem(70);
  const { jobs, parts } = datedParts(p, netOf(p));
  expect(jobs).toEqual([0, 1, 4]);
  expect(parts.slice(0, 3)).toEqual([0, 1, 4].map((job) => ({ kind: "job", job })));
  expect(parts.filter(({ kind }) => kind === "link")).toEqual([{ kind: "link", link: 0, side: "least" }]);
  const made = proofOf(problemOfParts(p, parts)).result().solution!;
  expect([...made.start.slice(0, 3)]).toEqual([0, 40, 40]);
});

test("what these rule out cannot be", () => {
  const p = problem(69);
  const proof = proofOf(problemOfParts(p, datedParts(p, netOf(p)).parts), null);
  while (!proof.done) proof.step(10);
  expect(proof.result().status).toBe("infeasible");
});
