import { describe, expect, it } from "vitest";
import { buildOf } from "../../../test/fixtures/make";
import { plan } from ".";

const row = (id: string, rest: Record<string, unknown> = {}) => ({ id, name: id, work: "2 h", hands: 1, ...rest });
/** Work in a form that is closed before it is done. */
const blocked = {
  places: [{ id: "inside", name: "Inside", ways: [{ id: "side", name: "side", passes: ["arm"] }] }],
  pieces: [{ id: "panel", name: "Panel", sort: "form", closes: ["inside.side"] }],
  steps: [
    row("close", { puts: ["panel"] }),
    row("oil", { after: ["close"], reaches: [{ place: "inside", need: "arm", depth: "300 mm" }] }),
  ],
};
const told = (document: Record<string, unknown>) => {
  const made = plan(buildOf(document));
  return [made.status, ...made.findings.filter((f) => f.severity === "stop").map((f) => `${f.code} ${f.where.id}`)];
};
const cure = { id: "cure", from: "seal", to: "pour", least: "3 d" };
const clean = { id: "clean", from: "seal", to: "pour", most: "1 d" };

describe("dates beside a block of order", () => {
  it("are told together with it when they cannot hold in any case", () => {
    const steps = [...blocked.steps, row("seal"), row("pour")];
    expect(told({ ...blocked, steps, waits: [cure, clean] })).toEqual(["no-order", "access.blocked oil", "plan.windows seal"]);
    expect(told({ ...blocked, steps, waits: [cure] })).toEqual(["no-order", "access.blocked oil"]);
  });

  it("are not told where they only follow from what is blocked", () => {
    const [close, oil] = [
      { ...blocked.steps[0]!, deadline: "2027-03-14" },
      { ...blocked.steps[1]!, notBefore: "2027-03-20" },
    ];
    expect(told({ ...blocked, steps: [close, oil] })).toEqual(["no-order", "access.blocked oil"]);
    expect(told({ ...blocked, steps: [close, { ...oil, after: [] }] })).toEqual(["no-dates", "plan.windows close"]);
  });

  it("two dates for one start are told beside it too", () => {
    const bookings = [{ id: "pump", name: "Pump", step: "pour", calendar: "inspector", date: "2027-03-20" }];
    const steps = [...blocked.steps, row("pour", { fixed: "2027-03-13" })];
    expect(told({ ...blocked, steps, bookings })).toEqual(["no-order", "access.blocked oil", "plan.windows pour"]);
  });
});
