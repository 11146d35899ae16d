import { describe, expect, test } from "vitest";
import { clauses, possibleByTrying, randomProblem } from "../../../../test/fixtures/clauses";
import { randomFrom } from "../../base";
import { minimalSet } from "./minimal-set";
import { type ClauseProblem, holds, type TimeLayer } from "./problem";
import { restrict } from "./restrict";
import { ClauseSearch } from "./search";

/** One delay for each variable, and some that always hold, forward only. */
function withTimes(problem: ClauseProblem, random: ReturnType<typeof randomFrom>): ClauseProblem & { readonly time: TimeLayer } {
  const nodes = 4;
  const always = [
    [0, 1],
    [1, 2],
  ] as const;
  const own = Array.from(
    { length: problem.variables },
    () => [random.int(0, nodes - 1), random.int(0, nodes - 1), random.int(-5, 5)] as const,
  );
  const time: TimeLayer = {
    nodes,
    start: Int32Array.from({ length: problem.variables + 1 }, (_, v) => v),
    from: Int32Array.from([...own.map(([u]) => u), ...always.map(([u]) => u)]),
    to: Int32Array.from([...own.map(([, v]) => v), ...always.map(([, v]) => v)]),
    delay: Float64Array.from([...own.map(([, , d]) => d), 1, 1]),
  };
  return { ...problem, time };
}

/** As trying every set of values, with a plain look for rings that gain time. */
function possible(problem: ClauseProblem & { readonly time: TimeLayer }, keeps: (statement: number) => boolean): boolean {
  const { time, variables } = problem;
  for (let bits = 0; bits < 2 ** variables; bits++) {
    const arcs = [...time.from.keys()].filter((a) => a >= variables || ((bits >> a) & 1) === 1);
    const at = new Float64Array(time.nodes);
    for (let round = 0; round <= time.nodes; round++)
      for (const a of arcs)
        at[time.to[a] as number] = Math.max(
          at[time.to[a] as number] as number,
          (at[time.from[a] as number] as number) + (time.delay[a] as number),
        );
    if (arcs.some((a) => (at[time.from[a] as number] as number) + (time.delay[a] as number) > (at[time.to[a] as number] as number)))
      continue;
    const values = Array.from({ length: variables }, (_, v) => 2 * v + (((bits >> v) & 1) === 1 ? 0 : 1));
    if (possibleByTrying(problem, keeps, values)) return true;
  }
  return false;
}

describe("the time layer", () => {
  test("random problems: the same verdict as trying all, minimal sets, and times that keep every delay", () => {
    const random = randomFrom(9);
    const count = { yes: 0, no: 0, late: 0 };
    for (let i = 0; i < 100; i++) {
      const problem = withTimes(randomProblem(random), random);
      const search = new ClauseSearch(problem);
      const answer = search.solve();
      expect(answer, `problem ${i}`).toBe(possible(problem, () => true) ? "yes" : "no");
      count[answer === "yes" ? "yes" : "no"]++;
      if (answer === "yes") {
        const { time } = problem;
        for (const a of time.from.keys()) {
          if (a < problem.variables && !search.holds(a)) continue;
          expect(search.instant(time.to[a] as number)).toBeGreaterThanOrEqual(
            search.instant(time.from[a] as number) + (time.delay[a] as number),
          );
        }
        continue;
      }
      if (new ClauseSearch({ ...problem, time: null }).solve() === "yes") count.late++;
      const core = [...search.refutation.statements];
      const least = minimalSet(problem, core, core);
      expect(possible(problem, (s) => least.includes(s))).toBe(false);
      for (const out of least) expect(possible(problem, (s) => s !== out && least.includes(s))).toBe(true);
    }
    expect(count.yes).toBeGreaterThan(15);
    expect(count.late).toBeGreaterThan(15);
  });

  test("without one every instant is 0", () => {
    expect(new ClauseSearch(clauses(null, [], [], 1)).instant(0)).toBe(0);
  });
});

describe("restricting", () => {
  test("keeps the clauses of the statements, renamed, with what always holds", () => {
    const random = randomFrom(1);
    const base = clauses(
      null,
      [
        { literals: [holds(2)], statement: 7 },
        { literals: [holds(1), 1], statement: 3, guard: 0 },
      ],
      [
        [-1, -1],
        [5, 2],
        [2, 9],
      ],
      10,
    );
    const small = restrict(withTimes(base, random), (s) => s === 7);
    expect(small).toMatchObject({ nodes: 2, variables: 1 });
    expect([...small.from, ...small.to, ...small.literals, ...small.statement, ...small.guard]).toEqual([0, 1, 0, 7, -1]);
    expect([...(small.time?.start ?? [])]).toEqual([0, 1]);
    expect(small.time?.from).toHaveLength(3);
    const other = restrict(base, (s) => s === 3);
    expect([...other.from]).toEqual([1, -1]);
    expect([...other.to]).toEqual([0, -1]);
    expect([...other.literals, ...other.guard]).toEqual([0, 3, 1]);
    expect(other.time).toBeNull();
  });
});
