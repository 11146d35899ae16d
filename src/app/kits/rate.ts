import { formatFigure, parseQuantity } from "../../core/base";
import type { Rate } from "../../core/kits";

type Units = "us" | "metric";

/** Quantities that hours are told for, and how much of the rate's own metric unit each is. Exact by definition of the units. */
const per: Readonly<Record<Units, Readonly<Record<Rate["per"], { readonly name: string; readonly share: number }>>>> = {
  metric: {
    m3: { name: "1 m³", share: 1 },
    m2: { name: "1 m²", share: 1 },
    m: { name: "1 m", share: 1 },
    "100 kg": { name: "100 kg", share: 1 },
    piece: { name: "each one", share: 1 },
  },
  us: {
    m3: { name: "1 yd³", share: 0.9144 ** 3 },
    m2: { name: "10 ft²", share: 10 * 0.3048 ** 2 },
    m: { name: "10 ft", share: 3.048 },
    "100 kg": { name: "100 lb", share: 0.45359237 },
    piece: { name: "each one", share: 1 },
  },
};

/** "for 1 yd³" */
export const perWords = (rate: Rate, units: Units): string => per[units][rate.per].name;

/** A time for the quantity shown, to the minute; hours with a point from ten minutes past the hour on would mislead, so minutes stay minutes. */
export function shownTime(hours: number): string {
  const minutes = Math.round(hours * 60);
  if (minutes < 60) return `${minutes === 0 ? formatFigure(hours * 60, 1) : minutes} min`;
  const [whole, rest] = [Math.floor(minutes / 60), minutes % 60];
  return rest === 0 ? `${whole} h` : `${whole} h ${rest} min`;
}

/** The likely time of a rate for the quantity shown; as replaced, where an answer of a part does. */
export function rateShown(rate: Rate, replaced: unknown, units: Units): string {
  const own_min = typeof replaced === "string" ? parseQuantity("time", replaced) : null;
  return shownTime((own_min === null ? rate.likely_h : own_min / 60) * per[units][rate.per].share);
}

/** The answer that replaces a rate: the time typed for the quantity shown, as time for the rate's own unit. What is no time stays, to be refused. */
export function rateAnswer(rate: Rate, typed: string, units: Units): string {
  const share = per[units][rate.per].share;
  const typed_min = parseQuantity("time", typed.trim());
  if (typed_min === null || share === 1) return typed.trim();
  return `${formatFigure(typed_min / share, 3)} min`;
}
