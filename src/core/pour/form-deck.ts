import type { Brace, DeckFormSpec, ElementShape, Pour } from "../build";
import {
  area_in2,
  bearing,
  lumberMember,
  type MemberCheck,
  type MemberResult,
  pointCoefficients,
  pointMember,
  type Section,
  type Spans,
  shoreMember,
  slabBrace_lb_ft,
  slabForm_psf,
} from "../concrete";
import { type FormAsk, type FormJudged, Tally } from "./form-ask";
import { barrelDepth_mm, barrelPush_kN_m, barrelStrip_mm, springing_deg } from "./form-barrel";
import { atBrace, judgeBrace } from "./form-brace";
import { skinSheet } from "./form-column";
import { judgeMudsills } from "./form-sill";
import { contact_mm, type Skin, type Stuff, sags } from "./form-stuff";
import { feet, inches, kNmOfPoundsPerFoot, kPaOfPsf, pounds, poundsPerFoot, settled } from "./form-units";
import { member, spansIn, withChecks } from "./members";

/** A deck's plan and how thick the concrete stands over it, mm, measured plumb. */
interface Laid {
  readonly long_mm: number;
  readonly wide_mm: number;
  /** Where it is deepest, for sheathing and joists; and on the strip of the worst row of shores. */
  readonly deepest_mm: number;
  readonly onShores_mm: number;
}

export function laidOf(shape: ElementShape, shores_mm: number): Laid | null {
  switch (shape.kind) {
    case "barrel":
      return {
        long_mm: shape.long_mm,
        wide_mm: shape.span_mm,
        deepest_mm: barrelDepth_mm(shape, shape.span_mm / 2),
        onShores_mm: barrelStrip_mm(shape, shores_mm),
      };
    case "stair": {
      // On the slope the waist is thicker plumb than square, and the steps add half a riser.
      const plumb = (shape.thick_mm * Math.hypot(shape.riser_mm, shape.tread_mm)) / shape.tread_mm + shape.riser_mm / 2;
      return { long_mm: shape.steps * shape.tread_mm, wide_mm: shape.wide_mm, deepest_mm: plumb, onShores_mm: plumb };
    }
    case "slab":
    case "deck slab":
    case "footing":
      return { long_mm: shape.long_mm, wide_mm: shape.wide_mm, deepest_mm: shape.thick_mm, onShores_mm: shape.thick_mm };
    default:
      return null;
  }
}

/** Own weight of the form, psf: plywood 3 lb/ft2 an inch, lumber 35 lb/ft3 (common practice, no source; the lectures take 5.5 to 8 in all, SP-4 15). */
function ownWeight(skin: Skin, joist: Stuff, joists_mm: number, stringer: Stuff, stringers_mm: number): number {
  const run = (stuff: Stuff, spacing_mm: number) => ((area_in2(stuff.section) * stuff.pieces) / 144) * 35 * (304.8 / spacing_mm);
  return 3 * inches(skin.thick_mm) + run(joist, joists_mm) + run(stringer, stringers_mm);
}

/** Weight of the concrete, lb/ft3. */
const unitWeight = ({ mix }: Pour): number => settled((mix.weight_kg_m3 * 0.3048 ** 3) / 0.45359237);

const load_kPa = (pour: Pour, thick_mm: number, own: number, buggies: boolean): number =>
  kPaOfPsf(slabForm_psf(inches(thick_mm), own, unitWeight(pour), buggies));

/** On supports so far apart under a line load that comes as points `pitch_mm` apart, kN/m; points only where fewer than three fall on a span. */
function beamUnder(stuff: Stuff, whole_mm: number, span_mm: number, line_kN_m: number, pitch_mm: number): MemberResult {
  const spans = spansIn(whole_mm, span_mm);
  const span = inches(span_mm);
  const even = lumberMember(stuff.section, stuff.pieces, stuff.allowed, spans, span, poundsPerFoot(line_kN_m), sags);
  if (pitch_mm === 0 || span_mm / pitch_mm >= 3 - 1e-6) return even;
  const by = pointCoefficients(spans, Math.min(1, pitch_mm / span_mm));
  const pointed = pointMember(stuff.section, stuff.pieces, stuff.allowed, span, pounds((line_kN_m * pitch_mm) / 1000), by, sags);
  return pointed.governs.of100 > even.governs.of100 ? pointed : even;
}

