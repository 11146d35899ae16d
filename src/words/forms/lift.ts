import { type Display, formatForce, formatLineLoad } from "../../core/base";
import type { PourElement } from "../../core/build";
import type { FormSheet } from "../../core/pour";
import { sentence } from "../text";
import type { FormNote } from "./notes";

/** A force of a whole column, or of each length of a wall, as the sheet counts it. */
export function forceOn(kind: PourElement["shape"]["kind"], value: number, display: Display): string {
  return kind === "column" || kind === "pier" ? formatForce(value, display) : formatLineLoad(value, display);
}

/** Forces below this are rounding, kN or kN/m. */
const nothing = 0.005;

/** Whether the form wants to rise, against its own weight and what holds it down. */
export function holdSentence({ lift }: FormSheet, { shape }: PourElement, display: Display): FormNote {
  const force = (value: number) => forceOn(shape.kind, value, display);
  if (lift.up < nothing) return { text: "Nothing lifts it: its faces are upright.", loud: false };
  const weight = lift.weight === null ? "the weight of the form is not written" : `${force(lift.weight)} of form`;
  const up = `it wants to rise: ${force(lift.up)} up on the sloping faces, ${weight}`;
  if (lift.needed < nothing) return { text: sentence(up), loud: false };
  if (lift.held >= lift.needed) return { text: sentence(`${up}; hold-downs carry ${force(lift.held)} of the ${force(lift.needed)} asked`), loud: false };
  const held = lift.held < nothing ? "nothing holds it down" : `hold-downs carry only ${force(lift.held)}`;
  return { text: sentence(`${up}. It must be held down for ${force(lift.needed)}, and ${held}`), loud: true };
}

/** What the concrete pushes sideways, and what takes it. */
export function thrustSentence(form: FormSheet, element: PourElement, display: Display): FormNote {
  const thrust = forceOn(element.shape.kind, form.thrust, display);
  const spec = element.form;
  const brace = spec && spec.kind !== "edge" ? spec.brace : null;
  if (form.oneSided)
    return brace === null
      ? { text: sentence(`one side only: ${thrust} pushes it over, and no brace is written`), loud: true }
      : { text: sentence(`one side only: all of ${thrust} goes into the braces and what they land on`), loud: false };
  const asked = formatLineLoad(form.bracing_kN_m, display);
  return brace === null
    ? { text: sentence(`no brace is written: wind and knocks ask for ${asked} at the top`), loud: true }
    : { text: sentence(`braced against wind and knocks: ${asked} is asked at the top`), loud: false };
}
