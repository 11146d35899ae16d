import { describe, expect, it } from "vitest";
import { buildOf } from "../../../test/fixtures/make";
import { clocksOf } from "../clock";
import { compare, plan } from ".";

const row = (id: string, rest: Record<string, unknown> = {}) => ({ id, name: id, work: "4 h", hands: 2, ...rest });
const site = (promised: string) =>
  buildOf({
    calendars: [{ id: "yard", name: "Yard", week: { tue: ["8:00-16:00"], wed: ["8:00-16:00"], thu: ["8:00-16:00"], fri: ["8:00-16:00"] } }],
    people: ["me", "helper", "friend"].map((id) => ({ id, name: id })),
    deliveries: [{ id: "bars", name: "Bars", calendar: "yard", promised }],
    steps: [
      row("dig", { work: "16 h" }),
      row("tie", { needs: ["bars"], after: ["dig"] }),
      row("pour", { after: ["tie"] }),
      row("shed", { work: "2 h", hands: 1 }),
    ],
  });
const kept = plan(site("2027-03-09"));

describe("compare", () => {
  it("a slip that falls before the next site day moves nothing, and says until when", () => {
    const build = site("2027-03-12");
    const c = compare(kept, plan(build), build);
    expect([c.moved, c.siteDaysLost, c.stayed, c.through]).toEqual([[], 0, 4, []]);
    expect(c.findings.map((f) => f.code)).toEqual(["compare.same", "compare.before-next-site-day"]);
    expect(c.findings[1]!.detail).toMatchObject({ delivery: "bars", nextAt: plan(build).steps[1]!.start });
  });

  it("knows deliveries by their ids, and tells the day on which the plan begins, not the next on which anybody works", () => {
    const of = (promised: string, more: readonly Record<string, unknown>[]) =>
      buildOf({
        deliveries: [...more, { id: "bars", name: "Bars", calendar: "inspector", promised }],
        steps: [row("tie", { needs: ["bars"], notBefore: "2027-03-20" })],
      });
    const build = of("2027-03-11", [{ id: "sand", name: "Sand" }]);
    const before = plan(of("2027-03-09", []));
    const { findings } = compare(before, plan(build), build);
    const time = clocksOf(build).time;
    expect(findings.map((f) => f.code)).toEqual(["compare.same", "compare.before-next-site-day"]);
    const { delivery, beforeAt, arrivesAt, nextAt } = findings[1]!.detail;
    expect([delivery, ...[beforeAt, arrivesAt, nextAt].map((t) => time.momentOf(t as number).slice(5, 10))]).toEqual([
      "bars",
      "03-09",
      "03-11",
      "03-20",
    ]);
  });

  it("two weeks later costs four site days, through the delivery", () => {
    const build = site("2027-03-23");
    const now = plan(build);
    const c = compare(kept, now, build);
    expect(c.siteDaysLost).toBe(4);
    expect(c.moved.map((m) => [m.step, m.siteDays])).toEqual([
      ["tie", 4],
      ["pour", 4],
    ]);
    expect(c.stayed).toBe(2);
    expect(c.through.map((link) => (link.job < 4 ? build.steps[link.job]!.id : "bars"))).toEqual(["bars", "tie", "pour"]);
    expect(c.findings[0]).toMatchObject({ code: "compare.later", detail: { siteDays: 4 } });
  });

  it("back again gains them", () => {
    const late = plan(site("2027-03-23"));
    const build = site("2027-03-09");
    const c = compare(late, plan(build), build);
    expect(c.siteDaysLost).toBe(-4);
    expect(c.findings[0]).toMatchObject({ code: "compare.earlier", detail: { siteDays: 4 } });
  });

  it("has nothing to compare with a plan without dates", () => {
    const build = buildOf({ steps: [row("lift", { hands: 9 })] });
    expect(compare(kept, plan(build), build).findings[0]!.code).toBe("compare.no-plan");
  });
});
