import type { Draw } from "./draw";
import type { Loose, Size } from "./random-builds";
import { type DrawnReach, needFor, plainNeed } from "./random-needs";

/** Steps are drawn by their turn in an order that would do, and written down in another. */
export interface DrawnPiece {
  readonly id: string;
  /** Turn of the step that puts it up; -1: stands from the start. `take` Infinity: never. */
  readonly put: number;
  readonly take: number;
  readonly bySelf: boolean;
  readonly written: Loose;
}

export interface DrawnWay {
  readonly full: string;
  readonly passes: readonly string[];
  readonly written: Loose;
}

export interface DrawnPlace {
  readonly id: string;
  readonly ways: readonly DrawnWay[];
}

const named = (name: string, count: number) => Array.from({ length: count }, (_, i) => `${name}-${i + 1}`);
const between = (draw: Draw, [least, most]: readonly [number, number]) => least + draw.below(most - least + 1);
const kinds = [
  ["person"],
  ["person", "unit"],
  ["machine", "unit"],
  ["arm"],
  ["hand", "hose"],
  ["sight"],
  ["unit"],
  ["arm", "sight", "hose"],
];

export function drawPlaces(draw: Draw, size: Size): DrawnPlace[] {
  const ids = named("place", between(draw, size.places));
  const places = ids.map((id) => ({ id, ways: named("way", draw.pick([2, 1, 3])).map((name) => drawWay(draw, id, name)) }));
  for (const place of places) {
    const others = places.filter((p) => p !== place);
    for (const way of place.ways)
      if (others.length > 0 && draw.chance(30)) way.written["through"] = drawThrough(draw, size, draw.pick(others));
  }
  return places;
}

function drawThrough(draw: Draw, size: Size, outer: DrawnPlace): unknown {
  const { need, depth } = draw.chance(size.careless) ? plainNeed(draw, "") : needFor(draw, draw.pick(outer.ways), null);
  if (need === "person" && draw.chance(50)) return outer.id;
  return { place: outer.id, need, ...(depth === undefined ? {} : { depth }) };
}

function drawWay(draw: Draw, place: string, name: string): DrawnWay {
  const passes = draw.pick(kinds);
  const limited = passes.includes("hand") || passes.includes("arm");
  const unit = passes.includes("unit");
  const written = {
    id: name,
    name,
    passes,
    ...(limited && draw.chance(60) ? { depth: draw.pick(["1000 mm", "500 mm"]) } : {}),
    ...(unit && draw.chance(50)
      ? {
          opening: draw.pick([
            { wide: "900 mm", high: "600 mm" },
            { wide: "500 mm", high: "900 mm" },
          ]),
        }
      : {}),
    ...(unit && draw.chance(25) ? { longest: "2000 mm" } : {}),
    ...(unit && draw.chance(25) ? { bears: "50 kg" } : {}),
  };
  return { full: `${place}.${name}`, passes, written };
}

/** Pieces that stand while the step of that turn is done, those it puts up itself left out. */
export const standing = (pieces: readonly DrawnPiece[], turn: number): DrawnPiece[] => pieces.filter((p) => p.put < turn && turn <= p.take);

export function drawPieces(draw: Draw, size: Size, places: readonly DrawnPlace[], steps: number): DrawnPiece[] {
  const ways = places.flatMap((p) => p.ways.map((w) => w.full));
  const pieces: DrawnPiece[] = [];
  for (const id of named("piece", between(draw, size.pieces))) {
    const put = draw.chance(18) ? -1 : draw.below(steps - 1);
    const bySelf = draw.chance(12);
    const last = draw.chance(3) ? put : Math.min(steps - 1, put + 1 + draw.below(steps - put - 1));
    const take = bySelf || draw.chance(45) || last < 0 ? Number.POSITIVE_INFINITY : last;
    const holders = draw.chance(size.careless) ? pieces : pieces.filter((p) => p.put <= put && p.take > put && !p.bySelf);
    const held = holders.length > 0 && draw.chance(55);
    const written: Loose = {
      id,
      name: id,
      sort: "other",
      ...(put < 0 ? { fromStart: true } : {}),
      ...(bySelf ? { goesAfter: "2 h" } : {}),
      closes: draw.some(ways, draw.pick([0, 15, 35])),
      makes: draw.chance(30) ? [draw.pick(ways)] : [],
      fills: draw.chance(14) ? [draw.pick(places).id] : [],
      size: { long: draw.pick(["1500 mm", "2500 mm"]), wide: draw.pick(["400 mm", "800 mm", "1000 mm"]), thick: "100 mm" },
      weight: draw.pick(["30 kg", "80 kg"]),
      ...(held ? heldBy(draw, holders, pieces) : {}),
    };
    pieces.push({ id, put, take, bySelf, written });
  }
  for (const p of pieces) {
    if (Number.isFinite(p.take) && draw.chance(45)) p.written["off"] = drawReach(draw, size, places, pieces, p.take, p.id);
  }
  return pieces;
}

