import { isWithin, type Kind, type LimitName, limits, modelUnit, parseSigned, partsOfQuantity } from "../../base";
import { type Notes, shown } from "./notes";

export type Quantity = string | { readonly is: string; readonly from?: string };

/** Where in a member a figure stands: its key, and the part inside that. */
export interface Spot {
  readonly notes: Notes;
  readonly key: string;
  readonly part: string;
}

export const spot = (notes: Notes, key: string, part = ""): Spot => ({ notes, key, part });
export const inside = (at: Spot, part: string | number): Spot => ({ ...at, part: at.part === "" ? String(part) : `${at.part}.${part}` });

export const textOf = (quantity: Quantity): string => (typeof quantity === "string" ? quantity : quantity.is);
export const sourceOf = (quantity: Quantity): string | null => (typeof quantity === "string" ? null : (quantity.from ?? null));

/** A quantity in the model's unit of its kind; a finding where it is none or leaves the range named. */
export function convert(at: Spot, kind: Kind, limit: LimitName, quantity: Quantity): number {
  const text = textOf(quantity);
  const value = parseSigned(kind, text);
  if (value === null) {
    at.notes.say("build.quantity", at.key, { part: at.part, value: shown(text), kind });
    return 0;
  }
  const { least, most } = limits[limit];
  if (!isWithin({ least, most, unit: "" }, value)) {
    at.notes.say("build.range", at.key, { part: at.part, value: shown(text), least, most, unit: modelUnit[kind] });
  }
  return value;
}

export const length_mm = (at: Spot, limit: LimitName, quantity: Quantity): number => convert(at, "length", limit, quantity);
export const mass_kg = (at: Spot, quantity: Quantity): number => convert(at, "mass", "mass", quantity);
export const temperature_C = (at: Spot, quantity: Quantity): number => convert(at, "temperature", "temperature", quantity);
export const wind_km_h = (at: Spot, quantity: Quantity): number => convert(at, "speed", "wind", quantity);
export const strength_MPa = (at: Spot, quantity: Quantity): number => convert(at, "pressure", "strength", quantity);
export const volume_m3 = (at: Spot, quantity: Quantity): number => convert(at, "volume", "volume", quantity);
export const carries_kN = (at: Spot, quantity: Quantity): number => convert(at, "force", "carries", quantity);
export const elapsed_min = (at: Spot, quantity: Quantity): number => Math.round(convert(at, "time", "elapsed", quantity));

/** Working time is said in hours: "2 d" would be 48 hours of work to one reader and two working days to the next. */
export function refusesDays(at: Spot, text: string): boolean {
  const parts = partsOfQuantity("time", text) ?? [];
  if (!parts.some((part) => part.unit === "d" || part.unit === "wk")) return false;
  at.notes.say("build.days-of-work", at.key, { part: at.part, value: shown(text) });
  return true;
}

/** Minutes of work, rounded to the whole minute. */
export function work_min(at: Spot, quantity: Quantity): number {
  if (refusesDays(at, textOf(quantity))) return 0;
  return Math.round(convert(at, "time", "work", quantity));
}
