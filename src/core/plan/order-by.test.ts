import { describe, expect, test } from "vitest";
import { buildOf, documentOf } from "../../../test/fixtures/make";
import { type Build, readDocument } from "../build";
import { clocksOf } from "../clock";
import { apply } from "../edit";
import { askOverdue } from "./asked";
import { plan } from "./plan-of";
import { verifyPlan } from "./verify/verify-plan";

/** Bars with ten days of lead and a pump with five, for a Saturday after a day of digging. */
const site = (more: object, delivery: object = {}, booking: object = {}) =>
  buildOf({
    deliveries: [{ id: "bars", calendar: "inspector", lead: "10 d", ...delivery }],
    bookings: [{ id: "pump", step: "pour", calendar: "inspector", lead: "5 d", ...booking }],
    steps: [
      { id: "dig", work: "8 h", ...((more as { dug?: object }).dug ?? {}) },
      { id: "tie", work: "8 h", after: ["dig"], needs: ["bars"] },
      { id: "pour", work: "4 h", after: ["tie"] },
    ],
    ...((more as { rest?: object }).rest ?? {}),
  });

const told = (build: ReturnType<typeof site>) =>
  plan(build)
    .findings.filter(({ code }) => /-(?:past|overdue|order|booking)$/.test(code))
    .map(({ code, where }) => [code, where.id]);

