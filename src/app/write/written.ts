import type { DocumentEdit } from "../../core/base";

/** A member of one of the document's lists, as written. Values are read with care: the document may come from anywhere. */
export type Written = Readonly<Record<string, unknown>>;

export type ListName = "places" | "pieces" | "steps" | "waits" | "deliveries" | "bookings" | "calendars" | "people" | "equipment" | "stock";

const isObject = (value: unknown): value is Written => typeof value === "object" && value !== null && !Array.isArray(value);

/** The members of a list, as written; empty where there is none. */
export function listOf(document: unknown, list: ListName | "groups"): readonly Written[] {
  const members = isObject(document) ? document[list] : undefined;
  return Array.isArray(members) ? members.filter(isObject) : [];
}

/** A copy's id without its number: copies of a group are written once. */
export const writtenId = (id: string): string => id.split("#")[0] as string;

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
  if (three.length === 3) return { ...(isObject(before) && "low" in before ? before : {}), low: three[0], likely: three[1], high: three[2] };
  if (isObject(before) && "is" in before) return { ...before, is: text };
  return text;
}

/** Writes `value` at a key of a member; nothing to write takes the key out. */
export function putKey(list: ListName, id: string, key: string, value: unknown): DocumentEdit {
  const path = [list, `id=${writtenId(id)}`, key];
  const empty = value === undefined || value === "" || (Array.isArray(value) && value.length === 0);
  return empty ? { path } : { path, value };
}

/** An id from a name, "tie-column-bars", with a number behind it where it is taken. */
export function idFrom(name: string, document: unknown): string {
  const taken = new Set(
    ["places", "pieces", "steps", "waits", "deliveries", "bookings", "groups"].flatMap((list) =>
      listOf(document, list as ListName).map((member) => member.id),
    ),
  );
  const plain = name
    .normalize("NFD")
    .replace(/\p{Mn}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^[^a-z]+|-+$/g, "")
    .slice(0, 40);
  const base = plain === "" ? "thing" : plain;
  for (let count = 1; ; count += 1) {
    const id = count === 1 ? base : `${base}-${count}`;
    if (!taken.has(id)) return id;
  }
}

/** A new member at the end of its list. */
export function append(document: unknown, list: ListName, member: Written): DocumentEdit {
  const members = isObject(document) ? document[list] : undefined;
  return Array.isArray(members) ? { path: [list, `id=${textOf(member.id)}`], value: member } : { path: [list], value: [member] };
}
