import { randomFrom } from "../../src/core/base";
import { type Build, readDocument } from "../../src/core/build";

type Row = Record<string, unknown>;

/** The lists of a document while a build is being drawn up. */
interface Sheet {
  readonly places: Row[];
  readonly pieces: Row[];
  readonly steps: Row[];
  readonly waits: Row[];
  readonly deliveries: Row[];
  readonly bookings: Row[];
}

const week = { mon: ["8:00-16:00"], tue: ["8:00-16:00"], wed: ["8:00-16:00"], thu: ["8:00-16:00"], fri: ["8:00-16:00"] };

/**
 * A build of about `steps` steps, drawn from a number: bay after bay of footing, columns, wall and slab on shores, each with its places, ways, forms that
 * close and hold, sheets that come back, waits by hours and by strength, inspections on weekdays, deliveries, and a crew that is there on weekends.
 * Figures are common practice, no source.
 */
export function realisticDocument(steps: number, start: number): Row {
  const random = randomFrom(start);
  const sheet: Sheet = { places: [], pieces: [], steps: [], waits: [], deliveries: [], bookings: [] };
  for (let bay = 0; ; bay++) {
    const last = bay === 0 ? null : `b${bay - 1}`;
    const columns = random.int(1, 3);
    if (sheet.steps.length + stepsOfBay(columns) > steps) {
      finishing(sheet, steps, last);
      break;
    }
    drawBay(sheet, `b${bay}`, last, columns, () => random.int(0, 3) * 30);
  }
  return {
    batterboard: 1,
    id: `bays-${steps}`,
    name: `Bays with ${steps} steps`,
    site: { zone: "America/New_York", latitude: 42.4, longitude: -76.5, units: "us" },
    start: "2027-03-06",
    usual: "weekends",
    calendars: [
      {
        id: "weekends",
        name: "Weekends",
        week: { sat: ["7:30-12:00", "12:30-17:00"], sun: ["8:00-12:00", "12:30-16:30"] },
        off: ["2027-07-04"],
      },
      { id: "there", name: "On site", week: { sat: ["7:00-17:00"], sun: ["8:00-16:30"] }, off: ["2027-07-04"] },
      { id: "pour-days", name: "Pour days", week: { sat: ["7:00-17:00"] } },
      { id: "office", name: "Inspector", week, cutOff: "15:00", holidays: "us-federal" },
      { id: "yard", name: "Yard", week: { ...week, sat: ["7:00-12:00"] } },
    ],
    people: [
      { id: "ann", name: "Ann", calendar: "there", roles: ["hose"] },
      { id: "ben", name: "Ben", calendar: "there" },
      { id: "cal", name: "Cal", calendar: "there", roles: ["hose", "finisher"] },
      { id: "dot", name: "Dot", calendar: "there" },
    ],
    equipment: [{ id: "mixer", name: "Mixer", number: 1 }],
    stock: [
      { id: "sheets", name: "Sheets", unit: "sheet", inHand: 40 },
      { id: "shores", name: "Shores", unit: "shore", inHand: 24 },
    ],
    ...sheet,
  };
}

/** @throws when the document drawn has a finding that stops. */
export function realistic(steps: number, start = 1): Build {
  const { build, findings } = readDocument(realisticDocument(steps, start));
  const stop = findings.find((f) => f.severity === "stop");
  if (build === null || stop !== undefined) throw new Error(`The drawn build cannot be read: ${JSON.stringify(stop)}`);
  return build;
}

