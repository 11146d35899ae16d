import type { WallFormSpec } from "../build";
import { bearing, lumberMember, type MemberResult, pointCoefficients, pointMember, type Spans, stretches } from "../concrete";
import { formedSides } from "./element";
import { type FormAsk, type FormJudged, Tally } from "./form-ask";
import { atBrace, judgeBrace, uprightBracing_kN_m } from "./form-brace";
import { skinSheet } from "./form-column";
import { type Head, thrust_kN_m, thrustAt_mm } from "./form-head";
import { formedBatters, judgeLift, leaning_kN_m, lid_kPa } from "./form-lift";
import { judgeStrongbacks } from "./form-strongback";
import { contact_mm, type Skin, type Stuff, sags } from "./form-stuff";
import { inches, kNmOfPoundsPerFoot, kNOfPounds, mmOfInches, pounds, poundsPerFoot } from "./form-units";
import { washerChecks } from "./form-washer";
import { gapsOf, member, spansIn, withChecks, worstGap } from "./members";
import type { MemberSheet } from "./result";

/** What the wales run from and to. */
export type WaleSupport = "ties" | "strongbacks" | "braces";

export interface WallParts {
  readonly skin: Skin;
  readonly stud: Stuff;
  readonly studs_mm: number;
  readonly wale: Stuff;
  readonly support: WaleSupport;
  readonly span_mm: number;
  readonly spans: Spans;
  /** Along the face over up: a leaning face is longer than it is high. */
  readonly slope: number;
}

/** Ties hold two formed faces against each other, or one against old work; into earth they hold nothing. */
function supportOf(form: WallFormSpec, other: "earth" | "old work" | null): readonly [WaleSupport, number] | null {
  if (form.ties !== null && other !== "earth") return ["ties", form.ties.spacing_mm];
  if (form.strongbacks !== null) return ["strongbacks", form.strongbacks.spacing_mm];
  return form.brace !== null && other !== null ? ["braces", form.brace.spacing_mm] : null;
}

export function wallParts(tally: Tally, form: WallFormSpec): WallParts | null {
  const { upright } = tally.ask;
  if (upright === null) return null;
  const long_mm = Math.max(upright.long_mm, upright.wide_mm);
  const { a, b, other } = formedSides(tally.ask.element);
  const support = supportOf(form, a !== b ? other : null);
  const skin = tally.skin(form.sheathing);
  const isRepeated = form.studs.spacing_mm <= 609.6 + 1e-6 && long_mm / form.studs.spacing_mm >= 2 - 1e-6;
  const stud = tally.stuff("studs", form.studs.stuff, "beam", isRepeated);
  const wale = tally.stuff("wales", form.wales.stuff, "beam", false);
  if (support === null) tally.say("form.wales-loose", "stop", {});
  if (support === null || skin === null || stud === null || wale === null) return null;
  const batter = Math.max(...formedBatters(tally).map(Math.abs), 0);
  const span_mm = Math.min(support[1], long_mm);
  return {
    skin,
    stud,
    studs_mm: Math.min(form.studs.spacing_mm, long_mm),
    wale,
    support: support[0],
    span_mm,
    spans: spansIn(long_mm, span_mm),
    slope: Math.hypot(1, batter),
  };
}

/** A stud between wales at a pressure. */
export const studJudge =
  ({ stud, studs_mm, slope }: WallParts) =>
  (spans: Spans, span_mm: number, pressure_kPa: number): MemberResult =>
    lumberMember(
      stud.section,
      stud.pieces,
      stud.allowed,
      spans,
      inches(span_mm * slope),
      poundsPerFoot((pressure_kPa * studs_mm) / 1000),
      sags,
    );

/**
 * A wale under a load for each foot, lb/ft. With fewer than three studs between its supports what it gets are points, not a line (APA V345): the worse of both is told.
 */
export function waleJudge({ wale, spans, span_mm, studs_mm }: WallParts): (line: number) => MemberResult {
  const span = inches(span_mm);
  const points = span_mm / studs_mm < 3 - 1e-6 ? pointCoefficients(spans, studs_mm / span_mm) : null;
  return (line) => {
    const even = lumberMember(wale.section, wale.pieces, wale.allowed, spans, span, line, sags);
    if (points === null) return even;
    const each = (line * studs_mm) / 304.8;
    const pointed = pointMember(wale.section, wale.pieces, wale.allowed, span, each, points, sags);
    return pointed.governs.of100 > even.governs.of100 ? pointed : even;
  };
}

