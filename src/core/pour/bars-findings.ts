import { type Finding, toModel } from "../base";
import type { BarSet, Build, Pour, PourElement } from "../build";
import { barStock_ft, footSag_in, lift_lb, ownSag_in } from "../concrete";
import { type BarSheet, type BarSpan, barSheets } from "./bars";
import { found } from "./found";
import { isStanding, staysVisible } from "./shapes";

const stock_mm = toModel("length", barStock_ft, "ft");
const own_mm = toModel("length", ownSag_in, "in");
const foot_mm = toModel("length", footSag_in, "in");
const each_kg = toModel("mass", lift_lb, "lb");

/** Rounded as a bar list is: what differs by less than a tenth of a millimetre is the same. */
const slight_mm = 0.1;

/** What is to be said of the bars of one element. */
export function barFindings(build: Build, pour: Pour, element: PourElement): Finding[] {
  const sheets = barSheets(element, pour.mix);
  const unknown = element.bars
    .filter((_, i) => !sheets.some((sheet) => sheet.bars === i))
    .map((set) => found(pour, "bars.size-unknown", "stop", { element: element.id, bars: set.name, size: set.size }, "elements"));
  return [...unknown, ...sheets.flatMap((sheet) => ofSet(pour, element, sheet)), ...cage(build, pour, element, sheets)];
}

function ofSet(pour: Pour, element: PourElement, sheet: BarSheet): Finding[] {
  const set = element.bars[sheet.bars] as BarSet;
  const at = { element: element.id, bars: set.name };
  const list: Finding[] = [];
  const { given_mm, least_mm } = sheet.cover;
  if (given_mm === null) list.push(found(pour, "bars.cover-unknown", "note", { ...at, least_mm, exposure: set.exposure }, "elements"));
  else if (given_mm < least_mm - slight_mm)
    list.push(found(pour, "bars.cover-thin", "look", { ...at, given_mm, least_mm, exposure: set.exposure }, "elements"));
  if (set.sort === "tie") {
    const { most_mm } = sheet;
    if (most_mm !== null && set.spacing_mm !== null && set.spacing_mm > most_mm + slight_mm)
      list.push(found(pour, "bars.ties-wide", "look", { ...at, given_mm: set.spacing_mm, most_mm }, "elements"));
    return list;
  }
  if (set.long_mm > stock_mm + slight_mm)
    list.push(found(pour, "bars.lap", "note", { ...at, long_mm: set.long_mm, stock_mm, lap_mm: sheet.lap_mm }, "elements"));
  if (set.long_mm < sheet.development_mm - slight_mm)
    list.push(found(pour, "bars.short", "note", { ...at, long_mm: set.long_mm, development_mm: sheet.development_mm }, "elements"));
  return sheet.span === null ? list : [...list, ...spans(pour, element, set, sheet.span)];
}

function spans(pour: Pour, element: PourElement, set: BarSet, { at: now, fits_mm }: BarSpan): Finding[] {
  const at = { element: element.id, bars: set.name, fits_mm };
  const hang = staysVisible(element, "soffit") ? [found(pour, "bars.hang", "look", at, "elements")] : [];
  // Loose bars of a footing may well be its starters, which stand.
  const stands = set.sort === "bar" && element.shape.kind === "footing";
  if (now === null) return stands ? hang : [...hang, found(pour, "bars.support-unknown", "note", at, "elements")];
  const { supported_mm, ownSag_mm, footSag_mm, footStress_MPa } = now;
  const free = { ...at, supported_mm };
  if (footStress_MPa > set.yield_MPa) {
    const detail = { ...free, stress_MPa: footStress_MPa, yield_MPa: set.yield_MPa };
    return [...hang, found(pour, "bars.bent-underfoot", "look", detail, "elements")];
  }
  if (ownSag_mm > own_mm) {
    return [...hang, found(pour, "bars.sags", "look", { ...free, sag_mm: ownSag_mm, most_mm: own_mm }, "elements")];
  }
  if (footSag_mm > foot_mm) {
    return [...hang, found(pour, "bars.sags-underfoot", "look", { ...free, sag_mm: footSag_mm, most_mm: foot_mm }, "elements")];
  }
  return hang;
}

/** A cage tied on a bench is carried in: one column's bars and ties against what the people of the build lift together. */
function cage(build: Build, pour: Pour, element: PourElement, sheets: readonly BarSheet[]): Finding[] {
  if (!isStanding(element.shape) || !element.bars.some((set) => set.sort === "tie")) return [];
  const cage_kg = sheets.reduce((sum, sheet) => sum + sheet.mass_kg, 0);
  const wanted = Math.ceil(cage_kg / each_kg - 1e-9);
  const hands = build.people.length;
  if (hands === 0 || wanted <= hands) return [];
  return [found(pour, "bars.cage-heavy", "look", { element: element.id, cage_kg, each_kg, hands, wanted }, "elements")];
}
