import type { PourCode } from "../../core/pour";
import type { Told } from "../build/sayings";
import { figure, text } from "../voice";
import { degrees, minutes, place } from "./told";

const share = (told: Told, key: string): string => `${Math.round(figure(told.detail, key) / 10)} %`;
const difference = (told: Told, key: string): string =>
  told.voice.display === "us" ? `${Math.round(figure(told.detail, key) * 1.8)} °F` : `${Math.round(figure(told.detail, key))} °C`;
const rate = (told: Told, key: string): string =>
  `${figure(told.detail, key).toFixed(2)} ${text(told.detail, "unit") === "lb/ft2/h" ? "lb/ft²" : "kg/m²"} an hour`;

/** What can be found about a pour once it has its date. */
export const cureSayings = {
  "cure.air-unknown": (told) =>
    `${place(told)}: the site's usual temperatures are not written down, so a steady ${told.voice.display === "us" ? "68 °F" : "20 °C"} is counted and no cold is seen; write down the low and high of each month`,
  "cure.air-differs": (told) =>
    `${place(told)}: it is worked out for air at ${degrees(told, "air_C")}, and on its date ${degrees(told, "low_C")} to ${degrees(told, "high_C")} is usual; write down the air of that date`,
  "cure.dries-fast": (told) =>
    `${place(told)}: in air at ${degrees(told, "air_C")} on its date ${rate(told, "rate")} dries off, and from ${rate(told, "act")} on fresh concrete cracks; shade it, break the wind, fog it and cover it as you go`,
  "cure.step-short": (told) =>
    `${place(told)}: ${told.voice.step(text(told.detail, "step"))} is written with ${minutes(told, "work_min")}, and placing and finishing take about ${minutes(told, "total_min")}`,
  "cure.frost": (told) =>
    `${place(told)}: by ${told.voice.moment(figure(told.detail, "at"))} it may fall to ${degrees(told, "low_C")} with only ${share(told, "has")} of its strength, under the ${share(told, "share")} that survives a frost; cover it, or place it when it is warmer`,
  "cure.cools-fast": (told) =>
    `${place(told)}: taken from under its covers on ${told.voice.moment(figure(told.detail, "at"))} it cools from ${degrees(told, "from_C")} to ${degrees(told, "to_C")} within a day, more than ${difference(told, "most_K")} (ACI 306R); uncover it in steps`,
  "cure.placed-cold": (told) =>
    `${place(told)}: it may fall to ${degrees(told, "low_C")} while it is young, and is placed at ${degrees(told, "concrete_C")}; order it so that it is at ${degrees(told, "least_C")} or warmer (ACI 306R)`,
  "cure.how-unknown": (told) =>
    `${place(told)}: nothing says how it is kept wet or sealed for its ${figure(told.detail, "days")} days; write wet, covered, a compound, or in the form`,
  "cure.wet-short": (told) =>
    `${place(told)}: ${figure(told.detail, "days")} days of keeping it wet are fewer than ${figure(told.detail, "least_days")} (${text(told.detail, "document")})`,
  "cure.below-expected": (told) =>
    `${place(told)}: on ${told.voice.moment(figure(told.detail, "at"))} it was shown to have ${share(told, "share")}, less than the ${share(told, "expected")} expected; do not trust the dates that follow from what is expected`,
  "cure.result-before": (told) =>
    `${place(told)}: ${figure(told.detail, "results") === 1 ? "one test is" : `${figure(told.detail, "results")} tests are`} dated before it is placed and ${figure(told.detail, "results") === 1 ? "counts" : "count"} for nothing; look at the dates`,
  "cure.load": (told) =>
    `${place(told)}: ${told.voice.step(text(told.detail, "step"))} ${told.detail.vault === true ? "lays earth or another load on the vault" : "loads it"} ${told.detail.shored === true ? "while the shores still stand; keep them until it has its strength" : "with no shores under it"}; ${told.detail.vault === true ? "load both sides alike, and " : ""}say where, how much and when to whoever is qualified`,
  "cure.backfill": (told) =>
    `${place(told)}: ${told.voice.step(text(told.detail, "step"))} sets earth against it; strength alone does not hold a wall up: have its top held by floor or braces first, or ask whoever designed it whether it stands by itself`,
  "cure.days-cold": (told) =>
    `${place(told)}: of the ${figure(told.detail, "days")} days said for ${told.voice.step(text(told.detail, "step"))} ${figure(told.detail, "warm_days") === 0 ? "none" : `only ${figure(told.detail, "warm_days")}`} ${figure(told.detail, "warm_days") === 1 ? "is" : "are"} at ${told.voice.display === "us" ? "50 °F" : "10 °C"} or warmer; ask whoever said them whether they hold in the cold, or have the strength shown`,
  "cure.slow-blend": (told) =>
    `${place(told)}: a blend with so much slag or ash may gain strength still more slowly than is expected here; have it tested`,
} as const satisfies Partial<Readonly<Record<PourCode, (told: Told) => string>>>;
