import { describe, expect, test } from "vitest";
import { realistic } from "../../../../test/bench/realistic";
import { buildOf } from "../../../../test/fixtures/make";
import { access } from "../../access";
import type { Build } from "../../build";
import { buildClocks } from "../../pour";
import type { Problem, Solution } from "../../schedule";
import { datesFor } from "../dates";
import { PlanSearch } from "./plan-search";
import { usableOf } from "./usable";

const calendars = [
  { id: "weekends", name: "Weekends", week: { sat: ["8:00-12:00", "13:00-17:00"] } },
  { id: "there", name: "There", week: { sat: ["7:00-18:00"] } },
  { id: "pours", name: "Pours", week: { sat: ["7:00-18:00"] } },
];
const people = ["ann", "ben", "cal"].map((id) => ({ id, name: id, calendar: "there" }));
const day = 1440;

function dated(build: Build): { problem: Problem; solution: Solution } {
  const { bound, result } = datesFor(build, access(build), buildClocks(build));
  return { problem: bound.problem, solution: result.solution! };
}

/** All people together, with the jobs that ask for any. */
function everybody(p: Problem, until: number) {
  const capacity = p.capacities.findIndex(({ kind, id }) => kind === "people" && id === "ann ben cal");
  const demand = new Int32Array(p.jobs);
  for (let d = 0; d < p.demands.length; d += 3) if (p.demands[d + 1] === capacity) demand[p.demands[d]!] = p.demands[d + 2]!;
  const jobs = [...demand.keys()].filter((j) => demand[j]! > 0 && p.amount[j]! > 0);
  return { capacity, demand, jobs, usable: usableOf(p, capacity, demand, jobs, until) };
}

describe("the hours of a Saturday on which three are there from 7:00 to 18:00", () => {
  const form = { id: "form", work: "6 h", hands: 3 };
  const pour = (length: string) => ({
    id: "pour",
    work: length,
    hands: 2,
    unbroken: true,
    calendar: "pours",
    equipment: [{ of: "mixer" }],
  });
  const sums = (steps: object[]) => {
    const { problem } = dated(buildOf({ calendars, people, equipment: [{ id: "mixer" }], steps }));
    const { usable, jobs } = everybody(problem, 30 * day);
    return { saturday: [...usable.upTo(day)], most: jobs.map((j) => [...usable.mostOf(j)]) };
  };

  test("are worth those in which what there is to do may be done", () => {
    expect(sums([form]).saturday).toEqual([3 * 8 * 60]);
  });

  test("and over lunch, or early, no more than one mixer keeps busy, of which a pour takes what its length makes it take", () => {
    // Early, late and over lunch only the pour's calendar runs: three hours, of two people; the rest for all three.
    const { saturday, most } = sums([form, pour("3 h")]);
    expect(saturday).toEqual([2 * 3 * 60, 3 * 8 * 60]);
    expect(most).toEqual([
      [0, 3 * 6 * 60],
      [2 * 60, 2 * 3 * 60],
    ]);
    // From 7:00 on, six hours have the first hour and lunch in them, and four of the rest lie between.
    expect(sums([form, pour("6 h")]).most[1]).toEqual([2 * 2 * 60, 2 * 5 * 60]);
  });

  test("so that no finish is said to be possible for which lunch would have to be worked through", () => {
    const steps = Array.from({ length: 4 }, (_, k) => ({ id: `form-${k}`, work: "8 h", hands: 3 }));
    const search = new PlanSearch(buildOf({ calendars, people, steps }));
    while (!search.done) search.step(100);
    expect(search.sought()).toMatchObject({ proved: "any-order", tried: 0, bound: { by: "hands", work_min: 4 * 3 * 480 } });
  });
});

test.each([1, 2, 3, 4])("no stretch of a plan has more work in it than can be used of it (%i)", (start) => {
  const build = realistic(100, start);
  const { problem: p, solution } = dated({ ...build, people: build.people.slice(0, 3) });
  const until = Math.max(...solution.finish.subarray(0, build.steps.length));
  const { demand, jobs, usable } = everybody(p, until);
  let narrowest = Number.POSITIVE_INFINITY;
  for (const first of jobs) {
    for (const last of jobs) {
      const [from, to] = [solution.start[first]!, solution.finish[last]!];
      const inside = jobs.filter((j) => solution.start[j]! >= from && solution.finish[j]! <= to);
      if (to <= from || inside.length === 0) continue;
      const before = usable.upTo(from);
      const most = inside.map((j) => usable.mostOf(j));
      const there = usable.upTo(to).reduce(
        (sum, of, s) =>
          sum +
          Math.min(
            of - before[s]!,
            most.reduce((all, own) => all + own[s]!, 0),
          ),
        0,
      );
      narrowest = Math.min(narrowest, there - inside.reduce((sum, j) => sum + demand[j]! * p.amount[j]!, 0));
    }
  }
  expect(narrowest).toBeGreaterThanOrEqual(0);
  expect(narrowest).toBeLessThan(60);
});
