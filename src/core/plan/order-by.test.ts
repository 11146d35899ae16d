import { describe, expect, test } from "vitest";
import { buildOf } from "../../../test/fixtures/make";
import { plan } from "./plan-of";

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
    .findings.filter(({ code }) => /-(?:past|overdue)$/.test(code))
    .map(({ code, where }) => [code, where.id]);

describe("what was to be ordered and booked by now", () => {
  const dug = { done: { start: "2027-03-06T08:00", finish: "2027-03-06T16:00" } };
  const onward = (resumes: string) => ({ dug, rest: { resumes } });

  test("is told where work goes on after the last day to do so", () => {
    expect(told(site({ dug }))).toEqual([]);
    expect(told(site(onward("2027-03-06T16:00")))).toEqual([]);
    const late = site(onward("2027-04-01T08:00"));
    expect(told(late)).toEqual([
      ["plan.order-overdue", "bars"],
      ["plan.book-overdue", "pump"],
    ]);
    const [order] = plan(late).findings.filter(({ code }) => code === "plan.order-overdue");
    expect(Number(order!.detail.orderAt)).toBeLessThan(Number(order!.detail.goesOnAt));
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
});
