import { describe, expect, test } from "vitest";
import { documentOf, type PartialDocument } from "../../../../test/fixtures/make";
import { type Build, readDocument } from "../../build";
import { apply } from "../../edit";
import { plan } from "../plan-of";
import { verifyPlan } from "../verify/verify-plan";
import { PlanSearch } from "./plan-search";

/** The ways out of a refusal that ask for one more of something, each checked here once more through the document. */
function more(partial: PartialDocument, units = 1): readonly (readonly unknown[])[] {
  const document = documentOf(partial);
  const edited = (edits: Parameters<typeof apply>[1]): Build | null => readDocument(apply(document, edits).document).build;
  const search = new PlanSearch(readDocument(document).build!, edited);
  while (!search.done) search.step(units);
  const ways = search.sought().ruledOut!.waysOut!.filter(({ kind }) => kind === "one-more");
  for (const { edits } of ways) {
    const build = edited(edits)!;
    const made = plan(build);
    expect(made.status).toBe("planned");
    expect(verifyPlan(build, made)).toEqual([]);
  }
  return ways.map(({ detail }) => [detail.offer, detail.of, detail.who, detail.number, detail.dates]);
}

const alone = { people: [{ id: "me", name: "Me" }] };
const job = (id: string, deadline: string, work = "8 h", extra: object = {}) => ({ id, work, deadline, ...extra });

describe("one more of what a refusal asks for", () => {
  test("is a helper on the one day that is enough", () => {
    expect(more({ ...alone, steps: [job("a", "2027-03-06", "5 h"), job("b", "2027-03-06", "5 h")] })).toEqual([
      ["helper-day", "one-more-helper", [], 1, ["2027-03-06"]],
    ]);
  });

  test("is days off or a helper's days, as few as are enough, where one is not", () => {
    const steps = ["a", "b", "c", "d", "e", "f"].map((id) => job(id, "2027-03-14"));
    const found = more({ ...alone, steps });
    expect(found).toEqual([
      ["day-off", "", ["me"], 1, ["2027-03-08", "2027-03-12"]],
      ["helper-day", "one-more-helper", [], 1, ["2027-03-13", "2027-03-14"]],
    ]);
    expect(more({ ...alone, steps }, 777)).toEqual(found);
  });

  test("is the helper there is, on a day on which they do not come", () => {
    const friends = { id: "friends", week: {}, extra: { "2027-03-13": ["8:00-16:00"] } };
    const people = [...alone.people, { id: "ruth", name: "Ruth", calendar: "friends" }];
    expect(more({ people, calendars: [friends], steps: ["a", "b", "c"].map((id) => job(id, "2027-03-07")) })).toEqual([
      ["helper-day", "friends", ["ruth"], 1, ["2027-03-06"]],
    ]);
  });

  test("is nobody without a role that is asked for, and no more days than somebody can be asked to come", () => {
    const people = [{ id: "me", name: "Me", roles: ["hose"] }];
    const hose = { hands: [{ role: "hose", number: 1 }] };
    expect(more({ people, steps: [job("a", "2027-03-06", "5 h", hose), job("b", "2027-03-06", "5 h", hose)] })).toEqual([]);
    expect(more({ ...alone, steps: [job("a", "2027-03-28", "60 h"), job("b", "2027-03-28", "60 h")] })).toEqual([]);
  });

  test.each(["2027-03-06", "2027-03-06T14:00"])("is another date for what is booked for %s", (date) => {
    const steps = [
      { id: "a", work: "5 h" },
      { id: "b", work: "5 h" },
      { id: "pour", work: "1 h", after: ["a", "b"] },
    ];
    const found = more({ ...alone, steps, bookings: [{ id: "pump", step: "pour", date }] });
    expect(found.filter(([offer]) => offer === "other-date")).toEqual([["other-date", "pump", [], 1, []]]);
  });

  test("is as many of a thing as are enough", () => {
    const saw = { equipment: [{ of: "saw", number: 2 }] };
    expect(more({ equipment: [{ id: "saw", number: 1 }], steps: [{ id: "a", work: "1 h", ...saw }] })).toEqual([
      ["equipment", "saw", [], 1, []],
    ]);
    expect(
      more({
        stock: [{ id: "sheets", unit: "sheet", inHand: 1 }],
        pieces: [{ id: "form", uses: [{ of: "sheets", number: 4 }] }],
        steps: [{ id: "set", work: "1 h", puts: ["form"] }],
      }),
    ).toEqual([["stock", "sheets", [], 3, []]]);
  });

  test("is not offered without a document to try it in", () => {
    const { build } = readDocument(documentOf({ ...alone, steps: [job("a", "2027-03-06", "5 h"), job("b", "2027-03-06", "5 h")] }));
    const search = new PlanSearch(build!);
    while (!search.done) search.step(1000);
    expect(search.sought().ruledOut!.waysOut!.map(({ kind }) => kind)).toEqual(["move-date", "move-date"]);
  });
});

describe("dates that cannot hold whoever is there", () => {
  const refused = (partial: PartialDocument) => {
    const document = documentOf(partial);
    const { findings } = plan(readDocument(document).build!);
    return findings
      .find(({ code }) => code === "plan.windows")!
      .waysOut!.map(({ kind, detail, edits }) => {
        const { build } = readDocument(apply(document, edits).document);
        return [kind, detail.dates ?? detail.to ?? detail.side, plan(build!).status];
      });
  };
  const look = { id: "look", sort: "inspection", hands: 0, calendar: "inspector", work: "1 h" };

  test("can be kept where an inspector comes on one day more", () => {
    expect(
      refused({
        steps: [
          { id: "a", work: "8 h" },
          { ...look, after: ["a"], deadline: "2027-03-07" },
        ],
      }),
    ).toEqual([
      ["move-date", "2027-03-08", "planned"],
      ["one-more", ["2027-03-07"], "planned"],
    ]);
  });

  test("are not kept by doing without a wait for concrete to carry or to cure", () => {
    const pour = { id: "pour", work: "2 h", sort: "pour", pour: { strength: "20 MPa" } };
    const strip = { id: "strip", work: "1 h", deadline: "2027-03-07" };
    const waits = (least: string) => [{ id: "carries", from: "pour", to: "strip", least }];
    const kinds = (least: string) => refused({ steps: [pour, strip], waits: waits(least) }).map(([kind]) => kind);
    expect(kinds("90 % of pour")).toEqual(["move-date"]);
    expect(kinds("28 warm days of pour")).toEqual(["move-date"]);
    expect(kinds("28 d")).toEqual(["drop-wait", "move-date"]);
  });
});
