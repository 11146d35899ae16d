import { describe, expect, it } from "vitest";
import { elapsed, officeDays, problemOf, repeating } from "../../../test/schedule/problem-of";
import { earliest, latest, netOf, solve, verify } from ".";

/** Works the first 10 of every 100 minutes. */
const morning = repeating("morning", 100, [[0, 10]]);
const times = (spec: Parameters<typeof problemOf>[0]) => {
  const p = problemOf(spec);
  return { p, early: earliest(p, netOf(p)) };
};

describe("earliest and latest times", () => {
  it("goes on after a pause and ends with the work", () => {
    const { p, early } = times({
      clocks: [elapsed, morning],
      jobs: [
        { amount: 15, clock: 1 },
        { amount: 5, clock: 1 },
      ],
      links: [{ from: 0, to: 1, least: 0 }],
    });
    expect([...early.start, ...early.finish]).toEqual([0, 105, 105, 110]);
    expect([...latest(p, netOf(p), 110 as never).start]).toEqual([0, 105]);
  });

  it("puts an unbroken job where it fits, forwards and backwards", () => {
    const { p, early } = times({ clocks: [elapsed, morning], jobs: [{ amount: 8, clock: 1, unbroken: true, release: 4 }] });
    expect(early.start[0]).toBe(100);
    expect(latest(p, netOf(p), 250 as never).start[0]).toBe(202);
    expect(latest(p, netOf(p), 205 as never).start[0]).toBe(102);
  });

  it("meets a finish that must come after a pause with one minute more", () => {
    const { early } = times({
      clocks: [elapsed, morning],
      jobs: [
        { amount: 0, release: 50 },
        { amount: 5, clock: 1 },
      ],
      links: [{ from: 0, to: 1, ends: "FF", least: 0 }],
    });
    expect([early.start[1], early.finish[1]]).toEqual([6, 101]);
  });

  it("pushes the job that a most-wait counts from", () => {
    const { early } = times({
      jobs: [{ amount: 5 }, { amount: 5, release: 100 }],
      links: [{ from: 0, to: 1, least: 0, most: 20 }],
    });
    expect(early.start[0]).toBe(75);
  });

  it("finds a ring that can never be content at once, however long the horizon", () => {
    const spec = {
      clocks: [elapsed, morning],
      horizon: 40 * 366 * 1440,
      jobs: [{ amount: 1 }, { amount: 1 }],
      links: [{ from: 0, to: 1, clock: 1, least: 8, most: 7 }],
    };
    const p = problemOf(spec);
    const result = solve(p);
    expect(result.status).toBe("infeasible");
    expect(result.witness).toEqual([
      { kind: "link", link: 0, side: "least" },
      { kind: "link", link: 0, side: "most" },
    ]);
  });

  it("lets a ring be content on a later day: three mornings' minutes within so much plain time only after a gap", () => {
    const uneven = repeating("uneven", 1000, [
      [0, 10],
      [300, 310],
      [320, 330],
    ]);
    const { early } = times({
      clocks: [elapsed, uneven],
      jobs: [{ amount: 0, clock: 1 }, { amount: 0 }],
      links: [
        { from: 0, to: 1, clock: 1, least: 15 },
        { from: 0, to: 1, most: 40 },
      ],
    });
    expect(early.broken).toBe(-1);
    expect(early.start[0]).toBeGreaterThanOrEqual(300);
    expect(early.start[1]! - early.start[0]!).toBeLessThanOrEqual(40);
  });

  it("counts an office's days without taking a minute for more than a minute", () => {
    const office = officeDays();
    const { early } = times({
      clocks: [elapsed, office],
      jobs: [{ amount: 0, release: 910 }, { amount: 0 }],
      links: [
        { from: 0, to: 1, clock: 1, least: 1 },
        { from: 0, to: 1, most: 1100 },
      ],
    });
    // Asked for at 15:10 it is there in 41 h, more than the most allows; asked for from 13:40 on the next day, in 18 h 20.
    expect(early.broken).toBe(-1);
    expect([...early.start]).toEqual([2260, 3360]);
  });

  it("says never of a clock that does not run, and of a job too long for every window", () => {
    const still = repeating("still", 1_000_000_000, [[999_999_990, 999_999_999]]);
    expect(solve(problemOf({ clocks: [elapsed, still], jobs: [{ amount: 1, clock: 1 }] })).witness).toEqual([{ kind: "job", job: 0 }]);
    expect(solve(problemOf({ clocks: [elapsed, morning], jobs: [{ amount: 11, clock: 1, unbroken: true }] })).witness).toEqual([
      { kind: "job", job: 0 },
    ]);
  });

  it("gives up honestly when somebody is asked for who is never there", () => {
    const nobody = { id: "crew", kind: "people" as const, times: Int32Array.of(0), levels: Int32Array.of(0), holds: "working" as const };
    const result = solve(problemOf({ jobs: [{ amount: 5 }], capacities: [nobody], demands: [[0, 0, 1]] }));
    expect(result).toMatchObject({ status: "not-found", stuck: { job: 0, of: { kind: "capacity", index: 0 } } });
  });

  it("the second look finds what is wrong with a schedule", () => {
    const p = problemOf({
      clocks: [elapsed, morning],
      jobs: [{ amount: 5, clock: 1, unbroken: true, release: 100, due: 106 }, { amount: 5 }],
      links: [{ from: 0, to: 1, least: 3, most: 4 }],
    });
    const rules = (start: number[], finish: number[]) =>
      verify(p, { start: Int32Array.from(start), finish: Int32Array.from(finish) }).map((b) => b.rule);
    expect(rules([100, 108], [105, 113])).toEqual([]);
    expect(rules([8, 108], [103, 113])).toEqual(["unbroken", "release", "most"]);
    expect(rules([50, 108], [105, 113])).toEqual(["start", "unbroken", "release"]);
    expect(rules([103, 108], [108, 114])).toEqual(["due", "finish", "least"]);
  });
});
