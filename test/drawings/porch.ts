import type { ElapsedMinute, PlaceId, StepId } from "../../src/core/base";
import type { Amount, Build, Piece, Place, Step } from "../../src/core/build";
import type { ClosingDate, Holder, PlaceState, Plan, SiteDay, StepDates } from "../../src/core/plan";

/**
 * A porch slab on two piers with dates made by hand, for looking at the drawing and for its tests: no plan made it, so it keeps still. Start:
 * Saturday 5 June 2027; the site works Saturdays and Sundays, 8:00 to 16:30.
 */
const at = (day: number, hour: number): ElapsedMinute => Math.round(day * 1440 + hour * 60) as ElapsedMinute;

type Row = [
  id: string,
  name: string,
  place: string,
  sort: Step["sort"],
  start: [number, number],
  finish: [number, number],
  hands: number,
  chain: Holder | null,
  reaches?: string[],
  puts?: string,
];

const waitRow = (row: number): Holder => ({ kind: "wait", job: 0, row });
const usual: Holder = { kind: "window", calendar: "weekends" };

const rows: Row[] = [
  ["dig", "Dig and form footings", "trench", "work", [0, 8], [0, 16.5], 2, { kind: "start-of-build" }],
  ["pour-footings", "Pour footings", "trench", "pour", [1, 8], [1, 13], 2, waitRow(0), [], "footing"],
  ["tie", "Tie pier cages", "cages", "work", [7, 8], [7, 16.5], 2, { kind: "delivery", delivery: 0 }],
  ["conduit", "Conduit and sleeves", "cages", "embed", [8, 8], [8, 11], 1, null],
  ["panels", "Set three panels", "faces", "work", [8, 8], [8, 15], 2, waitRow(1), ["cages"], "panels"],
  ["inspect", "Inspector sees the bars", "cages", "inspection", [11, 9], [11, 10], 0, null],
  [
    "last-panel",
    "Last panel",
    "faces",
    "work",
    [14, 8],
    [14, 11],
    2,
    { kind: "booking", date: at(11, 9) },
    ["cages", "inside"],
    "last-panel",
  ],
  ["shores", "Shores and deck", "under", "work", [14, 11], [14, 16.5], 2, waitRow(2), [], "deck"],
  ["seal", "Seal joints", "inside", "work", [15, 8], [15, 12], 1, waitRow(3), ["joints"], "sealant"],
  ["edge", "Edge forms", "joints", "work", [15, 12], [15, 16.5], 2, { kind: "people", job: 8, of: "hands" }, ["slab-cage"], "edge"],
  ["slab-steel", "Slab cage", "slab-cage", "work", [15, 8], [15, 14], 1, null, ["joints"]],
  ["pour", "Pour piers and slab", "slab-cage", "pour", [21, 8], [21, 13], 5, waitRow(4), ["inside", "slab-top"], "slab"],
  ["cover", "Cover and wet", "slab-top", "work", [21, 14], [21, 15.5], 1, null],
  ["strip", "Strip pier faces", "faces", "work", [29, 8], [29, 12], 2, null],
  ["sills", "Sills", "slab-top", "work", [28, 8], [28, 14], 2, waitRow(5)],
  ["walls", "Frame the walls", "frame", "work", [29, 8], [29, 16.5], 2, usual],
  ["roof", "Rafters and roof", "roof", "work", [35, 8], [36, 15], 2, usual],
  ["shop-panels", "Build panels in the shop", "shop", "work", [1, 13], [1, 16.5], 1, null],
];

