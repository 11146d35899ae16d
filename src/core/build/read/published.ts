import { fromModel, type Kind, parseSigned, partsOfQuantity } from "../../base";
import type { Range } from "../../concrete";
import { shown } from "./notes";
import { type Quantity, type Spot, textOf } from "./quantities";

/** One published range in the units that the figure may be written in; the US one is not converted from the metric one. */
export interface Published {
  readonly us: Range;
  readonly si: Range;
}

const usUnits: ReadonlySet<string> = new Set([
  ...["in", "ft", "yd", "lb", "F", "mph", "psi", "ksi", "psf", "kip"],
  ...["ft3", "yd3", "ft3/h", "yd3/h", "lb/ft3", "lb/yd3", "lb/ft"],
]);

/** Whether a quantity is written in a US unit. */
export const isUs = (kind: Kind, text: string): boolean =>
  usUnits.has(partsOfQuantity(kind, text.replace(/^\s*-\s*/, ""))?.[0]?.unit ?? "");

/** The unit of a range by its name in base: "lb/ft³" is "lb/ft3", "°F" is "F". */
const unitOf = (range: Range): string => range.unit.replace("³", "3").replace("°", "");

/** A figure of the model in the unit of a range; twelve digits, so that an end written as "11 in" is met exactly. */
export function inUnitOf(range: Range, kind: Kind, value: number): number {
  return Number(fromModel(kind, value, unitOf(range) as never).toPrecision(12));
}

export const isOutside = (range: Range, value: number): boolean => !(value >= range.least && value <= range.most);

/** Says that a figure leaves a published range, with the range as it is printed. */
export function sayOutside(at: Spot, value: string, range: Range): void {
  const { name, least, most, unit, source } = range;
  at.notes.say("build.outside", at.key, { part: at.part, value: shown(value), name, least, most, unit, source });
}

/** A quantity in the model's unit; a finding that names the published range where it leaves it. Zero after a finding. */
export function publishedQuantity(at: Spot, kind: Kind, quantity: Quantity, published: Published): number {
  const text = textOf(quantity);
  const value = parseSigned(kind, text);
  if (value === null) {
    at.notes.say("build.quantity", at.key, { part: at.part, value: shown(text), kind });
    return 0;
  }
  const range = isUs(kind, text) ? published.us : published.si;
  if (isOutside(range, inUnitOf(range, kind, value))) sayOutside(at, text, range);
  return value;
}
