import { nearest } from "../../base";
import { across, along, grades, sections } from "../../concrete";
import type { Fastener, Lumber, Sheathing } from "../model";
import type { RawFastener, RawLumber, RawSheathing } from "../schema/forms";
import { shown } from "./notes";
import { carries_kN, inside, length_mm, type Spot } from "./quantities";

/** What form parts take as usual when it is not written, by key: said of the pour, so that nothing that carries is a silent guess. */
export type Assume = (at: Spot) => void;

/** Says that a name stands in no table of the concrete room. */
export function sayNotInTable(at: Spot, value: string, table: string, choices: readonly string[]): void {
  const meant = nearest(value, choices) ?? "";
  at.notes.say("build.not-in-table", at.key, { part: at.part, value: shown(value), table, choices, nearest: meant });
}

/** "2 x 4" and "2×4" are "2x4". */
const tradeSize = (text: string): string => text.trim().replace(/\s*[x×X]\s*/, "x");

const sizes = Object.keys(sections).filter((name) => !name.endsWith("flat"));

export function readLumber(at: Spot, raw: RawLumber): Lumber {
  const given = typeof raw === "string" ? { size: raw } : raw;
  const size = tradeSize(given.size);
  const { measured, grade } = given as Exclude<RawLumber, string>;
  const spot = (key: string): Spot => (typeof raw === "string" ? at : inside(at, key));
  if (!sizes.includes(size) && measured === undefined) sayNotInTable(spot("size"), given.size, "lumber", sizes);
  if (grade !== undefined && !Object.hasOwn(grades, grade)) sayNotInTable(spot("grade"), grade, "grade", Object.keys(grades));
  const { flat, pieces, salvaged, wet, reused, from } = given as Exclude<RawLumber, string>;
  return {
    size,
    flat: flat ?? false,
    pieces: pieces ?? 1,
    grade: grade ?? null,
    salvaged: salvaged ?? false,
    measured_mm: measured
      ? {
          wide: length_mm(inside(inside(at, "measured"), "wide"), "memberSize", measured.wide),
          deep: length_mm(inside(inside(at, "measured"), "deep"), "memberSize", measured.deep),
        }
      : null,
    wet: wet ?? false,
    reused: reused ?? true,
    from: from ?? null,
  };
}

export function readSheathing(at: Spot, raw: RawSheathing, assume: Assume): Sheathing {
  const kind = raw.kind ?? (raw.boards !== undefined && raw.ply === undefined ? "boards" : "plywood");
  const grain = raw.grain ?? "across";
  if (kind === "boards" && raw.boards === undefined) at.notes.say("build.missing", at.key, { part: `${at.part}.boards` });
  if (kind === "plywood") {
    checkPly(at, raw.ply, grain);
    if (raw.class === undefined) assume(inside(at, "class"));
    if (raw.grain === undefined) assume(inside(at, "grain"));
  }
  return {
    kind,
    ply: kind === "plywood" ? (raw.ply ?? null) : null,
    plyClass: raw.class ?? "II",
    grain,
    boards: raw.boards === undefined ? null : readLumber(inside(at, "boards"), raw.boards),
    reused: raw.reused ?? true,
    from: raw.from ?? null,
  };
}

/** The weak way has fewer thicknesses in its table than the strong one. */
function checkPly(at: Spot, ply: string | undefined, grain: "across" | "along"): void {
  if (ply === undefined) at.notes.say("build.missing", at.key, { part: `${at.part}.ply` });
  else {
    const table = grain === "across" ? across : along;
    if (!Object.hasOwn(table, ply))
      sayNotInTable(inside(at, "ply"), ply, grain === "across" ? "plywood" : "plywood-along", Object.keys(table));
  }
}

export const readFastener = (at: Spot, raw: RawFastener): Fastener => ({
  name: raw.name ?? "",
  carries_kN: carries_kN(inside(at, "carries"), raw.carries),
  ...(raw.washer === undefined ? {} : { washer_mm: length_mm(inside(at, "washer"), "memberSize", raw.washer) }),
  from: raw.from ?? null,
});
