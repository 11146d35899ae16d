import { type DocumentEdit, writtenId } from "../../core/base";
import type { Selection } from "../state";
import { idsOf, type ListName, listOf, objectsOf, putKey, textOf, type Written } from "../write/written";

/** Keys of steps and pieces that list ids, by what they name. */
const listed: Readonly<Record<string, readonly (readonly [ListName, string])[]>> = {
  steps: [["steps", "after"]],
  pieces: [
    ["steps", "puts"],
    ["steps", "takes"],
  ],
  places: [
    ["pieces", "fills"],
    ["steps", "alone"],
    ["places", "below"],
  ],
};

/** Takes a member out, with every plain mention of it; what else still speaks of it is named by the document's own check. */
export function removal(document: unknown, { list, id }: Selection): readonly DocumentEdit[] {
  const gone = writtenId(id);
  const without = (ids: readonly string[]): readonly string[] => ids.filter((one) => writtenId(one) !== gone);
  const edits: DocumentEdit[] = (listed[list] ?? []).flatMap(([from, key]) =>
    listOf(document, from).flatMap((member) => {
      const ids = idsOf(member[key]);
      return without(ids).length === ids.length ? [] : [putKey(from, textOf(member.id), key, without(ids))];
    }),
  );
  if (list === "steps") {
    for (const wait of listOf(document, "waits")) {
      if ([wait.from, wait.to].some((end) => writtenId(textOf(end)) === gone)) edits.push({ path: ["waits", `id=${textOf(wait.id)}`] });
    }
    for (const booking of listOf(document, "bookings")) {
      if (writtenId(textOf(booking.step)) === gone) edits.push({ path: ["bookings", `id=${textOf(booking.id)}`] });
    }
  }
  if (list === "pieces") edits.push(...holders(document, gone), ...leanings(document, gone));
  if (list === "places") edits.push(...reaching(document, gone));
  return [...edits, { path: [list, `id=${gone}`] }];
}

function holders(document: unknown, gone: string): DocumentEdit[] {
  return listOf(document, "pieces").flatMap((piece) => {
    const sets = Array.isArray(piece.heldBy) ? piece.heldBy.map(idsOf) : [];
    if (!sets.some((set) => set.map(writtenId).includes(gone))) return [];
    const left = sets.map((set) => set.filter((id) => writtenId(id) !== gone)).filter((set) => set.length > 0);
    return [putKey("pieces", textOf(piece.id), "heldBy", left)];
  });
}

function leanings(document: unknown, gone: string): DocumentEdit[] {
  return listOf(document, "steps").flatMap((step) => {
    const all = objectsOf(step.leansOn);
    const left = all.filter((lean) => writtenId(textOf(lean.piece)) !== gone);
    return left.length === all.length ? [] : [putKey("steps", textOf(step.id), "leansOn", left)];
  });
}

function reaching(document: unknown, gone: string): DocumentEdit[] {
  const named = (aim: Written): boolean => writtenId(textOf(aim.place)) === gone;
  return listOf(document, "steps").flatMap((step) => {
    const all = objectsOf(step.reaches);
    const left = all
      .filter((reach) => !named(reach))
      .map((reach) => (Array.isArray(reach.any) ? { ...reach, any: objectsOf(reach.any).filter((aim) => !named(aim)) } : reach))
      .filter((reach) => !("any" in reach) || (reach.any as readonly unknown[]).length > 0);
    const edits = JSON.stringify(left) === JSON.stringify(all) ? [] : [putKey("steps", textOf(step.id), "reaches", left)];
    return writtenId(textOf(step.place)) === gone ? [...edits, putKey("steps", textOf(step.id), "place", undefined)] : edits;
  });
}
