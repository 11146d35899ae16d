import { parseSigned } from "../base";
import type { Part } from "../build";
import { kitOf } from "./all";
import { isObject, listOf } from "./document";

/** The box around a body, from its least to its most along x, y and z. */
export interface Body {
  readonly least_mm: readonly [number, number, number];
  readonly most_mm: readonly [number, number, number];
}

/** Bodies may touch, and be drawn so much into each other. */
const into_mm = 20;

export const overlaps = (one: Body, other: Body): boolean =>
  [0, 1, 2].every((axis) => {
    const least = Math.max(one.least_mm[axis] as number, other.least_mm[axis] as number);
    return Math.min(one.most_mm[axis] as number, other.most_mm[axis] as number) - least > into_mm;
  });

const mm = (value: unknown): number => {
  const text = isObject(value) ? value.is : value;
  return typeof text === "string" ? (parseSigned("length", text) ?? Number.NaN) : Number.NaN;
};

function bodyOf(solid: Readonly<Record<string, unknown>>): Body | null {
  const { at, size, turn = 0, shape } = solid;
  // Under a vault there is room; what is turned askew has no box of its own.
  if (!isObject(at) || !isObject(size) || shape === "vault" || Number(turn) % 90 !== 0) return null;
  const isAcross = Math.abs(Number(turn) % 180) === 90;
  const [along, across] = isAcross ? [mm(size.wide), mm(size.long)] : [mm(size.long), mm(size.wide)];
  const [x, y, z] = [mm(at.x), mm(at.y), mm(at.z)];
  return {
    least_mm: [x - along / 2, y - across / 2, z],
    most_mm: [x + along / 2, y + across / 2, z + mm(size.high)],
  };
}

/** Bodies of a part that take their room for good: a scaffold goes again, and a trench is dug around what is there. */
export function bodiesOf(document: unknown, part: Part): readonly Body[] {
  const group = kitOf(part.kit)?.group;
  if (group !== "concrete" && group !== "timber") return [];
  const own = new Set(part.made.solids ?? []);
  return listOf(document, "solids").flatMap((solid) => (own.has(solid.id) ? (bodyOf(solid) ?? []) : []));
}
