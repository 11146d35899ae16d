import { describe, expect, test } from "vitest";
import { rules } from "../core/access";
import type { DetailValue, Finding, Statement, WayOut, WayOutKind } from "../core/base";
import { type Build, codes, readDocument } from "../core/build";
import { clockCodes } from "../core/clock";
import { assumptions, compareCodes, planCodes, windowRules } from "../core/plan";
import { pourCodes } from "../core/pour";
import { examples } from "../examples";
import { ways } from "./access/ways-out";
import { assumptionSentence, findingSentence, linkSentence, sayings, statementSentence, wayOutSentence } from "./index";
import { faultsOf } from "./lint.testing";

const cellar = readDocument(await examples[1]!.load()).build as Build;
const [step, other] = [cellar.steps[9]!.id, cellar.steps[20]!.id];
const [piece, place, wait] = [cellar.pieces[3]!.id, cellar.places[3]!.id, cellar.waits.find(({ plain }) => !plain)!.id];
const [delivery, booking, calendar, stock] = [
  cellar.deliveries[2]!.id,
  cellar.bookings[1]!.id,
  cellar.calendars[0]!.id,
  cellar.stock[0]!.id,
];

/** A value for each key that details have. */
const values: Record<string, DetailValue> = {
  step,
  other,
  piece,
  place,
  wait,
  delivery,
  booking,
  calendar,
  of: stock,
  holder: piece,
  pour: step,
  first: step,
  second: other,
  ring: [step, other],
  waits: ["", ""],
  steps: [step, other],
  used: [other],
  role: "hands",
  lacks: "people",
  status: "no-dates",
  value: "58 inn",
  nearest: "58 in",
  choices: ["a", "b"],
  wanted: 3,
  found: "}",
  name: "id",
  kind: "length",
  sort: "place",
  key: "dept",
  member: "tie-bars",
  group: "columns",
  what: "steps",
  part: "2.depth",
  unit: "mm",
  least: 5,
  most: 40_000,
  line: 3,
  column: 7,
  characters: 6_000_000,
  version: 2,
  known: 1,
  count: 3,
  low: "3 h",
  likely: "2 h",
  high: "1 h",
  start: "2027-03-06",
  there: 2,
  percent: 120,
  have: 1,
  people: 3,
  room: 2,
  named: 1,
  minutes: 480,
  unbroken: true,
  siteDays: 2,
  moved: 4,
  otherOrders: 2,
  boundAt: 90_000,
  arrivesAt: 9000,
  readyAt: 5000,
  orderAt: -9000,
  bookAt: -9000,
  finishAt: 90_000,
  beforeAt: 80_000,
  nextAt: 12_000,
  zone: "America/Nowhere",
  date: "2027-02-30",
  why: "day",
  days: 28,
  month: 2,
  moment: "2027-03-14T02:30",
  means: "2027-03-14T03:00",
  table: "us",
  year: 2050,
  from: 2024,
  to: 2045,
  work: 100,
};

/** Keys of what is found about pours; a key that ends in a unit is a figure. */
const ofPours: Record<string, DetailValue> = {
  element: "columns",
  before: "slab",
  bars: "verticals",
  parts: ["bands", "wales"],
  part: "bands",
  governs: "bending",
  each: "metre",
  why: "vibrated deep",
  document: "din",
  form: "wall",
  shape: "column",
  size: "2x5",
  ply: "4/4",
  grain: "across",
  ground: "fresh fill",
  exposure: "weather or ground",
  because: "slab",
  lacks: "wind",
  unit: "",
  source: "ACI 318",
  what: "slump",
  soil: "B",
  panel: "a",
  sort: "sides",
  by: "lab",
  of100: 101,
};
const pourValue = (code: string, key: string): DetailValue => own[code]?.[key] ?? ofPours[key] ?? values[key] ?? 12.5;

/** Where one key means different things by code. */
const own: Readonly<Record<string, Readonly<Record<string, DetailValue>>>> = {
  "build.json": { wanted: "comma-or-end" },
  "build.type": { wanted: ["text", "list"] },
  "build.range": { value: "900 ft" },
  "build.id-twice": { first: 2, second: 5 },
  "build.windows-overlap": { first: "7:30-12:00", second: "11:00-15:00" },
  "build.most-under-least": { least: "3 d", most: "24 h" },
  "build.hold-ring": { ring: [piece, cellar.pieces[4]!.id] },
  "build.way-ring": { ring: [place, cellar.places[4]!.id] },
  "build.below-ring": { ring: [place, cellar.places[4]!.id] },
  "build.outside": { value: "12 in", name: "slump", least: 0, most: 11, unit: "in", source: "ASTM C143 cone" },
  "build.not-in-table": { value: "2x5", table: "lumber", nearest: "2x6" },
  "build.low-above-high": { low: "60 °F", high: "48 °F" },
  "build.not-rising": { first: "30 in", second: "16 in" },
  "build.above-form": { value: "80 in", most: 1828.8 },
  "build.form-misfit": { form: "edge", shape: "column" },
  "build.break-before-pour": { value: "2027-05-01", poured: "2027-06-26", by: "fixed" },
  "build.break-before-kept": { value: "2027-05-01", poured: "2027-06-26" },
  "build.removal-before-pour": { by: "fixed" },
  "build.over-strength": { value: `150 % of ${step}` },
  "build.not-a-pour": { value: step },
  "build.two-groups": { first: "columns", second: "windows" },
  "build.before-start": { value: "2027-01-02" },
  "build.which-copy": { value: "tie-column" },
  "clock.unknown-holidays": { known: ["de", "us-federal"] },
  "pressure.no-dimension": { what: "high_mm" },
  "pressure.assumed": { keys: ["mix.weight", "mix.slump"] },
  "form.guess": { what: "grade" },
  "form.no-figure": { what: "spacing" },
  "form.over": { at_mm: 100 },
};

const detailFor = (code: string, keys: readonly string[]) =>
  Object.fromEntries(keys.map((key) => [key, own[code]?.[key] ?? (values[key] as DetailValue)]));
const finding = (code: string, keys: readonly string[]): Finding => ({
  code,
  severity: "stop",
  where: { list: "steps", id: step, key: "leansOn" },
  detail: detailFor(code, keys),
});

const buildFindings = Object.entries(codes).map(([code, { detail }]) => finding(code, detail));
const planFindings = Object.entries({ ...planCodes, ...compareCodes }).map(([code, detail]) => finding(code, detail));
const clockFindings = clockCodes.map((code) =>
  finding(code, ["zone", "date", "why", "days", "month", "moment", "means", "table", "year", "from", "to", "known"]),
);
const accessFindings = Object.keys(sayings)
  .filter((code) => code.startsWith("access."))
  .map((code) => finding(code, ["steps", "piece", "holder", "work"]));
const pourFindings = Object.entries(pourCodes as Record<string, readonly string[]>).map(
  ([code, keys]): Finding => ({
    code,
    severity: "stop",
    where: { list: "pours", id: "porch" },
    detail: Object.fromEntries(keys.map((key) => [key, pourValue(code, key)])),
  }),
);
const all = [...buildFindings, ...planFindings, ...clockFindings, ...accessFindings, ...pourFindings];

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
    "move-date": [
      { step, key: "deadline", to: "2027-06-26" },
      { delivery, to: "2027-06-26" },
      { booking, to: "2027-06-26T10:00" },
    ],
    "drop-wait": [{ wait, side: "most" }, { wait: "no-such", step, other }, { choice }],
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