describe("what was to be ordered and booked by now", () => {
  const dug = { done: { start: "2027-03-06T08:00", finish: "2027-03-06T16:00" } };
  const onward = (resumes: string) => ({ dug, rest: { resumes } });

  test("what can be ordered no sooner than work goes on comes that much later, and a step waits for it", () => {
    const start = (build: Build): string => {
      const made = plan(build);
      expect(verifyPlan(build, made)).toEqual([]);
      return clocksOf(build).time.momentOf(made.steps[build.at.step.get("tie" as never)!]!.start);
    };
    expect(start(site({ dug }))).toBe("2027-03-20T07:30");
    expect(start(site({ dug }, { ordered: true }))).toBe("2027-03-20T07:30");
    const late = site(onward("2027-04-01T08:00"), {}, { booked: true });
    expect(start(late)).toBe("2027-04-17T07:30");
    expect(told(late)).toEqual([["plan.waits-for-order", "bars"]]);
    const [order] = plan(late).findings.filter(({ code }) => code === "plan.waits-for-order");
    expect(order!.detail.step).toBe("tie");
    expect(order!.waysOut).toEqual([
      { kind: "asked-for", detail: { delivery: "bars" }, edits: [{ path: ["deliveries", "id=bars", "ordered"], value: true }] },
    ]);
    expect(start(site(onward("2027-04-01T08:00"), { ordered: true }))).toBe("2027-04-03T07:30");
  });

  test("what is booked no sooner than work goes on can be had that much later, and its step waits for it", () => {
    const pour = (build: Build) => {
      const made = plan(build);
      expect(verifyPlan(build, made)).toEqual([]);
      const own = made.steps[build.at.step.get("pour" as never)!]!;
      return [clocksOf(build).time.momentOf(own.start), own.holder.kind];
    };
    const tied = (booking: object, more: object = {}) =>
      buildOf({
        bookings: [{ id: "pump", step: "pour", calendar: "inspector", lead: "20 d", ...booking }],
        steps: [
          { id: "tie", work: "8 h", done: { start: "2027-03-20T08:00", finish: "2027-03-20T16:00" } },
          { id: "pour", work: "4 h", after: ["tie"], ...more },
        ],
        resumes: "2027-04-01T08:00",
      });
    expect(pour(tied({}))).toEqual(["2027-04-24T07:30", "notice"]);
    expect(told(tied({}))).toEqual([["plan.waits-for-booking", "pump"]]);
    const [booking] = plan(tied({})).findings.filter(({ code }) => code === "plan.waits-for-booking");
    expect(booking!.waysOut![0]!.edits).toEqual([{ path: ["bookings", "id=pump", "booked"], value: true }]);
    expect(pour(tied({ booked: true }))).toEqual(["2027-04-03T07:30", "resumes"]);
    expect(told(tied({ booked: true }))).toEqual([]);
    // A date that was written stands; that it had to be asked for before is told.
    expect(pour(tied({ date: "2027-04-10" }))[0]).toBe("2027-04-10T07:30");
    expect(told(tied({ date: "2027-04-10" }))).toEqual([["plan.book-overdue", "pump"]]);
    // A step that is due before then could be if it was booked.
    const refused = plan(tied({}, { deadline: "2027-04-12" }));
    expect(refused.status).toBe("no-dates");
    const ways = refused.findings.flatMap(({ waysOut = [] }) => waysOut.map(({ kind, detail }) => [kind, detail.booking]));
    expect(ways).toContainEqual(["asked-for", "pump"]);
    // And on the first day of a build as on any other.
    const fresh = buildOf({ bookings: [{ id: "pump", step: "pour", lead: "20 d" }], steps: [{ id: "pour", work: "4 h" }] });
    expect(pour(fresh)).toEqual(["2027-03-27T07:30", "notice"]);
    expect(told(fresh)).toEqual([]);
  });

  test("a date that cannot be met for want of what is not ordered can be where it was", () => {
    const document = {
      deliveries: [{ id: "bars", calendar: "inspector", lead: "10 d" }],
      steps: [
        { id: "dig", work: "8 h", ...dug },
        { id: "tie", work: "8 h", needs: ["bars"], deadline: "2027-04-04" },
      ],
      resumes: "2027-04-01T08:00",
    };
    const refused = plan(buildOf(document));
    expect(refused.status).toBe("no-dates");
    const ways = refused.findings.flatMap(({ waysOut = [] }) => waysOut);
    const tick = ways.find(({ kind }) => kind === "asked-for");
    expect(tick?.detail).toEqual({ delivery: "bars" });
    expect(plan(readDocument(apply(documentOf(document), tick!.edits).document).build!).status).toBe("planned");
  });

  test("what is promised too late is moved to the last day in time, not to the first thinkable", () => {
    const refused = plan(
      buildOf({
        deliveries: [{ id: "mix", calendar: "weekends", promised: "2027-04-10" }],
        bookings: [{ id: "pump", step: "pour", date: "2027-04-03", booked: true }],
        steps: [{ id: "pour", work: "4 h", needs: ["mix"] }],
      }),
    );
    expect(refused.status).toBe("no-dates");
    const ways = refused.findings.flatMap(({ waysOut = [] }) => waysOut.map(({ detail }) => detail));
    expect(ways).toContainEqual({ delivery: "mix", to: "2027-04-03" });
  });

  test("not where that was done, or a day is promised, or it came long ago", () => {
    const late = onward("2027-04-01T08:00");
    expect(told(site(late, { ordered: true }, { booked: true }))).toEqual([]);
    expect(told(site(late, { promised: "2027-04-02" }, { booked: true }))).toEqual([]);
    const tied = buildOf({
      deliveries: [{ id: "bars", calendar: "inspector", lead: "10 d" }],
      steps: [
        { id: "tie", work: "8 h", needs: ["bars"], done: { start: "2027-03-20T08:00", finish: "2027-03-20T16:00" } },
        { id: "sweep", work: "2 h", after: ["tie"] },
      ],
      resumes: "2027-04-01T08:00",
    });
    expect(told(tied)).toEqual([]);
  });

  test("and before anything is begun where there is not time enough for it", () => {
    expect(told(site({}, { promised: "2027-03-08" }))).toEqual([["plan.order-by-past", "bars"]]);
  });

  test("what is neither ordered nor promised nor booked is listed from the day after the last one to do so", () => {
    const open = (build: Build, date: string) => askOverdue(build, plan(build), date).map(({ id }) => id);
    const build = site({ dug });
    const by = plan(build).deliveries[0]!.orderBy!;
    const { time } = clocksOf(build);
    const on = (days: number): string => time.dateOf(time.dayOf(by) + days);
    expect(open(build, on(0))).toEqual([]);
    expect(open(build, on(1))).toEqual(["bars"]);
    expect(open(build, on(30))).toEqual(["bars", "pump"]);
    expect(open(site({ dug }, { ordered: true }, { booked: true }), on(30))).toEqual([]);
    expect(open(site({ dug }, { promised: "2027-03-20" }, { booked: true }), on(30))).toEqual([]);
    expect(open(build, "no date")).toEqual([]);
  });
});
