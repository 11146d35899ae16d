import { type Display, formatForce } from "../../core/base";
import type { ElementSheet } from "../../core/pour";
import { checkWords, lengthsTogether, memberName, of100 } from "../../words";
import { firstOf } from "./tags";

/** One row of the table that says what the drawing of a form shows. */
export interface FormTwinRow {
  readonly key: string;
  readonly name: string;
  /** Above the foot; empty for what runs all over. */
  readonly height: string;
  readonly load: string;
  readonly carries: string;
  readonly check: string;
}

export const formTwinHeadings = ["Part", "Above the foot", "Load", "Carries of what it may", "By"] as const;

/** Its share of the whole, and what it is judged by where that is more. */
function loadWords({ load_kN, most_kN }: { readonly load_kN: number; readonly most_kN: number }, display: Display): string {
  const share = formatForce(load_kN, display);
  return most_kN > 1.005 * load_kN ? `${share}, judged by ${formatForce(most_kN, display)}` : share;
}

/** Every member, and every band, wale or tie at its height. */
export function formTwin({ form }: ElementSheet, display: Display): FormTwinRow[] {
  const members = form?.members ?? [];
  const height = lengthsTogether(
    members.flatMap(({ each }) => each.map(({ at_mm }) => at_mm)),
    display,
  );
  return members.flatMap((member): FormTwinRow[] => {
    const first = firstOf(form, member.part);
    const says = (value: number, isFirst: boolean) => `${of100(value)}${isFirst ? ", gives first" : ""}`;
    const name = memberName(member, display);
    if (member.each.length === 0)
      return [
        {
          key: member.part,
          name,
          height: "",
          load: "",
          carries: says(member.of100, first !== null),
          check: checkWords(member.governs),
        },
      ];
    return member.each.map((one, index) => ({
      key: `${member.part} ${index}`,
      name,
      height: height(one.at_mm),
      load: loadWords(one, display),
      carries: says(one.of100, first === index),
      check: checkWords(one.governs),
    }));
  });
}
