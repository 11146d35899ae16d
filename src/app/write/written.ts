import { type DocumentEdit, writtenId } from "../../core/base";
import { addMember, idFrom as freshId, setField } from "../../core/edit";

/** A member of one of the document's lists, as written. Values are read with care: the document may come from anywhere. */
export type Written = Readonly<Record<string, unknown>>;

export type ListName =
  | "places"
  | "pieces"
  | "steps"
  | "waits"
  | "deliveries"
  | "bookings"
  | "calendars"
  | "people"
  | "equipment"
  | "stock"
  | "pours";

export const isObject = (value: unknown): value is Written => typeof value === "object" && value !== null && !Array.isArray(value);

/** The members of a list, as written; empty where there is none. */
export function listOf(document: unknown, list: ListName | "groups" | "choices"): readonly Written[] {
  const members = isObject(document) ? document[list] : undefined;
  return Array.isArray(members) ? members.filter(isObject) : [];
}

export function memberOf(document: unknown, list: ListName, id: string): Written | null {
  return listOf(document, list).find((member) => member.id === writtenId(id)) ?? null;
}

export const textOf = (value: unknown): string => (typeof value === "string" ? value : typeof value === "number" ? String(value) : "");

export const idsOf = (value: unknown): readonly string[] =>
  Array.isArray(value) ? value.filter((id): id is string => typeof id === "string") : [];

export const objectsOf = (value: unknown): readonly Written[] => (Array.isArray(value) ? value.filter(isObject) : []);

/** A quantity as the builder typed it, its source left aside. */
export function quantityOf(value: unknown): string {
  if (!isObject(value)) return textOf(value);
  if ("is" in value) return textOf(value.is) + ("on" in value ? ` of ${textOf(value.on)}` : "");
  return ["low", "likely", "high"].map((key) => quantityOf(value[key])).join(" / ");
}

/** The same quantity with another figure: where it comes from and its calendar stay beside it. */
export function withFigure(before: unknown, typed: string): unknown {
  const text = typed.trim();
  if (text === "") return undefined;
  const three = text.split("/").map((part) => part.trim());
  if (three.length === 3)
    return { ...(isObject(before) && "low" in before ? before : {}), low: three[0], likely: three[1], high: three[2] };
  if (isObject(before) && "is" in before) return { ...before, is: text };
  return text;
}

/** Writes `value` at a key of a member; nothing to write takes the key out. */
export function putKey(list: ListName, id: string, key: string, value: unknown): DocumentEdit {
  const empty = value === undefined || value === "" || (Array.isArray(value) && value.length === 0);
  return setField(list, id, key, empty ? undefined : value);
}

/** An id from a name, "tie-column-bars", that no member of the document has. */
export function idFrom(name: string, document: unknown): string {
  const taken = idLists.flatMap((list) => listOf(document, list).map((member) => textOf(member.id)));
  // Without its accents first: an accent alone is no letter of an id.
  return freshId(name.normalize("NFKD").replace(/\p{Mn}/gu, ""), taken);
}

const idLists = ["places", "pieces", "steps", "waits", "deliveries", "bookings", "groups", "pours"] as const;

/** A new member at the end of its list; the list is made where there is none. */
export function append(list: ListName, member: Written & { readonly id: string }): DocumentEdit {
  return addMember(list, member);
}
