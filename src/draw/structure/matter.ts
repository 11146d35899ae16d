import type { Build, Solid } from "../../core/build";

/** What a body is made of, for its look: frame is scaffold, shores and braces, seen through; a hole is earth until it is dug. */
export type Matter = "concrete" | "earth" | "hole" | "frame" | "other";

export function matterOf(build: Build, solid: Solid): Matter {
  const sorts = solid.pieces.map((id) => build.pieces[build.at.piece.get(id) ?? -1]?.sort ?? "other");
  if (solid.pour !== null || sorts.includes("concrete")) return "concrete";
  if (sorts.length === 0) return "other";
  if (sorts.every((sort) => sort === "hole")) return "hole";
  if (sorts.some((sort) => sort === "earth" || sort === "fill")) return "earth";
  return sorts.every((sort) => sort === "scaffold" || sort === "brace" || sort === "shore") ? "frame" : "other";
}

/** A body that is dug, not built. */
export const isHole = (build: Build, solid: Solid): boolean => matterOf(build, solid) === "hole";

/** Whether a body is there for a while only: all that it is goes again. Such a body is not drawn before it comes, nor after. */
export function isPassing(build: Build, solid: Solid): boolean {
  const pieces = solid.pieces.flatMap((id) => build.pieces[build.at.piece.get(id) ?? -1] ?? []);
  return pieces.length > 0 && pieces.every(({ down, goesAfter }) => down >= 0 || goesAfter !== null);
}
