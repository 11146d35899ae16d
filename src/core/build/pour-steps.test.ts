import { describe, expect, test } from "vitest";
import { buildOf, documentOf, readOf } from "../../../test/fixtures/make";
import { slabPour } from "../../../test/fixtures/pours";
import { apply } from "../edit";
import { readDocument } from ".";

const steps = [{ id: "a" }, { id: "b" }];
const build = (pour: object, more: object = {}) => buildOf({ steps, pours: [slabPour(pour)], ...more });

describe("a step that pours", () => {
  test("has its strength and cement, its length from the pour day, and no break in it", () => {
    const step = build({ mix: { strength: "4000 psi", cement: "blend" } }).steps[0]!;
    expect(step).toMatchObject({ sort: "pour", unbroken: true, pour: { cement: "blend" } });
    expect(step.pour!.strength_MPa).toBeCloseTo(27.579, 3);
    // 20 ft x 12 ft x 5 in is 3.70 yd3, with 10 % waste 4.07; by chute 10 yd3/h: 25 min. At 70 °F 2.75 h until it takes the float; 240 ft2 by two: 67 min.
    expect(step.work).toEqual({ low_min: 257, likely_min: 257, high_min: 257 });
  });

  test("keeps what it says itself", () => {
    const step = build(
      {},
      { steps: [{ id: "a", work: "6 h", unbroken: false, sort: "work", pour: { strength: "4000 psi" } }, { id: "b" }] },
    ).steps[0]!;
    expect(step).toMatchObject({ sort: "work", unbroken: false, work: { likely_min: 360 }, pour: { cement: "I" } });
  });

  test("that is begun has what is left of it to do, of the whole pour day", () => {
    const step = build({}, { steps: [{ id: "a", left: "1 h" }, { id: "b" }] }).steps[0]!;
    expect(step.work.likely_min).toBe(60);
    expect(step.begun!.whole_min).toBe(build({}).steps[0]!.work.likely_min);
  });

  test("may be a copy of a group, and amounts count its strength and its warmth", () => {
    const waits = [
      { id: "w", from: "a#2", to: "b", least: "3 warm days of a#2" },
      { id: "v", from: "a#2", to: "b", least: "50 % of a#2", most: "400 warm hours of a#2" },
    ];
    const made = build({ step: "a#2" }, { groups: [{ id: "g", count: 3, members: ["a"] }], waits });
    expect(made.steps.map((step) => step.pour !== null)).toEqual([false, true, false, false]);
    expect(made.waits.map(({ least }) => least)).toMatchObject([
      { on: { kind: "warm", pour: "a#2" }, amount: 4320, text: "3 warm days of a#2" },
      { on: { kind: "strength", pour: "a#2" }, amount: 500 },
    ]);
    expect(made.waits[1]!.most).toMatchObject({ on: { kind: "warm" }, amount: 24_000 });
  });

  test("warmth of a step that pours nothing is refused", () => {
    const { findings } = readOf({ steps, waits: [{ id: "w", from: "a", to: "b", least: "3 warm days of a" }] });
    expect(findings.map(({ code }) => code)).toEqual(["build.not-a-pour"]);
  });
});

describe("reading again", () => {
  const document = documentOf({
    steps: [...steps, { id: "c" }],
    pours: [slabPour({ removals: [{ sort: "sides", step: "b" }] }), slabPour({ id: "other", step: "c" })],
  });

  test("costs what changed: pours and their steps stay the same objects", () => {
    const before = readDocument(document).build!;
    const edit = [{ path: ["pours", "id=other", "mix", "slump"], value: "4 in" }];
    const after = readDocument(apply(document, edit).document).build!;
    expect(after.pours[0]).toBe(before.pours[0]);
    expect(after.steps[0]).toBe(before.steps[0]);
    expect(after.pours[1]!.mix.slump_mm).toBe(101.6);
    expect(after.steps[2]).not.toBe(before.steps[2]);
  });

  test("sees a strength that changed wherever it is awaited", () => {
    const waits = [{ id: "w", from: "a", to: "b", least: "2000 psi of a" }];
    const first = { ...document, waits };
    const amount = (one: unknown) => readDocument(one).build!.waits.find(({ id }) => id === "w")!.least!.amount;
    expect(amount(first)).toBe(500);
    expect(amount(apply(first, [{ path: ["pours", "id=slab", "mix", "strength"], value: "5000 psi" }]).document)).toBe(400);
  });
});
