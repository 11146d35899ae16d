import { limits, parseSigned } from "../../base";
import { aciRanges_si, aciRanges_us, bar, bars as barTable, footThickness_mm, metricBars, netVolume_m3 } from "../../concrete";
import type { ElementShape, FormSpec, PourElement, Rebate } from "../model";
import type { RawBars, RawElement, RawShape } from "../schema/pours";
import { readForm } from "./form";
import { sayNotInTable } from "./lumber";
import { shown } from "./notes";
import type { ElementDraft } from "./pour-drafts";
import { inUnitOf, isOutside, isUs, publishedQuantity, sayOutside } from "./published";
import { convert, elapsed_min, inside, length_mm, type Quantity, type Spot, textOf } from "./quantities";

const size_mm = (at: Spot, key: string, quantity: Quantity): number => length_mm(inside(at, key), "concreteSize", quantity);
const high_mm = (at: Spot, quantity: Quantity): number =>
  publishedQuantity(inside(at, "high"), "length", quantity, { us: aciRanges_us.height, si: aciRanges_si.height });

function ratioOf(at: Spot, text: string | undefined): number {
  if (text === undefined) return 0;
  const [run = 0, rise = 0] = text.split(":").map(Number);
  if (rise > 0 && Math.abs(run / rise) <= 2) return run / rise;
  at.notes.say("build.range", at.key, { part: at.part, value: shown(text), least: -2, most: 2, unit: "" });
  return 0;
}

type Batter = Extract<RawShape, { kind: "wall" }>["batter"];

function readBatter(at: Spot, raw: Batter): { a: number; b: number } {
  if (typeof raw !== "object") return { a: ratioOf(at, raw), b: ratioOf(at, raw) };
  return { a: ratioOf(inside(at, "a"), raw.a), b: ratioOf(inside(at, "b"), raw.b) };
}

function readShape(at: Spot, raw: RawShape): ElementShape {
  switch (raw.kind) {
    case "column":
    case "pier":
      return {
        kind: raw.kind,
        long_mm: size_mm(at, "long", raw.long),
        wide_mm: size_mm(at, "wide", raw.wide),
        high_mm: high_mm(at, raw.high),
        round: raw.round ?? false,
      };
    case "wall":
      return {
        kind: "wall",
        long_mm: size_mm(at, "long", raw.long),
        thick_mm: size_mm(at, "thick", raw.thick),
        high_mm: high_mm(at, raw.high),
        batter: readBatter(inside(at, "batter"), raw.batter),
      };
    case "barrel":
      return readBarrel(at, raw);
    case "stair":
      return {
        kind: "stair",
        wide_mm: size_mm(at, "wide", raw.wide),
        steps: raw.steps,
        riser_mm: size_mm(at, "riser", raw.riser),
        tread_mm: size_mm(at, "tread", raw.tread),
        thick_mm: size_mm(at, "thick", raw.thick),
      };
    default:
      return {
        kind: raw.kind,
        long_mm: size_mm(at, "long", raw.long),
        wide_mm: size_mm(at, "wide", raw.wide),
        thick_mm: size_mm(at, "thick", raw.thick),
      };
  }
}

/** A circular segment is no higher than half its span. */
function readBarrel(at: Spot, raw: Extract<RawShape, { kind: "barrel" }>): ElementShape {
  const span_mm = size_mm(at, "span", raw.span);
  const rise_mm = size_mm(at, "rise", raw.rise);
  const { least, unit } = limits.concreteSize;
  if (rise_mm > span_mm / 2 + 1e-6) {
    const { key, part } = inside(at, "rise");
    at.notes.say("build.range", key, { part, value: shown(textOf(raw.rise)), least, most: span_mm / 2, unit });
  }
  return { kind: "barrel", long_mm: size_mm(at, "long", raw.long), span_mm, rise_mm, thick_mm: size_mm(at, "thick", raw.thick) };
}

