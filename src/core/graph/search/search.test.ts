import { expect, test } from "vitest";
import { clauses, possibleByTrying, randomProblem } from "../../../../test/fixtures/clauses";
import { randomFrom } from "../../base";
import { minimalSet } from "./minimal-set";
import { type ClauseProblem, fails, holds } from "./problem";
import { ClauseSearch } from "./search";

const solved = (problem: ClauseProblem, assumed: number[] = []) => {
  const search = new ClauseSearch(problem);
  return { answer: search.solve(assumed), search };
};

test("some hundred small random problems: the same verdict as trying every set of values", () => {
  const random = randomFrom(7);
  const count = { yes: 0, no: 0 };
  for (let i = 0; i < 400; i++) {
    const problem = randomProblem(random);
    const { answer, search } = solved(problem);
    const expected = possibleByTrying(problem, () => true) ? "yes" : "no";
    expect(answer, `problem ${i}`).toBe(expected);
    count[expected]++;
    if (answer === "yes") {
      for (let v = 0; v < problem.variables; v++) {
        if (search.settled(v) === 0) continue;
        const other = search.settled(v) === 1 ? fails(v) : holds(v);
        expect(
          possibleByTrying(problem, () => true, [other]),
          `settled ${v} of problem ${i}`,
        ).toBe(false);
      }
    }
  }
  expect(count.yes).toBeGreaterThan(80);
  expect(count.no).toBeGreaterThan(80);
});

test("an answer meets every clause that matters and its arcs form no ring", () => {
  const random = randomFrom(11);
  for (let i = 0; i < 200; i++) {
    const problem = randomProblem(random);
    const { answer, search } = solved(problem);
    if (answer !== "yes") continue;
    const values = Array.from({ length: problem.variables }, (_, v) => (search.holds(v) ? holds(v) : fails(v)));
    expect(
      possibleByTrying(problem, () => true, values),
      `problem ${i}`,
    ).toBe(true);
  }
});

test("a refutation's statements cannot hold together, and a minimal set loses its force with any one left out", () => {
  const random = randomFrom(23);
  for (let i = 0; i < 350; i++) {
    const problem = randomProblem(random);
    const { answer, search } = solved(problem);
    if (answer !== "no") continue;
    const core = [...search.refutation.statements];
    expect(search.refutation.assumptions).toEqual([]);
    expect(
      possibleByTrying(problem, (s) => core.includes(s)),
      `core of ${i}`,
    ).toBe(false);
    const least = minimalSet(problem, core, [...core].reverse());
    expect(possibleByTrying(problem, (s) => least.includes(s))).toBe(false);
    for (const out of least)
      expect(
        possibleByTrying(problem, (s) => s !== out && least.includes(s)),
        `${out} of ${i}`,
      ).toBe(true);
  }
});

test("assumptions: the same verdict as a clause each, and the ones used are named", () => {
  const random = randomFrom(31);
  for (let i = 0; i < 200; i++) {
    const problem = randomProblem(random);
    const search = new ClauseSearch(problem);
    for (let ask = 0; ask < 3; ask++) {
      const assumed = [0, 1, 2].map(() => 2 * random.int(0, problem.variables - 1) + random.int(0, 1));
      const answer = search.solve(assumed);
      expect(answer, `problem ${i}`).toBe(possibleByTrying(problem, () => true, assumed) ? "yes" : "no");
      if (answer === "no") {
        const { statements, assumptions } = search.refutation;
        expect(assumptions.every((literal) => assumed.includes(literal))).toBe(true);
        expect(possibleByTrying(problem, (s) => statements.includes(s), [...assumptions])).toBe(false);
      } else for (const literal of assumed) expect(search.holds(literal >> 1)).toBe((literal & 1) === 0);
    }
  }
});

test("arcs added later can be assumed, as often as one likes", () => {
  const random = randomFrom(43);
  for (let i = 0; i < 60; i++) {
    const problem = randomProblem(random);
    const search = new ClauseSearch(problem);
    for (let ask = 0; ask < 20; ask++) {
      const [u, v] = [random.int(0, problem.nodes - 1), random.int(0, problem.nodes - 1)];
      const arc = search.addArc(u, v);
      const asked = clauses(problem, [{ literals: [holds(problem.variables)], statement: 99 }], [[u, v]]);
      expect(search.solve([holds(arc)]), `problem ${i}`).toBe(possibleByTrying(asked, () => true) ? "yes" : "no");
    }
  }
});

