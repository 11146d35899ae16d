import { describe, expect, test } from "vitest";
import { buildOf } from "../../../test/fixtures/make";
import { slabPour } from "../../../test/fixtures/pours";
import type { Build } from ".";

const steps = [{ id: "a" }, { id: "b" }];
const build = (removals: readonly object[], more: object = {}, pour: object = {}): Build =>
  buildOf({ steps, pours: [slabPour({ removals: removals.map((one) => ({ step: "b", ...one })), ...pour })], ...more });
/** Ground and text of every wait, and its minutes or thousandths. */
const said = (made: Build) => made.waits.map(({ removal, least }) => [removal?.ground, least?.text, least?.amount]);

describe("what waits for a pour", () => {
  test.each<[string, object, unknown[][]]>([
    // ACI 347R: walls and columns 12 h above 50 °F. 500 psi of 4000 are 125 thousandths.
    [
      "sides",
      {},
      [
        ["12 h", "12 warm hours of a", 720],
        ["curve", "500 psi of a", 125],
      ],
    ],
    [
      "sides",
      { days: "2 d", share: 40 },
      [
        ["days", "2 d", 2880],
        ["curve", "40 % of a", 400],
      ],
    ],
    // Table of ACI 347: one-way slab, live load less than dead: 4, 7, 10 days by span; halved where shores stay, not under 3.
    [
      "soffit",
      { span: "9 ft" },
      [
        ["table", "4 warm days of a", 5760],
        ["curve", "70 % of a", 700],
        ["28 days", "28 warm days of a", 40320],
      ],
    ],
    [
      "soffit",
      { span: "12 ft", shoresStay: true },
      [
        ["table", "84 warm hours of a", 5040],
        ["curve", "70 % of a", 700],
        ["28 days", "28 warm days of a", 40320],
      ],
    ],
    [
      "soffit",
      { span: "9 ft", shoresStay: true },
      [
        ["table", "3 warm days of a", 4320],
        ["curve", "70 % of a", 700],
        ["28 days", "28 warm days of a", 40320],
      ],
    ],
    [
      "soffit",
      { soffit: "beam", span: "25 ft", liveExceedsDead: true },
      [
        ["table", "14 warm days of a", 20160],
        ["curve", "70 % of a", 700],
        ["28 days", "28 warm days of a", 40320],
      ],
    ],
    [
      "shores",
      { soffit: "arch", share: 85 },
      [
        ["table", "14 warm days of a", 20160],
        ["curve", "85 % of a", 850],
        ["28 days", "28 warm days of a", 40320],
      ],
    ],
    ["shores", { days: "14 d", saidBy: "drawing" }, [["days", "14 d", 20160]]],
    // A share written beside the drawing's days has to be there too: in the cold it comes later.
    [
      "shores",
      { days: "14 d", saidBy: "drawing", share: 85 },
      [
        ["days", "14 d", 20160],
        ["curve", "85 % of a", 850],
      ],
    ],
    // No days at all are not the drawing's days.
    [
      "shores",
      { days: "0 d", saidBy: "drawing", soffit: "arch" },
      [
        ["table", "14 warm days of a", 20160],
        ["curve", "70 % of a", 700],
        ["28 days", "28 warm days of a", 40320],
        ["days", "0 d", 0],
      ],
    ],
    // Days that nobody stands for shorten nothing of what carries.
    [
      "shores",
      { days: "3 d", saidBy: "own guess", span: "9 ft" },
      [
        ["table", "4 warm days of a", 5760],
        ["curve", "70 % of a", 700],
        ["28 days", "28 warm days of a", 40320],
        ["days", "3 d", 4320],
      ],
    ],
    [
      "load",
      {},
      [
        ["curve", "70 % of a", 700],
        ["28 days", "28 warm days of a", 40320],
      ],
    ],
    ["load", { days: "7 warm days of a", saidBy: "structural-engineer" }, [["days", "7 warm days of a", 10080]]],
    [
      "load",
      { days: "7 warm days of a" },
      [
        ["curve", "70 % of a", 700],
        ["28 days", "28 warm days of a", 40320],
        ["days", "7 warm days of a", 10080],
      ],
    ],
    [
      "backfill",
      {},
      [
        ["days", "7 d", 10080],
        ["curve", "70 % of a", 700],
      ],
    ],
    ["anchors", {}, [["days", "3 d", 4320]]],
  ])("%s %j", (sort, more, expected) => {
    expect(said(build([{ sort, ...more }]))).toEqual(expected);
  });

  test("is a wait like any other, from the end of the pour to the start of the step, and says what it is", () => {
    const [wait] = build([{ sort: "shores", span: "9 ft", days: "21 d", saidBy: "drawing" }]).waits;
    expect(wait).toEqual({
      id: "slab>shores>days",
      ...{ name: "", from: "a", to: "b", fromEnd: "finish", toEnd: "start", most: null, visits: null, why: "drawing", plain: true },
      least: { on: { kind: "elapsed" }, amount: 30240, text: "21 d", from: null },
      removal: { pour: "slab", sort: "shores", ground: "days" },
    });
  });

  test("has an id of its own, and none that a builder could write", () => {
    const more = { steps: [...steps, { id: "c" }], groups: [{ id: "g", count: 2, members: ["c"] }] };
    const ids = build([{ sort: "anchors" }, { sort: "anchors", step: "c" }], more).waits.map(({ id, to }) => `${id} ${to}`);
    expect(ids).toEqual(["slab>anchors>days b", "slab>anchors>days#2 c#1", "slab>anchors>days#3 c#2"]);
  });

  test("is not there twice as a ring: a step that comes before the pour is told once", () => {
    const waits = [{ id: "w", from: "b", to: "a", least: "1 d" }];
    expect(() => build([{ sort: "sides" }], { waits })).toThrow(/removal-before-pour/);
  });

  test("of an arch is read in the arch's row without a span", () => {
    const barrel = { elements: [{ id: "v", shape: { kind: "barrel", long: "10 ft", span: "8 ft", rise: "3 ft", thick: "8 in" } }] };
    expect(said(build([{ sort: "soffit", liveExceedsDead: true }], {}, barrel))[0]).toEqual(["table", "7 warm days of a", 10080]);
  });

  test("without a span is read at the longest, and that is said", () => {
    const made = build([{ sort: "soffit" }]);
    expect(said(made)[0]).toEqual(["table", "10 warm days of a", 14400]);
  });
});