const places: [id: string, name: string, level: number, side: string | null, layerOf: string | null, elevation: Place["elevation_mm"]][] = [
  ["roof", "Roof", 90, null, null, { x: 0, y: 4300, wide: 2600, high: 1100, shape: "gable" }],
  ["frame", "Frame", 80, null, null, { x: 150, y: 2800, wide: 2300, high: 1500, shape: "box" }],
  ["slab-top", "Top of the slab", 70, null, null, null],
  ["slab-cage", "Slab cage", 60, null, null, { x: 0, y: 2450, wide: 2600, high: 350, shape: "box" }],
  ["joints", "Deck joints", 58, null, null, null],
  ["under", "Under the deck", 50, null, null, { x: 700, y: 300, wide: 1200, high: 2150, shape: "arch" }],
  ["faces", "Pier faces", 40, null, null, null],
  ["inside", "Inside the pier forms", 39, null, "faces", { x: 300, y: 300, wide: 400, high: 2150, shape: "box" }],
  ["cages", "Pier cages", 38, null, "faces", { x: 1900, y: 300, wide: 400, high: 2150, shape: "box" }],
  ["trench", "Trench and footings", 10, null, null, { x: 150, y: 0, wide: 2300, high: 300, shape: "box" }],
  ["shop", "Shop", 0, "shop", null, null],
];

const pieces: [id: string, name: string, sort: string, fills: string[], closes: string[], up: string][] = [
  ["footing", "Footings", "concrete", ["trench"], [], "pour-footings"],
  ["panels", "Three panels", "form", [], ["cages"], "panels"],
  ["last-panel", "Last panel", "form", [], ["cages", "inside"], "last-panel"],
  ["deck", "Deck", "form", [], ["under"], "shores"],
  ["sealant", "Sealant", "other", [], ["joints"], "seal"],
  ["edge", "Edge form", "form", [], ["joints"], "edge"],
  ["slab", "Slab", "concrete", ["inside", "cages", "slab-cage"], [], "pour"],
];

const amount = (text: string, minutes: number): Amount => ({ on: { kind: "elapsed" }, amount: minutes, text, from: null });
const amounts = [amount("2 d", 2880), amount("24 h", 1440), amount("70 %, 6.9 d", 9936)];
/** from step, to step, amount, name */
const waits: [string, string, number, string][] = [
  ["pour-footings", "tie", 0, "footings stand"],
  ["seal", "pour", 1, "sealant"],
  ["pour", "sills", 2, "slab carries"],
];

function step([id, name, place, sort, , , hands, , reaches, puts]: Row): Step {
  const needs = [place, ...(reaches ?? [])].map((one) => ({
    any: [{ place: one as PlaceId, need: { kind: "arm", depth_mm: 600 } as const }],
  }));
  return {
    id: id as StepId,
    name,
    sort,
    place: place as PlaceId,
    work: { low_min: 60, likely_min: 120, high_min: 240 },
    hands: hands > 0 ? [{ role: "hands", number: hands }] : [],
    notAlone: false,
    calendar: "weekends",
    unbroken: false,
    reaches: needs,
    puts: puts ? [puts] : [],
    takes: [],
    leansOn: [],
    alone: [],
    needs: id === "tie" ? ["bars"] : [],
    equipment: [],
    notBefore: null,
    deadline: null,
    fixed: null,
    done: null,
    weather: null,
    tools: id === "tie" ? ["tying pliers"] : [],
    materials: id === "tie" ? ["tie wire"] : [],
    cautions: [],
    notes: "",
    holdPoint: null,
    trial: null,
    pour: null,
    from: null,
    group: null,
  } as unknown as Step;
}

const position = (id: string) => rows.findIndex(([one]) => one === id);

