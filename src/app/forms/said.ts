import {
  type Display,
  formatDensity,
  formatLength,
  formatMass,
  formatPressure,
  formatTemperature,
  formatVolumeRate,
} from "../../core/base";
import type { Pour, PourElement } from "../../core/build";
import type { ElementSheet } from "../../core/pour";
import { lengthsTogether, sentence, spelled, volumeWords } from "../../words";

const kinds: Readonly<Record<PourElement["shape"]["kind"], string>> = {
  column: "Column",
  pier: "Pier",
  wall: "Wall",
  slab: "Slab on the ground",
  "deck slab": "Slab on a deck",
  footing: "Footing",
  barrel: "Barrel vault",
  stair: "Stair",
};

function sizes({ shape }: PourElement, display: Display): string {
  const l = lengthsTogether(
    Object.entries(shape).flatMap(([key, value]) => (key.endsWith("_mm") && typeof value === "number" ? value : [])),
    display,
  );
  switch (shape.kind) {
    case "column":
    case "pier":
      return shape.round
        ? `${l(shape.long_mm)} across, ${l(shape.high_mm)} high`
        : `${l(shape.long_mm)} by ${l(shape.wide_mm)}, ${l(shape.high_mm)} high`;
    case "wall": {
      const { a, b } = shape.batter;
      const leans = a !== 0 && b !== 0 ? ", both faces battered" : a !== 0 || b !== 0 ? ", one face battered" : "";
      return `${l(shape.long_mm)} long, ${l(shape.thick_mm)} thick${leans === "" ? "" : " at the top"}, ${l(shape.high_mm)} high${leans}`;
    }
    case "barrel":
      return `${l(shape.long_mm)} long over ${l(shape.span_mm)}, rising ${l(shape.rise_mm)}, ${l(shape.thick_mm)} at the crown`;
    case "stair":
      return `${spelled(shape.steps, "step")} of ${l(shape.riser_mm)} by ${l(shape.tread_mm)}, ${l(shape.wide_mm)} wide`;
    default:
      return `${l(shape.long_mm)} by ${l(shape.wide_mm)}, ${l(shape.thick_mm)} thick`;
  }
}

/** "Column, two alike: 12 in by 12 in, 72 in high, 0.2 yd³ each."; what its name says already is left out: "Two alike: 12 in by 12 in ..." */
export function shapeWords(element: PourElement, sheet: ElementSheet, display: Display): string {
  const kind = kinds[element.shape.kind];
  const isNamedSo = [kind, `${kind}s`].some((name) => name.toLowerCase() === element.name.trim().toLowerCase());
  const what = [...(isNamedSo ? [] : [kind]), ...(element.number > 1 ? [`${spelled(element.number, "", "").trim()} alike`] : [])];
  const each = element.number > 1 ? " each" : "";
  const size = `${sizes(element, display)}, ${volumeWords(sheet.volume_m3, display)}${each}`;
  return sentence(what.length === 0 ? size : `${what.join(", ")}: ${size}`);
}

/** The concrete and how warm it comes, in one line. */
export function mixWords({ mix, weather }: Pour, display: Display): string {
  const parts = [
    formatPressure(mix.strength_MPa, display),
    ["blend", "slow blend"].includes(mix.cement) ? mix.cement : `cement type ${mix.cement}`,
    ...(mix.retarder ? ["retarded"] : []),
    formatDensity(mix.weight_kg_m3, display),
    `slump ${formatLength(mix.slump_mm, display)}`,
    `${formatTemperature(weather.concrete_C, display)} when it comes`,
  ];
  return `${parts.join(", ")}.`;
}

const placings: Readonly<Record<Pour["placed"], string>> = {
  chute: "From the chute",
  hose: "From the hose",
  "from the base": "Pumped from the base",
  "by hand": "By hand",
};
export const placingOptions = (Object.keys(placings) as Pour["placed"][]).map((id) => ({ id, name: placings[id].toLowerCase() }));

/** How the concrete is placed, in one line. */
export function placingWords(pour: Pour, display: Display): string {
  const deep = pour.vibrated_mm === null ? "not said how deep it is vibrated" : `vibrated ${formatLength(pour.vibrated_mm, display)} deep`;
  return `${placings[pour.placed]} at ${formatVolumeRate(pour.rate_m3_h, display)}, ${deep}${pour.externalVibration ? ", the form itself vibrated" : ""}.`;
}

export const placedFrom = (placed: Pour["placed"]): string =>
  placed === "by hand" ? "by hand, as it comes" : placings[placed].toLowerCase();

/** A finding's sentence where the pour and the element already stand above it. */
export function withoutPlace(says: string, element: string | null): string {
  const [pour = ""] = /^Pour “[^”]*”/.exec(says) ?? [];
  if (pour === "") return says;
  const rest = says.slice(pour.length);
  const named = element === null ? "" : `, the ${element}`;
  const own = named !== "" && rest.toLowerCase().startsWith(named.toLowerCase()) ? rest.slice(named.length) : rest;
  return sentence(own.replace(/^[:,] /, ""));
}

/** How concrete and truck get there, as written, in one line. */
export function groundWords({ ground }: Pour, display: Display): string {
  const l = (length_mm: number): string => formatLength(length_mm, display);
  const { hoseReach_mm, hoseNeeded_mm, wiresAbove_mm, truck_kg, slope_percent, washout } = ground;
  const said = [
    ...(hoseReach_mm === null ? [] : [`the hose reaches ${l(hoseReach_mm)}`]),
    ...(hoseNeeded_mm === null ? [] : [`it has to reach ${l(hoseNeeded_mm)}`]),
    ...(wiresAbove_mm === null ? [] : [wiresAbove_mm === "none" ? "no wires hang there" : `wires hang at ${l(wiresAbove_mm)}`]),
    ...(truck_kg === null ? [] : [`a truck weighs ${formatMass(truck_kg, display)}`]),
    ...(slope_percent === null ? [] : [`its way slopes ${slope_percent} %`]),
    ...(washout === null ? [] : [`washed out: ${washout}`]),
  ];
  return sentence(said.length === 0 ? "Nothing is said yet of hose, wires, truck and where it is washed out" : said.join(", "));
}
