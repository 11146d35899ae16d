import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { read } from "../../core/build";
import { plan, statesAt } from "../../core/plan";
import { litBodies, selectionFor, stepsOf } from "./bodies";
import { dayToShow, endOf, nextChange, structureDays } from "./days";

const of = (name: string) => {
  const build = read(readFileSync(`src/examples/${name}.json`, "utf8")).build!;
  const planned = plan(build);
  return { build, planned, days: structureDays(build, planned) };
};
const wall = of("garden-wall");
const cellar = of("bank-cellar");

describe("the days of a structure", () => {
  test("run from the first day of work to the last", () => {
    const { days } = wall;
    expect([days.time.dateOf(days.first), days.time.dateOf(days.last)]).toEqual(["2027-04-10", "2027-05-29"]);
    expect(days.site.length).toBe(wall.planned.days.filter(({ site }) => site).length);
  });

  test("tell what a body is in the evening that it was not the evening before", () => {
    const said = [...wall.days.changes].map(([day, changes]) => [
      wall.days.time.dateOf(day),
      changes.map(({ name, state, form }) => `${name} ${state}${form ? ` ${form}` : ""}`).join(", "),
    ]);
    expect(said).toEqual([
      ["2027-04-10", "Footing trench stands"],
      ["2027-04-17", "Footing poured"],
      ["2027-04-18", "Footing curing"],
      ["2027-04-24", "Wall bars in"],
      ["2027-05-08", "Wall bars in up"],
      ["2027-05-15", "Footing carrying, Wall poured"],
      ["2027-05-16", "Wall curing"],
      ["2027-05-22", "Wall stripped off"],
      ["2027-05-24", "Wall carrying"],
      ["2027-05-29", "Planter stands"],
    ]);
  });

  test("between two of them no body is anything else, for every day of the cellar", () => {
    const { build, planned, days } = cellar;
    const at = (day: number) => statesAt(build, planned, endOf(days.time, day)).map(({ state, form }) => `${state} ${form}`);
    for (let day = days.first + 1; day <= days.last; day += 1)
      expect(at(day).join() !== at(day - 1).join(), `day ${day}`).toBe(days.changes.has(day));
  });

  test("the keys go from change to change, and past the last to the ends of the build", () => {
    const { days } = wall;
    const all = [...days.changes.keys()];
    let day = days.first - 1;
    const seen: number[] = [];
    while (day < days.last) {
      day = nextChange(days, day, 1);
      seen.push(day);
    }
    expect(seen).toEqual(all);
    expect(nextChange(days, all[0]!, -1)).toBe(days.first);
    expect(nextChange(days, all[3]! - 1, -1)).toBe(all[2]);
    expect(nextChange(days, days.last, 1)).toBe(days.last);
  });

  test("today is shown where it falls within the build, else the last day", () => {
    const { days } = wall;
    const noon = (date: string) => days.time.minuteOf(`${date}T12:00`)!;
    expect(dayToShow(days, noon("2027-05-10"))).toBe(days.time.dayOfDate("2027-05-10"));
    expect(dayToShow(days, noon("2027-03-01"))).toBe(days.last);
    expect(dayToShow(days, noon("2028-03-01"))).toBe(days.last);
  });
});

describe("what a body stands for", () => {
  const { build } = cellar;
  const solid = (id: string) => build.solids.find((one) => one.id === id)!;
  const lit = (selected: Parameters<typeof litBodies>[2], chosen: string | null = null) => [
    ...litBodies(build, build.solids, selected, chosen),
  ];

  test("its steps: bars, forms up and off, the pour, and the work where it is", () => {
    const steps = stepsOf(build, solid("column-left"));
    for (const id of ["tie-column#1", "set-faces#1", "set-last-face#1", "pour-porch", "strip-column#1"])
      expect(steps.has(id), id).toBe(true);
    for (const id of ["tie-column#2", "tie-vault", "pour-walls"]) expect(steps.has(id), id).toBe(false);
  });

  test("a click selects its place, or for want of one the step that puts it up", () => {
    expect(selectionFor(build, solid("vault"))).toEqual({ list: "places", id: "vault-bars" });
    expect(selectionFor(build, { ...solid("vault"), places: [] })).toEqual({ list: "steps", id: "pour-vault" });
    expect(selectionFor(build, { ...solid("roof"), places: [] })).toEqual({ list: "steps", id: "set-rafters" });
    expect(selectionFor(build, { ...solid("bank-back"), places: [], pieces: [] })).toBeNull();
  });

  test("a place lights all its bodies; one that was clicked only those of its name", () => {
    expect(lit({ list: "places", id: "wall-bars" })).toEqual([
      "wall-back",
      "wall-left",
      "wall-right",
      "wall-front-left",
      "wall-front-right",
    ]);
    expect(lit({ list: "places", id: "wall-bars" }, "wall-left")).toEqual(["wall-left", "wall-right"]);
    expect(lit({ list: "places", id: "vault-bars" }, "wall-left")).toEqual(["vault"]);
  });

  test("a step and a piece light what they are of", () => {
    expect(lit({ list: "steps", id: "tie-vault" })).toEqual(["vault"]);
    expect(lit({ list: "pieces", id: "last-face#2" })).toEqual(["column-right"]);
    expect(lit({ list: "steps", id: "ask-marks" })).toEqual([]);
    expect(lit(null, "vault")).toEqual([]);
  });
});
