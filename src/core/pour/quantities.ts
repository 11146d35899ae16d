import { type Finding, toModel } from "../base";
import type { Build, Pour, PourElement } from "../build";
import { type BarSize, bar, barStock_ft, lap_in } from "../concrete";
import { barMass_kg } from "./bars";
import { cutLengths, inRuns, type Piece, type StockLength } from "./cut-lengths";
import { type CutList, cutEdge_mm, cutSheets, type Part, type Sheet, tiles } from "./cut-list";
import { faultyDimension, measures } from "./element";
import { type FormGoods, formGoods } from "./form-goods";
import { lumberStock_mm } from "./form-parts";
import { mmOfInches } from "./form-units";
import { found } from "./found";

/** What the forms and bars of a pour are made of, date-free, everything counted in; whether it is in hand is the shopping list's question. */
export interface Quantities {
  /** Of all elements. */
  readonly formArea_m2: number;
  /** One list for each thickness of plywood, with the length of cut edges to seal before they meet concrete. */
  readonly sheets: readonly { readonly ply: string; readonly cut: CutList; readonly cutEdge_mm: number }[];
  readonly lumber: readonly { readonly size: string; readonly stock: readonly StockLength[] }[];
  readonly fasteners: readonly { readonly name: string; readonly number: number; readonly what: "ties" | "fasteners" }[];
  /** Bars in stock lengths, by size. */
  readonly bars: readonly { readonly size: BarSize; readonly mass_kg: number; readonly stock: readonly StockLength[] }[];
  readonly findings: readonly Finding[];
}

/** Form plywood is 4 by 8 ft; a circular saw takes 1/8 in (common practice, no source). */
const sheet: Sheet = { long_mm: toModel("length", 8, "ft"), wide_mm: toModel("length", 4, "ft"), kerf_mm: mmOfInches(1 / 8) };

const barStock_mm = toModel("length", barStock_ft, "ft");

/** More parts than this are no form but a slip of the pen. */
const mostParts = 5000;

/** Of all elements of a pour, or of the one named. */
export function quantities(build: Build, p: number, only?: number): Quantities {
  const pour = build.pours[p] as Pour;
  const elements = pour.elements.filter((e, i) => (only === undefined || only === i) && faultyDimension(e.shape) === null);
  const goods = elements.map((element) => ({ element, goods: sound(formGoods(element)) }));
  const findings: Finding[] = [];
  const say = (element: PourElement, what: string, cut: readonly Piece[], stock_mm: number) => {
    for (const { long_mm } of cut)
      findings.push(found(pour, "quantity.too-long", "look", { element: element.id, what, long_mm, stock_mm }, "elements"));
  };
  for (const { element, goods: one } of goods) {
    const most = (one?.panels ?? [])
      .map((panel) => ({ panel: panel.name, sheets: sheetsIn(panel) }))
      .sort((x, y) => y.sheets - x.sheets)[0];
    if (most !== undefined && most.sheets > 1)
      findings.push(found(pour, "quantity.panel-joins", "note", { element: element.id, ...most }, "elements"));
    for (const need of one?.lumber ?? []) if (!need.run) say(element, need.size, cutLengths([need], lumberStock_mm).tooLong, longest_mm);
  }
  return {
    formArea_m2: elements.reduce((sum, e) => sum + measures(e, pour.mix.weight_kg_m3).formArea_m2 * e.number, 0),
    sheets: sheetsOf(goods.flatMap((g) => g.goods ?? [])),
    lumber: lumberOf(goods.flatMap((g) => g.goods ?? [])),
    fasteners: fastenersOf(goods.flatMap((g) => g.goods ?? [])),
    bars: barsOf(pour, elements),
    findings,
  };
}

/** Sheets that one panel is made of. */
const sheetsIn = (panel: Part): number => tiles(panel, sheet).reduce((sum, part) => sum + part.number, 0) / panel.number;

const longest_mm = Math.max(...lumberStock_mm);

function sound(goods: FormGoods | null): FormGoods | null {
  if (goods === null) return null;
  const all = [...goods.panels, ...goods.lumber, ...goods.fasteners];
  return all.every((x) => Number.isFinite(x.number)) && all.reduce((sum, x) => sum + x.number, 0) <= mostParts ? goods : null;
}

function grouped<T, K extends string | number>(list: readonly T[], key: (one: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const one of list) groups.set(key(one), [...(groups.get(key(one)) ?? []), one]);
  return groups;
}

function sheetsOf(goods: readonly FormGoods[]): Quantities["sheets"] {
  const parts = goods.flatMap((g) => g.panels.map((part): [string, Part] => [g.sheathing?.ply ?? "", part]));
  return [...grouped(parts, ([ply]) => ply)].map(([ply, list]) => {
    const cut = cutSheets(
      list.flatMap(([, part]) => tiles(part, sheet)),
      sheet,
    );
    return { ply, cut, cutEdge_mm: cutEdge_mm(cut, sheet) };
  });
}

function lumberOf(goods: readonly FormGoods[]): Quantities["lumber"] {
  const needs = goods.flatMap((g) => g.lumber);
  return [...grouped(needs, (need) => need.size)].flatMap(([size, list]) => {
    const pieces = list.flatMap((need) => (need.run ? inRuns(need.long_mm, longest_mm, need.number) : [need]));
    const { stock } = cutLengths(pieces, lumberStock_mm);
    return stock.length === 0 ? [] : [{ size, stock }];
  });
}

function fastenersOf(goods: readonly FormGoods[]): Quantities["fasteners"] {
  const all = goods.flatMap((g) => g.fasteners);
  return [...grouped(all, (f) => `${f.what} ${f.name}`).values()].map((list) => ({
    name: list[0]?.name ?? "",
    what: list[0]?.what ?? "fasteners",
    number: list.reduce((sum, f) => sum + f.number, 0),
  }));
}

/** A bar longer than stock is made of several, each joint with its lap. */
function barsOf(pour: Pour, elements: readonly PourElement[]): Quantities["bars"] {
  const sets = elements.flatMap((e) => e.bars.map((set) => ({ set, number: set.number * e.number })));
  return [...grouped(sets, ({ set }) => set.size)].flatMap(([size, list]) => {
    const steel = bar(size);
    if (steel === null) return [];
    const lap = (yield_MPa: number): number =>
      mmOfInches(lap_in(steel, pour.mix.strength_MPa / toModel("pressure", 1, "psi"), yield_MPa / toModel("pressure", 1, "psi"), false));
    const pieces = list.flatMap(({ set, number }) => {
      const joints = Math.max(0, Math.ceil((set.long_mm - barStock_mm) / (barStock_mm - lap(set.yield_MPa)) - 1e-9));
      return inRuns(set.long_mm + joints * lap(set.yield_MPa), barStock_mm, number);
    });
    const { stock } = cutLengths(pieces, [barStock_mm]);
    const mass_kg = stock.reduce((sum, s) => sum + barMass_kg({ number: s.number, long_mm: s.long_mm }, steel), 0);
    return stock.length === 0 ? [] : [{ size, stock, mass_kg }];
  });
}