function heldBy(draw: Draw, holders: readonly DrawnPiece[], all: readonly DrawnPiece[]): Loose {
  const set = (from: readonly DrawnPiece[]) => [...new Set([draw.pick(from).id, ...(draw.chance(25) ? [draw.pick(from).id] : [])])];
  const itself = draw.chance(45) ? { holdsItself: draw.chance(70) ? "3 h" : true } : {};
  return { heldBy: [set(holders), ...(draw.chance(60) ? [set(all)] : [])], ...itself };
}

/** Ways that nothing closes, to places that nothing fills, during the turn; through others of the same kind only. What passes is not looked at. */
function openWays(places: readonly DrawnPlace[], pieces: readonly DrawnPiece[], turn: number): DrawnWay[] {
  const shut = (key: string, what: string) => standing(pieces, turn).some((p) => !p.bySelf && (p.written[key] as string[]).includes(what));
  const lacks = (way: string) => pieces.some((p) => (p.written["makes"] as string[]).includes(way) && !(p.put <= turn && turn < p.take));
  let open = places.flatMap((p) => (shut("fills", p.id) ? [] : p.ways.filter((w) => !shut("closes", w.full) && !lacks(w.full))));
  for (const _ of places) {
    const to = (w: DrawnWay) => (w.written["through"] as { place: string } | undefined)?.place ?? w.written["through"];
    open = open.filter((w) => to(w) === undefined || open.some((o) => o.full.startsWith(`${to(w)}.`)));
  }
  return open;
}

/** Somewhere the step of that turn can get to if nothing is done carelessly; `piece`: brought through as one. */
export function drawReach(
  draw: Draw,
  size: Size,
  places: readonly DrawnPlace[],
  pieces: readonly DrawnPiece[],
  turn: number,
  piece: string | null,
): Loose[] {
  const open = openWays(places, pieces, turn);
  const careless = draw.chance(size.careless);
  if (open.length === 0 && !careless) return [];
  const one = (): DrawnReach => {
    if (open.length === 0 || careless) return { place: draw.pick(places).id, ...plainNeed(draw, draw.pick(pieces).id) };
    const way = draw.pick(open);
    return { place: way.full.split(".")[0]!, ...needFor(draw, way, pieces.find((p) => p.id === piece) ?? draw.pick(pieces)) };
  };
  return [draw.chance(12) ? { any: [one(), one()] } : { ...one() }];
}

