import { describe, expect, test } from "vitest";
import { documentOf, type PartialDocument } from "../../../test/fixtures/make";
import { type Finding, limits } from "../base";
import { type BuildCode, bars, codes, read, readDocument } from ".";

/** What is wrong, and where and with which figures it has to be said. */
type Case = readonly [code: BuildCode, wrong: PartialDocument | string, where: Finding["where"], detail: Finding["detail"]];

const oneStep = (step: object): PartialDocument => ({ steps: [{ id: "a", ...step }] });
const at = (id: string, key: string, list = "steps") => ({ list, id, key });
const piece = (id: string, more: object = {}) => ({ id, ...more });
const cage = { places: [{ id: "cage", ways: [{ id: "north" }] }] };

const cases: readonly Case[] = [
  ["build.too-long", `"${"x".repeat(limits.fileCharacters.most)}"`, {}, { characters: 5_000_002, most: 5_000_000 }],
  [
    "build.json",
    '{\n  "batterboard": 1,\n  "name": "x"\n  "start": 2\n}',
    {},
    { line: 4, column: 3, found: '"start":', wanted: "comma-or-end" },
  ],
  ["build.nested", `{"a":${"[".repeat(70)}`, {}, { line: 1, column: 69, most: 64 }],
  ["build.key-twice", '{"batterboard": 1,\n "name": "a", "name": "b"}', {}, { line: 2, column: 15, name: "name" }],
  ["build.not-a-build", "[1]", { key: "batterboard" }, { found: "[…]" }],
  ["build.newer", { batterboard: 7 }, { key: "batterboard" }, { version: 7, known: 1 }],
  ["build.brought-up", { batterboard: 0 }, { key: "batterboard" }, { version: 0, known: 1 }],
  ["build.missing", { waits: [{ id: "w", from: "a" }], ...oneStep({}) }, at("w", "to", "waits"), { part: "" }],
  ["build.missing", { steps: [{ name: "x" }] }, { list: "steps", key: "id", position: 1 }, { part: "" }],
  ["build.type", oneStep({ tools: "saw" }), at("a", "tools"), { part: "", value: "saw", wanted: ["list"] }],
  ["build.type", oneStep({ work: 6 }), at("a", "work"), { part: "", value: "6", wanted: ["text", "object"] }],
  ["build.type", oneStep({ weather: [] }), at("a", "weather"), { part: "", value: "[…]", wanted: ["object"] }],
  ["build.type", { steps: {} }, { list: "steps" }, { part: "", value: "{…}", wanted: ["list"] }],
  [
    "build.not-one-of",
    oneStep({ sort: "inspecton" }),
    at("a", "sort"),
    {
      part: "",
      value: "inspecton",
      choices: ["work", "embed", "check", "photograph", "inspection", "pour", "office"],
      nearest: "inspection",
    },
  ],
  ["build.unknown-key", oneStep({ notBefor: "2027-04-01" }), at("a", "notBefor"), { part: "", key: "notBefor", nearest: "notBefore" }],
  ["build.id", { steps: [{ id: "Tie bars" }] }, at("Tie bars", "id"), { part: "", value: "Tie bars" }],
  ["build.id-twice", { steps: [{ id: "a" }, { id: "b" }, { id: "a" }] }, { list: "steps", id: "a", position: 3 }, { first: 1, second: 3 }],
  ["build.empty", { pieces: [piece("p", { heldBy: [[]], fromStart: true })] }, at("p", "heldBy", "pieces"), { part: "1" }],
  ["build.more", { steps: Array.from({ length: 300 }, (_, i) => ({ id: `s${i}`, work: "?" })) }, {}, { count: 100 }],
  ["build.quantity", oneStep({ work: "six hours" }), at("a", "work"), { part: "", value: "six hours", kind: "time" }],
  ["build.quantity", oneStep({ work: "6" }), at("a", "work"), { part: "", value: "6", kind: "time" }],
  [
    "build.quantity",
    oneStep({ leansOn: [{ piece: "p", once: "soon" }] }),
    at("a", "leansOn"),
    { part: "1.once", value: "soon", kind: "amount" },
  ],
  ["build.range", oneStep({ hands: -2 }), at("a", "hands"), { part: "", value: "-2", least: 0, most: 100, unit: "people" }],
  [
    "build.range",
    oneStep({ work: "-3 h" }),
    at("a", "work"),
    { part: "", value: "-3 h", least: 0, most: Number.MAX_SAFE_INTEGER, unit: "min" },
  ],
  ["build.range", oneStep({ work: "9000 h" }), at("a", "work"), { part: "", value: "9000 h", least: 0, most: 120_000, unit: "min" }],
  [
    "build.range",
    { groups: [{ id: "g", count: 0, members: [] }] },
    at("g", "count", "groups"),
    { part: "", value: "0", least: 1, most: 200, unit: "copies" },
  ],
  [
    "build.range",
    oneStep({ weather: { lowest: "300 F" } }),
    at("a", "weather"),
    { part: "lowest", value: "300 F", least: -60, most: 60, unit: "C" },
  ],
  ["build.whole", oneStep({ hands: 1.5 }), at("a", "hands"), { part: "", value: "1.5" }],
  [
    "build.order-of-three",
    oneStep({ work: { low: "3 h", likely: "2 h", high: "4 h" } }),
    at("a", "work"),
    { low: "3 h", likely: "2 h", high: "4 h" },
  ],
  ["build.days-of-work", oneStep({ work: "2 d" }), at("a", "work"), { part: "", value: "2 d" }],
  [
    "build.two-clocks",
    { waits: [{ id: "w", from: "a", to: "b", least: { is: "3 days of inspector", on: "weekends" } }], steps: [{ id: "a" }, { id: "b" }] },
    at("w", "least", "waits"),
    { part: "", value: "3 days of inspector", calendar: "weekends" },
  ],
  [
    "build.most-under-least",
    { waits: [{ id: "w", from: "a", to: "b", least: "2 d", most: "24 h" }], steps: [{ id: "a" }, { id: "b" }] },
    at("w", "most", "waits"),
    { least: "2 d", most: "24 h" },
  ],
  [
    "build.date",
    { calendars: [{ id: "c", week: { sat: ["7:00-9:00"] }, off: ["2027-02-29"] }] },
    at("c", "off", "calendars"),
    { part: "1", value: "2027-02-29" },
  ],
  ["build.date", { start: "2027-13-01" }, { key: "start" }, { part: "", value: "2027-13-01" }],
  ["build.moment", oneStep({ fixed: "2027-05-01T25:00" }), at("a", "fixed"), { part: "", value: "2027-05-01T25:00" }],
  [
    "build.time-of-day",
    { calendars: [{ id: "c", week: { sat: ["7:00-9:00"] }, cutOff: "25:00" }] },
    at("c", "cutOff", "calendars"),
    { part: "", value: "25:00" },
  ],
  [
    "build.twelve-months",
    { site: { zone: "UTC", latitude: 0, longitude: 0, usualTemperatures: [] } },
    { key: "site" },
    { part: "usualTemperatures", count: 0 },
  ],
  [
    "build.window",
    { calendars: [{ id: "c", week: { sat: ["12:00-9:00"] } }] },
    at("c", "week", "calendars"),
    { part: "sat.1", value: "12:00-9:00" },
  ],
  [
    "build.windows-overlap",
    { calendars: [{ id: "c", week: { sat: ["12:00-15:00", "7:00-12:30"] } }] },
    at("c", "week", "calendars"),
    { part: "sat", first: "7:00-12:30", second: "12:00-15:00" },
  ],
  ["build.never-works", { calendars: [{ id: "c", week: {} }] }, at("c", "week", "calendars"), {}],
  [
    "build.no-calendar",
    '{ "batterboard": 1, "site": { "zone": "UTC", "latitude": 0, "longitude": 0 }, "start": "2027-01-01" }',
    { list: "calendars" },
    {},
  ],
  ["build.before-start", oneStep({ deadline: "2027-01-05" }), at("a", "deadline"), { value: "2027-01-05", start: "2027-03-06" }],
  [
    "build.unknown-id",
    { ...cage, ...oneStep({ reaches: [{ place: "cgae" }] }) },
    at("a", "reaches"),
    { part: "", sort: "place", value: "cgae", nearest: "cage" },
  ],
  [
    "build.unknown-id",
    { ...cage, pieces: [piece("p", { closes: ["cage.nort"], fromStart: true })] },
    at("p", "closes", "pieces"),
    { part: "", sort: "way", value: "cage.nort", nearest: "cage.north" },
  ],
  ["build.unknown-id", { usual: "weekend" }, { key: "usual" }, { part: "", sort: "calendar", value: "weekend", nearest: "weekends" }],
  [
    "build.unknown-id",
    { groups: [{ id: "g", count: 2, members: ["a"] }], ...oneStep({}), waits: [{ id: "w", from: "a#3", to: "a#1" }] },
    at("w", "from", "waits"),
    { part: "", sort: "step", value: "a#3", nearest: "a#1" },
  ],
  [
    "build.which-copy",
    {
      groups: [{ id: "g", count: 2, members: ["p"] }],
      steps: [{ id: "p", pour: { strength: "3000 psi" } }, { id: "b" }],
      waits: [{ id: "w", from: "b", to: "b", most: "50 % of p" }],
    },
    at("w", "most", "waits"),
    { part: "", value: "p", count: 2 },
  ],
  [
    "build.not-a-pour",
    { steps: [{ id: "a" }, { id: "b" }], waits: [{ id: "w", from: "a", to: "b", least: "50 % of a" }] },
    at("w", "least", "waits"),
    { part: "", value: "a" },
  ],
  [
    "build.over-strength",
    { steps: [{ id: "a", pour: { strength: "3000 psi" } }, { id: "b" }], waits: [{ id: "w", from: "a", to: "b", least: "6000 psi of a" }] },
    at("w", "least", "waits"),
    { part: "", value: "6000 psi of a", pour: "a", percent: 200 },
  ],
  [
    "build.no-size",
    { ...cage, pieces: [piece("p")], ...oneStep({ puts: ["p"], reaches: [{ place: "cage", need: "unit" }] }) },
    at("a", "reaches"),
    { part: "", piece: "p" },
  ],
  [
    "build.nobody-can",
    { people: [{ id: "me", roles: ["pump"] }], ...oneStep({ hands: [{ role: "pmup" }] }) },
    at("a", "hands"),
    { role: "pmup", wanted: 1, there: 0, nearest: "pump" },
  ],
  [
    "build.too-few",
    { equipment: [{ id: "mixer" }], ...oneStep({ equipment: [{ of: "mixer", number: 2 }] }) },
    at("a", "equipment"),
    { of: "mixer", wanted: 2, there: 1 },
  ],
  [
    "build.too-many",
    {
      groups: [{ id: "g", count: 200, members: Array.from({ length: 101 }, (_, i) => `s${i}`) }],
      steps: Array.from({ length: 101 }, (_, i) => ({ id: `s${i}` })),
    },
    { list: "groups" },
    { what: "steps", count: 20_200, most: 20_000 },
  ],
  [
    "build.two-groups",
    {
      groups: [
        { id: "g", count: 2, members: ["a"] },
        { id: "h", count: 2, members: ["a"] },
      ],
      ...oneStep({}),
    },
    at("h", "members", "groups"),
    { member: "a", first: "g", second: "h" },
  ],
  [
    "build.rounds-in-group",
    { groups: [{ id: "g", count: 2, members: ["a"] }], ...oneStep({ trial: { rounds: 2 } }) },
    at("a", "trial"),
    { group: "g" },
  ],
  [
    "build.closes-named",
    { ...cage, pieces: [piece("a", { fromStart: true })], ...oneStep({ closes: ["cage"] }) },
    at("a", "closes"),
    { piece: "a" },
  ],
  [
    "build.put-up-twice",
    {
      pieces: [piece("p")],
      steps: [
        { id: "a", puts: ["p"] },
        { id: "b", puts: ["p"] },
      ],
    },
    at("b", "puts"),
    { piece: "p", first: "a", second: "b" },
  ],
  [
    "build.taken-down-twice",
    {
      pieces: [piece("p", { fromStart: true })],
      steps: [
        { id: "a", takes: ["p"] },
        { id: "b", takes: ["p"] },
      ],
    },
    at("b", "takes"),
    { piece: "p", first: "a", second: "b" },
  ],
  [
    "build.put-up-but-stood",
    { pieces: [piece("p", { fromStart: true })], ...oneStep({ puts: ["p"] }) },
    at("a", "puts"),
    { piece: "p", step: "a" },
  ],
  ["build.nothing-put-up", { pieces: [piece("p")], ...oneStep({ takes: ["p"] }) }, at("a", "takes"), { piece: "p", step: "a" }],
  ["build.never-stands", { pieces: [piece("p")], ...oneStep({ leansOn: [{ piece: "p" }] }) }, { list: "pieces", id: "p" }, { used: ["a"] }],
  [
    "build.goes-and-taken",
    {
      pieces: [piece("p", { goesAfter: "6 h" })],
      steps: [
        { id: "a", puts: ["p"] },
        { id: "b", takes: ["p"] },
      ],
    },
    at("p", "goesAfter", "pieces"),
    { step: "b" },
  ],
  [
    "build.hold-ring",
    {
      pieces: [piece("p", { heldBy: [["q"], ["r"]] }), piece("q", { heldBy: [["p"]] }), piece("r", { heldBy: [["p", "q"]] })],
      ...oneStep({ puts: ["p", "q", "r"] }),
    },
    at("p", "heldBy", "pieces"),
    { ring: ["p", "q"] },
  ],
  [
    "build.held-by-nothing",
    { pieces: [piece("p", { holdsItself: "6 h" })], ...oneStep({ puts: ["p"] }) },
    at("p", "holdsItself", "pieces"),
    {},
  ],
  [
    "build.holder-goes",
    { pieces: [piece("p", { heldBy: [["q"]] }), piece("q", { goesAfter: "1 d" })], ...oneStep({ puts: ["p", "q"] }) },
    at("p", "heldBy", "pieces"),
    { holder: "q" },
  ],
  [
    "build.holds-without-amount",
    { pieces: [piece("p", { holdsItself: true })], ...oneStep({ puts: ["p"] }) },
    at("p", "holdsItself", "pieces"),
    {},
  ],
  [
    "build.leans-on-own",
    { pieces: [piece("p")], ...oneStep({ puts: ["p"], leansOn: [{ piece: "p" }] }) },
    at("a", "leansOn"),
    { piece: "p" },
  ],
  [
    "build.no-way",
    { places: [{ id: "cage" }], ...oneStep({ reaches: [{ place: "cage" }] }) },
    at("a", "reaches"),
    { part: "", place: "cage" },
  ],
  [
    "build.way-ring",
    {
      places: [
        { id: "in", ways: [{ id: "w", through: "out" }] },
        { id: "out", ways: [{ id: "w", through: "in" }] },
      ],
    },
    at("in", "ways", "places"),
    { ring: ["in", "out"] },
  ],
  [
    "build.below-ring",
    {
      places: [
        { id: "x", below: ["y"] },
        { id: "y", below: ["x"] },
      ],
    },
    at("x", "below", "places"),
    { ring: ["x", "y"] },
  ],
  [
    "build.wait-ring",
    {
      steps: [{ id: "oil", after: ["tie"] }, { id: "seal", after: ["oil"] }, { id: "tie" }],
      waits: [{ id: "w", from: "seal", to: "tie", least: "24 h" }],
    },
    at("oil", "after"),
    { ring: ["oil", "seal", "tie"], waits: ["", "w", ""] },
  ],
];

