import { type Finding, fromModel, toModel } from "../base";
import { isLoad } from "../build";
import { coldRow, frostSafe_psi, isCold, protection_days, type Service, wetEnds_share } from "../concrete";
import { airBetween, type CureContext, later } from "./cure-context";
import { found } from "./found";
import type { CureSheet } from "./result";
import { leastDimension_mm } from "./shapes";

const day_min = 1440;

/** A strength that has to be there before it may cool is looked for over so many days; ACI 306R gives none. Own bound, as of partial load. */
const byStrength_days = 6;

const inF = (celsius: number): number => Math.round(fromModel("temperature", celsius, "F") * 1e6) / 1e6;
const inC = (fahrenheit: number): number => toModel("temperature", fahrenheit, "F");

/** What it has to bear while it is young, after ACI 306R: earth against it is a part of its load, forms or stores that it carries all of it. */
function serviceOf({ pour }: CureContext): Service {
  const sorts = new Set(pour.removals.map(({ sort }) => sort));
  if (sorts.has("soffit") || sorts.has("shores") || pour.removals.some((removal) => isLoad(pour, removal))) return "full load";
  if (sorts.has("backfill")) return "partial load, exposed";
  return pour.cure.exposed ? "no load, exposed" : "no load, not exposed";
}

/** Thinnest and thickest of its elements, by least dimension, in: the thin one is held warmest, the thick one cools slowest. */
function dimensions_in({ pour }: CureContext): { readonly thin: number; readonly thick: number } {
  const all = pour.elements.map(({ shape }) => fromModel("length", leastDimension_mm(shape), "in"));
  return all.length === 0 ? { thin: 0, thick: 0 } : { thin: Math.min(...all), thick: Math.max(...all) };
}

/**
 * Protection from cold after ACI 306R: asked for where the air falls below 40 °F from placing to the end of the days it has to be protected. Of several
 * elements the thinnest says how warm, the thickest how slowly it may cool.
 */
export function coldOf(c: CureContext): CureSheet["cold"] {
  const { thin, thick } = dimensions_in(c);
  const hold_C = inC(coldRow(thin).held_F);
  const days = protection_days(serviceOf(c), c.pour.mix.cement === "III");
  const for_min = days === null ? null : days * day_min;
  const { low_C } = airBetween(c.air, c.starts, later(c.placed, for_min ?? byStrength_days * day_min));
  return {
    called: isCold(inF(low_C)),
    lowest_C: low_C,
    hold_C,
    for_min,
    drop_K: coldRow(thick).drop_F / 1.8,
    given: isGiven(c, hold_C, for_min),
  };
}

/** Whether the blankets or the heat that are written down do it; where it is by strength, until the curve has 70 %. */
function isGiven({ pour, placed, strength }: CureContext, hold_C: number, for_min: number | null): boolean {
  const { held_C, heldFor_min } = pour.cure;
  if (held_C === null || heldFor_min === null || held_C < hold_C - 1e-6) return false;
  return for_min === null ? strength.gathered(placed, later(placed, heldFor_min)) >= wetEnds_share : heldFor_min >= for_min;
}

/** What the cold does to it, as far as the sheet's own figures do not say it. */
export function coldFindings(c: CureContext, cold: CureSheet["cold"]): Finding[] {
  return [...frost(c), ...(cold.called || c.pour.cure.held_C !== null ? [...drop(c, cold), ...placedCold(c, cold)] : [])];
}

/** Air below freezing before 500 psi are expected, outside what is held warm. */
function frost(c: CureContext): Finding[] {
  const { pour, placed, strength } = c;
  const share = Math.ceil((1000 * toModel("pressure", frostSafe_psi, "psi")) / pour.mix.strength_MPa - 1e-6);
  const safe = Math.min(strength.advance(placed, share), later(placed, 60 * day_min));
  const from = pour.cure.held_C === null ? placed : later(placed, pour.cure.heldFor_min ?? 0);
  if (!(safe > from)) return [];
  const hours = c.air.hours_cC(Math.floor(from / 60), Math.ceil(safe / 60));
  const first = hours.findIndex((hundredths) => hundredths < 0);
  if (first < 0) return [];
  const at = Math.max(from, (Math.floor(from / 60) + first) * 60);
  const low_C = airBetween(c.air, at, safe).low_C;
  return [found(pour, "cure.frost", "look", { at, low_C, share, has: strength.gathered(placed, later(placed, at - placed)) }, "cure")];
}

/** Steeper than it may cool in the first day after what held it warm is taken away. */
function drop(c: CureContext, cold: CureSheet["cold"]): Finding[] {
  const held_C = c.pour.cure.held_C ?? cold.hold_C;
  const ends = later(c.placed, c.pour.cure.heldFor_min ?? cold.for_min ?? byStrength_days * day_min);
  const { low_C } = airBetween(c.air, ends, later(ends, day_min));
  if (held_C - low_C <= cold.drop_K + 1e-6) return [];
  return [
    found(
      c.pour,
      "cure.cools-fast",
      "look",
      { at: ends, from_C: held_C, to_C: low_C, drop_K: held_C - low_C, most_K: cold.drop_K },
      "cure",
    ),
  ];
}

function placedCold({ pour }: CureContext, cold: CureSheet["cold"]): Finding[] {
  const { concrete_C } = pour.weather;
  if (!cold.called || concrete_C >= cold.hold_C - 1e-6) return [];
  return [found(pour, "cure.placed-cold", "look", { concrete_C, least_C: cold.hold_C, low_C: cold.lowest_C }, "weather")];
}