export function judgeDeck(ask: FormAsk, form: DeckFormSpec): FormJudged {
  const tally = new Tally(ask);
  const laid = laidOf(ask.element.shape, form.shores.spacing_mm) as Laid;
  const skin = tally.skin(form.sheathing);
  const joist = tally.stuff("joists", form.joists.stuff, "beam", form.joists.spacing_mm <= 609.6 + 1e-6);
  const stringer = tally.stuff("stringers", form.stringers.stuff, "beam", false);
  const shore = tally.stuff("shores", form.shores.stuff, "column", false);
  const bare: Omit<FormJudged, "members" | "findings" | "bracing_kN_m"> = {
    thrust: 0,
    thrustAt_mm: 0,
    oneSided: false,
    lift: { up: 0, weight: null, held: 0, needed: 0 },
  };
  if (skin === null || joist === null || stringer === null || shore === null)
    return { ...bare, members: tally.members, findings: tally.findings, bracing_kN_m: 0 };
  const own = ownWeight(skin, joist, form.joists.spacing_mm, stringer, form.stringers.spacing_mm);
  judgeFloor(tally, form, laid, skin, joist, stringer, load_kPa(ask.pour, laid.deepest_mm, own, form.buggies));
  judgeShores(tally, form, laid, stringer, shore, load_kPa(ask.pour, laid.onShores_mm, own, form.buggies));
  const dead = unitWeight(ask.pour) * feet(laid.onShores_mm) + own;
  const bracing = kNmOfPoundsPerFoot(slabBrace_lb_ft(dead, feet(Math.max(laid.long_mm, laid.wide_mm))));
  if (form.brace === null) tally.say("form.no-brace", "look", { asked_kN_m: bracing });
  else judgeBrace(tally, form.brace, (bracingAt(form, form.brace, bracing) * form.brace.spacing_mm) / 1000, false);
  const { shape } = ask.element;
  if (shape.kind === "barrel") {
    const push_kN_m = barrelPush_kN_m(shape, ask.pour.mix.weight_kg_m3);
    if (push_kN_m > 0.05) tally.say("form.barrel-sideways", "note", { push_kN_m });
  }
  const slope_deg = shape.kind === "barrel" ? springing_deg(shape) : 0;
  const isLidded = ask.element.faces.some(({ face, against }) => face === "top" && against === "form");
  if (isLidded || slope_deg > runsOff_deg) tally.say("form.outer-unjudged", "look", { slope_deg });
  return { ...bare, members: tally.members, findings: tally.findings, bracing_kN_m: bracing };
}

/** Shores stand on hinges: a brace that reaches them lower than the deck is asked for more, about their feet. */
const bracingAt = (form: DeckFormSpec, brace: Brace, bracing: number): number =>
  Math.max(bracing, atBrace(bracing, form.shores.high_mm, brace));

/** Steeper than this fresh concrete does not stay without a form on it (common practice, no source). */
const runsOff_deg = 45;

/**
 * What joists that run through leave on a stringer, and a stringer on a shore, over their share to half way: the reaction over the middle of two spans, or the greatest of
 * three and more, under an even load (read in the form handbooks as coefficients 1.25 and 1.1).
 */
const interior: Readonly<Record<Spans, number>> = { 1: 1, 2: 1.25, 3: 1.1 };

/** Which way they run is not written: the worse of both. */
const through = ({ long_mm, wide_mm }: Laid, spacing_mm: number): number =>
  Math.max(interior[spansIn(long_mm, spacing_mm)], interior[spansIn(wide_mm, spacing_mm)]);

