import { type Finding, fromModel, toModel } from "../base";
import type { Build, Pour } from "../build";
import {
  actOnEvaporation_si,
  actOnEvaporation_us,
  coldRow,
  evaporation_si,
  evaporation_us,
  hottest_F,
  isCold,
  mixed_F,
  type PourWork,
} from "../concrete";
import { found, refused } from "./found";
import type { PourDay } from "./result";
import { leastDimension_mm } from "./shapes";

/** Rounded so that a limit written in whole degrees meets itself on the way back. */
const inF = (at_C: number): number => Math.round(fromModel("temperature", at_C, "F") * 1e6) / 1e6;
const inC = (fahrenheit: number): number => toModel("temperature", fahrenheit, "F");

interface Said<T> {
  readonly value: T;
  readonly findings: readonly Finding[];
}

/** How fast the fresh top dries, by the US or the metric form of the formula as the build's pressure document goes; null where nothing is floated. */
export function drying(build: Build, pour: Pour, work: PourWork): Said<PourDay["evaporation"]> {
  const { concrete_C, air_C, humidity_percent, wind_km_h } = pour.weather;
  if (work.finished_m2 === 0) return { value: null, findings: [] };
  if (air_C === null || humidity_percent === null || wind_km_h === null) {
    const lacks = [air_C === null ? "air" : "", humidity_percent === null ? "humidity" : "", wind_km_h === null ? "wind" : ""].filter(
      Boolean,
    );
    return { value: null, findings: [found(pour, "pour.drying-unknown", "note", { lacks }, "weather")] };
  }
  const us = build.pressure === "aci-us";
  const rate = us
    ? evaporation_us(inF(concrete_C), inF(air_C), humidity_percent, fromModel("speed", wind_km_h, "mph"))
    : evaporation_si(concrete_C, air_C, humidity_percent, wind_km_h);
  if (!("value" in rate)) return { value: null, findings: refused(pour, rate.refused) };
  const act = us ? actOnEvaporation_us(pour.mix.lowBleed) : actOnEvaporation_si(pour.mix.lowBleed);
  const unit = us ? "lb/ft2/h" : "kg/m2/h";
  const protect = rate.value >= act;
  return {
    value: { rate: rate.value, unit, act, protect },
    findings: protect ? [found(pour, "pour.dries-fast", "look", { rate: rate.value, unit, act }, "weather")] : [],
  };
}

/** Limits of the concrete as placed: ACI 305.1 when hot, ACI 306R when the air is cold, by the least dimension of each element. */
export function hotAndCold(pour: Pour): Finding[] {
  const { concrete_C, air_C } = pour.weather;
  const concrete_F = inF(concrete_C);
  const findings: Finding[] = [];
  if (concrete_F > hottest_F) findings.push(found(pour, "pour.hot", "look", { concrete_C, most_C: inC(hottest_F) }, "weather"));
  if (air_C === null || !isCold(inF(air_C))) return findings;
  const thin_in = (e: Pour["elements"][number]) => fromModel("length", leastDimension_mm(e.shape), "in");
  const thinnest = Math.min(...pour.elements.map(thin_in));
  const mixed_C = inC(mixed_F(thinnest, inF(air_C)));
  findings.push(found(pour, "pour.cold-weather", "look", { air_C, below_C: inC(40), mixed_C }, "weather"));
  for (const element of pour.elements) {
    const { held_F } = coldRow(thin_in(element));
    if (concrete_F >= held_F) continue;
    findings.push(found(pour, "pour.cold-concrete", "look", { element: element.id, concrete_C, least_C: inC(held_F), air_C }, "weather"));
  }
  return findings;
}
