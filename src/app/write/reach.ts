import { objectsOf, textOf, type Written } from "./written";

/** One aim of a reach as the form shows it. */
export interface Aim {
  readonly place: string;
  readonly need: string;
  readonly depth: unknown;
  readonly piece: string;
  /** As written, so that what the form does not show stays. */
  readonly written: Written;
}

/** What must get there, in words; the first is what an empty need means. */
export const needs = [
  { id: "person", name: "a person" },
  { id: "sight", name: "eyes only" },
  { id: "hand", name: "a hand" },
  { id: "arm", name: "an arm with a tool" },
  { id: "hose", name: "a hose or vibrator" },
  { id: "unit", name: "a piece as one" },
  { id: "machine", name: "a machine" },
] as const;

/** Needs that may say how deep. */
export const deep: readonly string[] = ["hand", "arm"];

/** Reaches as written: a list of reaches, each a list of aims of which any one is enough. */
export function reachesOf(value: unknown): readonly (readonly Aim[])[] {
  return objectsOf(value).map((reach) => (Array.isArray(reach.any) ? objectsOf(reach.any) : [reach]).map(aimOf));
}

function aimOf(written: Written): Aim {
  return {
    place: textOf(written.place),
    need: textOf(written.need) || "person",
    depth: written.depth,
    piece: textOf(written.piece),
    written,
  };
}

/** The document's form of the same reaches. */
export function writtenReaches(reaches: readonly (readonly Aim[])[]): readonly Written[] {
  return reaches
    .filter((aims) => aims.length > 0)
    .map((aims) => (aims.length === 1 ? writtenAim(aims[0] as Aim) : { any: aims.map(writtenAim) }));
}

function writtenAim({ written, place, need, depth, piece }: Aim): Written {
  const { need: _need, depth: _depth, piece: _piece, ...rest } = written;
  return {
    ...rest,
    place,
    ...(need === "person" ? {} : { need }),
    ...(deep.includes(need) && depth !== undefined && depth !== "" ? { depth } : {}),
    ...(need === "unit" && piece !== "" ? { piece } : {}),
  };
}

export const newAim = (place: string): Aim => ({ place, need: "person", depth: undefined, piece: "", written: {} });
