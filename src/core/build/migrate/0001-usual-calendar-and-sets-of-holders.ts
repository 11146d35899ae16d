import { isObject } from "../schema/shape";

type Document = Readonly<Record<string, unknown>>;

/**
 * Version 0, the draft of the format, named the usual calendar `calendar` and listed in `heldBy` the pieces that hold one together, without
 * alternatives. Version 1 says `usual`, and a list of sets.
 */
export function toVersion1(document: Document): Document {
  const entries = Object.entries(document).map(([key, value]): [string, unknown] => {
    if (key === "batterboard") return [key, 1];
    if (key === "calendar" && !Object.hasOwn(document, "usual")) return ["usual", value];
    if (key === "pieces" && Array.isArray(value)) return [key, value.map(withSets)];
    return [key, value];
  });
  return Object.fromEntries(entries);
}

function withSets(piece: unknown): unknown {
  if (!isObject(piece) || !Array.isArray(piece.heldBy) || piece.heldBy.length === 0) return piece;
  return piece.heldBy.every((holder) => typeof holder === "string") ? { ...piece, heldBy: [piece.heldBy] } : piece;
}