function drawBay(s: Sheet, b: string, last: string | null, columns: number, extra: () => number): void {
  const id = (name: string): string => `${b}-${name}`;
  const step = (name: string, hours: number, rest: Row = {}): void => {
    s.steps.push({ id: id(name), name: `${name} ${b}`, work: `${hours * 60 + extra()} min`, hands: 2, ...rest });
  };
  const look = (name: string, places: string[]): void => {
    step(name, 1, {
      sort: "inspection",
      hands: 0,
      calendar: "office",
      reaches: places.map((place) => ({ place, need: "sight" })),
      holdPoint: { places },
    });
  };
  const place = (name: string, ways: Row[], rest: Row = {}): void =>
    void s.places.push({ id: id(name), name: `${name} ${b}`, ways, ...rest });
  const way = (name: string, passes: string[], rest: Row = {}): Row => ({ id: name, name, passes, ...rest });
  const piece = (name: string, sort: string, rest: Row = {}): void =>
    void s.pieces.push({ id: id(name), name: `${name} ${b}`, sort, ...rest });

  place("trench", [way("top", ["person"])], { room: 3 });
  s.deliveries.push({ id: id("bars"), name: `Bars ${b}`, calendar: "yard", lead: "10 d", brings: [{ of: "sheets", number: 4 }] });
  step("dig", 4, { hands: 2, ...(last === null ? {} : { after: [`${last}-dig`] }) });
  step("form-footing", 4, { puts: [id("footing-form")], reaches: [{ place: id("trench") }], after: [id("dig")] });
  piece("footing-form", "form", { uses: [{ of: "sheets", number: 2 }] });
  step("tie-footing", 3, { reaches: [{ place: id("trench") }], leansOn: [{ piece: id("footing-form") }], needs: [id("bars")] });
  look("see-footing", [id("trench")]);
  step("pour-footing", 3, {
    puts: [id("footing")],
    reaches: [{ place: id("trench"), need: "hose" }],
    unbroken: true,
    calendar: "pour-days",
    equipment: [{ of: "mixer", number: 1 }],
    pour: { strength: "20 MPa", cement: "I" },
  });
  piece("footing", "concrete", { fills: [id("trench")] });
  s.waits.push({ id: id("tied"), from: id("tie-footing"), to: id("see-footing") });
  s.waits.push({ id: id("call"), from: id("form-footing"), to: id("see-footing"), least: "1 days of office" });
  step("strip-footing", 2, { takes: [id("footing-form")] });
  s.waits.push({ id: id("footing-set"), from: id("pour-footing"), to: id("strip-footing"), least: "24 h" });

  for (let c = 0; c < columns; c++) drawColumn(s, `${b}-c${c}`, b, step, look);

  place("wall-bars", [way("front", ["person"]), way("back", ["arm"], { depth: "600 mm" }), way("head", ["hose", "sight"])]);
  step("set-back", 4, { puts: [id("back-form")], leansOn: [{ piece: id("footing"), once: "24 h" }] });
  piece("back-form", "form", {
    closes: [`${id("wall-bars")}.back`],
    uses: [{ of: "sheets", number: 6, loss: 1 }],
    heldBy: [[id("back-brace")]],
  });
  step("brace-back", 1, { puts: [id("back-brace")] });
  piece("back-brace", "brace");
  step("tie-wall", 6, { reaches: [{ place: id("wall-bars") }], leansOn: [{ piece: id("back-form") }], needs: [id("bars")] });
  step("set-sleeves", 1, {
    sort: "embed",
    hands: 1,
    reaches: [{ place: id("wall-bars"), need: "arm", depth: "300 mm" }],
    after: [id("tie-wall")],
  });
  step("oil-wall", 1, { hands: 1, reaches: [{ place: id("wall-bars"), need: "arm", depth: "300 mm" }] });
  look("see-wall", [id("wall-bars")]);
  s.waits.push({ id: id("wall-ready"), from: id("set-sleeves"), to: id("see-wall") });
  step("set-front", 4, { puts: [id("front-form")] });
  piece("front-form", "form", {
    closes: [`${id("wall-bars")}.front`],
    uses: [{ of: "sheets", number: 6, loss: 1 }],
    heldBy: [[id("back-form")]],
  });
  step("pour-wall", 5, {
    puts: [id("wall")],
    reaches: [{ place: id("wall-bars"), need: "hose" }],
    leansOn: [{ piece: id("front-form") }, { piece: id("back-form") }],
    hands: [
      { role: "hose", number: 1 },
      { role: "hands", number: 2 },
    ],
    unbroken: true,
    calendar: "pour-days",
    equipment: [{ of: "mixer", number: 1 }],
    pour: { strength: "25 MPa", cement: "I" },
  });
  piece("wall", "concrete", { fills: [id("wall-bars")] });
  s.waits.push({ id: id("oil-keeps"), from: id("oil-wall"), to: id("pour-wall"), most: "70 d" });
  s.bookings.push({ id: id("pump"), name: `Pump ${b}`, step: id("pour-wall"), calendar: "yard", lead: "5 days of yard" });
  step("strip-front", 3, { takes: [id("front-form")] });
  s.waits.push({
    id: id("wall-cured"),
    from: id("pour-wall"),
    to: id("strip-front"),
    least: `40 % of ${id("pour-wall")}`,
    visits: { every: "1 d", lasts: "20 min", who: "neighbour", for: "keep it wet" },
  });
  step("strip-back", 3, { takes: [id("back-form"), id("back-brace")], after: [id("strip-front")] });

  place("deck-top", [way("ladder", ["person"])]);
  place("under-deck", [way("side", ["person"])], { room: 4 });
  step("set-shores", 4, { puts: [id("shores")], reaches: [{ place: id("under-deck") }], leansOn: [{ piece: id("footing"), once: "3 d" }] });
  piece("shores", "shore", { uses: [{ of: "shores", number: 12 }] });
  step("lay-deck", 5, { puts: [id("deck")], reaches: [{ place: id("under-deck") }] });
  piece("deck", "form", {
    makes: [`${id("deck-top")}.ladder`],
    heldBy: [[id("shores")]],
    uses: [{ of: "sheets", number: 8, loss: 1 }],
    off: [{ place: id("under-deck"), need: "person" }],
  });
  step("tie-slab", 6, { reaches: [{ place: id("deck-top") }], needs: [id("bars")] });
  step("photo-slab", 1, { sort: "photograph", hands: 1, reaches: [{ place: id("deck-top"), need: "sight" }], after: [id("tie-slab")] });
  look("see-slab", [id("deck-top")]);
  s.waits.push({ id: id("slab-ready"), from: id("photo-slab"), to: id("see-slab") });
  step("pour-slab", 6, {
    puts: [id("slab")],
    reaches: [{ place: id("deck-top"), need: "hose" }],
    leansOn: [{ piece: id("deck") }],
    alone: [id("under-deck")],
    hands: [
      { role: "hose", number: 1 },
      { role: "finisher", number: 1 },
      { role: "hands", number: 1 },
    ],
    unbroken: true,
    calendar: "pour-days",
    equipment: [{ of: "mixer", number: 1 }],
    pour: { strength: "25 MPa", cement: "I" },
  });
  piece("slab", "concrete", { fills: [id("deck-top")], heldBy: [[id("deck")], [id("shores")]], holdsItself: `75 % of ${id("pour-slab")}` });
  s.waits.push({ id: id("wall-under"), from: id("pour-wall"), to: id("pour-slab"), least: "3 d" });
  step("strip-deck", 5, { takes: [id("deck"), id("shores")], reaches: [{ place: id("under-deck") }] });
  step("patch", 2, { hands: 1, reaches: [{ place: id("under-deck") }], after: [id("strip-deck")] });
}

