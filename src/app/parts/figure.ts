/** A plain number as typed, with a decimal point or comma and any minus sign; null where it is none. */
export function figureOf(typed: string): number | null {
  const text = typed.trim().replace(/^[−–]/, "-").replace(",", ".");
  return /^-?\d+(\.\d*)?$|^-?\.\d+$/.test(text) ? Number(text) : null;
}

/** A number for the document where one was typed; nothing for an empty field; else the text, for the document's own check to refuse. */
export const figureOrText = (typed: string): unknown => (typed.trim() === "" ? undefined : (figureOf(typed) ?? typed));

const ends = { latitude: ["−90", "90", 90, "51.5"], longitude: ["−180", "180", 180, "−0.1"] } as const;

/** Degrees of latitude or longitude as typed, or the sentence for its field. */
export function degreesOf(typed: string, of: keyof typeof ends): number | string {
  const [least, most, limit, like] = ends[of];
  const value = figureOf(typed);
  if (value !== null && Math.abs(value) <= limit) return value;
  return `${of === "latitude" ? "Latitude" : "Longitude"}: write a number from ${least} to ${most}, like ${like}.`;
}