/** A sheet is 8 ft long: it runs over no more supports than fit under it. */
const sheet_mm = 2438.4;

function judgeFloor(tally: Tally, form: DeckFormSpec, laid: Laid, skin: Skin, joist: Stuff, stringer: Stuff, load: number): void {
  const least_mm = Math.min(laid.long_mm, laid.wide_mm);
  const { joists, stringers, shores } = form;
  const onJoists = skin.judge(spansIn(Math.min(sheet_mm, least_mm), joists.spacing_mm), joists.spacing_mm, contact_mm(joist), load);
  tally.add(skinSheet(skin, { result: onJoists, span_mm: joists.spacing_mm, pressure_kPa: load }));
  const joistLine = (load * joists.spacing_mm) / 1000;
  const overStringers = through(laid, stringers.spacing_mm);
  const onStringer = bearing(
    pounds((overStringers * joistLine * stringers.spacing_mm) / 1000),
    joist.section.wide_in * joist.pieces * stringer.section.wide_in * stringer.pieces,
    Math.min(joist.allowed.bearing, stringer.allowed.bearing),
  );
  const about = { documents: ["ACI 347", "NDS"] };
  tally.add(
    member({
      ...about,
      part: "joists",
      stuff: joist.label,
      pieces: joist.pieces,
      result: withChecks(beamUnder(joist, least_mm, stringers.spacing_mm, joistLine, 0), [onStringer]),
      span_mm: stringers.spacing_mm,
      load: { value: joistLine, unit: "kN/m" },
      doubts: joist.doubts,
      source: joist.lumber.from,
    }),
  );
  const stringerLine = (overStringers * load * stringers.spacing_mm) / 1000;
  tally.add(
    member({
      ...about,
      part: "stringers",
      stuff: stringer.label,
      pieces: stringer.pieces,
      result: beamUnder(stringer, least_mm, shores.spacing_mm, stringerLine, joists.spacing_mm),
      span_mm: shores.spacing_mm,
      load: { value: stringerLine, unit: "kN/m" },
      doubts: stringer.doubts,
      source: stringer.lumber.from,
    }),
  );
}

/** A stringer lies along the wide face of its shore's head. */
function headArea(stringer: Stuff, shore: Section, pieces: number): number {
  const thin = Math.min(shore.wide_in, shore.deep_in) * pieces;
  const deep = Math.max(shore.wide_in, shore.deep_in);
  return Math.min(stringer.section.wide_in * stringer.pieces, Math.min(thin, deep)) * Math.max(thin, deep);
}

function judgeShores(tally: Tally, form: DeckFormSpec, laid: Laid, stringer: Stuff, shore: Stuff, load: number): void {
  const { shores, stringers } = form;
  const share = through(laid, stringers.spacing_mm) * through(laid, shores.spacing_mm);
  const load_kN = (((share * load * stringers.spacing_mm) / 1000) * shores.spacing_mm) / 1000;
  const onHead: MemberCheck = bearing(
    pounds(load_kN),
    headArea(stringer, shore.section, shore.pieces),
    Math.min(stringer.allowed.bearing, shore.allowed.bearing),
  );
  const free = inches(shores.unbraced_mm ?? shores.high_mm);
  tally.add(
    member({
      part: "shores",
      stuff: shore.label,
      pieces: shore.pieces,
      result: withChecks(shoreMember(pounds(load_kN), shore.section, shore.pieces, shore.allowed, free, inches(shores.high_mm)), [onHead]),
      span_mm: shores.unbraced_mm ?? shores.high_mm,
      load: { value: load_kN, unit: "kN" },
      documents: ["ACI 347", "NDS"],
      doubts: shore.doubts,
      source: shore.lumber.from,
    }),
  );
  judgeMudsills(tally, form, shore, load_kN);
}
