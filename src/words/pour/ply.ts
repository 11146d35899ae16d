import { type Display, formatLength } from "../../core/base";

/** Plywood goes by its inches: "3/4", "1-1/8". */
const size = /^(?:(\d+)-)?(\d+)(?:\/(\d+))?$/;

/** "3/4 in", or where millimetres are shown "19 mm (3/4 in)"; what is no such size stays as written. */
export function plyWords(ply: string, display: Display): string {
  const [, whole = "0", above, under = "1"] = size.exec(ply) ?? [];
  if (above === undefined) return ply;
  const thick_mm = (Number(whole) + Number(above) / Number(under)) * 25.4;
  return display === "us" ? `${ply} in` : `${formatLength(Math.round(thick_mm), display)} (${ply} in)`;
}
