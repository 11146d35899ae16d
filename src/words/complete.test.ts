import { describe, expect, test } from "vitest";
import {
  all,
  booking,
  buildFindings,
  calendar,
  cellar,
  delivery,
  other,
  piece,
  place,
  step,
  values,
  wait,
} from "../../test/fixtures/word-samples";
import { rules } from "../core/access";
import type { DetailValue, Statement, WayOut, WayOutKind } from "../core/base";
import { assumptions, windowRules } from "../core/plan";
import { ways } from "./access/ways-out";
import { assumptionSentence, findingSentence, linkSentence, sayings, statementSentence, wayOutSentence } from "./index";
import { faultsOf } from "./lint.testing";

describe("every finding", () => {
  test("has a sentence, and every sentence a finding", () => {
    expect(all.map(({ code }) => code).sort()).toEqual(Object.keys(sayings).sort());
    expect(buildFindings.length).toBeGreaterThan(50);
    expect(Object.values(values).every((value) => value !== undefined)).toBe(true);
  });

  test.each(all.map((one) => [one.code, one] as const))("%s is fit to read, in both units, and without a build", (_, one) => {
    for (const key of Object.keys(one.detail)) expect(one.detail[key], key).toBeDefined();
    for (const display of ["us", "metric"] as const) {
      const said = findingSentence(one, cellar, display);
      expect(faultsOf(said, cellar), said).toEqual([]);
    }
    // Order and dates are found in a build only; a file that is none yet has findings of reading.
    if (!/^(build|clock)\./.test(one.code)) return;
    const bare = findingSentence(one, null);
    expect(faultsOf(bare, null), bare).toEqual([]);
  });

  test("an unheard-of code still gives a sentence that tells where", () => {
    expect(findingSentence({ code: "later.new", severity: "look", where: { list: "steps", id: step }, detail: {} }, cellar)).toBe(
      `Step “${cellar.steps[9]!.name}”: something is not right here.`,
    );
  });
});

const statementDetail: Record<string, Record<string, DetailValue>> = {
  ways: { passing: [`${place}.${cellar.places[3]!.ways[0]!.id}`], narrow: [], depth_mm: 1500 },
  through: { through: cellar.places[4]!.id },
  work: { minutes: 480 },
  reach: { depth_mm: 1500 },
  leans: { once: `70 % of ${step}` },
  held: { sets: [`${piece} and ${cellar.pieces[4]!.id}`, piece], claims: true },
  "not-before": { date: "2027-06-26T07:30" },
  deadline: { date: "2027-06-26" },
  fixed: { date: "2027-06-26" },
  wait: { plain: false, least: "24 h", most: "3 d" },
  choice: { either: ["fresh on fresh", "roughened after a day"], by: "fresh on fresh", most: "60 min" },
  refused: { before: [step], after: [other] },
  "window.release": { date: "2027-06-26", of: "not-before" },
  "window.due": { date: "2027-06-26", of: "deadline" },
  "window.fixed": { date: "2027-06-26T10:00", of: "booking" },
  "window.least": { amount: `70 % of ${step}`, fromEnd: "finish", toEnd: "start", because: "wait" },
  "window.most": { amount: "28 d", fromEnd: "start", toEnd: "finish", because: "wait" },
  "window.length": { minutes: 480, calendar, unbroken: true },
  "window.needs": { delivery },
  "window.people": { people: cellar.people.map(({ id }) => id), roles: [] },
  "window.equipment": { of: cellar.equipment[0]!.id, number: 2 },
  "window.room": { number: 2 },
  "window.alone": {},
  "window.stock": { of: cellar.stock[0]!.id, number: 12 },
};
const way = cellar.places[3]!.ways[0]!.id;

