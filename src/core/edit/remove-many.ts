import { type DocumentEdit, writtenId } from "../base";
import { apply } from "./apply";
import { type Lost, lostWith } from "./pours";
import { type Removable, removeMember } from "./remove";
import { memberOf, membersOf, textsOf } from "./written";

export interface Removal {
  readonly edits: readonly DocumentEdit[];
  /** Members of others that go with it or lose what they say of it, each once; what was to go anyway is not named. */
  readonly lost: readonly Lost[];
}

/** Bookings, waits and pours go with their steps. Groups go first, so that no member is taken from one that goes anyway. */
const order: readonly Removable[] = [
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

/** Edits that take members out one after the other, each with what then still speaks of it; in the list's own order, whatever order they are given in. */
export function removeMany(document: unknown, members: readonly (readonly [list: string, copyOrId: string])[]): Removal {
  const wanted = new Map(
    members.flatMap(([list, id]) =>
      order.some((one) => one === list) ? [[`${list}/${writtenId(id)}`, [list as Removable, writtenId(id)] as const]] : [],
    ),
  );
  const sorted = [...wanted.values()].sort(([a], [b]) => order.indexOf(a) - order.indexOf(b));
  const lost = new Map<string, Lost>();
  const edits: DocumentEdit[] = [];
  let now = document;
  for (const [list, id] of sorted) {
    if (memberOf(now, list, id) === undefined) continue;
    const taking = removeMember(now, list, id);
    for (const one of lostWith(now, list, id)) {
      const key = `${one.list}/${writtenId(one.id)}`;
      if (!wanted.has(key) && (one.goes || !lost.has(key))) lost.set(key, one);
    }
    edits.push(...taking);
    now = apply(now, taking).document;
  }
  return { edits, lost: [...lost.values()] };
}

/** Pieces that steps put up: without those steps nothing does, as a piece goes up once. */
export function putUpBy(document: unknown, steps: readonly string[]): readonly string[] {
  const ids = new Set(steps.map(writtenId));
  return [...new Set(membersOf(document, "steps").flatMap((step) => (ids.has(step.id) ? textsOf(step.puts).map(writtenId) : [])))];
}

/** Edits after which steps are done in another place. A copy stands for all of its group. */
export const moveTo = (steps: readonly string[], place: string): readonly DocumentEdit[] =>
  [...new Set(steps.map(writtenId))].map(
    (id): DocumentEdit =>
      place === "" ? { path: ["steps", `id=${id}`, "place"] } : { path: ["steps", `id=${id}`, "place"], value: place },
  );
