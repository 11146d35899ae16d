import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { type Build, read, readDocument, write } from "../core/build";
import { siteTime } from "../core/clock";
import { plan } from "../core/plan";
import { examples } from "./index";

const fileOf: Readonly<Record<string, string>> = { "tank-house": "impossible" };
const textOf = (id: string) => readFileSync(`src/examples/${fileOf[id] ?? id}.json`, "utf8");
const buildOf = (id: string): Build => {
  const { build, findings } = read(textOf(id));
  expect(findings).toEqual([]);
  return build!;
};
/** Steps as a builder counts them: a group of many alike, and a trial with its rounds, once. */
const writtenSteps = (id: string) => (JSON.parse(textOf(id)) as { steps: Record<string, unknown>[] }).steps;

describe("every example", () => {
  test.each(examples.map((e) => [e.id, e] as const))("%s is read without a finding and kept byte for byte", async (id, example) => {
    const loaded = readDocument(await example.load());
    expect(loaded.findings).toEqual([]);
    expect(loaded.build!.id).toBe(id);
    expect(loaded.build!.name).toBe(example.title);
    expect(write(read(textOf(id)).document as never)).toBe(textOf(id));
  });

  test.each(examples.map((e) => [e.id] as const))("%s keeps to its invented year", (id) => {
    const dates = textOf(id).match(/\b20\d\d-\d\d-\d\d\b/g)!;
    expect(dates.length).toBeGreaterThan(0);
    expect([...new Set(dates.map((d) => d.slice(0, 4)))]).toEqual(["2027"]);
  });
});

describe("every pour of the examples", () => {
  test.each(examples.map((e) => [e.id] as const))("%s says all of its concrete, and nothing is left to be taken as usual", (id) => {
    const build = buildOf(id);
    const pouring = build.steps.filter((s) => s.sort === "pour");
    expect(build.pours.map((p) => p.step)).toEqual(pouring.map((s) => s.id));
    for (const pour of build.pours) {
      expect(pour.assumed, pour.id).toEqual([]);
      expect(pour.elements.every((e) => e.pieces.length > 0)).toBe(true);
      expect(build.steps[build.at.step.get(pour.step)!]!.pour).toEqual({ strength_MPa: pour.mix.strength_MPa, cement: pour.mix.cement });
    }
  });

  test("the cellar's vault and porch take as long as placing, waiting and finishing do", () => {
    const build = buildOf("bank-cellar");
    const minutes = (id: string) => build.steps[build.at.step.get(id)!]!.work.likely_min;
    // Vault: 3.6 yd3 at 5 yd3/h are 44 min; at 80 °F it floats after 2 1/4 h, and an hour of floating at least.
    expect(minutes("pour-vault")).toBe(44 + 135 + 60);
    expect(minutes("pour-porch")).toBeGreaterThan(5 * 60);
    expect(minutes("pour-walls")).toBe(6 * 60);
  });

  test("what comes off and goes on waits for its pour, the vault until 28 warm days have shown nothing else", () => {
    const build = buildOf("bank-cellar");
    const of = (to: string) => build.waits.filter((w) => w.to === to && w.removal).map((w) => w.least!.text);
    expect(of("strike-wedges")).toEqual(["14 warm days of pour-vault", "75 % of pour-vault", "28 warm days of pour-vault"]);
    expect(of("strip-deck")).toEqual(["14 d", "75 % of pour-porch"]);
    expect(of("strip-footing")).toEqual(["12 warm hours of pour-footing", "500 psi of pour-footing"]);
    expect(of("fill-sides")).toEqual(["7 d", "75 % of pour-walls"]);
    expect(of("strip-column#2")).toEqual(["4 d", "500 psi of pour-porch"]);
  });
});

