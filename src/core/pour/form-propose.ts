import type { Display } from "../base";
import type { ColumnFormSpec, FormSpec, WallFormSpec } from "../build";
import { bandUnder, type LayoutRules, layoutBy } from "../concrete";
import { type Written, written } from "./fix-edits";
import { type FormAsk, Tally } from "./form-ask";
import { bandStuff, columnParts, upright } from "./form-column";
import { judgeSound } from "./form-judge";
import { inches, kNmOfPoundsPerFoot, kPaOfPsf, mmOfInches } from "./form-units";
import { studJudge, waleJudge, wallParts } from "./form-wall";

/** Half an inch, or a centimetre. */
const step_mm = (display: Display): number => (display === "us" ? 12.7 : 10);
/** A band within 4 in of the foot (usual: 4 to 6 in, read in a lecture), the first wale within a foot of it. */
const lowest_mm = { us: { column: 101.6, wall: 203.2 }, metric: { column: 100, wall: 200 } } as const;
/** Never further apart, whatever carries it (common practice, no source). */
const widest_mm = { column: 609.6, wall: 914.4 } as const;

function columnRules(ask: FormAsk, form: ColumnFormSpec): Pick<LayoutRules, "of100" | "gap_in"> | null {
  const parts = columnParts(new Tally(ask), form);
  if (parts === null) return null;
  const stuff = bandStuff(parts, form.bands.bolt?.carries_kN ?? null);
  const judge = upright(parts);
  return {
    of100: (line) => bandUnder(stuff, (line * stuff.side_in) / 12).governs.of100,
    gap_in: (psf) => judge(3, 300, kPaOfPsf(psf)).largestSpan_in ?? Number.MAX_SAFE_INTEGER,
  };
}

function wallRules(ask: FormAsk, form: WallFormSpec): Pick<LayoutRules, "of100" | "gap_in"> | null {
  const parts = wallParts(new Tally(ask), form);
  if (parts === null) return null;
  const judge = waleJudge(parts);
  const upright = studJudge(parts);
  const tie = parts.support === "ties" && form.ties !== null ? form.ties.by.carries_kN : null;
  const onTie = (line: number) => (tie === null ? 0 : (100 * kNmOfPoundsPerFoot(line) * (parts.span_mm / 1000)) / tie);
  return {
    of100: (line) => Math.max(judge(line).governs.of100, onTie(line)),
    gap_in: (psf) => (upright(3, 300, kPaOfPsf(psf)).largestSpan_in ?? Number.MAX_SAFE_INTEGER) / parts.slope,
  };
}

/**
 * Tried in turn: the closer ones where what lies behind carries less over one or two spans than over three, and where, running through, it leaves more than their
 * share on some.
 */
const tries = [1, 1.08, 1.16, 1.3].flatMap((share) =>
  [
    { lowest: 1, gaps: 1 },
    { lowest: 1, gaps: 0.9 },
    { lowest: 0.75, gaps: 0.8 },
    { lowest: 0.5, gaps: 0.7 },
  ].map((one) => ({ ...one, share })),
);

/**
 * Bands (of a column) or wales (of a wall) from the base up that would carry it, in the site's steps; null where none can, or where nothing runs across. What lies
 * behind them is taken over three spans here and judged again as it then is.
 */
export function proposed(ask: FormAsk, form: FormSpec, display: Display): readonly Written[] | null {
  if ((form.kind !== "column" && form.kind !== "wall") || ask.head === null) return null;
  const rules = form.kind === "column" ? columnRules(ask, form) : wallRules(ask, form);
  if (rules === null) return null;
  for (const { lowest, gaps, share } of tries) {
    const found = layoutBy(ask.head.diagram, {
      of100: (line) => rules.of100(line * share),
      gap_in: (psf) => gaps * rules.gap_in(psf),
      first_in: inches(lowest_mm[display][form.kind] * lowest),
      widest_in: inches(widest_mm[form.kind]),
      step_in: inches(step_mm(display)),
    });
    const heights = found?.map((at) => written(mmOfInches(at), display));
    if (heights !== undefined && holds(ask, form, heights)) return heights;
  }
  return null;
}

/** The form with its bands or wales at other heights. */
function across<F extends ColumnFormSpec | WallFormSpec>(form: F, at_mm: readonly number[]): FormSpec {
  return form.kind === "column" ? { ...form, bands: { ...form.bands, at_mm } } : { ...form, wales: { ...form.wales, at_mm } };
}

/** What depends on these heights carries it then. */
function holds(ask: FormAsk, form: ColumnFormSpec | WallFormSpec, heights: readonly Written[]): boolean {
  const skin = form.kind === "column" && form.battens === null ? ["sheathing"] : [];
  const depend = new Set(["bands", "corner bolts", "battens", "wales", "ties", "studs", ...skin]);
  const changed = across(
    form,
    heights.map(({ mm }) => mm),
  );
  return judgeSound(ask, changed).members.every(({ sheet }) => !depend.has(sheet.part) || sheet.of100 <= 100);
}
