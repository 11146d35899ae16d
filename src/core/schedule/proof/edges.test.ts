import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { Edges, edgesOf } from "./edges";
import { edgeReasons } from "./edges-why";
import type { Model, Shared } from "./model";
import { StartMap } from "./start-map";
import { Stretches } from "./stretches";
import { TimeTable, taskRoom } from "./time-table";
import { Trail, Why } from "./trail";
import { Reasons } from "./why";

interface Job {
  readonly low: number;
  readonly high: number;
  readonly length: number;
  readonly number: number;
}

interface Crowd {
  readonly level: number;
  readonly jobs: readonly Job[];
}

function groundOf({ level, jobs }: Crowd) {
  const maps = jobs.map((j) => new StartMap(Int32Array.of(j.low), Int32Array.of(j.high), Int32Array.of(j.length)));
  const shared: Shared = {
    level,
    times: Int32Array.of(0),
    missing: Int32Array.of(0),
    tasks: jobs.map((j, k) => ({ out: k, back: k, number: j.number, runs: null })),
  };
  const none = jobs.map(() => null);
  const trail = new Trail(
    jobs.length,
    none,
    Int32Array.from(jobs, (j) => j.low),
    Int32Array.from(jobs, (j) => j.high),
  );
  const table = new TimeTable(0, shared, trail, maps, Math.max(...jobs.map((j) => j.high + j.length)));
  const stretches = new Stretches();
  return { maps, trail, table, stretches, edges: new Edges(table, trail, maps, stretches) };
}

/** Every choice of starts within the jobs' own bounds at which the level is kept. */
function placements({ level, jobs }: Crowd): number[][] {
  const out: number[][] = [];
  const place = (starts: number[]): void => {
    if (starts.length === jobs.length) {
      out.push(starts);
      return;
    }
    const { low, high, length, number } = jobs[starts.length]!;
    for (let s = low; s <= high; s++) {
      const fits = Array.from({ length }, (_, m) => s + m).every(
        (t) => starts.reduce((n, o, k) => n + (o <= t && t < o + jobs[k]!.length ? jobs[k]!.number : 0), number) <= level,
      );
      if (fits) place([...starts, s]);
    }
  };
  place([]);
  return out;
}

const holds = (starts: readonly number[], side: number, bound: number): boolean =>
  (side & 1) === 0 ? starts[side >> 1]! >= bound : -starts[side >> 1]! >= bound;

const job = (level: number) =>
  fc.record({
    low: fc.integer({ min: 0, max: 3 }),
    room: fc.integer({ min: 0, max: 6 }),
    length: fc.integer({ min: 1, max: 4 }),
    number: fc.integer({ min: 1, max: level }),
  });
const crowd = fc
  .integer({ min: 1, max: 3 })
  .chain((level) => fc.record({ level: fc.constant(level), jobs: fc.array(job(level), { minLength: 3, maxLength: 4 }) }))
  .map(({ level, jobs }): Crowd => ({ level, jobs: jobs.map(({ low, room, ...rest }) => ({ low, high: low + room, ...rest })) }));

/** Three jobs that each take every one of the shared numbers; `most`: with a most-wait. Whether edges are looked for, by number. */
function tried(implied: readonly boolean[], most: boolean): boolean[] {
  const jobs = 3;
  const maps = Array.from({ length: jobs }, () => new StartMap(Int32Array.of(0), Int32Array.of(9), Int32Array.of(2)));
  const tasks = maps.map((_, k) => ({ out: k, back: k, number: 1, runs: null }));
  const shared = implied.map((i): Shared => ({ level: 1, times: Int32Array.of(0), missing: Int32Array.of(0), tasks, implied: i }));
  const low = new Int32Array(jobs + 1);
  const high = new Int32Array(jobs + 1).fill(9);
  const lags = most ? [{ from: 0, to: 2, lag: -4 }] : [];
  const model: Model = { jobs, amount: new Int32Array(jobs).fill(2), maps, low, high, lags, arcs: [], shared };
  const none = Array.from(low, () => null);
  const trail = new Trail(jobs + 1, none, low, high);
  const tables = shared.map((s, k) => new TimeTable(k, s, trail, maps, 11));
  return edgesOf(model, tables, trail, new Stretches()).map((e) => e !== null);
}

