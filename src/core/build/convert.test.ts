import { describe, expect, test } from "vitest";
import { buildOf, readOf } from "../../../test/fixtures/make";

const pour = { id: "pour", pour: { strength: "3000 psi" } };
const least = (amount: unknown, more: object = {}) =>
  buildOf({ steps: [{ id: "a" }, { id: "b" }, pour], waits: [{ id: "w", from: "a", to: "b", least: amount }], ...more }).waits[0]?.least;

describe("amounts on a clock", () => {
  test.each([
    ["90 min", 90],
    ["6 h", 360],
    ["1 h 30 min", 90],
    ["1 1/2 h", 90],
    ["3 d", 4320],
    ["2 wk", 20160],
    ["28 days", 40320],
  ])("%s elapsed", (text, minutes) => {
    expect(least(text)).toEqual({ on: { kind: "elapsed" }, amount: minutes, text, from: null });
  });

  test("on a calendar, with its source", () => {
    expect(least({ is: "8 h", on: "weekends", from: "own guess" })).toEqual({
      on: { kind: "working", calendar: "weekends" },
      amount: 480,
      text: "8 h",
      from: "own guess",
    });
  });

  test("days of an office", () => {
    expect(least("3 days of inspector")).toMatchObject({ on: { kind: "days", calendar: "inspector" }, amount: 3 });
    expect(least("1 day of inspector")).toMatchObject({ on: { kind: "days", calendar: "inspector" }, amount: 1 });
  });

  // 500 / 3000 is 166.67 thousandths: rounded up, since a threshold must never be lowered. 10 MPa is 1450.4 psi, 483.46 thousandths.
  test.each([
    ["70 % of pour", 700],
    ["37.5% of pour", 375],
    ["500 psi of pour", 167],
    ["1500 psi of pour", 500],
    ["3000 psi of pour", 1000],
    ["10 MPa of pour", 484],
  ])("%s is a share of its strength", (text, thousandths) => {
    expect(least(text)).toMatchObject({ on: { kind: "strength", pour: "pour" }, amount: thousandths, text });
  });
});

