import { describe, expect, test } from "vitest";
import { documentOf, type PartialDocument } from "../../../test/fixtures/make";
import { readDocument } from "../build";
import { apply } from "../edit";
import { plan } from "./plan-of";
import { PlanSearch } from "./search/plan-search";

/** Each way out of the first refusal of dates, with what the document it leads to comes to. */
function outcomes(partial: PartialDocument, deep = false) {
  const document = documentOf(partial);
  const edited = (edits: Parameters<typeof apply>[1]) => readDocument(apply(document, edits).document);
  const search = new PlanSearch(readDocument(document).build!, (edits) => edited(edits).build);
  if (deep) search.step(1000);
  const { findings } = deep ? search.plan() : plan(readDocument(document).build!);
  const refusal = findings.find(({ code }) => code === "plan.windows" || code === "plan.ruled-out")!;
  return refusal.waysOut!.map(({ kind, detail, edits }) => {
    const { build, findings: found } = edited(edits);
    return { kind, detail, found, status: build && plan(build).status };
  });
}

const post = { id: "post", work: "4 h" };
const posts = (more: object = {}) => ({ id: "posts", count: 3, members: ["post"], ...more });

describe("a way out that moves a date of a group", () => {
  test("of one copy changes that copy alone, in a document that can still be read", () => {
    const ways = outcomes({ groups: [posts({ differences: { "2": { post: { deadline: "2027-03-05" } } } })], steps: [post] });
    expect(ways).toEqual([
      { kind: "move-date", detail: { step: "post#2", key: "deadline", to: "2027-03-06" }, found: [], status: "planned" },
    ]);
  });

  test("moves all copies where one alone does not help", () => {
    const ways = outcomes({ groups: [posts()], steps: [{ ...post, work: "12 h", hands: 0, deadline: "2027-03-06" }] });
    expect(ways).toEqual([
      {
        kind: "move-date",
        detail: { step: "post#1", steps: ["post#1", "post#2", "post#3"], key: "deadline", to: "2027-03-07" },
        found: [],
        status: "planned",
      },
    ]);
  });

  test("does so after every order and date was ruled out with the people", () => {
    const ways = outcomes({ groups: [posts()], people: [{ id: "me" }], steps: [{ ...post, deadline: "2027-03-06" }] }, true);
    expect(ways.every(({ status }) => status === "planned")).toBe(true);
    expect(ways[0]).toMatchObject({ detail: { steps: ["post#1", "post#2", "post#3"], to: "2027-03-07" } });
  });

  test("moves two fixed dates of a copy onto each other", () => {
    const ways = outcomes({
      groups: [posts({ differences: { "1": { post: { fixed: "2027-03-06" } } } })],
      steps: [post],
      bookings: [{ id: "crane", step: "post#1", calendar: "weekends", date: "2027-03-07" }],
    });
    expect(ways.map(({ status }) => status)).toEqual(["planned", "planned"]);
  });
});

describe("a way out that moves a date of a trial in rounds", () => {
  test("moves it for the rounds together", () => {
    const ways = outcomes({
      steps: [
        { id: "mix", work: "7 h", hands: 0, deadline: "2027-03-06", trial: { rounds: 2, gap: "1 d", decides: [], what: "which mix" } },
      ],
    });
    expect(ways.map(({ detail, status }) => [detail.to, status])).toEqual([["2027-03-13", "planned"]]);
  });
});

describe("a wait written once for all copies", () => {
  test("is dropped for all of them", () => {
    const ways = outcomes({
      groups: [{ id: "posts", count: 2, members: ["post", "cap", "dry"] }],
      steps: [post, { id: "cap", work: "1 h", hands: 0, calendar: "inspector" }],
      waits: [{ id: "dry", from: "post", to: "cap", least: "1 min", most: "10 min" }],
    }).filter(({ kind }) => kind === "drop-wait");
    expect(ways.map(({ found, status }) => [found, status])).toEqual([
      [[], "planned"],
      [[], "planned"],
    ]);
  });
});
