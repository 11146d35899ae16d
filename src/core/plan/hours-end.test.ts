import { describe, expect, test } from "vitest";
import { documentOf, type PartialDocument } from "../../../test/fixtures/make";
import { step } from "../../../test/fixtures/small";
import { examples } from "../../examples";
import { findingSentence, statementSentence, wayOutSentence } from "../../words";
import type { Finding } from "../base";
import { type Build, readDocument } from "../build";
import { apply } from "../edit";
import { plan } from "./plan-of";
import { verifyPlan } from "./verify/verify-plan";

const stopsOf = (build: Build): readonly Finding[] => plan(build).findings.filter(({ severity }) => severity === "stop");
const read = (document: unknown): Build => readDocument(document).build!;

/** Of each thing that is wrong: what is said, the first reason, the ways out. */
const told = (document: unknown) => {
  const build = read(document);
  return stopsOf(build).map((found) => ({
    said: findingSentence(found, build),
    first: statementSentence(found.because![0]!, build),
    ways: found.waysOut!.map((way) => wayOutSentence(way, build)),
  }));
};

/** The document after the first way out of each thing that is wrong, all taken. */
const mended = (document: unknown): unknown => {
  const edits = stopsOf(read(document)).flatMap(({ waysOut }) => waysOut![0]!.edits);
  return apply(document, edits).document;
};

const friends = { id: "friends", name: "Friends", week: {}, extra: { "2027-03-13": ["8:00-16:00"], "2027-03-20": ["8:00-16:00"] } };
const people = [
  { id: "me", name: "Me" },
  { id: "ruth", name: "Ruth", calendar: "friends" },
  { id: "sam", name: "Sam", calendar: "friends" },
];
const three = { hands: 3 };

const late = (more: PartialDocument = {}): PartialDocument =>
  documentOf({
    resumes: "2027-04-03",
    people,
    calendars: [friends],
    steps: [step("lift", three), step("sweep"), step("raise", { ...three, work: "5 h", after: ["lift", "sweep"] })],
    ...more,
  });

describe("work that needs people whose days are over", () => {
  test("says so first, by when they were there, and offers the days on which they would be needed", () => {
    expect(told(late())).toEqual([
      {
        said: "“lift” comes too late: the people it asks for are there together for the last time on Sat 20 Mar.",
        first: "“lift” takes 1 h of “Weekends”; the people it asks for are there together for the last time on Sat 20 Mar.",
        ways: ["Have Ruth and Sam come on Sat 3 Apr too."],
      },
    ]);
  });

  test("has a plan once they come on these days", () => {
    const build = read(mended(late()));
    const made = plan(build);
    expect(made.status).toBe("planned");
    expect(verifyPlan(build, made)).toEqual([]);
  });

  test("offers as many days as its steps need, the first ones on which there is site work", () => {
    const long = [1, 2, 3].map((k) => step(`lift-${k}`, { ...three, work: "7 h" }));
    expect(told(late({ steps: long })).map(({ ways }) => ways)).toEqual([
      ["Have Ruth and Sam come on Sat 3 Apr, Sun 4 Apr and Sat 10 Apr too."],
    ]);
  });

  test("offers no days where no plan keeps the rest, or where they are more than anybody is asked to come", () => {
    const twice = ["cut", "wash"].map((id) => step(id, { hands: 1, fixed: "2027-04-04T09:00" }));
    expect(told(late({ steps: [step("lift", three), ...twice] })).map(({ ways }) => ways)).toEqual([[]]);
    const many = Array.from({ length: 17 }, (_, k) => step(`lift-${k}`, { ...three, work: "7 h" }));
    expect(told(late({ steps: many })).map(({ ways }) => ways)).toEqual([[]]);
  });

  test("is told as such with a date to be done by that it could keep, and by its dates where it could not", () => {
    const [found] = told(late({ steps: [step("lift", { ...three, deadline: "2027-05-01" }), step("sweep")] }));
    expect(found!.said).toContain("comes too late");
    const [other] = told(late({ resumes: undefined, steps: [step("lift", { ...three, work: "9 h", deadline: "2027-03-14" })] }));
    expect(other!.said).toBe("The dates cannot all be kept: it is “lift” that does not fit.");
  });

  test("a calendar that ends is told as such, with nobody to come again", () => {
    const hall = { id: "hall", name: "Hall", week: {}, extra: { "2027-03-20": ["8:00-16:00"] } };
    expect(told(late({ people: people.slice(0, 1), calendars: [hall], steps: [step("cut", { calendar: "hall" })] }))).toEqual([
      {
        said: "“cut” comes too late: its calendar is open for the last time on Sat 20 Mar.",
        first: "“cut” takes 1 h of “Hall”; its calendar is open for the last time on Sat 20 Mar.",
        ways: [],
      },
    ]);
  });
});

describe("dates that have passed while a step was not done", () => {
  const booked = { id: "pump", name: "Pump", step: "sweep", date: "2027-03-13" };

  test("are told one by one, each with another date where there is one", () => {
    const steps = [step("sweep"), step("cut", { deadline: "2027-03-14" }), step("wash", { fixed: "2027-03-07T09:00" })];
    expect(told(late({ people: people.slice(0, 1), steps, bookings: [booked] }))).toEqual([
      {
        said: "The dates cannot all be kept: it is “sweep” that does not fit.",
        first: "“sweep” cannot begin before Sat 3 Apr.",
        ways: ["Ask for another date for the pump."],
      },
      {
        said: "The dates cannot all be kept: it is “cut” that does not fit.",
        first: "“cut” cannot begin before Sat 3 Apr.",
        ways: [],
      },
      {
        said: "The dates cannot all be kept: it is “wash” that does not fit.",
        first: "“wash” cannot begin before Sat 3 Apr.",
        ways: [],
      },
    ]);
  });

  test("stand beside what would be in the way without them, and all is mended together", () => {
    const document = late({ bookings: [booked] });
    expect(told(document).map(({ said, ways }) => [said, ways])).toEqual([
      ["The dates cannot all be kept: it is “sweep” that does not fit.", ["Ask for another date for the pump."]],
      [
        "“lift” comes too late: the people it asks for are there together for the last time on Sat 20 Mar.",
        ["Have Ruth and Sam come on Sat 3 Apr too."],
      ],
    ]);
    expect(plan(read(mended(document))).status).toBe("planned");
  });
});

test("the bank cellar, half a year behind: another date for the pump and three more Saturdays of the helpers", async () => {
  const cellar = (await examples.find(({ id }) => id === "bank-cellar")!.load()) as object;
  const document = { ...cellar, resumes: "2027-09-04" };
  expect(told(document).map(({ said, ways }) => [said, ways.length])).toEqual([
    ["The dates cannot all be kept: it is “Pour the walls” that does not fit.", 1],
    ["“Pour the walls” comes too late: the people it asks for are there together for the last time on Sat 16 Oct.", 1],
  ]);
  const build = read(mended(document));
  const made = plan(build);
  expect(made.status).toBe("planned");
  expect(verifyPlan(build, made)).toEqual([]);
});