const result = (wrong: PartialDocument | string) => (typeof wrong === "string" ? read(wrong) : readDocument(documentOf(wrong)));

describe("what is wrong is said", () => {
  test.each(cases)("%s", (code, wrong, where, detail) => {
    const { findings, build } = result(wrong);
    const said = findings.filter((finding) => finding.code === code);
    expect(said, JSON.stringify(findings)).toHaveLength(1);
    expect(said[0]).toMatchObject({ code, severity: codes[code].severity, detail });
    expect(said[0]?.where).toEqual(where);
    if (code !== "build.more" && code !== "build.unknown-id") expect(Object.keys(detail).sort()).toEqual([...codes[code].detail].sort());
    expect(build === null).toBe(findings.some(bars));
  });

  test("every code has its case", () => {
    const missing = Object.keys(codes).filter((code) => !cases.some(([tried]) => tried === code));
    expect(missing).toEqual([]);
  });
});

describe("nothing is said without need", () => {
  test("a piece that is held by one of the ring's neighbours on firm ground", () => {
    const { findings } = readDocument(
      documentOf({
        pieces: [piece("p", { heldBy: [["q"], ["ground"]] }), piece("q", { heldBy: [["p"]] }), piece("ground", { fromStart: true })],
        ...oneStep({ puts: ["p", "q"] }),
      }),
    );
    expect(findings).toEqual([]);
  });

  test("ways through each other with one way in from outside", () => {
    const places = [
      { id: "in", ways: [{ id: "w", through: "out" }] },
      { id: "out", ways: [{ id: "w", through: "in" }, { id: "door" }] },
    ];
    expect(readDocument(documentOf({ places })).findings).toEqual([]);
  });

  test("an upper wait and a wait between starts are no order", () => {
    const waits = [
      { id: "v", from: "b", to: "a", most: "7 d" },
      { id: "w", from: "b", to: "a", fromEnd: "start", least: "0 h" },
    ];
    expect(readDocument(documentOf({ steps: [{ id: "a" }, { id: "b", after: ["a"] }], waits })).findings).toEqual([]);
  });

  test("a finding that all copies of a group share is said once", () => {
    const wrong = { groups: [{ id: "g", count: 9, members: ["a"] }], ...oneStep({ reaches: [{ place: "nowhere" }] }) };
    expect(readDocument(documentOf(wrong)).findings).toHaveLength(1);
  });
});