function drawColumn(
  s: Sheet,
  c: string,
  b: string,
  step: (name: string, hours: number, rest?: Row) => void,
  look: (name: string, places: string[]) => void,
): void {
  const own = c.slice(b.length + 1);
  const name = (what: string): string => `${own}-${what}`;
  s.places.push({
    id: `${c}-bars`,
    name: `Bars of ${c}`,
    ways: ["north", "south", "east"]
      .map((w) => ({ id: w, name: w, passes: ["arm"], depth: "900 mm" }))
      .concat([{ id: "top", name: "top", passes: ["hose", "sight"] } as never]),
  });
  step(name("cage"), 2, { puts: [`${c}-cage`], leansOn: [{ piece: `${b}-footing`, once: "24 h" }], needs: [`${b}-bars`] });
  s.pieces.push({ id: `${c}-cage`, name: `Cage ${c}`, sort: "other", heldBy: [[`${c}-guys`], [`${c}-faces`], [`${c}-column`]] });
  step(name("guy"), 1, { puts: [`${c}-guys`], hands: 1 });
  s.pieces.push({ id: `${c}-guys`, name: `Guys ${c}`, sort: "brace" });
  step(name("tie"), 2, { hands: 1, reaches: [{ place: `${c}-bars`, need: "arm", depth: "600 mm" }], leansOn: [{ piece: `${c}-cage` }] });
  step(name("faces"), 3, { puts: [`${c}-faces`], leansOn: [{ piece: `${c}-cage` }] });
  s.pieces.push({
    id: `${c}-faces`,
    name: `Two faces ${c}`,
    sort: "form",
    closes: [`${c}-bars.north`, `${c}-bars.south`],
    uses: [{ of: "sheets", number: 2 }],
  });
  look(name("see"), [`${c}-bars`]);
  s.waits.push({ id: `${c}-tied`, from: `${c}-tie`, to: `${c}-see` });
  step(name("last"), 1, { puts: [`${c}-last`], leansOn: [{ piece: `${c}-faces` }] });
  s.pieces.push({
    id: `${c}-last`,
    name: `Last face ${c}`,
    sort: "form",
    closes: [`${c}-bars.east`],
    uses: [{ of: "sheets", number: 1 }],
    heldBy: [[`${c}-faces`]],
  });
  step(name("loose"), 1, { takes: [`${c}-guys`], hands: 1 });
  step(name("pour"), 2, {
    puts: [`${c}-column`],
    reaches: [{ place: `${c}-bars`, need: "hose" }],
    leansOn: [{ piece: `${c}-last` }],
    hands: [
      { role: "hose", number: 1 },
      { role: "hands", number: 1 },
    ],
    unbroken: true,
    calendar: "pour-days",
    equipment: [{ of: "mixer", number: 1 }],
    pour: { strength: "25 MPa", cement: "III" },
  });
  s.pieces.push({ id: `${c}-column`, name: `Column ${c}`, sort: "concrete", fills: [`${c}-bars`] });
  step(name("strip"), 2, { takes: [`${c}-last`, `${c}-faces`] });
  s.waits.push({ id: `${c}-set`, from: `${c}-pour`, to: `${c}-strip`, least: "3 d" });
}

/** Small work after the last bay, up to the number of steps asked for. */
function finishing(s: Sheet, steps: number, last: string | null): void {
  for (let k = 0; s.steps.length < steps; k++) {
    const after = k % 4 > 0 ? [`finish-${k - 1}`] : last === null ? [] : [`${last}-patch`];
    s.steps.push({ id: `finish-${k}`, name: `Finish ${k}`, work: "2 h", hands: 1, after });
  }
}

const stepsOfBay = (columns: number): number => 26 + 9 * columns;
