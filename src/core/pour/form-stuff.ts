import type { Lumber, Pour, Sheathing } from "../build";
import {
  type Allowed,
  across,
  allowedOf,
  along,
  type Grade,
  type GradeValue,
  grades,
  isTimber,
  loadedFor,
  lumberMember,
  type MemberResult,
  type PlyClass,
  plyClasses,
  plywoodMember,
  type Sag,
  type Section,
  type Spans,
  sectionOf,
  turned,
  unknownNew,
  unknownSalvaged,
} from "../concrete";
import type { Duration } from "./form-stay";
import { inches, psfOf } from "./form-units";
import { type Doubt, doubtsOfLumber, doubtsOfSheathing } from "./guess";

/** l/360 and 1/16 in (usual for faces that stay visible; read in a university form design lecture): whichever is stricter. */
export const sags: readonly Sag[] = [
  { kind: "ratio", of: 360 },
  { kind: "fixed", inches: 1 / 16 },
];

/** A length of lumber as its formulas want it, and what of it is not known. */
export interface Stuff {
  readonly label: string;
  readonly pieces: number;
  readonly section: Section;
  readonly allowed: Allowed;
  readonly lumber: Lumber;
  readonly doubts: readonly Doubt[];
}

const beamValues: readonly GradeValue[] = ["bending", "shear", "bearing", "elasticity"];
const columnValues: readonly GradeValue[] = ["compression", "elasticityMin", "bearing"];

function gradeOf(lumber: Lumber): Grade {
  const known = lumber.grade === null ? undefined : grades[lumber.grade];
  return known ?? (lumber.salvaged ? unknownSalvaged : unknownNew);
}

/**
 * A member's lumber; null where its size stands in no table and was not measured. Reused counts as loaded for years in all (CD 1.0), fresh for as long as it stays
 * (NDS 2.3.2). `weak`: loaded on its wide face whatever is written, as the boards of an edge form are.
 */
export function stuffOf(lumber: Lumber, as: "beam" | "column", repetitive: boolean, stays: Duration, weak = false): Stuff | null {
  const measured = lumber.measured_mm === null ? null : { wide: inches(lumber.measured_mm.wide), deep: inches(lumber.measured_mm.deep) };
  const written = sectionOf(lumber.size, lumber.flat, measured);
  if (written === null) return null;
  const section = weak && written.deep_in > written.wide_in ? turned(written) : written;
  const grade = gradeOf(lumber);
  const allowed = allowedOf(grade, section, { duration: lumber.reused ? 1 : stays, wet: lumber.wet, repetitive });
  const used = as === "beam" ? beamValues : columnValues;
  const isMemory = isTimber(section) || grade.memory.some((value) => used.includes(value));
  return {
    label: lumber.flat ? `${lumber.size} flat` : lumber.size,
    pieces: Math.max(1, lumber.pieces),
    section,
    allowed,
    lumber,
    doubts: doubtsOfLumber(lumber, isMemory),
  };
}

export const contact_mm = (stuff: Stuff): number => stuff.section.wide_in * stuff.pieces * 25.4;
export const deep_mm = (stuff: Stuff): number => stuff.section.deep_in * 25.4;

/** Sheathing by itself: what it carries over a span, and its thickness. */
export interface Skin {
  readonly label: string;
  readonly thick_mm: number;
  readonly documents: readonly string[];
  readonly sheathing: Sheathing;
  readonly doubts: readonly Doubt[];
  readonly judge: (spans: Spans, span_mm: number, support_mm: number, pressure_kPa: number) => MemberResult;
}

/** Null where its plywood or boards stand in no table. */
export function skinOf(sheathing: Sheathing, pour: Pour, element: string, stays: Duration): Skin | null {
  if (sheathing.kind === "boards") return sheathing.boards === null ? null : boardSkin(sheathing, sheathing.boards, stays);
  const table = sheathing.grain === "across" ? across : along;
  const plies = sheathing.ply === null ? undefined : table[sheathing.ply];
  if (plies === undefined || sheathing.ply === null) return null;
  const kind: PlyClass = loadedFor(plyClasses[sheathing.plyClass], sheathing.reused ? 1 : stays);
  return {
    label: sheathing.ply,
    thick_mm: plies.thick_in * 25.4,
    documents: ["APA V345"],
    sheathing,
    doubts: doubtsOfSheathing(sheathing, pour, element),
    judge: (spans, span_mm, support_mm, pressure_kPa) =>
      plywoodMember(plies, kind, spans, inches(span_mm), inches(support_mm), psfOf(pressure_kPa), sags),
  };
}

/** A foot of width of boards laid flat against the supports. */
function boardSkin(sheathing: Sheathing, boards: Lumber, stays: Duration): Skin | null {
  const stuff = stuffOf({ ...boards, flat: false, pieces: 1 }, "beam", false, stays, true);
  if (stuff === null) return null;
  const foot: Section = { name: boards.size, wide_in: 12, deep_in: stuff.section.deep_in };
  return {
    label: boards.size,
    thick_mm: stuff.section.deep_in * 25.4,
    documents: ["NDS"],
    sheathing,
    doubts: stuff.doubts,
    judge: (spans, span_mm, _support_mm, pressure_kPa) =>
      lumberMember(foot, 1, stuff.allowed, spans, inches(span_mm), psfOf(pressure_kPa), sags),
  };
}
