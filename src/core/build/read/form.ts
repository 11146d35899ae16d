import type { Brace, ColumnFormSpec, DeckFormSpec, EdgeFormSpec, FormSpec, HoldDown, WallFormSpec } from "../model";
import type { RawBrace, RawForm, RawHoldDown, RawLumber } from "../schema/forms";
import { type Assume, readFastener, readLumber, readSheathing } from "./lumber";
import type { ReadForm } from "./pour-drafts";
import { convert, inside, length_mm, mass_kg, type Quantity, type Spot, textOf } from "./quantities";

type Raw<K extends RawForm["kind"]> = Extract<RawForm, { kind: K }>;

const member_mm = (at: Spot, key: string, quantity: Quantity): number => length_mm(inside(at, key), "memberSize", quantity);
const maybe = <T, R>(value: T | undefined, read: (value: T) => R): R | null => (value === undefined ? null : read(value));

const spaced = (at: Spot, raw: { readonly stuff: RawLumber; readonly spacing: Quantity }) => ({
  stuff: readLumber(inside(at, "stuff"), raw.stuff),
  spacing_mm: member_mm(at, "spacing", raw.spacing),
});

const readBrace = (at: Spot, raw: RawBrace): Brace => ({
  ...spaced(at, raw),
  run_mm: member_mm(at, "run", raw.run),
  rise_mm: member_mm(at, "rise", raw.rise),
  lands: raw.lands ?? null,
  foot: maybe(raw.foot, (foot) => readFastener(inside(at, "foot"), foot)),
});

const readHoldDown = (at: Spot, raw: RawHoldDown): HoldDown => ({
  by: readFastener(inside(at, "by"), raw.by),
  spacing_mm: maybe(raw.spacing, (spacing) => member_mm(at, "spacing", spacing)),
  number: raw.number ?? 1,
});

/** Heights above the foot of the form, from the lowest up, none of them above its top; `high_mm` null where the shape has no height to compare with. */
function readHeights(at: Spot, texts: readonly Quantity[], high_mm: number | null): readonly number[] {
  const heights = texts.map((text, i) => length_mm(inside(at, i + 1), "opening", text));
  const { notes, key, part } = at;
  const shown = (i: number): string => textOf(texts[i] ?? "");
  if (texts.length === 0) notes.say("build.empty", key, { part });
  const fallen = heights.findIndex((height, i) => i > 0 && height <= (heights[i - 1] ?? 0));
  if (fallen > 0) notes.say("build.not-rising", key, { part, first: shown(fallen - 1), second: shown(fallen) });
  const over = high_mm === null ? -1 : heights.findIndex((height) => height > high_mm + 1e-6);
  if (over >= 0) notes.say("build.above-form", key, { part, value: shown(over), most: high_mm ?? 0, unit: "mm" });
  return heights;
}

function readColumn(at: Spot, raw: Raw<"column">, high_mm: number | null, assume: Assume): ColumnFormSpec {
  const bands = inside(at, "bands");
  return {
    kind: "column",
    sheathing: readSheathing(inside(at, "sheathing"), raw.sheathing, assume),
    battens: maybe(raw.battens, (battens) => spaced(inside(at, "battens"), battens)),
    bands: {
      stuff: readLumber(inside(bands, "stuff"), raw.bands.stuff),
      at_mm: readHeights(inside(bands, "at"), raw.bands.at, high_mm),
      bolt: maybe(raw.bands.bolt, (bolt) => readFastener(inside(bands, "bolt"), bolt)),
    },
    mass_kg: maybe(raw.weight, (weight) => mass_kg(inside(at, "weight"), weight)),
    footSealed: raw.footSealed ?? false,
    holdDown: maybe(raw.holdDown, (down) => readHoldDown(inside(at, "holdDown"), down)),
    brace: maybe(raw.brace, (brace) => readBrace(inside(at, "brace"), brace)),
  };
}

