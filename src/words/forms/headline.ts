import { type Display, formatForce, formatLength, formatSoilPressure } from "../../core/base";
import type { Pour, PourElement } from "../../core/build";
import type { ElementSheet, MemberSheet, WhyFullHead } from "../../core/pour";
import { sentence } from "../text";
import { ofHundred } from "./figures";
import { partName } from "./parts";
import { placedFrom } from "./pressure";

/** What a check is called, as a noun. */
export const checkName: Readonly<Record<MemberSheet["governs"], string>> = {
  bending: "bending",
  shear: "shear",
  "rolling shear": "rolling shear",
  sag: "sag",
  bearing: "crushing where it bears",
  tension: "pull",
  compression: "push along it",
};

const short: Readonly<Record<WhyFullHead, string>> = {
  "no rate is held": "no rate is held",
  "short and small in plan": "it is short and small in plan",
  "vibrated deep": "it is vibrated deep",
  slump: "its slump is high",
  "external vibration": "the form is vibrated",
  "pumped from the base": "it is pumped from the base",
  "rises too fast": "it rises too fast for less",
  "the formula is over it": "the formula gives no less",
  "outside the formula": "its figures lie outside the formula",
};

/** "the lowest band, 4 in above the foot", "the sheathing". */
function placeOf(member: MemberSheet, display: Display): { readonly name: string; readonly load: string } {
  const worst = member.each.reduce<(typeof member.each)[number] | null>((most, one) => (most && most.of100 >= one.of100 ? most : one), null);
  if (worst === null) return { name: `the ${partName(member.part, "short")}`, load: "" };
  const lowest = member.each.every(({ at_mm }) => at_mm >= worst.at_mm);
  const name = partName(member.part, "one");
  const at = `${formatLength(worst.at_mm, display)} above the foot`;
  return { name: lowest ? `the lowest ${name}, ${at},` : `the ${name} ${at}`, load: ` under ${formatForce(worst.load_kN, display)}` };
}

const plural = (part: MemberSheet["part"]): boolean => part !== "sheathing";

/** How it is filled, as the reason of the pressure. */
function filling({ pressure }: ElementSheet, placed: Pour["placed"], display: Display): string {
  if (pressure === null) return "";
  if (pressure.design === "held" && pressure.held) return `At the held rate the foot feels ${formatSoilPressure(pressure.held.most_kPa, display)}.`;
  const { hose } = pressure;
  const because = hose.why[0] === undefined ? "" : `: ${short[hose.why[0]]}`;
  const what = hose.formula === "full head" ? "the whole head, " : "";
  return sentence(`filled ${placedFrom[placed]}, the foot feels ${what}${formatSoilPressure(hose.most_kPa, display)}${because}`);
}

/** Which member gives first and why, in two sentences; what is missing where nothing can be said. `over`: it would not hold. */
export function formHeadline(element: PourElement, sheet: ElementSheet, placed: Pour["placed"], display: Display): { readonly says: string; readonly why: string; readonly over: boolean } {
  const { form } = sheet;
  const first = form?.members[form.first];
  if (element.form === null) return { says: "No form is written yet, so nothing says what carries the concrete.", why: filling(sheet, placed, display), over: true };
  if (!form || first === undefined)
    return { says: "The form is written, but its figures cannot be worked out: see what stands in the way.", why: filling(sheet, placed, display), over: true };
  const place = placeOf(first, display);
  const one = first.each.length > 0 || !plural(first.part);
  const over = first.of100 > 100;
  const says = sentence(
    `${place.name} ${one ? "gives" : "give"} first: ${ofHundred(first.of100)} in ${checkName[first.governs]}${place.load}${over ? ". As written it would not hold" : ""}`,
  );
  return { says, why: filling(sheet, placed, display), over };
}
