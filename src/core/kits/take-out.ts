import { type DocumentEdit, writtenId } from "../base";
import type { ListName } from "../build";
import { apply, type Lost, lostWith, type Removable, removeMember } from "../edit";
import { listOf, partsOf } from "./document";

export interface TakenOut {
  readonly edits: readonly DocumentEdit[];
  /** Members of others that go with it or lose what they say of it; those the part made itself are not named. */
  readonly lost: readonly Lost[];
}

/** Bookings, waits and pours go with their steps: what an order of lists leaves is nothing. Groups go first, so that no member is taken from one that goes anyway. */
const order: readonly ListName[] = [
  "groups",
  "solids",
  "pours",
  "bookings",
  "waits",
  "choices",
  "steps",
  "pieces",
  "places",
  "deliveries",
  "stock",
  "equipment",
  "people",
  "calendars",
];

const isThere = (document: unknown, list: ListName, id: string): boolean => listOf(document, list).some((member) => member.id === id);

/** Edits that take members out one after the other, each with what then still speaks of it. */
export function removal(document: unknown, members: readonly (readonly [ListName, string])[]): TakenOut {
  const own = new Set(members.map(([list, id]) => `${list}/${id}`));
  const sorted = [...members].sort(([a], [b]) => order.indexOf(a) - order.indexOf(b));
  const lost = new Map<string, Lost>();
  const edits: DocumentEdit[] = [];
  let now = document;
  for (const [list, id] of sorted) {
    if (!isThere(now, list, id)) continue;
    for (const one of lostWith(now, list as Removable, id)) {
      const key = `${one.list}/${writtenId(one.id)}`;
      if (!own.has(key) && (one.goes || !lost.has(key))) lost.set(key, one);
    }
    const taking = removeMember(now, list as Removable, id);
    edits.push(...taking);
    now = apply(now, taking).document;
  }
  return { edits, lost: [...lost.values()] };
}

/** Edits that take a part out with everything it made that is still there. What kits share stays. Nothing where there is no such part. */
export function takeOut(document: unknown, partId: string): TakenOut {
  const part = partsOf(document).find(({ id }) => id === partId);
  if (part === undefined) return { edits: [], lost: [] };
  const members = (Object.entries(part.made) as [ListName, readonly string[]][]).flatMap(([list, ids]) =>
    ids.map((id): readonly [ListName, string] => [list, id]),
  );
  const { edits, lost } = removal(
    document,
    members.filter(([list]) => order.includes(list)),
  );
  return { edits: [...edits, { path: ["parts", `id=${partId}`] }], lost };
}
