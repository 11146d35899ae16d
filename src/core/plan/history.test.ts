import { describe, expect, test } from "vitest";
import { buildOf } from "../../../test/fixtures/make";
import { place, step } from "../../../test/fixtures/small";
import type { Build } from "../build";
import { clocksOf } from "../clock";
import { asDone, handsDone } from "./history";
import { plan } from "./plan-of";
import { verifyPlan } from "./verify/verify-plan";

const cage = place("cage", { id: "north", passes: ["person"] });
const shut = { id: "shut", closes: ["cage.north"] };
const tie = (more: object = {}) => step("tie", { reaches: [{ place: "cage" }], work: "4 h", ...more });
const close = (more: object = {}) => step("close", { puts: ["shut"], work: "2 h", ...more });
const done = (start: string, finish: string) => ({ done: { start, finish } });
const when = (build: Build, id: string): string => {
  const made = plan(build);
  expect(verifyPlan(build, made)).toEqual([]);
  return clocksOf(build).time.momentOf(made.steps[build.at.step.get(id)!]!.start);
};

describe("a build that is under way", () => {
  test("a done step stands where it was done, on no calendar and with nobody, and what waits for it goes on from there", () => {
    const steps = [tie(done("2027-03-09T18:00", "2027-03-10T01:00")), close({ after: ["tie"] })];
    const build = buildOf({ places: [cage], pieces: [shut], steps });
    const made = plan(build);
    expect(made.status).toBe("planned");
    expect(verifyPlan(build, made)).toEqual([]);
    const { momentOf } = clocksOf(build).time;
    expect([momentOf(made.steps[0]!.start), momentOf(made.steps[0]!.finish)]).toEqual(["2027-03-09T18:00", "2027-03-10T01:00"]);
    expect(made.steps[0]!.holder.kind).toBe("done");
    expect(made.steps[1]!.start).toBeGreaterThan(made.steps[0]!.finish);
    expect(made.handMinutes).toBe(360);
  });

  test("who did what is done does nothing else in those hours; who was free may", () => {
    const people = [{ id: "ana" }, { id: "ben" }];
    const one = done("2027-03-06T08:00", "2027-03-06T10:00");
    const both = { steps: [step("a", { hands: 2, ...one }), step("b", { work: "1 h" })], people };
    expect(when(buildOf(both), "b")).toBe("2027-03-06T10:00");
    const single = { ...both, steps: [step("a", one), step("b", { work: "1 h" })] };
    expect(when(buildOf(single), "b") < "2027-03-06T10:00").toBe(true);
  });

  test("nothing that is not done starts before the moment from which the rest goes on", () => {
    const build = buildOf({ steps: [tie({ reaches: [] })], resumes: "2027-04-01" });
    expect(when(build, "tie") >= "2027-04-01").toBe(true);
    expect(plan(build).steps[0]!.holder.kind).toBe("resumes");
  });

  test("what a done piece has closed is closed: the work behind it cannot be done, and the tick taken back is what would let it", () => {
    const build = buildOf({ places: [cage], pieces: [shut], steps: [tie(), close(done("2027-03-06T09:00", "2027-03-06T11:00"))] });
    const made = plan(build);
    expect(made.status).toBe("no-order");
    const because = made.findings.flatMap((f) => f.because ?? []).map(({ rule }) => rule);
    expect(because).toContain("done");
    expect(because).toContain("closes");
  });

  test("what was done in another order than written is no block; the step left out is named and comes after", () => {
    const steps = [tie({ reaches: [] }), step("look", { after: ["tie"], ...done("2027-03-06T09:00", "2027-03-06T11:00") })];
    const build = buildOf({ steps });
    const made = plan(build);
    expect(made.status).toBe("planned");
    expect(made.findings.filter(({ code }) => code === "plan.done-first").map(({ detail }) => detail)).toEqual([
      { step: "tie", other: "look" },
    ]);
  });

  test("stock that is out with done work was in hand, and what a done step needed had come", () => {
    const sheets = { id: "sheets", inHand: 2 };
    const form = { id: "form", uses: [{ of: "sheets", number: 6 }] };
    const steps = [
      step("set", { puts: ["form"], needs: ["load"], ...done("2027-03-06T09:00", "2027-03-06T11:00") }),
      step("strip", { takes: ["form"], work: "1 h" }),
    ];
    const build = buildOf({ stock: [sheets], pieces: [form], steps, deliveries: [{ id: "load", promised: "2027-06-01" }] });
    const made = plan(build);
    expect(made.status).toBe("planned");
    expect(verifyPlan(build, made)).toEqual([]);
    expect(clocksOf(build).time.momentOf(made.deliveries[0]!.arrives) < "2027-03-08").toBe(true);
  });

  test("what came back is counted once, without what was lost, and what was brought by then was not in hand before", () => {
    const form = (id: string) => ({ id, uses: [{ of: "sheets", number: 6, loss: 1 }] });
    const steps = [
      step("set-a", { puts: ["a"], ...done("2027-03-06T09:00", "2027-03-06T11:00") }),
      step("strip-a", { takes: ["a"], ...done("2027-03-07T09:00", "2027-03-07T10:00") }),
      step("set-b", { puts: ["b"], ...done("2027-03-07T10:00", "2027-03-07T12:00") }),
      step("set-c", { puts: ["c"], ...done("2027-03-13T09:00", "2027-03-13T12:00") }),
    ];
    const inHand = (promised: string): number => {
      const deliveries = [{ id: "load", promised, brings: [{ of: "sheets", number: 4 }] }];
      const pieces = [form("a"), form("b"), form("c")];
      return asDone(buildOf({ stock: [{ id: "sheets", inHand: 2 }], pieces, steps, deliveries })).stock[0]!.inHand;
    };
    expect(inHand("2027-06-01")).toBe(6 - 5 + 6 + 6);
    expect(inHand("2027-03-10")).toBe(6 - 5 + 6 + 6 - 4);
    expect(inHand("2027-03-01")).toBe(6 - 5 + 6 + 6 - 4);
  });

  test("who was busy stays so in every build that is made of it for a try", () => {
    const build = asDone(buildOf({ steps: [step("dig", { hands: 2, ...done("2027-03-06T08:00", "2027-03-06T16:00") }), step("form")] }));
    const busy = [{ start: "2027-03-06T08:00", finish: "2027-03-06T16:00", hands: [{ role: "hands", number: 2 }] }];
    expect(handsDone(build)).toEqual(busy);
    expect(handsDone({ ...build, served: null })).toEqual(busy);
    expect(handsDone(asDone({ ...build, steps: build.steps.map((one) => (one.done ? one : { ...one })) }))).toEqual(busy);
    const served = { engine: "", rung: 1000, steps: ["form", "dig"] };
    expect(plan({ ...build, served }).steps[1]!.start).toBe(plan(build).steps[1]!.start);
  });

  test("a build in which nothing is done is planned as it stands", () => {
    const build = buildOf({ places: [cage], pieces: [shut], steps: [tie(), close()] });
    expect(JSON.stringify(plan(build))).toBe(JSON.stringify(plan({ ...build })));
    expect(plan(build).findings.filter(({ code }) => code === "plan.done-first")).toEqual([]);
  });
});