describe("every kind of statement", () => {
  const kinds = [...Object.keys(rules), ...Object.keys(windowRules)];
  test.each(kinds)("%s is said as a fact and as a reason, both ways round", (rule) => {
    const statement: Statement = {
      rule,
      step,
      other,
      place,
      way,
      piece,
      pieces: [piece],
      need: "arm",
      id: wait,
      detail: statementDetail[rule] ?? {},
    };
    const [from, to] = [cellar.at.step.get(step)!, cellar.at.step.get(other)!];
    const said = [
      statementSentence(statement, cellar),
      statementSentence({ ...statement, step: undefined, other: undefined }, cellar),
      linkSentence({ from, to, reason: statement }, cellar),
      linkSentence({ from: to, to: from, reason: statement }, cellar),
    ];
    for (const one of said) expect(faultsOf(one, cellar), one).toEqual([]);
    expect(said[0]).not.toContain("has its place in the order");
  });

  test("each need, and one of several places", () => {
    for (const need of ["sight", "hand", "arm", "hose", "person", "machine", "unit"]) {
      const detail = {
        long_mm: 1800,
        wide_mm: 1200,
        thick_mm: 25,
        mass_kg: 40,
        unit: piece,
        depth_mm: 600,
        passing: [],
        narrow: [`${place}.${way}`],
      };
      for (const rule of ["reach", "off", "ways"]) {
        const said = statementSentence({ rule, step, piece, place, need, id: "1", detail }, cellar);
        expect(faultsOf(said, cellar), said).toEqual([]);
      }
    }
    const several = statementSentence(
      { rule: "reach", step, id: "1", detail: { places: [place, cellar.places[4]!.id], needs: ["person", "sight"] } },
      cellar,
    );
    expect(several).toBe("“Tie footing steel on chairs” must get to the footing steel or see the drain beside the footing.");
  });
});

describe("every way out and assumption", () => {
  const choice = cellar.choices[0]!.id;
  const details: Record<WayOutKind, readonly Record<string, DetailValue>[]> = {
    bench: [
      { step, place, piece },
      { step, place, piece, other },
      { step, place },
    ],
    "leave-face-off": [{ piece, step, other }],
    "clean-out": [{ place, step }],
    split: [
      { step, other },
      { step, piece },
      { step, piece, place, way: `${place}.${way}` },
      { step, other: "" },
    ],
    later: [{ piece, step, other }],
    "down-between": [{ piece, step }],
    "second-inspection": [{ step, place, other }],
    tick: [{ step, other }],
    untick: [{ step }],
    "move-date": [
      { step, key: "deadline", to: "2027-06-26" },
      { delivery, to: "2027-06-26" },
      { booking, to: "2027-06-26T10:00" },
      { step, steps: [step, cellar.steps[1]!.id], key: "deadline", to: "2027-06-26" },
      { begins: "2027-03-26", goesOn: "2027-04-03" },
    ],
    "asked-for": [{ delivery }, { booking }],
    "drop-wait": [{ wait, side: "most" }, { wait: "no-such", step, other }, { choice }],
    "one-more": [
      { offer: "helper-day", of: "one-more-helper", who: [], number: 1, dates: ["2027-06-26", "2027-06-27"] },
      { offer: "helper-day", of: "", who: [cellar.people[1]!.id], number: 1, dates: ["2027-06-26"] },
      { offer: "day-off", of: "", who: cellar.people.slice(0, 2).map(({ id }) => id), number: 1, dates: ["2027-06-25"] },
      { offer: "visit-day", of: cellar.calendars[2]!.id, who: [], number: 1, dates: ["2027-06-26"] },
      { offer: "other-date", of: booking, who: [], number: 1, dates: [] },
      { offer: "stock", of: cellar.stock[0]!.id, who: [], number: 4, dates: [] },
      { offer: "equipment", of: cellar.equipment[0]!.id, who: [], number: 1, dates: [] },
    ],
  };
  test.each(Object.keys(ways) as WayOutKind[])("%s says what to do", (kind) => {
    for (const detail of details[kind]) {
      const said = wayOutSentence({ kind, detail, edits: [] } as WayOut, cellar);
      expect(faultsOf(said, cellar), said).toEqual([]);
      const pair = wayOutSentence({ kind, detail: { ...detail, with: "clean-out" }, edits: [] }, cellar);
      expect(pair).toBe(`${said.slice(0, -1)}; with it goes a clean-out.`);
    }
  });

  test("what a plan rests on is said", () => {
    for (const code of assumptions) expect(faultsOf(assumptionSentence(code), cellar)).toEqual([]);
    expect(assumptionSentence("plan.strength-at-20")).toContain("nothing has shown it");
    expect(assumptionSentence("plan.strength-at-site")).toContain("nothing has shown it");
  });
});