function readBars(at: Spot, raw: RawBars): ElementDraft["bars"][number] {
  const sizes = [...barTable, ...metricBars].map(({ size }) => String(size));
  const size = typeof raw.size === "string" ? raw.size.trim().replace(/^(\d+)\s*mm$/, "$1 mm") : raw.size;
  if (bar(size) === null) sayNotInTable(inside(at, "size"), String(raw.size), "bar", sizes);
  const maybe_mm = (key: "spacing" | "cover" | "supported"): number | null => {
    const quantity = raw[key];
    return quantity === undefined ? null : length_mm(inside(at, key), "memberSize", quantity);
  };
  return {
    name: raw.name ?? "",
    size,
    number: raw.number ?? 1,
    long_mm: size_mm(at, "long", raw.long),
    spacing_mm: maybe_mm("spacing"),
    yield_MPa: raw.yield === undefined ? null : convert(inside(at, "yield"), "pressure", "steel", raw.yield),
    cover_mm: maybe_mm("cover"),
    exposure: raw.exposure ?? "weather or ground",
    sort: raw.sort ?? "bar",
    supported_mm: maybe_mm("supported"),
    from: raw.from ?? null,
  };
}

/** The rate as an act: what it makes the concrete rise has to be a rise that the formulas know. */
function readHeld(at: Spot, raw: NonNullable<RawElement["held"]>): ElementDraft["held"] {
  const pass_mm = parseSigned("length", textOf(raw.pass)) ?? 0;
  const every_min = elapsed_min(inside(at, "every"), raw.every);
  const range = isUs("length", textOf(raw.pass)) ? aciRanges_us.rise : aciRanges_si.rise;
  const rise_mm_h = every_min > 0 ? (60 * pass_mm) / every_min : Number.POSITIVE_INFINITY;
  const perHour = { ...range, unit: range.unit.replace("/h", "") };
  if (isOutside(range, inUnitOf(perHour, "length", rise_mm_h))) sayOutside(at, `${textOf(raw.pass)} every ${textOf(raw.every)}`, range);
  return { pass_mm, every_min, who: raw.who ?? null };
}

const fits: Readonly<Record<FormSpec["kind"], readonly ElementShape["kind"][]>> = {
  column: ["column", "pier"],
  wall: ["wall", "footing"],
  deck: ["deck slab", "barrel", "stair"],
  edge: ["slab", "footing"],
};

const heightOf = (shape: ElementShape): number | null =>
  "high_mm" in shape ? shape.high_mm : shape.kind === "footing" ? shape.thick_mm : null;

function readRebate(at: Spot, raw: NonNullable<RawElement["rebates"]>[number]): Rebate {
  return {
    long_mm: size_mm(at, "long", raw.long),
    wide_mm: size_mm(at, "wide", raw.wide),
    deep_mm: size_mm(at, "deep", raw.deep),
    number: raw.number ?? 1,
  };
}

/** What a face that is named is cast against where it does not say. */
function usual(shape: ElementShape, face: PourElement["faces"][number]["face"]): PourElement["faces"][number]["against"] {
  if (face === "top") return "free";
  return face === "soffit" && (shape.kind === "slab" || shape.kind === "footing") ? "earth" : "form";
}

/** A wall that leans out to nothing at its foot, or more left out than there is. */
function checkSolid(at: Spot, shape: ElementShape, rebates: readonly Rebate[]): void {
  const sound = (shape.kind !== "wall" || footThickness_mm(shape) > 0) && netVolume_m3(shape, rebates) > 0;
  if (!sound) at.notes.say("build.nothing-left", at.key, { part: at.part });
}

export function readElement(at: Spot, raw: RawElement): ElementDraft {
  const before = at.notes.findings.length;
  const shape = readShape(inside(at, "shape"), raw.shape);
  const rebates = (raw.rebates ?? []).map((rebate, i) => readRebate(inside(inside(at, "rebates"), i + 1), rebate));
  if (at.notes.findings.length === before) checkSolid(at, shape, rebates);
  const form = raw.form === undefined ? null : readForm(inside(at, "form"), raw.form, heightOf(shape));
  if (form && !fits[form.form.kind].includes(shape.kind)) {
    at.notes.say("build.form-misfit", at.key, { part: `${at.part}.form`, form: form.form.kind, shape: shape.kind });
  }
  return {
    id: raw.id,
    name: raw.name ?? raw.id,
    number: raw.number ?? 1,
    shape,
    faces: (raw.faces ?? []).map(({ face, against, visible }): PourElement["faces"][number] => ({
      face,
      against: against ?? usual(shape, face),
      visible: visible ?? false,
    })),
    rebates,
    held: raw.held === undefined ? null : readHeld(inside(at, "held"), raw.held),
    form: form?.form ?? null,
    bars: (raw.bars ?? []).map((set, i) => readBars(inside(inside(at, "bars"), i + 1), set)),
    pieces: raw.pieces ?? [],
    assumed: form?.assumed ?? [],
  };
}