test("what closes, fills or takes away what somebody was at who is done is planned after that, not in the past", () => {
  const frame = { id: "frame", makes: ["cage.top"] };
  const places = [place("cage", { id: "north", passes: ["person"] }, { id: "top", passes: ["person"] })];
  const build = buildOf({
    places,
    pieces: [frame, { id: "mix", fills: ["cage"] }],
    steps: [
      step("set", { puts: ["frame"], ...done("2027-03-06T08:00", "2027-03-06T10:00") }),
      step("mark", { reaches: [{ place: "cage" }], leansOn: [{ piece: "frame" }], ...done("2027-03-20T08:00", "2027-03-20T10:00") }),
      step("clear", { takes: ["frame"], work: "1 h" }),
      step("fill", { puts: ["mix"], work: "1 h" }),
      step("sweep", { work: "1 h" }),
    ],
  });
  expect(when(build, "clear") >= "2027-03-20T10:00").toBe(true);
  expect(when(build, "fill") >= "2027-03-20T10:00").toBe(true);
  expect(when(build, "sweep") < "2027-03-20").toBe(true);
  // A date that was written stands, whatever was ticked since.
  const { steps } = build;
  const dated = { ...build, steps: steps.map((one) => (one.id === ("clear" as never) ? { ...one, fixed: "2027-03-13" } : one)) };
  expect(when(dated as Build, "clear").slice(0, 10)).toBe("2027-03-13");
});