export function porch(): { build: Build; plan: Plan } {
  const index = (list: readonly { readonly id: string }[]) => new Map(list.map(({ id }, i) => [id as string, i]));
  const steps = rows.map(step);
  const placeList = places.map(
    ([id, name, level, side, layerOf, elevation_mm]) =>
      ({ id, name, level, side, layerOf, elevation_mm, ways: [], room: null, below: [], group: null }) as unknown as Place,
  );
  const pieceList = pieces.map(
    ([id, name, sort, fills, closes, up]) =>
      ({
        id,
        name,
        sort,
        fills,
        closes: closes.map((place) => ({ place, way: `${place}.side` })),
        up: position(up),
        down: -1,
        makes: [],
        uses: [],
        off: [],
        heldBy: [],
      }) as unknown as Piece,
  );
  const deliveries = [
    { id: "bars", name: "Bars", calendar: "office", promised: "2027-06-11", lead: null, ordered: true, brings: [], notes: "" },
  ];
  const bookings = [
    { id: "pump", name: "Pump and trucks", step: "pour", calendar: "plant", date: "2027-06-26T08:00", lead: null, booked: true },
    { id: "inspector", name: "Inspector", step: "inspect", calendar: "inspector", date: "2027-06-16T09:00", lead: null, booked: true },
  ];
  const people = [
    { id: "ana", name: "Ana", calendar: "weekends", roles: [], daysOffSpent: [], daysOffBudget: 4 },
    { id: "ben", name: "Ben", calendar: "weekends", roles: [], daysOffSpent: [], daysOffBudget: 0 },
  ];
  const build = {
    id: "porch",
    name: "Porch slab",
    site: {
      zone: "America/New_York",
      latitude: 42.1,
      longitude: -72.6,
      units: "us",
      sides: ["shop"],
      usualTemperatures_C: Array.from({ length: 12 }, (_, month) => ({ low: month === 5 ? 12 : 15, high: month === 5 ? 24 : 27 })),
    },
    start: "2027-06-05",
    usual: "weekends",
    calendars: [],
    people,
    equipment: [],
    stock: [],
    places: placeList,
    pieces: pieceList,
    steps,
    waits: waits.map(([from, to, least, name]) => ({
      id: name.replaceAll(" ", "-"),
      name,
      from,
      to,
      fromEnd: "finish",
      toEnd: "start",
      least: amounts[least],
      most: null,
      visits: null,
      why: "",
      plain: false,
    })),
    choices: [],
    deliveries,
    bookings,
    groups: [],
    kept: null,
    at: {
      place: index(placeList),
      piece: index(pieceList),
      step: index(steps),
      calendar: new Map(),
      person: index(people),
      equipment: new Map(),
      stock: new Map(),
      delivery: index(deliveries),
      booking: index(bookings),
    },
  } as unknown as Build;
  return { build, plan: planOf(build) };
}

/** Row of the wait that a step waits for; a row that is none where it waits for a plain precedence. */
const rowsOf: Record<string, number> = { tie: 0, pour: 1, sills: 2 };
const rowed = (id: string, holder: Holder | null): Holder | null =>
  holder?.kind === "wait" ? { ...holder, row: rowsOf[id] ?? 99 } : holder;