export function drawSteps(draw: Draw, size: Size, places: readonly DrawnPlace[], pieces: readonly DrawnPiece[], count: number): Loose {
  const names = written(draw, count);
  const steps = names.map((id, turn): Loose => {
    const reaches = Array.from({ length: draw.pick([0, 1, 1, 2]) }, () => drawReach(draw, size, places, pieces, turn, null)).flat();
    const leanable = draw.chance(size.careless) ? pieces : standing(pieces, turn).filter((p) => p.take > turn);
    const after = names.slice(0, turn);
    const puts = pieces.filter((p) => p.put === turn).map((p) => p.id);
    const takes = pieces.filter((p) => p.take === turn).map((p) => p.id);
    return {
      id,
      name: id,
      work: draw.pick<unknown>(["1 h", "2 h", "5 h", { low: "1 h", likely: "3 h", high: "6 h" }]),
      hands: draw.pick([1, 2]),
      ...(puts.length > 0 ? { puts } : {}),
      ...(takes.length > 0 ? { takes } : {}),
      ...(reaches.length > 0 ? { reaches } : {}),
      ...(leanable.length > 0 && draw.chance(22)
        ? { leansOn: [{ piece: draw.pick(leanable).id, ...(draw.chance(50) ? { once: "4 h" } : {}) }] }
        : {}),
      ...(draw.chance(5) ? { holdPoint: { places: [draw.pick(places).id] } } : {}),
      ...(after.length > 0 && draw.chance(12) ? { after: [draw.pick(after)] } : {}),
      ...(size.windows && draw.chance(15) ? { notBefore: "2027-03-06T10:00" } : {}),
      ...(size.windows && draw.chance(15) ? { deadline: draw.pick(["2027-03-06T16:00", "2027-03-07T02:00"]) } : {}),
    };
  });
  const inTurn = (id: unknown) => Number((id as string).slice("step-".length));
  return {
    steps: steps.sort((a, b) => inTurn(a["id"]) - inTurn(b["id"])),
    waits: waits(draw, size, names),
    choices: choices(draw, size, names),
  };
}

/** Names by turn; where each stands in the document is drawn. */
function written(draw: Draw, count: number): string[] {
  const names = named("step", count);
  for (let i = count - 1; i > 0; i--) {
    const j = i - draw.below(i + 1);
    [names[i], names[j]] = [names[j]!, names[i]!];
  }
  return names;
}

function pair(draw: Draw, size: Pick<Size, "careless">, names: readonly string[]): { from: string; to: string } {
  const from = draw.below(names.length - 1);
  const to = from + 1 + draw.below(names.length - 1 - from);
  const [a, b] = [names[from]!, names[to]!];
  return draw.chance(size.careless) ? { from: b, to: a } : { from: a, to: b };
}

function waits(draw: Draw, size: Size, names: readonly string[]): Loose[] {
  return named("wait", draw.pick([0, 1, 1, 2])).map((id) => ({
    id,
    name: id,
    ...pair(draw, size, names),
    ...draw.pick<Loose>([
      { least: "3 h" },
      { least: "1 h", most: "12 h" },
      { most: "2 h" },
      { fromEnd: "start", least: "1 h" },
      { fromEnd: "start", toEnd: "finish", most: "9 h" },
      { toEnd: "finish", least: "4 h" },
    ]),
    why: "drawn",
  }));
}

/** A cold joint now and then; in some builds a twist: what one choice offers first, both options of another forbid. */
function choices(draw: Draw, size: Size, names: readonly string[]): Loose[] {
  const joints = draw.chance(30) ? [coldJoint(draw, size, names)] : [];
  return [...joints, ...(draw.chance(size.twisted) ? twist(draw, size, names) : [])];
}

const choice = (id: string, ...either: readonly (readonly Loose[])[]): Loose => ({
  id,
  name: id,
  either: either.map((waits, i) => ({ name: `option ${i + 1}`, waits })),
});

/** Fresh on fresh within an hour, or after a day and cleaning in between. */
function coldJoint(draw: Draw, size: Size, names: readonly string[]): Loose {
  const { from, to } = pair(draw, size, names);
  const cleaning = draw.pick(names);
  const prepared = [
    { from, to: cleaning, least: "24 h" },
    { from: cleaning, to },
  ].filter((w) => w.from !== w.to);
  return choice("joint", [...(draw.chance(50) ? [{ from, to }] : []), { from, to, most: "1 h" }], prepared);
}

function twist(draw: Draw, size: Size, names: readonly string[]): Loose[] {
  const { from, to } = pair(draw, size, names);
  const other = () => pair(draw, size, names);
  return [
    choice("first-knot", [{ from: to, to: from }], [{ from, to }, other()]),
    choice("second-knot", [{ from, to }, other()], [{ from, to }, other()]),
  ];
}
