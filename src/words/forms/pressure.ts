import { type Display, formatDensity, formatLength, formatRise, formatSoilPressure } from "../../core/base";
import type { Pour } from "../../core/build";
import type { Pressure, WhyFullHead } from "../../core/pour";
import { sentence } from "../text";

/** How the concrete comes when nobody holds a rate. */
export const placedFrom: Readonly<Record<Pour["placed"], string>> = {
  hose: "from the hose",
  chute: "from the chute",
  "from the base": "pumped from the base",
  "by hand": "by hand",
};

const reasons: Readonly<Record<WhyFullHead, string>> = {
  "no rate is held": "nobody holds a rate of filling",
  "short and small in plan": "it is short and small in plan, so it fills faster than anyone can hold",
  "vibrated deep": "it is vibrated deeper than 4 ft (1.2 m)",
  slump: "its slump is over 7 in (175 mm)",
  "external vibration": "the form itself is vibrated",
  "pumped from the base": "it is pumped from the base",
  "rises too fast": "it rises faster than the formula allows",
  "the formula is over it": "the formula for a held rate gives no less",
  "outside the formula": "its figures lie outside the formula",
};

/** Which document a pressure follows, as a builder would ask for it. */
export const documentName: Readonly<Record<Pressure["document"], string>> = {
  "aci-us": "ACI 347R-14, US units",
  "aci-si": "ACI 347R-14, SI units",
  ciria: "CIRIA 108",
  din: "DIN 18218:2010",
};

/** Why the whole height of the concrete presses as if it were liquid; empty where it does not. */
export function fullHeadSentence(pressure: Pressure, placed: Pour["placed"], display: Display): string {
  const { hose, height_mm, weight_kg_m3 } = pressure;
  const head = `${formatDensity(weight_kg_m3, display)} over ${formatLength(height_mm, display)}`;
  const because = hose.why[0] === undefined ? "" : `, because ${reasons[hose.why[0]]}`;
  const rise = hose.rise_m_h === null ? "" : ` It rises ${formatRise(hose.rise_m_h, display)}.`;
  const most = formatSoilPressure(hose.most_kPa, display);
  if (hose.formula !== "full head") return `${sentence(`${placedFrom[placed]}: ${most}, by formula ${hose.formula}`)}${rise}`;
  return `${sentence(`${placedFrom[placed]}: full head, ${most} at the foot (${head})${because}`)}${rise}`;
}

/** The held rate as the act that has to be kept, with what it is worth; empty where none is written. */
export function heldSentence(pressure: Pressure, pass_mm: number, every_min: number, who: string | null, display: Display): string {
  const { held, design } = pressure;
  if (held === null) return "";
  const name = who ?? "one named person";
  const worth = formatSoilPressure(held.most_kPa, display);
  const over = held.formula === "full head" ? `, full head all the same${held.why[0] === undefined ? "" : `: ${reasons[held.why[0]]}`}` : "";
  const counts = design === "held" ? "" : who === null ? " It does not count until it is said who holds it." : " The form is judged by full head.";
  return `${sentence(`passes of ${formatLength(pass_mm, display)}, one every ${every_min} min, held by ${name} with a stick and a watch: ${worth}${over}`)}${counts}`;
}

/** The stop rule, where the form relies on a held rate. */
export function stopRule(pressure: Pressure, display: Display): string {
  const { act } = pressure;
  if (act === null || pressure.design !== "held") return "";
  return `Stop rule: no pass before ${act.every_min} min are over, none higher than ${formatLength(act.pass_mm, display)}; ${act.who ?? "whoever holds the watch"} stops the hose when it is not kept. A pause between lifts earns nothing.`;
}