test("preferred options are taken as far as they go", () => {
  const open = clauses(
    null,
    [{ literals: [holds(0), holds(1)], statement: 0 }],
    [
      [0, 1],
      [1, 0],
    ],
    2,
  );
  expect(solved(open).search.holds(0)).toBe(true);
  expect(solved(open).search.holds(1)).toBe(false);
  const turned = clauses(open, [{ literals: [holds(2)], statement: 1 }], [[1, 0]]);
  const { answer, search } = solved(turned);
  expect([answer, search.holds(0), search.holds(1), search.settled(0), search.settled(1)]).toEqual(["yes", false, true, -1, 1]);
});

test("tells where the arcs of its answer lead, and where those do that held before anything was decided", () => {
  const problem = clauses(
    null,
    [
      { literals: [holds(0)], statement: 0 },
      { literals: [holds(1), holds(2)], statement: 1 },
    ],
    [
      [0, 1],
      [1, 2],
      [2, 1],
    ],
    3,
  );
  const { search } = solved(problem);
  const [from, to] = [
    [0, 0, 1, 2, 1],
    [1, 2, 2, 1, 0],
  ] as const;
  expect([...search.leads(from, to)]).toEqual([1, 1, 1, 0, 0]);
  expect([...search.leads(from, to, true)]).toEqual([1, 0, 0, 0, 0]);
});

test("a clause whose guard does not hold is left alone", () => {
  const problem = clauses(
    null,
    [{ literals: [holds(1), fails(0)], statement: 0, guard: 0 }],
    [
      [-1, -1],
      [0, 1],
    ],
    2,
  );
  const { answer, search } = solved(problem);
  expect([answer, search.holds(0), search.holds(1)]).toEqual(["yes", false, false]);
});

test("work is counted and bounded", () => {
  const random = randomFrom(5);
  const problem = randomProblem(random);
  const { search } = solved(problem);
  expect(search.work).toBeGreaterThan(0);
  const wide = clauses(
    null,
    Array.from({ length: 50 }, (_, i) => ({ literals: [holds(2 * i), holds(2 * i + 1)], statement: i })),
    Array.from({ length: 100 }, (_, v): [number, number] => (v % 2 === 0 ? [v / 2, v / 2 + 1] : [(v + 1) / 2, (v - 1) / 2])),
    51,
  );
  expect(new ClauseSearch(wide).solve([], 10)).toBe("budget");
  expect(new ClauseSearch(wide).solve([], 10_000)).toBe("yes");
});

test("what is spent counts the work on arcs too, and every question has a budget of its own", () => {
  const n = 60;
  const back = Array.from({ length: n }, (_, i): [number, number] => [n - i, n - i - 1]);
  const chain = clauses(
    null,
    back.map((_, v) => ({ literals: [holds(v), holds(n)], statement: v })),
    [...back, [-1, -1]],
    n + 1,
  );
  const search = new ClauseSearch(chain);
  expect(search.solve()).toBe("yes");
  expect(search.spent).toBeGreaterThan(search.work + n);
  const cost = search.spent;
  expect(new ClauseSearch(chain).solve([], cost - search.work)).toBe("budget");
  expect(search.solve([], cost + 1)).toBe("yes");
});

test("where nothing was refuted, nothing is told of it, though the question before was", () => {
  const { search } = solved(clauses(null, [{ literals: [holds(0)], statement: 4 }], [[0, 1]], 2));
  const none = { statements: [], assumptions: [] };
  expect(search.refutation).toEqual(none);
  expect(search.solve([fails(0)])).toBe("no");
  expect(search.refutation).toEqual({ statements: [4], assumptions: [fails(0)] });
  expect(search.solve([holds(0)])).toBe("yes");
  expect(search.refutation).toEqual(none);
});

test("an empty clause is refuted by its statement alone", () => {
  const problem = clauses(null, [{ literals: [], statement: 4 }], [[0, 1]], 2);
  const { answer, search } = solved(problem);
  expect(answer).toBe("no");
  expect(search.refutation).toEqual({ statements: [4], assumptions: [] });
});

test("twenty thousand steps in a row, and a ring of as many, are no deeper than ten", () => {
  const n = 20_000;
  const chain = Array.from({ length: n }, (_, i): [number, number] => [i, i + 1]);
  const rows = chain.map((_, v) => ({ literals: [holds(v)], statement: v }));
  expect(solved(clauses(null, rows, chain, n + 1)).answer).toBe("yes");
  const ring = clauses(null, [...rows, { literals: [holds(n)], statement: n }], [...chain, [n, 0]], n + 1);
  const { answer, search } = solved(ring);
  expect(answer).toBe("no");
  expect(search.refutation.statements.length).toBe(n + 1);
});
