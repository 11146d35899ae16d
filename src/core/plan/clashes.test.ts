import { describe, expect, it } from "vitest";
import { buildOf, documentOf, type PartialDocument } from "../../../test/fixtures/make";
import { plan } from ".";

const pour = (rest: Record<string, unknown>) => ({ id: "pour", name: "Pour", work: "4 h", hands: 2, ...rest });
const booking = (id: string, date: string) => ({ id, name: id, step: "pour", calendar: "inspector", date });

/** The one clash that is told, and the statuses after each of its ways out. */
function clash(document: PartialDocument) {
  const made = plan(buildOf(document));
  expect(made.status).toBe("no-dates");
  const found = made.findings.filter((f) => f.because?.every((b) => b.rule === "window.fixed"));
  expect(found).toHaveLength(1);
  const { because, waysOut, where } = found[0]!;
  expect(where).toEqual({ list: "steps", id: "pour" });
  const after = waysOut!.map(({ edits }) => {
    const changed = structuredClone(documentOf(document)) as Record<string, Record<string, unknown>[]>;
    for (const { path, value } of edits) changed[path[0]!]!.find((x) => `id=${x.id}` === path[1])![path[2]!] = value;
    return plan(buildOf(changed)).status;
  });
  return { because: because!.map((b) => [b.id ?? b.step, b.detail!.date, b.detail!.of]), after };
}

describe("a step that is to start on two dates", () => {
  it("its own and a booking's: both are named, and either can be moved to the other", () => {
    expect(clash({ steps: [pour({ fixed: "2027-03-13T08:00" })], bookings: [booking("truck", "2027-03-20")] })).toEqual({
      because: [
        ["pour", "2027-03-13T08:00", "fixed"],
        ["truck", "2027-03-20", "booking"],
      ],
      after: ["planned", "planned"],
    });
  });

  it("two bookings: the one on a weekday is moved, as nobody is there then", () => {
    expect(clash({ steps: [pour({})], bookings: [booking("truck", "2027-03-17"), booking("pump", "2027-03-20")] })).toEqual({
      because: [
        ["truck", "2027-03-17", "booking"],
        ["pump", "2027-03-20", "booking"],
      ],
      after: ["planned"],
    });
  });

  it("two hours of one day", () => {
    const { after } = clash({ steps: [pour({ fixed: "2027-03-13T08:00" })], bookings: [booking("truck", "2027-03-13T13:00")] });
    expect(after).toEqual(["planned", "planned"]);
  });

  it("an hour and its date are no contradiction, nor is a date said twice", () => {
    const bookings = [booking("truck", "2027-03-20"), booking("pump", "2027-03-20")];
    const made = plan(buildOf({ steps: [pour({ fixed: "2027-03-20T08:00" })], bookings }));
    expect([made.status, made.steps[0]!.holder.kind]).toEqual(["planned", "fixed"]);
  });
});
