import type { ElapsedMinute } from "../base";
import type { Build, Pour, PourElement } from "../build";
import { finished_m2 } from "../concrete";
import { type Quantities, quantities } from "./quantities";
import type { Bought, PourDay, PourSheet } from "./result";
import { stockLines } from "./shopping-stock";

/** What a plan says, by position: spans of the pieces, starts of the steps, latest dates to order the deliveries. */
export interface PourDates {
  readonly pieces: readonly { readonly up: ElapsedMinute; readonly gone: ElapsedMinute }[];
  readonly starts: readonly ElapsedMinute[];
  readonly orderBy: readonly (ElapsedMinute | null)[];
}

/** Sheets that cover a slab lap and hang over its edges by so much (common practice, no source). */
const coverOver = 1.1;

type Line = Pick<Bought, "what" | "name" | "long_mm" | "unit" | "needed" | "neededBy" | "orderBy"> & { readonly for: string };

/**
 * One list of what is still to buy, most pressing first. What pieces say they use of a stock counts as written there, with what is in hand, ordered and coming
 * back from stripping taken off; the forms of elements that have no such piece are counted from their figures and do not come back. Numbers are bought whole.
 * @param sheets of `build.pours`, in their order
 * @param dates null: without a plan nothing has a date and nothing comes back
 */
export function shopping(build: Build, sheets: readonly PourSheet[], dates: PourDates | null): Bought[] {
  const days = build.pours.map((_, p) => sheets.find((sheet) => sheet.pour === p)?.day ?? null);
  const ofPours = build.pours.flatMap((pour, p) => concrete(build, pour, days[p] ?? null, dates).flatMap((line) => merged([line])));
  const all = [...stockLines(build, days, dates), ...ofPours, ...build.pours.flatMap((_, p) => merged(goods(build, p, dates)))];
  const at = (one: Bought): number => one.orderBy ?? one.neededBy ?? Number.POSITIVE_INFINITY;
  return all
    .map((one, i) => ({ one, i }))
    .sort((a, b) => (at(a.one) === at(b.one) ? a.i - b.i : at(a.one) - at(b.one)))
    .map(({ one }) => one);
}

function concrete(build: Build, pour: Pour, day: PourDay | null, dates: PourDates | null): Line[] {
  const step = build.at.step.get(pour.step) ?? -1;
  const neededBy = dates?.starts[step] ?? null;
  const lines: Line[] = [];
  const own = { name: pour.name, long_mm: null, neededBy, for: pour.name };
  if (day !== null && pour.sacks === null) {
    lines.push({ ...own, what: "concrete", unit: "m3", needed: day.order_m3, orderBy: orderBy(build, step, dates) });
  }
  const covered_m2 = pour.elements.reduce((sum, e) => sum + finished_m2(e.shape, e.faces) * e.number, 0) * coverOver;
  if (pour.cure.how === "covered" && covered_m2 > 0) lines.push({ ...own, what: "cover", unit: "m2", needed: covered_m2, orderBy: null });
  return lines;
}

/** Forms of elements without a piece that uses stock, and bars. */
function goods(build: Build, p: number, dates: PourDates | null): Line[] {
  const pour = build.pours[p] as Pour;
  return pour.elements.flatMap((element, e) => {
    const found = quantities(build, p, e);
    const when = firstUse(build, pour, element, dates);
    const line = (what: Bought["what"], name: string, needed: number, unit: string, long_mm: number | null = null): Line => ({
      ...when,
      what,
      name,
      needed,
      unit,
      long_mm,
      for: element.name,
    });
    const steel = found.bars.flatMap((b) => b.stock.map((s) => line("bars", `${b.size}`, s.number, "piece", s.long_mm)));
    return usesStock(build, element) ? steel : [...formLines(found, line), ...steel];
  });
}

function formLines(
  found: Quantities,
  line: (what: Bought["what"], name: string, needed: number, unit: string, long_mm?: number | null) => Line,
): Line[] {
  return [
    ...found.sheets.filter((s) => s.cut.sheets.length > 0).map((s) => line("plywood", s.ply, s.cut.sheets.length, "sheet")),
    ...found.lumber.flatMap((l) => l.stock.map((s) => line("lumber", l.size, s.number, "piece", s.long_mm))),
    ...found.fasteners.map((f) => line(f.what, f.name, f.number, "piece")),
  ];
}

function usesStock(build: Build, element: PourElement): boolean {
  return element.pieces.some((id) => build.pieces[build.at.piece.get(id) ?? -1]?.uses.some((use) => build.at.stock.has(use.of)) ?? false);
}

/** From when the first of its pieces goes up, by the step that puts it; without one, when it is poured. */
function firstUse(build: Build, pour: Pour, element: PourElement, dates: PourDates | null): Pick<Line, "neededBy" | "orderBy"> {
  if (dates === null) return { neededBy: null, orderBy: null };
  const steps = element.pieces.map((id) => build.pieces[build.at.piece.get(id) ?? -1]?.up ?? -1).filter((up) => up >= 0);
  if (steps.length === 0) return { neededBy: dates.starts[build.at.step.get(pour.step) ?? -1] ?? null, orderBy: null };
  const first = steps.reduce((a, b) => ((dates.starts[b] as number) < (dates.starts[a] as number) ? b : a));
  return { neededBy: dates.starts[first] ?? null, orderBy: orderBy(build, first, dates) };
}

/** Of the deliveries a step needs, the first that has to be ordered. */
function orderBy(build: Build, step: number, dates: PourDates | null): ElapsedMinute | null {
  const needs = build.steps[step]?.needs ?? [];
  const by = needs.flatMap((id) => dates?.orderBy[build.at.delivery.get(id) ?? -1] ?? []);
  return by.length === 0 ? null : (Math.min(...by) as ElapsedMinute);
}

const soonest = (a: ElapsedMinute | null, b: ElapsedMinute | null): ElapsedMinute | null =>
  a === null ? b : b === null ? a : (Math.min(a, b) as ElapsedMinute);

/** Alike things of one pour in one line: what each pour needs is ordered for it. A date to order by that has passed what needs it is of other goods. */
function merged(lines: readonly Line[]): Bought[] {
  const groups = new Map<string, Bought>();
  for (const { for: whom, ...line } of lines) {
    const key = `${line.what} ${line.name} ${line.long_mm}`;
    const before = groups.get(key);
    const needed = (before?.needed ?? 0) + line.needed;
    groups.set(key, {
      ...line,
      needed,
      inHand: 0,
      ordered: 0,
      back: 0,
      toBuy: needed,
      neededBy: before === undefined ? line.neededBy : soonest(before.neededBy, line.neededBy),
      orderBy: before === undefined ? line.orderBy : soonest(before.orderBy, line.orderBy),
      for: [...new Set([...(before?.for ?? []), whom])],
    });
  }
  return [...groups.values()].map((one) =>
    one.orderBy !== null && one.neededBy !== null && one.orderBy > one.neededBy ? { ...one, orderBy: null } : one,
  );
}
