import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { never } from "../base";
import { type Build, read, readDocument } from "../build";
import { siteTime } from "../clock";
import { type Plan, plan, type SolidStage, solidStages, statesAt } from "./index";

const textOf = (name: string) => readFileSync(`src/examples/${name}.json`, "utf8");
const planned = (build: Build | null): { build: Build; plan: Plan } => ({ build: build!, plan: plan(build!) });
const cellar = planned(read(textOf("bank-cellar")).build);

/** "2027-05-08T13:45 bars in, form", the first without a date. */
function said({ build, plan: dates }: { build: Build; plan: Plan }, id: string): string[] {
  const time = siteTime(build.site.zone, build.start);
  const words = ({ from, state, form }: SolidStage) =>
    `${Number.isFinite(from) ? `${time.momentOf(from as never)} ` : ""}${state}${form ? ", form" : ""}`;
  return solidStages(build, dates)[build.solids.findIndex((solid) => solid.id === id)]!.map(words);
}

interface Written {
  readonly pieces: { id: string; heldBy?: string[][] }[];
  readonly solids: { id: string; form?: string[]; pieces?: string[] }[];
}

/** The garden wall with its document changed. */
function changed(change: (document: Written) => void): { build: Build; plan: Plan } {
  const document = structuredClone(read(textOf("garden-wall")).document) as Written;
  change(document);
  const { build, findings } = readDocument(document);
  expect(findings).toEqual([]);
  return planned(build);
}
const idIn = <T extends { id: string }>(list: readonly T[], id: string): T => list.find((one) => one.id === id)!;

describe("the stages of a body", () => {
  test("of a wall: bars, then its form, fresh for a day, curing in its form, bare, then strong enough for the soil", () => {
    expect(
      said(
        changed(() => {}),
        "wall",
      ),
    ).toEqual([
      "not yet",
      "2027-04-24T11:30 bars in",
      "2027-05-08T13:45 bars in, form",
      "2027-05-15T08:00 poured, form",
      "2027-05-16T14:00 curing, form",
      "2027-05-22T10:30 stripped",
      "2027-05-24T01:48 carrying",
    ]);
  });

  test("formed is told while the bars are not in", () => {
    expect(said(cellar, "vault").slice(0, 3)).toEqual(["not yet", "2027-05-30T14:30 formed, form", "2027-06-20T11:00 bars in, form"]);
  });

  test("without a form it cures until it carries: where nobody waits for its strength, 28 days", () => {
    expect(
      said(
        changed(() => {}),
        "footing",
      ).slice(-3),
    ).toEqual(["2027-04-17T12:30 poured", "2027-04-18T17:30 curing", "2027-05-15T17:30 carrying"]);
  });

  test("or as soon as what it holds stands on it", () => {
    const held = changed((document) => {
      idIn(document.pieces, "wall-concrete").heldBy = [["footing-concrete"]];
    });
    expect(said(held, "footing").at(-1)).toBe("2027-05-15T14:00 carrying");
  });

  test("a form that stays for good does not keep it from carrying, and goes on being told", () => {
    const left = changed((document) => {
      // The steel stands in for a form that is left in: it stands from before the pour and never comes off.
      idIn(document.solids, "wall").form = ["wall-steel"];
    });
    expect(said(left, "wall").slice(-2)).toEqual(["2027-05-16T14:00 curing, form", "2027-05-24T01:48 carrying, form"]);
  });

  test("a hole, a fill and a timber frame are not yet, under way, and stand", () => {
    for (const id of ["cut", "fill-over", "roof"])
      expect(said(cellar, id).map((one) => one.replace(/^\S+T\S+ /, ""))).toEqual(["not yet", "under way", "stands"]);
  });

  test("what is there for a while is gone again", () => {
    expect(said(cellar, "shore-1").at(-1)).toBe("2027-10-16T12:00 gone");
  });

  test("what was found stands from the start, and so does a body of nothing", () => {
    expect(said(cellar, "bank-back")).toEqual(["stands"]);
    const nothing = changed((document) => {
      idIn(document.solids, "planter").pieces = [];
    });
    expect(said(nothing, "planter")).toEqual(["stands"]);
  });

  test("without dates nothing is there yet", () => {
    const { build, plan: refused } = planned(read(textOf("impossible")).build);
    expect(refused.status).toBe("no-order");
    expect(new Set(statesAt(build, refused, 1e9).map(({ state }) => state))).toEqual(new Set(["not yet"]));
  });

  test("the same plan gives the same stages", () => {
    expect(solidStages(cellar.build, cellar.plan)).toBe(solidStages(cellar.build, cellar.plan));
  });
});

/** What a body is at an instant, once more from the table of what stands alone, one question after the other. */
function slowly({ build, plan: dates }: { build: Build; plan: Plan }, index: number, t: number): string {
  const solid = build.solids[index]!;
  const span = (id: string) => dates.stands.pieces[build.at.piece.get(id)!]!;
  const isThere = (id: string) => span(id).stands <= t && t < span(id).gone;
  if (solid.pieces.length > 0 && solid.pieces.every((id) => span(id).gone <= t)) return "gone";
  const step = (id: string) => dates.steps[build.at.step.get(id)!]!;
  if (solid.pour !== null) {
    if (step(solid.pour).start <= t) return "placed";
    if (solid.bars.length > 0 && solid.bars.every((id) => step(id).finish <= t)) return "bars in";
    return solid.form.some(isThere) ? "formed" : "not yet";
  }
  if (solid.pieces.every(isThere)) return "stands";
  return solid.pieces.some((id) => span(id).up <= t) ? "under way" : "not yet";
}

test("every body of the cellar on every quarter of every day is what the table of what stands says", () => {
  const placed = new Set(["poured", "curing", "stripped", "carrying"]);
  let seen = 0;
  for (let t = 0; t <= cellar.plan.finish; t += 360) {
    const states = statesAt(cellar.build, cellar.plan, t);
    states.forEach(({ state, form }, index) => {
      expect(placed.has(state) ? "placed" : state, `${cellar.build.solids[index]!.id} at ${t}`).toBe(slowly(cellar, index, t));
      const forms = cellar.build.solids[index]!.form.map((id) => cellar.plan.stands.pieces[cellar.build.at.piece.get(id)!]!);
      expect(form).toBe(forms.some((span) => span.stands <= t && t < span.gone));
      // Nothing carries while a form that comes off it stands.
      if (state === "carrying") expect(forms.every(({ stands, gone }) => gone === never || gone <= t || stands > t)).toBe(true);
      seen += 1;
    });
  }
  expect(seen).toBeGreaterThan(40_000);
});

test("the vault carries no earlier than any share of its strength is there that something waits for", () => {
  const { build, plan: dates } = cellar;
  const carries = solidStages(build, dates)[build.solids.findIndex(({ id }) => id === "vault")]!.at(-1)!;
  expect(carries.state).toBe("carrying");
  for (const step of ["strike-wedges", "take-lagging", "take-ribs"])
    expect(carries.from).toBeGreaterThanOrEqual(dates.steps[build.at.step.get(step)!]!.start);
});
