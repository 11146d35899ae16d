import { describe, expect, test } from "vitest";
import { sayAll } from "../../../test/fixtures/say";
import { place, smallCase, step } from "../../../test/fixtures/small";
import { refuteWithTimes, type TimeBounds } from "./index";

const hour = 60;
const bounds = (over: Partial<TimeBounds> = {}): TimeBounds => ({
  work: () => ({ least: hour, most: hour }),
  least: ({ amount }) => amount,
  most: ({ amount }) => amount,
  notBefore: () => null,
  deadline: () => null,
  fixed: () => null,
  ...over,
});
const steps = [step("a"), step("b"), step("c")];
const ask = (partial: object, over: Partial<TimeBounds> = {}) => {
  const answer = refuteWithTimes(smallCase({ steps, ...partial }).build, bounds(over));
  if (answer.verdict === "refuted") return answer.findings.map((f) => [f.code, sayAll(f)]);
  return answer.verdict === "possible" ? [...answer.start] : answer.verdict;
};
const wait = (id: string, from: string, to: string, over: object) => ({ id, from, to, why: "", ...over });

describe("order and times together", () => {
  test("starts respect work, least and most", () => {
    const [a = 0, b = 0, c = 0] = ask({
      waits: [wait("w", "a", "b", { least: "2 h", most: "2 h" }), wait("v", "c", "b", { least: "5 h" })],
    }) as number[];
    expect(b - a).toBe(3 * hour);
    expect(b - c).toBeGreaterThanOrEqual(6 * hour);
  });

  test("a most that the work in between overruns", () => {
    const steps = [step("a"), step("b", { after: ["a"] }), step("c", { after: ["b"] })];
    const waits = [wait("w", "a", "c", { most: "59 min" })];
    expect(ask({ steps, waits })).toEqual([["access.late", ["work(b)", "wait(a b a>b)", "wait(b c b>c)", "wait(a c w)"]]]);
    expect(ask({ steps, waits: [wait("w", "a", "c", { most: "1 h" })] })).toHaveLength(3);
  });

  test("each end counts as written", () => {
    const at = (fromEnd: string, toEnd: string, most: string) =>
      ask({ waits: [wait("w", "a", "b", { least: "3 h" }), wait("v", "a", "b", { fromEnd, toEnd, most })] });
    expect(at("start", "start", "4 h")).toHaveLength(3);
    expect(at("start", "start", "239 min")).toEqual([["access.late", ["work(a)", "wait(a b w)", "wait(a b v)"]]]);
    expect(at("start", "finish", "5 h")).toHaveLength(3);
    expect(at("start", "finish", "299 min")).toEqual([["access.late", ["work(a)", "work(b)", "wait(a b w)", "wait(a b v)"]]]);
    expect(at("finish", "finish", "4 h")).toHaveLength(3);
    expect(at("finish", "finish", "239 min")).toEqual([["access.late", ["work(b)", "wait(a b w)", "wait(a b v)"]]]);
  });

  test("dates are statements too, and what is not needed is left out", () => {
    const chained = [
      step("a", { notBefore: "2027-03-07" }),
      step("b", { after: ["a"], deadline: "2027-03-07" }),
      step("c", { fixed: "2027-03-08" }),
    ];
    const over = {
      notBefore: (s: number) => (s === 0 ? 100 : null),
      deadline: (s: number) => (s === 1 ? 219 : null),
      fixed: (s: number) => (s === 2 ? 500 : null),
    };
    expect(ask({ steps: chained }, over)).toEqual([
      ["access.late", ["work(a)", "not-before(a)", "work(b)", "deadline(b)", "wait(a b a>b)"]],
    ]);
    const eased = ask({ steps: chained }, { ...over, deadline: (s) => (s === 1 ? 220 : null) }) as number[];
    expect(eased[2]).toBe(500);
    expect(eased[0]).toBeGreaterThanOrEqual(100);
    const fixed = ask(
      { steps: [step("a"), step("b", { after: ["a"], fixed: "2027-03-06" }), step("c")] },
      { notBefore: () => 0, fixed: (s) => (s === 1 ? 59 : null) },
    );
    expect(fixed).toEqual([["access.late", ["work(a)", "not-before(a)", "fixed(b)", "wait(a b a>b)"]]]);
  });

  test("a date before the build's epoch is one like others, and what has none may be as early", () => {
    const [a = 0, b = 0] = ask({ steps: [step("a"), step("b", { after: ["a"] })] }, { fixed: (s) => (s === 1 ? -500 : null) }) as number[];
    expect([b, a <= -500 - hour]).toEqual([-500, true]);
  });

  test("steps are told one after the other, of each what it must get to before how long it takes and its dates", () => {
    const partial = {
      places: [place("cage")],
      pieces: [{ id: "panel", closes: ["cage.door"] }],
      steps: [
        step("tie", { reaches: [{ place: "cage" }] }),
        step("oil", { reaches: [{ place: "cage" }], after: ["tie"] }),
        step("set", { puts: ["panel"] }),
      ],
    };
    expect(ask(partial, { notBefore: (s) => (s === 0 ? 0 : null), deadline: (s) => (s === 2 ? 170 : null) })).toEqual([
      [
        "access.late",
        [
          "ways(cage person)",
          "closes(panel cage.door)",
          "work(tie)",
          "not-before(tie)",
          "reach(oil cage person)",
          "work(oil)",
          "work(set)",
          "deadline(set)",
          "wait(tie oil tie>oil)",
        ],
      ],
    ]);
  });

  test("of two that share what a step takes both are told", () => {
    const over = { notBefore: (s: number) => (s === 0 ? 0 : null), deadline: (s: number) => (s === 0 ? 30 : null) };
    const late = ask(
      { steps: [step("a"), step("b", { after: ["a"] })], waits: [wait("w", "a", "b", { fromEnd: "start", most: "30 min" })] },
      over,
    );
    expect([...(late as unknown[])].sort()).toEqual([
      ["access.late", ["work(a)", "not-before(a)", "deadline(a)"]],
      ["access.late", ["work(a)", "wait(a b a>b)", "wait(a b w)"]],
    ]);
  });

  test("of two that share what a step takes, one of them for its dates alone, both are told", () => {
    const over = {
      notBefore: (s: number) => (s === 0 ? 0 : null),
      deadline: (s: number) => [30, 100, null][s] as number | null,
      fixed: (s: number) => (s === 2 ? 0 : null),
    };
    const chained = [step("a"), step("b", { after: ["a"] }), step("c")];
    const late = ask({ steps: chained, waits: [wait("w", "c", "a", { fromEnd: "start" })] }, over);
    expect([...(late as unknown[])].sort()).toEqual([
      ["access.late", ["work(a)", "not-before(a)", "deadline(a)"]],
      ["access.late", ["work(a)", "work(b)", "deadline(b)", "fixed(c)", "wait(a b a>b)", "wait(c a w)"]],
    ]);
  });

  test("ways that lead through each other in a ring say nothing of time", () => {
    const partial = {
      places: [
        place("a", { id: "door", passes: ["person"], through: "b" }),
        place("b", { id: "gap", passes: ["person"], through: "a" }, { id: "gate", passes: ["person"] }),
      ],
      pieces: [{ id: "shut", closes: ["b.gate"] }],
      steps: [step("close", { puts: ["shut"] }), step("work", { reaches: [{ place: "a" }] })],
    };
    const fixed = (late: number) => ({ fixed: (s: number) => (s === 0 ? late : 0) });
    expect(ask(partial, fixed(hour))).toEqual([hour, 0]);
    const [said] = ask(partial, fixed(hour - 1)) as [string, string[]][];
    expect(said?.[0]).toBe("access.late");
    expect(said?.[1]).toEqual([
      "ways(a person)",
      "through(a.door)",
      "ways(b person)",
      "through(b.gap)",
      "closes(shut b.gate)",
      "fixed(close)",
      "reach(work a person)",
      "work(work)",
      "fixed(work)",
    ]);
  });

  test("work and dates are told as written", () => {
    const dated = [
      step("a", { notBefore: "2027-03-09" }),
      step("b", { after: ["a"], deadline: "2027-03-10" }),
      step("c", { fixed: "2027-03-08", after: ["b"] }),
    ];
    const told = (over: Partial<TimeBounds>) => {
      const answer = refuteWithTimes(smallCase({ steps: dated }).build, bounds(over));
      const because = answer.verdict === "refuted" ? (answer.findings[0]?.because ?? []) : [];
      return because.filter(({ rule }) => rule !== "wait").map(({ rule, step: id, detail }) => [rule, id, detail]);
    };
    expect(told({ notBefore: (s) => (s === 0 ? 900 : null), fixed: (s) => (s === 2 ? 500 : null) })).toEqual([
      ["not-before", "a", { date: "2027-03-09" }],
      ["fixed", "c", { date: "2027-03-08" }],
    ]);
    expect(told({ notBefore: (s) => (s === 0 ? 900 : null), deadline: (s) => (s === 1 ? 1000 : null) })).toEqual([
      ["work", "a", { minutes: hour }],
      ["not-before", "a", { date: "2027-03-09" }],
      ["work", "b", { minutes: hour }],
      ["deadline", "b", { date: "2027-03-10" }],
    ]);
  });

  test("dropping work never lets a step end before it starts", () => {
    const answer = refuteWithTimes(
      smallCase({
        steps: [step("a"), step("b", { after: ["a"] })],
        waits: [wait("w", "b", "a", { fromEnd: "finish", toEnd: "start", most: "1 h" })],
      }).build,
      bounds(),
    );
    expect(answer.verdict).toBe("possible");
  });

  test("where the default is too late the other option is taken", () => {
    const partial = {
      places: [place("cage")],
      pieces: [{ id: "panel", closes: ["cage.door"] }],
      steps: [step("set", { puts: ["panel"] }), step("strip", { takes: ["panel"] }), step("tie", { reaches: [{ place: "cage" }] })],
    };
    const [set = 0, strip = 0, tie = 0] = ask(partial, {
      notBefore: (s) => (s === 2 ? 600 : 0),
      deadline: (s) => (s === 0 ? 120 : null),
    }) as number[];
    expect(set + hour).toBeLessThanOrEqual(strip);
    expect(strip + hour).toBeLessThanOrEqual(tie);
  });

  test("what order alone refutes keeps its own code", () => {
    const ring = { steps: [step("a", { after: ["b"] }), step("b", { after: ["a"] })] };
    expect(ask(ring)).toEqual([["access.ring", ["wait(b a b>a)", "wait(a b a>b)"]]]);
  });

  test("a work that may be stretched has no most", () => {
    const waits = [
      wait("w", "a", "b", { fromEnd: "start", toEnd: "finish", least: "9 h" }),
      wait("v", "a", "b", { fromEnd: "start", toEnd: "start", most: "1 h" }),
    ];
    expect(ask({ waits })).toEqual([["access.late", ["work(b)", "wait(a b w)", "wait(a b v)"]]]);
    expect(ask({ waits }, { work: () => ({ least: hour, most: Number.POSITIVE_INFINITY }) })).toHaveLength(3);
  });

  test("where the work allowed was spent first, no answer was found", () => {
    const { build } = smallCase({ steps, waits: [wait("w", "a", "b", { least: "2 h" })] });
    expect(refuteWithTimes(build, bounds(), 0)).toEqual({ verdict: "not-found" });
    expect(refuteWithTimes(build, bounds(), 100_000)).toEqual(refuteWithTimes(build, bounds()));
  });

  test("bounds that are not there bind nothing", () => {
    const waits = [wait("w", "a", "b", { least: "3 h", most: "3 h" })];
    expect(ask({ waits }, { most: () => Number.POSITIVE_INFINITY, least: () => 1e6 })).toHaveLength(3);
    expect(ask({ waits }, { most: () => 179 })).toEqual([["access.late", ["wait(a b w)"]]]);
  });
});
