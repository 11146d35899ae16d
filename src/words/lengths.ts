import { type Display, formatFigure, formatLength, fromModel, toModel } from "../core/base";

/** Up to here a drawing in millimetres gives every height in millimetres, common practice, no source. */
const longest_mm = 10_000;
/** From here on inches alone are hard to read, as `formatLength` has it. */
const inchesUpTo = 72;

/** Feet and the inches over them, both from whole sixteenths, so that none rounds up to a foot of its own. */
function feetAndInches(length_mm: number): string {
  const sixteenths = Math.round(fromModel("length", length_mm, "in") * 16);
  const feet = Math.floor(sixteenths / 192);
  const rest = sixteenths % 192;
  const inches = rest === 0 && feet > 0 ? "" : formatLength(toModel("length", rest / 16, "in"), "us");
  return [feet > 0 ? `${feet} ft` : "", inches].filter((part) => part !== "").join(" ");
}

/** How lengths of one kind that stand together are written, all in one unit: millimetres, inches, or feet and inches. `all_mm`: those that stand together. */
export function lengthsTogether(all_mm: readonly number[], display: Display): (length_mm: number) => string {
  const most_mm = Math.max(0, ...all_mm);
  if (display === "metric")
    return (length_mm) => (most_mm < longest_mm ? `${formatFigure(length_mm)} mm` : formatLength(length_mm, display));
  const feet = Math.round(fromModel("length", most_mm, "in") * 16) > inchesUpTo * 16;
  return (length_mm) => (feet && length_mm >= 0 ? feetAndInches(length_mm) : formatLength(length_mm, display));
}
