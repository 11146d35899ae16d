import { type Display, formatFigure, formatLength, formatMass } from "../../core/base";
import type { BarSet } from "../../core/build";
import type { BarSheet } from "../../core/pour";
import { sentence } from "../text";

const sorts: Readonly<Record<BarSet["sort"], string>> = { bar: "", tie: ", ties around the others", mat: ", tied to a mat" };

/** "number 5", "12 mm" */
export const barSizeWords = (size: BarSet["size"]): string => (/^\d+$/.test(String(size)) ? `number ${size}` : String(size));

/** "Upright: 4 of number 5, 8 ft 6 in long, 12 in apart." */
export function barSetSentence(set: BarSet, display: Display): string {
  const apart = set.spacing_mm === null ? "" : `, ${formatLength(set.spacing_mm, display)} apart`;
  const name = set.name === "" ? "Bars without a name" : set.name;
  return sentence(
    `${name}: ${set.number} of ${barSizeWords(set.size)}, ${formatLength(set.long_mm, display)} long${apart}${sorts[set.sort]}`,
  );
}

const step = (display: Display): number => (display === "us" ? 25.4 : 10);
/** Cut down, or up, to the inch or to 10 mm: on the side that holds. */
const atMost = (length_mm: number, display: Display): string =>
  formatLength(Math.max(1, Math.floor(length_mm / step(display) + 1e-9)) * step(display), display);
const atLeast = (length_mm: number, display: Display): string =>
  formatLength(Math.ceil(length_mm / step(display) - 1e-9) * step(display), display);

const stressWords = (stress_MPa: number, display: Display): string =>
  display === "us" ? `${formatFigure(stress_MPa * 0.1450377377)} ksi` : `${formatFigure(stress_MPa)} MPa`;

/** A small sag to the sixteenth of an inch or to 0.1 mm: what is smaller is said to be. */
function sagWords(sag_mm: number, display: Display): string {
  if (display === "us") return sag_mm < 25.4 / 16 ? "less than 1/16 in" : formatLength(sag_mm, "us");
  return sag_mm < 0.1 ? "less than 0.1 mm" : `${formatFigure(sag_mm, 1)} mm`;
}

/** What the tables and formulas say of one set of bars. They do not say which bars a drawing must have. */
export function barSentences(set: BarSet, sheet: BarSheet, display: Display): string[] {
  const l = (length_mm: number): string => formatLength(length_mm, display);
  const { given_mm, least_mm } = sheet.cover;
  const out = [
    `Together they weigh ${formatMass(sheet.mass_kg, display)}`,
    given_mm === null
      ? `Cover is not written; ${l(least_mm)} is the least there (ACI 318)`
      : `Cover ${l(given_mm)}, of at least ${l(least_mm)} there (ACI 318)`,
  ];
  if (sheet.most_mm !== null) out.push(`Ties stand no farther apart than ${atMost(sheet.most_mm, display)} (ACI 318)`);
  if (set.sort !== "tie")
    out.push(
      `Where two are lapped, the lap is ${atLeast(sheet.lap_mm, display)}; with more than ${display === "us" ? "12 in" : "300 mm"} of fresh concrete below them ${atLeast(sheet.top.lap_mm, display)} (ACI 318); the drawing rules`,
    );
  if (sheet.span !== null) {
    const { at, fits_mm } = sheet.span;
    out.push(
      at === null
        ? `Between chairs or hangers they may span ${atMost(fits_mm, display)} under a foot`
        : `Between supports ${l(at.supported_mm)} apart they sag ${sagWords(at.ownSag_mm, display)} by themselves and ${sagWords(at.footSag_mm, display)} under a foot, at ${stressWords(at.footStress_MPa, display)} of the ${stressWords(set.yield_MPa, display)} they yield at; at most ${atMost(fits_mm, display)} does`,
    );
  }
  return out.map(sentence);
}
