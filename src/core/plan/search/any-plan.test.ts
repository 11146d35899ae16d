import { expect, test } from "vitest";
import { realisticDocument } from "../../../../test/bench/realistic";
import { buildOf } from "../../../../test/fixtures/make";
import { type Build, readDocument } from "../../build";
import { plan } from "../plan-of";
import { verifyPlan } from "../verify/verify-plan";
import { PlanSearch } from "./plan-search";

function searched(build: Build, most: number): PlanSearch {
  const search = new PlanSearch(build);
  while (!search.done && search.rung < most) search.step(20);
  return search;
}

/** One man, a place that a form closes for a while, and so much other work on the Saturday by whose end the form has to stand. */
const formBySaturday = (other: string) =>
  buildOf({
    calendars: [{ id: "weekends", name: "Weekends", week: { sat: ["8:00-16:00"], sun: ["8:00-16:00"] } }],
    usual: "weekends",
    people: [{ id: "me", name: "Me", calendar: "weekends" }],
    places: [{ id: "cut", name: "Cut", ways: [{ id: "top", name: "from the top", passes: ["person"] }] }],
    pieces: [{ id: "lid", name: "Lid", sort: "form", closes: ["cut.top"] }],
    steps: [
      { id: "clean", work: "4 h", reaches: [{ place: "cut" }] },
      { id: "close", work: "4 h", puts: ["lid"], deadline: "2027-03-06" },
      { id: "other", work: other, deadline: "2027-03-06" },
      { id: "open", work: "1 h", takes: ["lid"] },
    ],
  });

test("where the order that was chosen leaves too few hours, what was chosen in it is turned and a plan found", () => {
  const build = formBySaturday("4 h");
  expect(plan(build).status).toBe("not-found");
  const search = searched(build, 1000);
  const made = search.plan();
  expect(made.status).toBe("planned");
  expect(verifyPlan(build, made)).toEqual([]);
  const [clean, , , open] = made.steps;
  expect(clean!.start).toBeGreaterThanOrEqual(open!.finish);
});

test("where no order has the hours, that is said without a word of what was only chosen", () => {
  const { ruledOut, finish, done } = searched(formBySaturday("5 h"), 1000).sought();
  expect([done, finish]).toEqual([true, null]);
  expect(ruledOut).toMatchObject({ code: "plan.ruled-out", detail: { minimal: true } });
  expect(JSON.stringify(ruledOut!.because)).not.toContain("clean");
  expect(ruledOut!.because!.map(({ rule }) => rule)).toContain("window.people");
});

test("one early date in a large build is met soon: what leads to it is planned first, the rest after it", () => {
  const document = realisticDocument(140, 3);
  const steps = document.steps as { id: string; deadline?: string }[];
  steps.find(({ id }) => id === "b2-patch")!.deadline = "2027-05-16";
  const { build } = readDocument({ ...document, people: (document.people as object[]).slice(0, 3) });
  expect(plan(build!).status).toBe("not-found");
  const search = new PlanSearch(build!);
  // What is known of a finish from below is told once there is a plan.
  while (!search.done && search.sought().bound === null) search.step(1);
  expect(search.sought().tried).toBeLessThan(500);
  const made = searched(build!, 1000).plan();
  expect(made.status).toBe("planned");
  expect(verifyPlan(build!, made)).toEqual([]);
});