describe("members", () => {
  test("lengths and masses of places and pieces", () => {
    const { places, pieces } = buildOf({
      places: [
        {
          id: "foot",
          elevation: { x: "-1 ft", y: "0 mm", wide: { is: "2 m", from: "drawing" }, high: "10 in" },
          ways: [
            { id: "top", passes: ["arm"], depth: "26 in", opening: { wide: "30 in", high: "6 ft 8 in" }, longest: "8 ft", bears: "200 lb" },
            { id: "hatch", through: "yard" },
            { id: "shaft", through: { place: "yard", need: "arm", depth: "1 ft" } },
          ],
        },
        { id: "yard", ways: [{ id: "gate" }], level: -2, below: ["foot"], layerOf: "foot" },
      ],
      pieces: [
        {
          id: "sheet",
          fromStart: true,
          size: { long: "8 ft", wide: "4 ft", thick: "3/4 in" },
          weight: "60 lb",
          sort: "form",
          off: [{ place: "yard", need: "unit" }],
        },
      ],
    });
    expect(places[0]?.elevation_mm).toEqual({ x: -304.8, y: 0, wide: 2000, high: 254, shape: "box" });
    expect(places[0]?.ways[0]).toMatchObject({
      full: "foot.top",
      depth_mm: 660.4,
      opening_mm: { wide: 762, high: 2032 },
      longest_mm: 2438.4,
    });
    expect(places[0]?.ways[0]?.bears_kg).toBeCloseTo(90.718474, 6);
    expect(places[0]?.ways[1]).toMatchObject({ passes: ["person"], through: { place: "yard", need: { kind: "person" } } });
    expect(places[0]?.ways[2]?.through).toEqual({ place: "yard", need: { kind: "arm", depth_mm: 304.8 } });
    expect(places[1]).toMatchObject({ level: -2, below: ["foot"], layerOf: "foot", room: null, side: null });
    const need = pieces[0]?.off[0]?.any[0]?.need;
    expect(need).toMatchObject({ kind: "unit", piece: "sheet", long_mm: 2438.4, wide_mm: 1219.2 });
    expect(need?.kind === "unit" && need.thick_mm).toBeCloseTo(19.05, 9);
    expect(need?.kind === "unit" && need.mass_kg).toBeCloseTo(27.2155422, 6);
  });

  test("what is left out of a step has its usual meaning", () => {
    const [step] = buildOf({ steps: [{ id: "a" }] }).steps;
    expect(step).toEqual({
      id: "a",
      name: "a",
      sort: "work",
      place: null,
      work: { low_min: 0, likely_min: 0, high_min: 0 },
      hands: [{ role: "hands", number: 1 }],
      notAlone: false,
      calendar: "weekends",
      unbroken: false,
      reaches: [],
      puts: [],
      takes: [],
      leansOn: [],
      alone: [],
      needs: [],
      equipment: [],
      notBefore: null,
      deadline: null,
      done: null,
      begun: null,
      fixed: null,
      weather: null,
      tools: [],
      materials: [],
      cautions: [],
      notes: "",
      holdPoint: null,
      trial: null,
      pour: null,
      from: null,
      group: null,
    });
  });

  test("a step's figures", () => {
    const [step] = buildOf({
      places: [{ id: "p", ways: [{ id: "w" }] }],
      steps: [
        {
          id: "a",
          work: { low: "1 h", likely: "90 min", high: { is: "3 h", from: "own guess" } },
          hands: [{ role: "hands", number: 2 }],
          reaches: [
            { place: "p", need: "arm", depth: "58 in" },
            {
              any: [
                { place: "p", need: "sight" },
                { place: "p", need: "hose" },
              ],
            },
          ],
          weather: { lowest: "40 F", highest: "30 °C", wind: "20 mph", dry: true },
          fixed: "2027-06-26 7:30",
          pour: { strength: "20 MPa", cement: "III" },
        },
      ],
    }).steps;
    expect(step).toMatchObject({
      sort: "pour",
      place: "p",
      work: { low_min: 60, likely_min: 90, high_min: 180 },
      hands: [{ role: "hands", number: 2 }],
      reaches: [
        { any: [{ place: "p", need: { kind: "arm", depth_mm: 1473.2 } }] },
        { any: [{ need: { kind: "sight" } }, { need: { kind: "hose" } }] },
      ],
      fixed: "2027-06-26T07:30",
      pour: { strength_MPa: 20, cement: "III" },
    });
    expect(step?.weather?.lowest_C).toBeCloseTo(40 / 9, 9);
    expect(step?.weather?.wind_km_h).toBeCloseTo(32.18688, 9);
  });

  test("nobody of the crew, and somebody's own source", () => {
    const steps = buildOf({
      steps: [
        { id: "a", hands: 0, work: { is: "2 h", from: "inspector" } },
        { id: "b", hands: 3, from: "drawing" },
      ],
    }).steps;
    expect(steps.map((step) => [step.hands, step.from])).toEqual([
      [[], "inspector"],
      [[{ role: "hands", number: 3 }], "drawing"],
    ]);
  });

  test("calendars: windows in order, dates of their own", () => {
    const { calendars, at } = buildOf({
      calendars: [
        {
          id: "c",
          week: { sun: ["13:00-24:00", "8:00 - 12:00"] },
          off: ["2028-02-29"],
          extra: { "2027-06-18": ["8:00-16:00"], "2027-06-19": [] },
          cutOff: "15:00",
          holidays: "us-federal",
        },
      ],
    });
    const calendar = calendars[at.calendar.get("c") ?? -1];
    expect(calendar?.week[0]).toEqual([
      { from_min: 480, to_min: 720 },
      { from_min: 780, to_min: 1440 },
    ]);
    expect(calendar?.week.slice(1).flat()).toEqual([]);
    expect([...(calendar?.extra ?? [])]).toEqual([
      ["2027-06-18", [{ from_min: 480, to_min: 960 }]],
      ["2027-06-19", []],
    ]);
    expect(calendar).toMatchObject({ off: ["2028-02-29"], cutOff_min: 900, holidays: "us-federal", daylightOnly: false });
  });

  test("deliveries, bookings, people, choices and the kept plan", () => {
    const build = buildOf({
      people: [{ id: "me", calendar: "inspector", roles: ["hose"], daysOff: { budget: 4, spent: ["2027-06-18"] } }],
      stock: [{ id: "sheets", unit: "sheet", inHand: 2 }],
      steps: [{ id: "a" }, { id: "b", needs: ["bars"] }],
      deliveries: [{ id: "bars", promised: "2027-04-02", lead: "10 days of inspector", brings: [{ of: "sheets", number: 6 }] }],
      bookings: [{ id: "pump", step: "a", date: "2027-06-26T7:30", lead: "2 wk" }],
      choices: [
        {
          id: "joint",
          either: [
            { name: "fresh", waits: [{ from: "a", to: "b", most: "60 min" }] },
            { waits: [{ id: "cut", from: "a", to: "b", least: "1 d" }] },
          ],
        },
      ],
      kept: {
        engine: "1",
        rung: 1000,
        on: "2027-02-01",
        finish: "2027-08-01T15:00",
        steps: { a: ["2027-04-03T7:30", "2027-04-03T12:00"] },
      },
    });
    expect(build.people[0]).toMatchObject({ calendar: "inspector", roles: ["hose"], daysOffBudget: 4, daysOffSpent: ["2027-06-18"] });
    expect(build.deliveries[0]).toMatchObject({
      calendar: "weekends",
      promised: "2027-04-02",
      lead: { amount: 10 },
      ordered: false,
      brings: [{ of: "sheets", number: 6 }],
    });
    expect(build.bookings[0]).toMatchObject({ step: "a", date: "2027-06-26T07:30", lead: { amount: 20160 }, booked: false });
    expect(build.choices[0]?.either.map((side) => side.waits[0])).toMatchObject([
      { id: "joint-1-1", least: null, most: { amount: 60 } },
      { id: "cut", least: { amount: 1440 }, most: null },
    ]);
    expect(build.kept?.on).toBe("2027-02-01");
    expect(build.kept?.steps.get("a")).toEqual({ start: "2027-04-03T07:30", finish: "2027-04-03T12:00" });
    expect(build.steps[1]?.needs).toEqual(["bars"]);
  });

  test("the order in which steps are served; what it names may be gone", () => {
    const served = { engine: "1", rung: 1000, steps: ["b", "gone", "a#2"] };
    expect(buildOf({ served }).served).toEqual(served);
    expect(buildOf({}).served).toBeNull();
    const found = readOf({ served: { ...served, rung: 0.5 } }).findings;
    expect(found.map(({ code, where }) => [code, where.key])).toEqual([["build.whole", "rung"]]);
  });
});
