import { type Display, formatLength, formatMass, formatSoilPressure } from "../../core/base";
import type { Brace, FormSpec, HoldDown, PourElement } from "../../core/build";
import type { ElementSheet } from "../../core/pour";
import { lengthsTogether, liftSentences, of100, partWords, pressureWords, sentence } from "../../words";
import type { Note } from "./section";

const landings: Readonly<Record<NonNullable<Brace["lands"]>, string>> = {
  stake: "a stake",
  "old work": "old work",
  footing: "the footing",
  slab: "a slab",
  deadman: "a deadman",
};

const grounds = { firm: "firm ground", rock: "rock", slab: "a slab", "fresh fill": "fresh fill", frozen: "frozen ground" } as const;

const quiet = (text: string): Note => ({ text: sentence(text), loud: false });
const loud = (text: string): Note => ({ text: sentence(text), loud: true });

function diagram({ pressure }: ElementSheet, display: Display, who: string | null): Note[] {
  if (pressure === null) return [];
  const heavy = `heavy line: ${pressure.hose.formula === "full head" ? "full head" : "as it is placed"}, ${pressureWords(pressure.hose, display)} at the foot`;
  if (pressure.held === null) return [quiet(heavy)];
  const judged = pressure.design === "held" ? "the form is judged by it" : "it does not decide";
  return [quiet(heavy), quiet(`dashed: ${pressureWords(pressure.held, display)} where ${who ?? "somebody"} holds the rate; ${judged}`)];
}

function heights({ form }: ElementSheet): Note[] {
  const part = form?.members.find(({ each }) => each.length > 0)?.part;
  if (part === undefined) return [];
  const one = part === "bands" ? "band" : part === "wales" ? "wale" : "member";
  return [quiet(`beside each ${one}: its height above the foot, and what it carries of what it may`)];
}

const heldDown = (by: HoldDown): Note => quiet(`held down by ${by.number > 1 ? `${by.number} × ` : ""}${by.by.name}`);

function braced(brace: Brace | null, display: Display): Note[] {
  if (brace === null) return [];
  const far = lengthsTogether([brace.run_mm, brace.rise_mm], display);
  const lies = `brace ${brace.stuff.size}, ${far(brace.run_mm)} out and ${far(brace.rise_mm)} up`;
  return [brace.lands === null ? loud(`${lies}; it is not said what it lands on`) : quiet(`${lies}, lands on ${landings[brace.lands]}`)];
}

function foot(form: FormSpec, display: Display): Note[] {
  if (form.kind === "edge") return form.holdDown ? [heldDown(form.holdDown)] : [];
  if (form.kind === "deck") {
    const { mudsills, shores } = form;
    const tall = lengthsTogether([shores.high_mm], display)(shores.high_mm);
    const high = quiet(`shores ${tall} high, ${formatLength(shores.spacing_mm, display)} apart`);
    if (mudsills === null) return [high, loud("no mudsills are written: it is not said what the shores stand on")];
    const on = mudsills.ground === null ? "ground that is not described" : grounds[mudsills.ground];
    const side = lengthsTogether([mudsills.long_mm, mudsills.wide_mm], display);
    const sill = `mudsills ${side(mudsills.long_mm)} by ${side(mudsills.wide_mm)} on ${on}`;
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

/** Members that have no line of their own beside the drawing, where one of them gives first or is over. */
function beside({ form: spec }: PourElement, { form }: ElementSheet): Note[] {
  return (form?.members ?? []).flatMap((member, index) => {
    const first = index === form?.first;
    const unlined = spec?.kind === "deck" ? ["brace feet"] : ["braces", "brace feet", "hold-downs"];
    if (!unlined.includes(member.part) || (!first && member.of100 <= 100)) return [];
    const says = `${partWords(member.part)}: ${of100(member.of100)}${first ? ", they give first" : ""}`;
    return [member.of100 > 100 ? loud(says) : quiet(says)];
  });
}

/** What a deck carries while it is filled; its members are checked for it. */
function decked({ form: spec }: PourElement, { form }: ElementSheet, display: Display): Note[] {
  const load = form?.members.find(({ part }) => part === "sheathing")?.load;
  if (spec?.kind !== "deck" || load?.unit !== "kPa") return [];
  return [
    quiet(
      `while it is filled the deck carries ${formatSoilPressure(load.value, display).replace("psf", "lb/ft²")}: concrete, form, people and tools`,
    ),
  ];
}

/** What a drawing of a form says in words below it: how to read it, and what stands at its foot. */
export function formNotes(element: PourElement, sheet: ElementSheet, display: Display, who: string | null): Note[] {
  return [
    ...diagram(sheet, display, who),
    ...heights(sheet),
    ...beside(element, sheet),
    ...decked(element, sheet, display),
    ...(element.form ? foot(element.form, display) : []),
    ...liftSentences(sheet, display).flatMap(({ says, warn }) => (warn ? [loud(says)] : [])),
  ];
}