function planOf(build: Build): Plan {
  const dates = rows.map(([id, , , , start, finish, , holder]): StepDates => {
    const [from, to] = [at(...start), at(...finish)];
    const nights: [ElapsedMinute, ElapsedMinute][] =
      start[0] === finish[0]
        ? [[from, to]]
        : [
            [from, at(start[0], 16.5)],
            [at(finish[0], 8), to],
          ];
    return {
      start: from,
      finish: to,
      earliestStart: from,
      latestStart: from,
      latestFinish: (holder ? to : to + 3 * 1440) as ElapsedMinute,
      slack: holder ? 0 : 240,
      holder: rowed(id, holder) ?? usual,
      onChain: holder !== null,
      pieces: nights,
      people: [],
    };
  });
  const closings = pieces.map(
    ([id, , , , , up], piece): ClosingDate => ({
      piece,
      step: position(up),
      before: [{ step: position("tie"), what: "work", forced: true }],
      forGood: id === "slab",
      at: dates[position(up)]!.finish,
      opensAgain: null,
    }),
  );
  const states = (...list: [number, number, PlaceState["state"], number][]): PlaceState[] =>
    list.map(([day, hour, state, by]) => ({ from: day < 0 ? (-100_000 as ElapsedMinute) : at(day, hour), state, by, usableWays: [] }));
  const open: [number, number, PlaceState["state"], number] = [-1, 0, "open", -1];
  const standing: Record<string, PlaceState[]> = {
    trench: states(open, [1, 13, "filled", 0]),
    cages: states(open, [14, 11, "closed", 2], [21, 13, "filled", 6]),
    inside: states(open, [14, 11, "closed", 2], [21, 13, "filled", 6]),
    under: states(open, [14, 16.5, "closed", 3], [29, 12, "open", -1]),
    joints: states(open, [15, 12, "closed", 4]),
    "slab-cage": states(open, [21, 13, "filled", 6]),
  };
  const arcs = {
    count: waits.length,
    from: Int32Array.from(waits, ([from]) => position(from)),
    to: Int32Array.from(waits, ([, to]) => position(to)),
    fromEnd: Uint8Array.from(waits, () => 1),
    toEnd: Uint8Array.from(waits, () => 0),
    least: Int32Array.from(waits, ([, , least]) => least),
    most: Int32Array.from(waits, () => -1),
    orders: Uint8Array.from(waits, () => 1),
    reason: Int32Array.from(waits, (_, index) => index),
    forced: Uint8Array.from(waits, () => 1),
    redundant: Uint8Array.from(waits, () => 0),
  };
  const chain = rows
    .map(([id, , , , , , , holder], job) => ({ job, holder: rowed(id, holder), id }))
    .filter((link): link is { job: number; holder: Holder; id: string } => link.holder !== null)
    .sort((a, b) => dates[a.job]!.start - dates[b.job]!.start)
    .map(({ job, holder }) => ({
      job,
      holder,
      ready:
        holder.kind === "wait" && amounts[waits[holder.row]?.[2] ?? 9]
          ? ((dates[arcs.from[holder.row]!]!.finish + amounts[waits[holder.row]![2]]!.amount) as ElapsedMinute)
          : dates[job]!.start,
    }));
  const days = [0, 1, 7, 8, 11, 14, 15, 21, 22, 28, 29, 35, 36].map((day): SiteDay => {
    const here = rows
      .map((_, i) => i)
      .filter((i) => Math.floor(dates[i]!.start / 1440) <= day && Math.floor(dates[i]!.finish / 1440) >= day);
    const date = new Date(Date.UTC(2027, 5, 5 + day)).toISOString().slice(0, 10);
    const wanted = Math.max(0, ...here.map((i) => rows[i]![6]));
    return {
      date,
      from: day === 11 ? at(day, 9) : at(day, 8),
      to: day === 11 ? at(day, 10) : at(day, 16.5),
      steps: here,
      deliveries: [],
      closings: closings.flatMap((one, i) => (Math.floor(one.at / 1440) === day ? [i] : [])),
      peopleWanted: wanted,
      peopleThere: day === 11 ? 0 : 2,
      sunrise: at(day, 5.25),
      sunset: at(day, 20.4),
      site: day !== 11,
    };
  });
  return {
    ids: build.steps.map(({ id }) => id),
    buildStart: build.start,
    engine: "by hand",
    rung: 1,
    status: "planned",
    findings: [],
    access: {
      possible: true,
      findings: [],
      statements: waits.map(([from, to, , name]) => ({ rule: "wait", step: from, other: to, id: name.replaceAll(" ", "-") })),
      amounts,
      arcs,
      choices: [],
      order: Int32Array.from(rows, (_, i) => i),
    },
    steps: dates,
    deliveries: [{ arrives: at(6, 10), neededBy: at(7, 8), firstStep: position("tie"), orderBy: null, slack: 1320 }],
    bookings: [
      { at: at(21, 8), bookBy: at(14, 15) },
      { at: at(11, 9), bookBy: at(9, 15) },
    ],
    finish: at(36, 15),
    chain,
    closings,
    stands: { pieces: [], places: build.places.map(({ id }) => standing[id] ?? states(open)), stock: [] },
    days,
    visits: [{ wait: 2, from: position("pour"), at: at(24, 18), lasts: 30, who: "neighbour", for: "wet the slab" }],
    handMinutes: 7200,
    assumes: [],
  } as Plan;
}
