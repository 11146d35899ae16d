import fc from "fast-check";
import type { Problem } from "../../src/core/schedule";
import { constant, elapsed, type JobSpec, type LinkSpec, problemOf, repeating } from "./problem-of";

/** Plain time, days of 6 minutes with 4 worked, and mornings and evenings of days of 8. */
const clocks = [elapsed, repeating("short day", 6, [[1, 5]]), repeating("two shifts", 8, [[0, 3], [4, 7]])]; // biome-ignore format: a table of windows

const horizon = 18;

const job: fc.Arbitrary<JobSpec> = fc.record({
  clock: fc.integer({ min: 0, max: 2 }),
  amount: fc.integer({ min: 0, max: 5 }),
  unbroken: fc.boolean(),
  release: fc.oneof({ weight: 3, arbitrary: fc.constant(0) }, { weight: 1, arbitrary: fc.integer({ min: 0, max: 8 }) }),
});

/** Problems of up to four jobs with every feature there is, small enough to try every minute. Links go both ways, so rings of waits occur. */
export const tinyProblem: fc.Arbitrary<Problem> = fc.integer({ min: 2, max: 4 }).chain((n) => {
  const index = fc.integer({ min: 0, max: n - 1 });
  const link = fc
    .record({
      from: index,
      to: index,
      ends: fc.constantFrom("FS", "FS", "SS", "FF", "SF" as const),
      clock: fc.integer({ min: 0, max: 2 }),
      least: fc.integer({ min: -1, max: 4 }),
      most: fc.integer({ min: -6, max: 6 }),
    })
    .map(({ least, most, ...l }): LinkSpec => ({ ...l, least, most: Math.max(-1, most) }));
  return fc
    .record({
      jobs: fc.array(job, { minLength: n, maxLength: n }),
      links: fc.array(link, { maxLength: Math.max(1, n - 1) }),
      due: fc.option(fc.tuple(index, fc.integer({ min: 4, max: 20 })), { freq: 3 }),
      fixed: fc.option(fc.tuple(index, fc.integer({ min: 0, max: 12 })), { freq: 3 }),
      demands: fc.array(fc.tuple(index, fc.integer({ min: 0, max: 2 }), fc.integer({ min: 1, max: 3 })), {
        minLength: n,
        maxLength: 3 * n,
      }),
      leave: fc.integer({ min: 0, max: 10 }),
      spans: fc.array(
        fc.tuple(index, fc.integer({ min: -1, max: n - 1 }), fc.integer({ min: 1, max: 2 }), fc.integer({ min: 0, max: 1 })),
        {
          maxLength: 2,
        },
      ),
      inHand: fc.integer({ min: 0, max: 3 }),
    })
    .map(({ jobs, links, due, fixed, demands, leave, spans, inHand }) =>
      problemOf({
        clocks,
        horizon,
        jobs: jobs.map((j, i) => ({
          ...j,
          // Nothing takes no time unbroken.
          unbroken: j.unbroken === true && j.amount >= 1 && j.amount <= 4,
          ...(due?.[0] === i ? { due: due[1] } : {}),
          ...(fixed?.[0] === i ? { fixed: fixed[1] } : {}),
        })),
        links: links.filter((l) => l.from !== l.to),
        capacities: [
          // Four people, two of them away for five minutes.
          {
            id: "people",
            kind: "people",
            times: Int32Array.of(0, leave, leave + 5),
            levels: Int32Array.of(4, 2, 4),
            holds: "working",
          },
          constant("pump", "equipment", 3, "span"),
          constant("pit", "alone", 3),
        ],
        demands: [...new Map(demands.map((d) => [`${d[0]} ${d[1]}`, d] as const)).values()],
        stocks: [{ id: "sheets", inHand, arrivals: [{ job: 0, number: 2 }] }],
        spans: spans.map(([out, back, number, loss]) => ({ stock: 0, number, loss: Math.min(loss, number), out, back })),
      }),
    );
});

/** Six jobs that crowd each other, with waits of both kinds: few features, many clashes. */
export const crowdedProblem: fc.Arbitrary<Problem> = fc
  .record({
    jobs: fc.array(fc.record({ clock: fc.integer({ min: 0, max: 1 }), amount: fc.integer({ min: 1, max: 4 }) }), {
      minLength: 6,
      maxLength: 6,
    }),
    needs: fc.array(fc.tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 0, max: 3 })), { minLength: 6, maxLength: 6 }),
    waits: fc.array(
      fc.record({
        from: fc.integer({ min: 0, max: 5 }),
        to: fc.integer({ min: 0, max: 5 }),
        ends: fc.constantFrom("SS", "FS" as const),
        least: fc.integer({ min: -1, max: 3 }),
        most: fc.integer({ min: -1, max: 5 }),
      }),
      { maxLength: 4 },
    ),
  })
  .map(({ jobs, needs, waits }) =>
    problemOf({
      clocks,
      horizon: 13,
      jobs,
      links: waits.filter((w) => w.from !== w.to),
      capacities: [constant("people", "people", 5), constant("shores", "equipment", 3, "span")],
      demands: needs.flatMap(([people, shores], j) => [[j, 0, people] as const, ...(shores > 0 ? [[j, 1, shores] as const] : [])]),
    }),
  );
