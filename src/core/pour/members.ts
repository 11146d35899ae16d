import type { Source } from "../build";
import { judged, type MemberCheck, type MemberResult, type Spans } from "../concrete";
import { between_kN_m, type Head, pressureAt_kPa } from "./form-head";
import { mmOfInches } from "./form-units";
import type { Doubt } from "./guess";
import type { MemberPart, MemberSheet } from "./result";

/** A member judged, with what of it is not known. */
export interface Judged {
  readonly sheet: MemberSheet;
  readonly doubts: readonly Doubt[];
}

interface About {
  readonly part: MemberPart;
  readonly stuff: string;
  readonly pieces?: number;
  readonly result: MemberResult;
  readonly span_mm: number | null;
  readonly load: MemberSheet["load"];
  readonly each?: MemberSheet["each"];
  readonly documents: readonly string[];
  readonly doubts: readonly Doubt[];
  readonly source: Source | null;
}

export function member(about: About): Judged {
  const { part, stuff, pieces = 1, result, span_mm, load, each = [], documents, doubts, source } = about;
  const sheet: MemberSheet = {
    part,
    stuff,
    pieces,
    of100: result.governs.of100,
    governs: result.governs.kind,
    result,
    // Where what gives first does not ease with the span, a largest span by the other checks would promise what does not hold.
    largestSpan_mm: result.largestSpan_in === null || result.governs.span_in === null ? null : mmOfInches(result.largestSpan_in),
    span_mm,
    load,
    each,
    guessed: doubts.length > 0,
    documents,
    source,
  };
  return { sheet, doubts };
}

/** The same with checks that have no span of their own: bearing, a bolt. */
export const withChecks = (result: MemberResult, more: readonly MemberCheck[]): MemberResult => judged([...result.checks, ...more]);

/** How many spans in a row: 1, 2, or 3 and more. */
export function spansIn(whole_mm: number, span_mm: number): Spans {
  const count = Math.floor(whole_mm / span_mm + 1e-6);
  return count >= 3 ? 3 : count === 2 ? 2 : 1;
}

/** A stretch of an upright member that is checked as one span; an overhang is half of a single span twice as long, which bends it as much. */
interface Gap {
  readonly length_mm: number;
  readonly pressure_kPa: number;
  readonly overhangs: boolean;
}

/**
 * Between supports at heights above the foot. A foot that stands on a plate or in a kicker is a support, otherwise what is below the lowest hangs over, as does
 * what is above the highest. Each stretch is loaded evenly with the pressure at its lower end; the top one with its mean.
 */
export function gapsOf(head: Head, at_mm: readonly number[], footHeld: boolean): Gap[] {
  const supports = footHeld ? [0, ...at_mm] : at_mm;
  const low = supports[0] ?? 0;
  const high = supports[supports.length - 1] ?? 0;
  const inner = supports.slice(1).map((at, i) => {
    const from = supports[i] as number;
    return { length_mm: at - from, pressure_kPa: pressureAt_kPa(head, from), overhangs: false };
  });
  const above = head.high_mm - high;
  const ends = [
    { length_mm: low, pressure_kPa: pressureAt_kPa(head, 0), overhangs: true },
    { length_mm: above, pressure_kPa: above > 0 ? (1000 * between_kN_m(head, high, head.high_mm)) / above : 0, overhangs: true },
  ];
  return [...inner, ...ends].filter(({ length_mm }) => length_mm > 1);
}

const halved = (result: MemberResult): MemberResult =>
  judged(result.checks.map((check) => ({ ...check, span_in: check.span_in === null ? null : check.span_in / 2 })));

export interface Worst {
  readonly result: MemberResult;
  readonly span_mm: number;
  readonly pressure_kPa: number;
}

/** The worst stretch of an upright member. */
export function worstGap(gaps: readonly Gap[], judge: (spans: Spans, span_mm: number, pressure_kPa: number) => MemberResult): Worst | null {
  const inner = gaps.filter(({ overhangs }) => !overhangs).length;
  const spans: Spans = inner >= 3 ? 3 : inner === 2 ? 2 : 1;
  let worst: Worst | null = null;
  for (const { length_mm, pressure_kPa, overhangs } of gaps) {
    const result = overhangs ? halved(judge(1, 2 * length_mm, pressure_kPa)) : judge(spans, length_mm, pressure_kPa);
    if (worst === null || result.governs.of100 > worst.result.governs.of100) worst = { result, span_mm: length_mm, pressure_kPa };
  }
  return worst;
}