export function judgeWall(ask: FormAsk, form: WallFormSpec): FormJudged {
  const tally = new Tally(ask);
  const head = ask.head as Head;
  const { a, b, other } = formedSides(ask.element);
  const oneSided = a !== b && other !== null;
  const parts = wallParts(tally, form);
  const at_mm = form.wales.at_mm.filter((at) => at <= head.high_mm + 1e-6);
  if (at_mm.length === 0) tally.say("form.nothing-across", "stop", { part: "wales" });
  else if (parts !== null) judgeParts(tally, form, parts, head, at_mm, oneSided);
  if (!form.footSealed) tally.say("form.foot-open", "look", {});
  const thrust = thrust_kN_m(head);
  const tied = oneSided && parts?.support === "ties";
  const pushes = oneSided && !tied ? thrust : 0;
  const bracing = uprightBracing_kN_m(head.high_mm);
  const byThrust = form.brace === null ? 0 : atBrace(pushes, thrustAt_mm(head), form.brace);
  if (form.brace !== null) {
    const asked = Math.max(byThrust, atBrace(bracing, head.high_mm, form.brace));
    judgeBrace(tally, form.brace, (asked * form.brace.spacing_mm) / 1000, pushes > 0);
  } else if (pushes === 0) tally.say("form.no-brace", "look", { asked_kN_m: bracing });
  if (pushes > 0) oneSide(tally, form, pushes, byThrust, thrustAt_mm(head));
  const rake = form.brace === null ? 0 : (byThrust * form.brace.rise_mm) / form.brace.run_mm;
  const wide_m = (ask.upright?.wide_mm ?? 0) / 1000;
  const down = leaning_kN_m(
    head,
    formedBatters(tally).map((batter) => -batter),
  );
  if (down > 0.005) tally.say("form.leans-out", "look", { down_kN_m: down });
  const up = leaning_kN_m(head, formedBatters(tally)) + rake + lid_kPa(tally, head) * wide_m;
  return {
    members: tally.members,
    thrust,
    thrustAt_mm: thrustAt_mm(head),
    oneSided,
    lift: judgeLift(tally, up, "metre", form, Number(a) + Number(b)),
    bracing_kN_m: bracing,
    findings: tally.findings,
  };
}

/** Nothing stands opposite: brace, foot and hold-down take it all. */
function oneSide(tally: Tally, form: WallFormSpec, thrust: number, byBrace: number, at_mm: number): void {
  if (form.brace === null) {
    tally.say("form.one-sided", "stop", { thrust_kN_m: thrust, at_mm });
    if (form.holdDown === null) tally.say("form.one-sided-lifts", "stop", {});
    return;
  }
  if (form.strongbacks === null) {
    tally.say("form.foot-thrust", "look", { thrust_kN_m: thrust - byBrace });
    if (form.wales.at_mm.length > 1) tally.say("form.brace-one-height", "stop", {});
  }
}

function judgeParts(tally: Tally, form: WallFormSpec, parts: WallParts, head: Head, at_mm: readonly number[], oneSided: boolean): void {
  const { skin, stud, studs_mm, wale } = parts;
  const long_mm = Math.max(tally.ask.upright?.long_mm ?? 0, tally.ask.upright?.wide_mm ?? 0);
  const onStuds = skin.judge(spansIn(long_mm, studs_mm), studs_mm, contact_mm(stud), head.most_kPa);
  tally.add(skinSheet(skin, { result: onStuds, span_mm: studs_mm, pressure_kPa: head.most_kPa }));
  const lines = stretches(head.diagram, at_mm.map(inches), form.footSealed);
  const most = Math.max(...lines.map(({ most_lb_ft }) => most_lb_ft));
  const worst = worstGap(gapsOf(head, at_mm, form.footSealed), studJudge(parts));
  if (worst !== null) {
    const area = stud.section.wide_in * stud.pieces * wale.section.wide_in * wale.pieces;
    const onWale = bearing((most * studs_mm) / 304.8, area, Math.min(stud.allowed.bearing, wale.allowed.bearing));
    tally.add(
      member({
        part: "studs",
        stuff: stud.label,
        pieces: stud.pieces,
        result: withChecks(worst.result, [onWale]),
        span_mm: worst.span_mm,
        load: { value: (worst.pressure_kPa * studs_mm) / 1000, unit: "kN/m" },
        documents: ["NDS"],
        doubts: stud.doubts,
        source: stud.lumber.from,
      }),
    );
  }
  const judge = waleJudge(parts);
  const each = lines.map((line) => ({ ...line, result: judge(line.most_lb_ft) }));
  const between_kN = (line: number): number => kNOfPounds((line * parts.span_mm) / 304.8);
  const row = (line: (typeof each)[number], of100: number, governs: MemberSheet["governs"]) => ({
    at_mm: mmOfInches(line.at_in),
    from_mm: mmOfInches(line.from_in),
    to_mm: mmOfInches(line.to_in),
    load_kN: between_kN(line.line_lb_ft),
    most_kN: between_kN(line.most_lb_ft),
    of100,
    governs,
  });
  const first = each.reduce((x, y) => (y.result.governs.of100 > x.result.governs.of100 ? y : x));
  tally.add(
    member({
      part: "wales",
      stuff: wale.label,
      pieces: wale.pieces,
      result: first.result,
      span_mm: parts.span_mm,
      load: { value: kNmOfPoundsPerFoot(first.most_lb_ft), unit: "kN/m" },
      each: each.map((line) => row(line, line.result.governs.of100, line.result.governs.kind)),
      documents: ["NDS"],
      doubts: wale.doubts,
      source: wale.lumber.from,
    }),
  );
  if (parts.support === "ties" && form.ties !== null) {
    const may = pounds(form.ties.by.carries_kN);
    const rows = each.map((line) => {
      return row(line, (100 * pounds(between_kN(line.most_lb_ft))) / may, "tension");
    });
    const bears = washerChecks(tally, "ties", form.ties.by, "wales", wale, between_kN(most));
    tally.fastener("ties", form.ties.by, between_kN(most), rows, "stop", bears);
    if (oneSided) tally.say("form.one-sided-ties", "look", { load_kN: between_kN(most) });
  }
  if (parts.support === "strongbacks" || (oneSided && form.strongbacks !== null)) judgeStrongbacks(tally, form, head, oneSided);
}
