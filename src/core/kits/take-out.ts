import { type Removal, removeMany } from "../edit";
import { partsOf } from "./document";

export type TakenOut = Removal;

/** Edits that take a part out with everything it made that is still there. What kits share stays. Nothing where there is no such part. */
export function takeOut(document: unknown, partId: string): TakenOut {
  const part = partsOf(document).find(({ id }) => id === partId);
  if (part === undefined) return { edits: [], lost: [] };
  const members = Object.entries(part.made).flatMap(([list, ids]) => ids.map((id) => [list, id] as const));
  const { edits, lost } = removeMany(document, members);
  return { edits: [...edits, { path: ["parts", `id=${partId}`] }], lost };
}
