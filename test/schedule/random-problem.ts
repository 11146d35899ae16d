import fc from "fast-check";
import { elapsed } from "../../src/core/clock";
import type { Problem } from "../../src/core/schedule";
import { constant, type JobSpec, type LinkSpec, problemOf, repeating } from "./problem-of";

/** A week of 100 minutes: a weekend crew with a break, an office, an afternoon, and plain time. Short, so that edges are met often. */
export const clocks = [
  elapsed,
  repeating("weekend", 100, [
    [70, 78],
    [80, 90],
    [92, 100],
  ]),
  repeating("office", 100, [
    [0, 30],
    [40, 60],
  ]),
  repeating("afternoon", 20, [[12, 19]]),
];

// A failing case is printed with the names of its clocks, not their tables.
for (const clock of clocks) Object.assign(clock, { [fc.toStringMethod]: () => clock.id });

const job: fc.Arbitrary<JobSpec> = fc.record({
  clock: fc.integer({ min: 0, max: 3 }),
  amount: fc.integer({ min: 0, max: 14 }),
  unbroken: fc.boolean(),
  release: fc.oneof({ weight: 4, arbitrary: fc.constant(0) }, { weight: 1, arbitrary: fc.integer({ min: 0, max: 300 }) }),
});

/** Problems whose least links lead from lower to higher jobs; most links, dues and fixed dates may make them infeasible. */
export const randomProblem: fc.Arbitrary<Problem> = fc.integer({ min: 1, max: 14 }).chain((n) =>
  fc
    .record({
      jobs: fc.array(job, { minLength: n, maxLength: n }),
      links: fc.array(link(n), { maxLength: n }),
      due: fc.array(fc.tuple(index(n), fc.integer({ min: 0, max: 900 })), { maxLength: 1 }),
      fixed: fc.array(fc.tuple(index(n), fc.integer({ min: 0, max: 600 })), { maxLength: 1 }),
      people: fc.integer({ min: 1, max: 2 }),
      demands: fc.array(fc.tuple(index(n), fc.integer({ min: 0, max: 2 }), fc.integer({ min: 1, max: 2 })), {
        minLength: n,
        maxLength: 3 * n,
      }),
      spans: fc.array(fc.tuple(index(n), index(n), fc.integer({ min: 1, max: 3 }), fc.integer({ min: 0, max: 1 })), { maxLength: 3 }),
    })
    .map(({ jobs, links, due, fixed, people, demands, spans }) =>
      problemOf({
        clocks,
        horizon: 20_000,
        jobs: jobs.map((j, i) => ({
          ...j,
          // An unbroken job longer than any window of its clock would make most problems infeasible for one dull reason.
          unbroken: j.unbroken === true && j.amount <= 7,
          ...(due.some(([d]) => d === i) ? { due: due.find(([d]) => d === i)![1] } : {}),
          ...(fixed.some(([f]) => f === i) ? { fixed: fixed.find(([f]) => f === i)![1] } : {}),
        })),
        links: [...links.filter((l) => l.from !== l.to), ...spans.filter(([a, b]) => a < b).map(([from, to]) => ({ from, to, least: 0 }))],
        capacities: [
          {
            id: "people",
            kind: "people",
            times: Int32Array.of(0, 150, 250),
            levels: Int32Array.of(people + 1, people, people + 1),
            holds: "working",
          },
          constant("pump", "equipment", 2, "span"),
          constant("pit", "alone", 2),
        ],
        demands: distinct(demands),
        stocks: [{ id: "sheets", inHand: 4, arrivals: [{ job: 0, number: 2 }] }],
        spans: spans
          .filter(([a, b]) => a < b)
          .map(([out, back, number, loss]) => ({ stock: 0, number, loss: Math.min(loss, number), out, back })),
      }),
    ),
);

function index(n: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: n - 1 });
}

function link(n: number): fc.Arbitrary<LinkSpec> {
  return fc
    .record({
      a: index(n),
      b: index(n),
      ends: fc.constantFrom("FS", "FS", "FS", "SS", "FF", "SF" as const),
      clock: fc.integer({ min: 0, max: 3 }),
      least: fc.integer({ min: 0, max: 25 }),
      most: fc.option(fc.integer({ min: 0, max: 160 }), { freq: 4, nil: null }),
    })
    .map(({ a, b, ends, clock, least, most }) => ({
      from: Math.min(a, b),
      to: Math.max(a, b),
      ends: ends as LinkSpec["ends"],
      clock,
      least,
      ...(most === null ? {} : { most: least + most }),
    }));
}

function distinct(rows: readonly (readonly [number, number, number])[]): (readonly [number, number, number])[] {
  return [...new Map(rows.map((r) => [`${r[0]} ${r[1]}`, r])).values()];
}
