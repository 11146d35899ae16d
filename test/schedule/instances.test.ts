import { describe, expect, test } from "vitest";
import { type Problem, proofOf, verify } from "../../src/core/schedule";
import { check } from "../bench/schedule/check";
import { type Instance, instancesOf, readSet } from "../bench/schedule/files";
import { problemOfRow } from "../bench/schedule/read";
import { judge } from "../bench/schedule/report";

/** A few instances of published sets, and of one made from them with working calendars; each file names its origin. */
const sets = ["plain", "lags", "clocks"].map((name) => readSet(`test/fixtures/schedule/${name}.json`));

function prove(p: Problem, stride: number) {
  const search = proofOf(p);
  for (let k = 0; k * stride < 100_000 && !search.done; k++) search.step(stride);
  return search;
}

describe.each(sets)("of $set", (set) => {
  test.each(set.instances.map((i) => [i.name, i] as const))(
    "%s has the finish that is known, and no other claim is made",
    (_, instance: Instance) => {
      const p = problemOfRow(instance.row, set.calendars);
      const search = prove(p, 50);
      const { status, solution, bound } = search.result();
      expect(search.done).toBe(true);
      if (instance.known.feasible === false) {
        expect(status).toBe("infeasible");
        return;
      }
      expect(status).toBe("proved");
      expect(verify(p, solution!)).toEqual([]);
      expect(check(instance.row, set.calendars, solution!.start)).toBe(instance.known.ub);
      expect(bound).toBe(instance.known.ub);
    },
  );

  test("nothing known of an instance reaches the search: without it, the same answer, work and all", () => {
    const bare = set.instances.map((i) => ({ ...i.row, name: i.name }));
    const [first] = instancesOf("bare", bare.slice(0, 1));
    expect(first!.known).toEqual({ critical: null, lb: null, ub: null, feasible: set.set === "j30" ? true : null });
    const [a, b] = [set.instances[0]!, first!].map((i) => prove(problemOfRow(i.row, set.calendars), 50));
    expect(b!.result()).toEqual(a!.result());
    expect(b!.clashes).toBe(a!.clashes);
  });

  test("work in small portions and in one go is the same work", () => {
    const p = problemOfRow(set.instances.at(-1)!.row, set.calendars);
    const [a, b] = [prove(p, 1), prove(p, 100_000)];
    expect(a.result()).toEqual(b.result());
    expect(a.clashes).toBe(b.clashes);
  });
});

test("a wrong schedule and a wrong claim are told", () => {
  const set = sets[0]!;
  const instance = set.instances[0]!;
  const p = problemOfRow(instance.row, set.calendars);
  const { solution } = prove(p, 50).result();
  const start = solution!.start.slice();
  const outcome = { status: "proved", start, bound: instance.known.ub!, schedules: 1, conflicts: 0, seconds: 0 } as const;
  expect(judge(set, instance, outcome).wrong).toBeNull();
  expect(judge(set, instance, { ...outcome, status: "infeasible", start: null }).wrong).toMatch(/infeasible/);
  expect(judge(set, instance, { ...outcome, bound: instance.known.ub! + 1 }).wrong).toMatch(/above/);
  expect(judge(set, instance, { ...outcome, start: start.map((s) => s + 1) }).wrong).toMatch(/said to be proved/);
  expect(judge(set, instance, { ...outcome, start: new Int32Array(instance.row.n) }).wrong).toMatch(/before/);
});

test("no work asked for, none done, and nothing claimed", () => {
  const set = sets[1]!;
  const hard = set.instances.find((i) => i.known.ub !== null)!;
  const search = proofOf(problemOfRow(hard.row, set.calendars), null);
  search.step(0);
  expect(search.done).toBe(false);
  expect(search.result().status).toBe("not-found");
});
