import type { ColumnFormSpec } from "../build";
import { type BandStuff, bandUnder, bearing, lumberMember, stretches } from "../concrete";
import { type FormAsk, type FormJudged, Tally } from "./form-ask";
import { atBrace, judgeBrace, uprightBracing_kN_m } from "./form-brace";
import { type Head, thrust_kN_m, thrustAt_mm } from "./form-head";
import { judgeLift, lid_kPa } from "./form-lift";
import { contact_mm, deep_mm, type Skin, type Stuff, sags } from "./form-stuff";
import { inches, kNOfPounds, mmOfInches, pounds, poundsPerFoot } from "./form-units";
import { washerChecks } from "./form-washer";
import { gapsOf, type Judged, member, spansIn, type Worst, withChecks, worstGap } from "./members";
import type { MemberSheet } from "./result";

/** A column form's parts as the formulas want them, on its widest side. */
export interface ColumnParts {
  readonly side_mm: number;
  readonly skin: Skin;
  readonly battens: { readonly stuff: Stuff; readonly spacing_mm: number; readonly count: number } | null;
  readonly band: Stuff;
  /** From corner bolt to corner bolt: the side, the form on both ends of it, and half a crossing band at each. */
  readonly span_mm: number;
}

export function columnParts(tally: Tally, form: ColumnFormSpec): ColumnParts | null {
  const { upright } = tally.ask;
  if (upright === null) return null;
  const side_mm = Math.max(upright.long_mm, upright.wide_mm);
  const skin = tally.skin(form.sheathing);
  const battens = form.battens;
  const count = battens === null ? 0 : Math.ceil(side_mm / battens.spacing_mm - 1e-6) + 1;
  const isRepeated = battens !== null && count >= 3 && battens.spacing_mm <= 609.6 + 1e-6;
  const upStuff = battens === null ? null : tally.stuff("battens", battens.stuff, "beam", isRepeated);
  const band = tally.stuff("bands", form.bands.stuff, "beam", false);
  if (skin === null || band === null || (battens !== null && upStuff === null)) return null;
  const behind_mm = skin.thick_mm + (upStuff === null ? 0 : deep_mm(upStuff));
  return {
    side_mm,
    skin,
    battens: battens === null || upStuff === null ? null : { stuff: upStuff, spacing_mm: Math.min(battens.spacing_mm, side_mm), count },
    band,
    span_mm: side_mm + 2 * behind_mm + deep_mm(band),
  };
}

/** The bands without their bolts, for a layout or one by one. */
export function bandStuff(parts: ColumnParts, bolt_kN: number | null): BandStuff {
  return {
    section: parts.band.section,
    pieces: parts.band.pieces,
    allowed: parts.band.allowed,
    span_in: inches(parts.span_mm),
    side_in: inches(parts.side_mm),
    bolt_lb: bolt_kN === null ? null : pounds(bolt_kN),
    sags,
  };
}

/** What spans from band to band at a pressure: the battens, or the sheathing where there are none. */
export function upright(parts: ColumnParts) {
  const { battens, skin, band } = parts;
  return (spans: 1 | 2 | 3, span_mm: number, pressure_kPa: number) =>
    battens === null
      ? skin.judge(spans, span_mm, contact_mm(band), pressure_kPa)
      : lumberMember(
          battens.stuff.section,
          battens.stuff.pieces,
          battens.stuff.allowed,
          spans,
          inches(span_mm),
          poundsPerFoot((pressure_kPa * battens.spacing_mm) / 1000),
          sags,
        );
}

export function judgeColumn(ask: FormAsk, form: ColumnFormSpec): FormJudged {
  const tally = new Tally(ask);
  const head = ask.head as Head;
  const parts = columnParts(tally, form);
  const at_mm = form.bands.at_mm.filter((at) => at <= head.high_mm + 1e-6);
  if (at_mm.length === 0) tally.say("form.nothing-across", "stop", { part: "bands" });
  else if (parts !== null) judgeParts(tally, form, parts, head, at_mm);
  if (!form.footSealed) tally.say("form.foot-open", "look", {});
  const shape = ask.element.shape;
  if (shape.kind !== "wall" && "round" in shape && shape.round) tally.say("form.round", "note", {});
  const side_m = (parts?.side_mm ?? 0) / 1000;
  const plan_m2 = ask.upright === null ? 0 : (ask.upright.long_mm * ask.upright.wide_mm) / 1e6;
  const lift = judgeLift(tally, lid_kPa(tally, head) * plan_m2, "all", form, 1);
  const bracing = uprightBracing_kN_m(head.high_mm);
  if (form.brace === null) tally.say("form.no-brace", "look", { asked_kN_m: bracing });
  else judgeBrace(tally, form.brace, atBrace(bracing * side_m, head.high_mm, form.brace), false);
  return {
    members: tally.members,
    findings: tally.findings,
    thrust: thrust_kN_m(head) * side_m,
    thrustAt_mm: thrustAt_mm(head),
    oneSided: false,
    lift,
    bracing_kN_m: bracing,
  };
}

