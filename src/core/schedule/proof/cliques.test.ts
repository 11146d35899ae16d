import fc from "fast-check";
import { expect, test } from "vitest";
import { constant, type ProblemSpec, problemOf } from "../../../../test/schedule/problem-of";
import type { ElapsedMinute } from "../../base";
import { solutionOf } from "../job";
import { lastOf } from "../last-of";
import { earliest, latest, netOf } from "../network";
import { verify } from "../verify";
import { cliquesOf } from "./cliques";
import { proofOf } from "./index";
import { modelOf } from "./model";

const target = 20;

function cliques(spec: ProblemSpec): number[][] {
  const p = problemOf({ ...spec, horizon: target });
  const net = netOf(p);
  const early = earliest(p, net);
  const model = modelOf(p, net, early.start, latest(p, net, target as ElapsedMinute).start, lastOf(early.finish), target);
  return cliquesOf(model!).map((s) => s.tasks.map((t) => t.out));
}

const four = [constant("crew", "equipment", 4, "span")];

test("grows from what takes more than half, by what is too much together and by waits", () => {
  const spec: ProblemSpec = {
    jobs: [5, 4, 3, 2, 1].map((amount) => ({ amount })),
    capacities: four,
    demands: [
      [0, 0, 3],
      [1, 0, 3],
      [2, 0, 2],
      [3, 0, 1],
      [4, 0, 1],
    ],
  };
  expect(cliques(spec)).toEqual([[0, 1, 2]]);
  const links = [0, 1, 2].map((to) => ({ from: 3, to, least: 0 }));
  expect(cliques({ ...spec, links })).toEqual([[0, 1, 2, 3]]);
  expect(cliques({ ...spec, links: links.slice(1) })).toEqual([[0, 1, 2]]);
});

test("no two of a list are at work together in any schedule there is", () => {
  const link = fc.tuple(fc.integer({ min: 0, max: 2 }), fc.integer({ min: 1, max: 3 }), fc.integer({ min: 0, max: 1 }));
  const problem = fc.record({
    amounts: fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 4, maxLength: 4 }),
    numbers: fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 4, maxLength: 4 }),
    links: fc.array(link, { maxLength: 3 }),
  });
  let lists = 0;
  fc.assert(
    fc.property(problem, ({ amounts, numbers, links }) => {
      const spec: ProblemSpec = {
        jobs: amounts.map((amount) => ({ amount })),
        capacities: four,
        demands: numbers.map((n, j) => [j, 0, n]),
        links: links.filter(([from, to]) => from < to).map(([from, to, least]) => ({ from, to, least })),
      };
      const found = cliques(spec);
      lists += found.length;
      if (found.length === 0) return;
      const p = problemOf(spec);
      for (let code = 0; code < 7 ** 4; code++) {
        const start = Int32Array.from({ length: 4 }, (_, j) => Math.floor(code / 7 ** j) % 7);
        const s = solutionOf(p, start);
        if (verify(p, s).length > 0) continue;
        for (const list of found)
          for (const i of list) for (const j of list) if (i < j) expect(s.finish[i]! <= start[j]! || s.finish[j]! <= start[i]!).toBe(true);
      }
    }),
    { numRuns: 60 },
  );
  expect(lists).toBeGreaterThan(10);
});

test("tells without a clash that three of which each is in the way of the others have no room in time", () => {
  // The time-table has nothing to say of it: none of the three is surely at work at any minute, and there is number enough for 11 minutes.
  const proof = proofOf(
    problemOf({
      jobs: [4, 4, 4].map((amount) => ({ amount, due: 11 })),
      capacities: four,
      demands: [0, 1, 2].map((j) => [j, 0, 3] as const),
    }),
    null,
  );
  proof.step(1);
  expect(proof.result().status).toBe("infeasible");
  expect(proof.clashes).toBe(0);
});