describe("a strength that was shown", () => {
  const fixed = [{ id: "a", fixed: "2027-06-26T07:30" }, { id: "b" }];
  const broken = (...results: [string, string][]) => ({ breaks: results.map(([at, strength]) => ({ at, strength, by: "lab" })) });
  const soffit = [{ sort: "soffit", span: "9 ft" }];

  test("leaves the order and the day, nothing else", () => {
    const made = build(soffit, { steps: fixed }, broken(["2027-07-03T08:00", "2800 psi"]));
    expect(made.waits).toMatchObject([{ id: "slab>soffit>shown", least: null, removal: { ground: "shown" } }]);
    expect(made.steps[1]!.notBefore).toBe("2027-07-03T08:00");
  });

  test("puts off nothing that may go ahead on what is expected, however late it is known", () => {
    const made = build([{ sort: "sides" }], { steps: fixed }, broken(["2027-07-28T08:00", "2800 psi"]));
    expect(made.waits.map(({ id }) => id)).toEqual(["slab>sides>12 h", "slab>sides>curve"]);
  });

  test("a guess shows nothing", () => {
    const guess = { breaks: [{ at: "2027-07-03T08:00", strength: "2800 psi", by: "own guess" }] };
    expect(said(build(soffit, { steps: fixed }, guess)).map(([ground]) => ground)).toEqual(["table", "curve", "28 days"]);
  });

  test("counts from the first result that is enough", () => {
    const made = build(
      soffit,
      { steps: fixed },
      broken(["2027-07-10", "3900 psi"], ["2027-06-29T08:00", "2799 psi"], ["2027-07-03T08:00", "2900 psi"]),
    );
    expect(made.steps[1]!.notBefore).toBe("2027-07-03T08:00");
  });

  test("does not bring forward what the step says itself", () => {
    const late = [fixed[0]!, { id: "b", notBefore: "2027-08-01" }];
    expect(build(soffit, { steps: late }, broken(["2027-07-03T08:00", "2800 psi"])).steps[1]!.notBefore).toBe("2027-08-01");
  });

  test("is none while the pour has no fixed date", () => {
    const made = build(soffit, {}, broken(["2027-07-03T08:00", "2800 psi"]));
    expect(made.waits.map(({ removal }) => removal!.ground)).toEqual(["table", "curve", "28 days"]);
    expect(made.steps[1]!.notBefore).toBe(null);
  });

  test("lifts only what asks for no more", () => {
    const made = build([...soffit, { sort: "load", share: 90 }], { steps: fixed }, broken(["2027-07-03T08:00", "2800 psi"]));
    expect(made.waits.map(({ id }) => id)).toEqual(["slab>soffit>shown", "slab>load>curve", "slab>load>28 days"]);
  });
});