function judgeParts(tally: Tally, form: ColumnFormSpec, parts: ColumnParts, head: Head, at_mm: readonly number[]): void {
  const { skin, battens, band, side_mm } = parts;
  const held = worstGap(gapsOf(head, at_mm, form.footSealed), upright(parts));
  const lines = stretches(head.diagram, at_mm.map(inches), form.footSealed);
  if (battens === null) {
    if (held !== null) tally.add(skinSheet(skin, held));
  } else {
    const span = battens.spacing_mm;
    const result = skin.judge(spansIn(side_mm, span), span, contact_mm(battens.stuff), head.most_kPa);
    tally.add(skinSheet(skin, { result, span_mm: span, pressure_kPa: head.most_kPa }));
    if (held !== null) {
      const worst = Math.max(...lines.map(({ most_lb_ft }) => most_lb_ft)) * (span / 304.8);
      const area = battens.stuff.section.wide_in * battens.stuff.pieces * band.section.wide_in * band.pieces;
      const onBand = bearing(worst, area, Math.min(battens.stuff.allowed.bearing, band.allowed.bearing));
      tally.add(
        member({
          part: "battens",
          stuff: battens.stuff.label,
          pieces: battens.stuff.pieces,
          result: withChecks(held.result, [onBand]),
          span_mm: held.span_mm,
          load: { value: (held.pressure_kPa * span) / 1000, unit: "kN/m" },
          documents: ["NDS"],
          doubts: battens.stuff.doubts,
          source: battens.stuff.lumber.from,
        }),
      );
    }
  }
  judgeBands(tally, form, parts, lines);
}

export function skinSheet(skin: Skin, worst: Worst): Judged {
  return member({
    part: "sheathing",
    stuff: skin.label,
    result: worst.result,
    span_mm: worst.span_mm,
    load: { value: worst.pressure_kPa, unit: "kPa" },
    documents: skin.documents,
    doubts: skin.doubts,
    source: skin.sheathing.from,
  });
}

function judgeBands(tally: Tally, form: ColumnFormSpec, parts: ColumnParts, lines: ReturnType<typeof stretches>): void {
  const stuff = bandStuff(parts, null);
  const each = lines.map((line) => {
    const [share, load] = [(line.line_lb_ft * stuff.side_in) / 12, (line.most_lb_ft * stuff.side_in) / 12];
    return { ...line, share, load, result: bandUnder(stuff, load) };
  });
  const row = (line: (typeof each)[number], part: number, of100: number, governs: MemberSheet["governs"]) => ({
    at_mm: mmOfInches(line.at_in),
    from_mm: mmOfInches(line.from_in),
    to_mm: mmOfInches(line.to_in),
    load_kN: kNOfPounds(part * line.share),
    most_kN: kNOfPounds(part * line.load),
    of100,
    governs,
  });
  const worst = each.reduce((a, b) => (b.result.governs.of100 > a.result.governs.of100 ? b : a));
  tally.add(
    member({
      part: "bands",
      stuff: parts.band.label,
      pieces: parts.band.pieces,
      result: worst.result,
      span_mm: parts.span_mm,
      load: { value: kNOfPounds(worst.load), unit: "kN" },
      each: each.map((line) => row(line, 1, line.result.governs.of100, line.result.governs.kind)),
      documents: ["NDS"],
      doubts: parts.band.doubts,
      source: parts.band.lumber.from,
    }),
  );
  const { bolt } = form.bands;
  const most = Math.max(...each.map(({ load }) => load));
  const may = bolt === null ? 0 : pounds(bolt.carries_kN);
  const rows = bolt === null ? [] : each.map((line) => row(line, 0.5, (50 * line.load) / may, "tension"));
  const bears = washerChecks(tally, "corner bolts", bolt, "bands", parts.band, kNOfPounds(most / 2));
  tally.fastener("corner bolts", bolt, kNOfPounds(most / 2), rows, "stop", bears);
}