describe("bank cellar", () => {
  const build = buildOf("bank-cellar");
  const planned = plan(build);
  const steps = writtenSteps("bank-cellar");
  const at = (id: string) => planned.steps[build.at.step.get(id)!]!;

  test("has 90 to 130 steps and 700 to 1,100 hours of hands", () => {
    expect(steps.length).toBeGreaterThanOrEqual(90);
    expect(steps.length).toBeLessThanOrEqual(130);
    expect(planned.handMinutes / 60).toBeGreaterThanOrEqual(700);
    expect(planned.handMinutes / 60).toBeLessThanOrEqual(1100);
  });

  test("takes two people 35 to 50 weekends, with nothing that anybody must look at", () => {
    expect(planned.status).toBe("planned");
    expect(planned.findings.filter((f) => f.severity !== "note")).toEqual([]);
    const weekends = planned.finish / (7 * 1440);
    expect(weekends).toBeGreaterThanOrEqual(35);
    expect(weekends).toBeLessThanOrEqual(50);
  });

  test("lets an inspector see three places or more before the vault closes the last of them", () => {
    const inspections = build.steps.filter(
      (s) => s.sort === "inspection" && s.holdPoint !== null && at(s.id).finish <= at("pour-vault").start,
    );
    expect(inspections.length).toBeGreaterThanOrEqual(3);
    for (const s of inspections)
      expect(
        s.hands.reduce((n, h) => n + h.number, 0),
        s.id,
      ).toBe(0);
  });

  test("takes its order from reach and closings, not from links", () => {
    const links = steps.reduce((n, s) => n + ((s.after as unknown[] | undefined)?.length ?? 0), 0);
    const reaches = steps.reduce((n, s) => n + ((s.reaches as unknown[] | undefined)?.length ?? 0), 0);
    expect(links * 4).toBeLessThan(reaches);
  });

  test("pours on Saturdays with five or six hands, four at the footing, in months fit for it", () => {
    const time = siteTime(build.site.zone, build.start);
    const pours = build.steps.filter((s) => s.sort === "pour");
    expect(pours.map((s) => s.hands.reduce((n, h) => n + h.number, 0))).toEqual([4, 6, 6, 5]);
    for (const s of pours) {
      const { weekday, date } = time.local(at(s.id).start);
      expect(weekday, s.id).toBe(6);
      expect(date >= "2027-03-15" && date <= "2027-10-31", `${s.id} ${date}`).toBe(true);
    }
  });

  test("has each thing that its builder must see happen", () => {
    expect(build.groups.map((g) => g.count)).toEqual([2, 3]);
    expect(build.choices).toHaveLength(1);
    expect(build.steps.filter((s) => s.trial !== null)).toHaveLength(2);
    expect(build.waits.filter((w) => w.visits !== null)).toHaveLength(3);
    expect(planned.visits.length).toBeGreaterThanOrEqual(18);
    expect(build.bookings.some((b) => b.step === "pour-walls" && b.booked && b.date !== null)).toBe(true);
    expect(build.calendars.find((c) => c.id === "inspector")!.cutOff_min).toBe(15 * 60);
    expect(build.calendars.find((c) => c.id === "plant")!.week[0]).toEqual([]);
    expect(build.waits.some((w) => w.id === "marks-valid" && w.most !== null && w.toEnd === "finish")).toBe(true);
    expect(build.pieces.filter((p) => p.makes.length > 0 && p.sort === "scaffold").length).toBeGreaterThanOrEqual(3);
  });

  test("says a caution where work can hurt someone, and where its figures come from", () => {
    for (const id of [
      "dig-cut",
      "pin-drain-mat",
      "set-inner-form",
      "fill-sides",
      "raise-ribs",
      "pour-vault",
      "strike-wedges",
      "set-shores",
    ]) {
      expect(build.steps[build.at.step.get(id)!]!.cautions.length, id).toBeGreaterThan(0);
    }
    const sourced = build.steps.filter((s) => s.from !== null || s.work.low_min !== s.work.high_min).length;
    expect(sourced / build.steps.length).toBeGreaterThan(0.6);
  });

  test("comes to rest only on what holds", () => {
    expect(at("take-cross-props").start).toBeGreaterThan(at("pour-vault").finish);
    expect(at("strike-wedges").start).toBeGreaterThanOrEqual(at("break-vault").finish);
    expect(at("strip-deck").start).toBeGreaterThanOrEqual(at("break-porch").finish);
    expect(at("fill-sides").start).toBeGreaterThan(at("set-cross-props").finish);
    expect(at("fill-crown").start - at("pour-vault").finish).toBeGreaterThanOrEqual(28 * 1440);
  });

  test("uses its sheets and boards twice", () => {
    for (const [of, users] of [
      ["sheets", ["outer-form", "inner-form", "porch-deck"]],
      ["boards", ["lagging", "roof-boards"]],
    ] as const) {
      for (const id of users)
        expect(
          build.pieces[build.at.piece.get(id)!]!.uses.some((u) => u.of === of),
          `${id} ${of}`,
        ).toBe(true);
      const level = planned.stands.stock.find((s) => s.of === of)!;
      expect(Math.min(...level.left)).toBeGreaterThanOrEqual(0);
    }
  });
});

describe("garden wall", () => {
  test("is short enough to be read first: 12 to 15 steps, planned, with a trial", () => {
    const build = buildOf("garden-wall");
    expect(writtenSteps("garden-wall").length).toBeGreaterThanOrEqual(12);
    expect(writtenSteps("garden-wall").length).toBeLessThanOrEqual(15);
    const planned = plan(build);
    expect(planned.status).toBe("planned");
    expect(planned.findings.filter((f) => f.severity !== "note")).toEqual([]);
    const front = planned.closings.find((c) => build.pieces[c.piece]!.id === "front-form")!;
    expect(front.before.map((b) => build.steps[b.step]!.id)).toEqual(["tie-wall", "set-weeps", "seal-corners"]);
    expect(build.steps.filter((s) => s.trial !== null)).toHaveLength(2);
  });
});
