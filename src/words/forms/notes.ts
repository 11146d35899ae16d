import { type Display, formatLength, formatMass, formatSoilPressure } from "../../core/base";
import type { Brace, FormSpec, HoldDown, PourElement } from "../../core/build";
import type { ElementSheet } from "../../core/pour";
import { sentence, spelledFigure } from "../text";
import { holdSentence } from "./lift";

export interface FormNote {
  readonly text: string;
  /** Something that can fail as it is written. */
  readonly loud: boolean;
}

const landings: Readonly<Record<NonNullable<Brace["lands"]>, string>> = {
  stake: "a stake",
  "old work": "old work",
  footing: "the footing",
  slab: "a slab",
  deadman: "a deadman",
};

const grounds = { firm: "firm ground", rock: "rock", slab: "a slab", "fresh fill": "fresh fill", frozen: "frozen ground" } as const;

const quiet = (text: string): FormNote => ({ text: sentence(text), loud: false });
const loud = (text: string): FormNote => ({ text: sentence(text), loud: true });

function diagram({ pressure }: ElementSheet, display: Display, who: string | null): FormNote[] {
  if (pressure === null) return [];
  const heavy = `heavy line: ${pressure.hose.formula === "full head" ? "full head" : "as it is placed"}, ${formatSoilPressure(pressure.hose.most_kPa, display)} at the foot`;
  if (pressure.held === null) return [quiet(heavy)];
  const judged = pressure.design === "held" ? "the form is judged by it" : "it does not decide";
  return [quiet(heavy), quiet(`dashed: ${formatSoilPressure(pressure.held.most_kPa, display)} where ${who ?? "somebody"} holds the rate; ${judged}`)];
}

function heights({ form }: ElementSheet): FormNote[] {
  const part = form?.members.find(({ each }) => each.length > 0)?.part;
  if (part === undefined) return [];
  const one = part === "bands" ? "band" : part === "wales" ? "wale" : "member";
  return [quiet(`beside each ${one}: its height above the foot, and what it carries of what it may`)];
}

const heldDown = (by: HoldDown): FormNote => quiet(`held down by ${by.number > 1 ? `${spelledFigure(by.number)} × ` : ""}${by.by.name}`);

function braced(brace: Brace | null, display: Display): FormNote[] {
  if (brace === null) return [];
  const lies = `brace ${brace.stuff.size}, ${formatLength(brace.run_mm, display)} out and ${formatLength(brace.rise_mm, display)} up`;
  return [brace.lands === null ? loud(`${lies}; it is not said what it lands on`) : quiet(`${lies}, lands on ${landings[brace.lands]}`)];
}

function foot(form: FormSpec, display: Display): FormNote[] {
  if (form.kind === "edge") return form.holdDown ? [heldDown(form.holdDown)] : [];
  if (form.kind === "deck") {
    const { mudsills, shores } = form;
    const high = quiet(`shores ${formatLength(shores.high_mm, display)} high, ${formatLength(shores.spacing_mm, display)} apart`);
    if (mudsills === null) return [high, loud("no mudsills are written: it is not said what the shores stand on")];
    const on = mudsills.ground === null ? "ground that is not described" : grounds[mudsills.ground];
    const sill = `mudsills ${formatLength(mudsills.long_mm, display)} by ${formatLength(mudsills.wide_mm, display)} on ${on}`;
    const bad = mudsills.ground === "fresh fill" || mudsills.ground === "frozen" || mudsills.ground === null || !mudsills.level;
    return [high, bad ? loud(`${sill}${mudsills.level ? "" : ", not level"}`) : quiet(sill), ...braced(form.brace, display)];
  }
  const mass = form.kind === "column" && form.mass_kg !== null ? [quiet(`the form weighs ${formatMass(form.mass_kg, display)}`)] : [];
  return [
    form.footSealed ? quiet("foot sealed") : loud("the foot is not sealed: paste runs out there"),
    ...(form.holdDown ? [heldDown(form.holdDown)] : []),
    ...braced(form.brace, display),
    ...mass,
  ];
}

/** What a drawing of a form says in words below it: how to read it, and what stands at its foot. */
export function formNotes(element: PourElement, sheet: ElementSheet, display: Display, who: string | null): FormNote[] {
  const lift = sheet.form ? holdSentence(sheet.form, element, display) : null;
  return [
    ...diagram(sheet, display, who),
    ...heights(sheet),
    ...(element.form ? foot(element.form, display) : []),
    ...(lift?.loud ? [lift] : []),
  ];
}