test("edges are looked for where jobs take one number each, where there is a most-wait, and among what excludes each other", () => {
  expect(tried([false], false)).toEqual([true]);
  expect(tried([false, false], false)).toEqual([false, false]);
  expect(tried([false, false], true)).toEqual([true, true]);
  expect(tried([false, false, true], false)).toEqual([false, false, true]);
  expect(tried([false, true], false)).toEqual([true, true]);
});

describe("edge finding", () => {
  test("puts a job after two that fill a stretch, where the time-table says nothing", () => {
    const two = { low: 0, high: 2, length: 2, number: 1 };
    const { trail, table, edges } = groundOf({ level: 1, jobs: [two, two, { low: 1, high: 9, length: 2, number: 1 }] });
    expect(table.run()).toBe(true);
    expect(trail.low(2)).toBe(1);
    expect(edges.run()).toBe(true);
    expect(trail.low(2)).toBe(4);
  });

  test("puts a job before two that fill a stretch", () => {
    const two = { low: 6, high: 8, length: 2, number: 1 };
    const { trail, table, edges } = groundOf({ level: 1, jobs: [two, two, { low: 0, high: 7, length: 2, number: 1 }] });
    expect(table.run() && edges.run()).toBe(true);
    expect(trail.high(2)).toBe(4);
  });

  test("sees that three do not go into a stretch", () => {
    const one = { low: 0, high: 3, length: 2, number: 1 };
    const { table, edges } = groundOf({ level: 1, jobs: [one, one, one] });
    expect(table.run()).toBe(true);
    expect(edges.run()).toBe(false);
  });

  test("says only what every placement says, and gives reasons that say it", () => {
    let moves = 0;
    let clashes = 0;
    fc.assert(
      fc.property(crowd, fc.array(fc.tuple(fc.nat(7), fc.integer({ min: 1, max: 3 })), { maxLength: 4 }), (c, decisions) => {
        const { trail, table, edges, maps, stretches } = groundOf(c);
        const all = placements(c);
        const out = new Reasons();
        const check = (side: number, asked: number, what: number, what2: number, move: number): void => {
          edgeReasons(
            trail,
            maps,
            table,
            { task: what % taskRoom, from: stretches.from[what2]!, to: stretches.to[what2]!, side, asked, move },
            out,
          );
          for (let k = 0; k < out.size; k++) expect(trail.boundBefore(out.side[k]!, move)).toBeGreaterThanOrEqual(out.bound[k]!);
          const left = all.filter((s) => Array.from({ length: out.size }, (_, k) => holds(s, out.side[k]!, out.bound[k]!)).every(Boolean));
          expect(left.every((s) => side >= 0 && holds(s, side, asked))).toBe(true);
        };
        for (const [pick, by] of [[-1, 0] as const, ...decisions]) {
          const side = pick % (2 * c.jobs.length);
          if (pick >= 0 && trail.bound[side]! + by + trail.bound[side ^ 1]! <= 0) trail.decide(side, trail.bound[side]! + by);
          for (let before = -1; before < trail.size; ) {
            before = trail.size;
            c.jobs.forEach((_, k) => {
              table.touch(k, true);
            });
            const fine = table.run();
            if (!fine) return;
            const first = trail.size;
            const ok = edges.run();
            for (let e = first; e < trail.size; e++) {
              expect(trail.why[e]).toBe(Why.edge);
              moves++;
              check(trail.side[e]!, trail.to[e]!, trail.what[e]!, trail.what2[e]!, e);
            }
            if (ok) continue;
            clashes++;
            const { clash } = trail;
            const over = clash.side < 0 ? 0 : 1 - trail.bound[clash.side ^ 1]!;
            check(clash.side, over, clash.what, clash.what2, trail.size);
            return;
          }
        }
      }),
      { numRuns: 600 },
    );
    expect(moves).toBeGreaterThan(50);
    expect(clashes).toBeGreaterThan(5);
  });
});
