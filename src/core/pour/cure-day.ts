import { type Finding, fromModel } from "../base";
import { actOnEvaporation_si, actOnEvaporation_us, evaporation_si, evaporation_us, type PourWork, pourWork } from "../concrete";
import { airBetween, type CureContext, later } from "./cure-context";
import { found } from "./found";
import type { CureSheet } from "./result";

/** The site's usual air may lie so far from what is written for the day before somebody should look. Own bound. */
const apart_K = 8;

/** Hours of its day; null where an input leaves the range of its figures, which the pour's own sheet names. */
export function workOf({ pour }: CureContext): PourWork | null {
  const work = pourWork(pour);
  return "value" in work ? work.value : null;
}

/** When it takes the float and when it is finished, by the temperature of the concrete, beside the sun; null where nothing is floated. */
export function floatingOf(c: CureContext, work: PourWork | null): CureSheet["floating"] {
  if (work === null || work.finished_m2 <= 0) return null;
  const from = later(c.starts, work.placing_min + work.pause_min + work.floatAfter_min);
  const to = later(from, work.finishing_min);
  const { rise, set, up } = c.clocks.sun(c.clocks.time.dayOf(from));
  const inDaylight = up === "all-day" || (rise !== null && set !== null && from >= rise && to <= set);
  return { from, to, sunset: set, inDaylight };
}

/** What the date brings that what was entered for the day does not say. Nothing here changes a length or a date. */
export function dayFindings(c: CureContext, work: PourWork | null): Finding[] {
  const { pour } = c;
  const out: Finding[] = [];
  if (work !== null && work.finished_m2 > 0) {
    const step = c.build.steps[c.build.at.step.get(pour.step) ?? -1];
    if (step !== undefined && step.work.likely_min < work.total_min)
      out.push(
        found(pour, "cure.step-short", "look", { step: step.id, work_min: step.work.likely_min, total_min: work.total_min }, "step"),
      );
  }
  if (!c.air.known) return [...out, found(pour, "cure.air-unknown", "look", {}, "weather")];
  const { low_C, high_C } = airBetween(c.air, c.starts, c.placed);
  const { air_C } = pour.weather;
  if (air_C !== null && (air_C > high_C + apart_K || air_C < low_C - apart_K))
    out.push(found(pour, "cure.air-differs", "look", { air_C, low_C, high_C }, "weather"));
  return [...out, ...dries(c, work, low_C)];
}

/**
 * Evaporation in the coolest air of the date's hours: warm concrete under cold air dries fastest. By the US or the metric form as the build's pressure
 * document goes. Only told where the air as entered did not say so already.
 */
function dries({ build, pour }: CureContext, work: PourWork | null, air_C: number): Finding[] {
  const { concrete_C, humidity_percent, wind_km_h } = pour.weather;
  if (work === null || work.finished_m2 <= 0 || humidity_percent === null || wind_km_h === null) return [];
  const us = build.pressure === "aci-us";
  const act = us ? actOnEvaporation_us(pour.mix.lowBleed) : actOnEvaporation_si(pour.mix.lowBleed);
  const rate = (air: number): number => {
    const given = us
      ? evaporation_us(fahrenheit(concrete_C), fahrenheit(air), humidity_percent, fromModel("speed", wind_km_h, "mph"))
      : evaporation_si(concrete_C, air, humidity_percent, wind_km_h);
    return "value" in given ? given.value : 0;
  };
  const onDate = rate(air_C);
  if (onDate < act || (pour.weather.air_C !== null && rate(pour.weather.air_C) >= act)) return [];
  return [found(pour, "cure.dries-fast", "look", { rate: onDate, unit: us ? "lb/ft2/h" : "kg/m2/h", act, air_C }, "weather")];
}

const fahrenheit = (celsius: number): number => Math.round(fromModel("temperature", celsius, "F") * 1e6) / 1e6;