function readWall(at: Spot, raw: Raw<"wall">, high_mm: number | null, assume: Assume): WallFormSpec {
  const [wales, ties, backs] = [inside(at, "wales"), inside(at, "ties"), inside(at, "strongbacks")];
  return {
    kind: "wall",
    sheathing: readSheathing(inside(at, "sheathing"), raw.sheathing, assume),
    studs: spaced(inside(at, "studs"), raw.studs),
    wales: { stuff: readLumber(inside(wales, "stuff"), raw.wales.stuff), at_mm: readHeights(inside(wales, "at"), raw.wales.at, high_mm) },
    ties: maybe(raw.ties, (tie) => ({ by: readFastener(inside(ties, "by"), tie.by), spacing_mm: member_mm(ties, "spacing", tie.spacing) })),
    strongbacks: maybe(raw.strongbacks, (back) => ({
      ...spaced(backs, back),
      top: readFastener(inside(backs, "top"), back.top),
      foot: readFastener(inside(backs, "foot"), back.foot),
    })),
    mass_kg_m: maybe(raw.weight, (weight) => convert(inside(at, "weight"), "massPerLength", "massPerLength", weight)),
    footSealed: raw.footSealed ?? false,
    holdDown: maybe(raw.holdDown, (down) => readHoldDown(inside(at, "holdDown"), down)),
    brace: maybe(raw.brace, (brace) => readBrace(inside(at, "brace"), brace)),
  };
}

function readMudsills(at: Spot, raw: NonNullable<Raw<"deck">["mudsills"]>): NonNullable<DeckFormSpec["mudsills"]> {
  return {
    long_mm: member_mm(at, "long", raw.long),
    wide_mm: member_mm(at, "wide", raw.wide),
    stuff: maybe(raw.stuff, (stuff) => readLumber(inside(at, "stuff"), stuff)),
    soil_kPa: maybe(raw.soil, (soil) => Number((1000 * convert(inside(at, "soil"), "pressure", "soil", soil)).toPrecision(12))),
    soilFrom: typeof raw.soil === "object" ? (raw.soil.from ?? null) : null,
    level: raw.level ?? false,
    ground: raw.ground ?? null,
  };
}

function readDeck(at: Spot, raw: Raw<"deck">, assume: Assume): DeckFormSpec {
  const shores = inside(at, "shores");
  return {
    kind: "deck",
    sheathing: readSheathing(inside(at, "sheathing"), raw.sheathing, assume),
    joists: spaced(inside(at, "joists"), raw.joists),
    stringers: spaced(inside(at, "stringers"), raw.stringers),
    shores: {
      ...spaced(shores, raw.shores),
      high_mm: member_mm(shores, "high", raw.shores.high),
      unbraced_mm: maybe(raw.shores.unbraced, (unbraced) => member_mm(shores, "unbraced", unbraced)),
    },
    mudsills: maybe(raw.mudsills, (sills) => readMudsills(inside(at, "mudsills"), sills)),
    buggies: raw.buggies ?? false,
    brace: maybe(raw.brace, (brace) => readBrace(inside(at, "brace"), brace)),
  };
}

const readEdge = (at: Spot, raw: Raw<"edge">): EdgeFormSpec => ({
  kind: "edge",
  boards: readLumber(inside(at, "boards"), raw.boards),
  stakes: {
    spacing_mm: member_mm(inside(at, "stakes"), "spacing", raw.stakes.spacing),
    by: maybe(raw.stakes.by, (by) => readFastener(inside(inside(at, "stakes"), "by"), by)),
  },
  holdDown: maybe(raw.holdDown, (down) => readHoldDown(inside(at, "holdDown"), down)),
});

/** A form as written, for something `high_mm` high (null: a slab or vault, whose form has no bands to compare with a height). */
export function readForm(at: Spot, raw: RawForm, high_mm: number | null): ReadForm {
  const assumed: string[] = [];
  const from = at.part.length - "form".length;
  const assume: Assume = (spot) => assumed.push(spot.part.slice(from));
  const form: FormSpec =
    raw.kind === "column"
      ? readColumn(at, raw, high_mm, assume)
      : raw.kind === "wall"
        ? readWall(at, raw, high_mm, assume)
        : raw.kind === "deck"
          ? readDeck(at, raw, assume)
          : readEdge(at, raw);
  return { form, assumed };
}
