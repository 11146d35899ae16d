import { idFrom } from "../../core/edit";
import { idsOf, isObject, objectsOf, textOf } from "../write/written";
import { timeTyped } from "./time-typed";

/** An id from a name that nothing in the document has: what brings stock is told from what uses it by its id alone. */
export function freshId(document: unknown, name: string): string {
  const lists = isObject(document) ? Object.values(document).filter(Array.isArray) : [];
  return idFrom(
    name,
    lists.flatMap((list) => objectsOf(list).map(({ id }) => textOf(id))),
  );
}

/** Every role that somebody has or a step asks for; "hands" is anybody. */
export function rolesIn(document: unknown): readonly string[] {
  if (!isObject(document)) return [];
  const had = objectsOf(document.people).flatMap(({ roles }) => idsOf(roles));
  const asked = objectsOf(document.steps).flatMap(({ hands }) => objectsOf(hands).map(({ role }) => textOf(role)));
  return [...new Set([...had, ...asked])].filter((role) => role !== "" && role !== "hands").sort();
}

/** A date, and a time behind it where one is written: "2027-06-26", "2027-06-26T07:30". */
export function momentParts(value: unknown): { readonly date: string; readonly time: string } {
  const [date = "", time = ""] = textOf(value).split(/[T ]/);
  return { date, time: time.replace(/^0(\d:)/, "$1") };
}

/** The document's form of the two; a time without a date is nothing. */
export function momentOf(date: string, time: string): string | undefined {
  const typed = timeTyped(time) ?? time.trim();
  if (date === "") return undefined;
  return typed === "" ? date : `${date}T${typed.length === 4 ? `0${typed}` : typed}`;
}

/** A figure typed without its scale is meant in the scale on screen. */
export function withScale(typed: string, units: "us" | "metric"): string {
  const text = typed.trim().replace(/^[−–]/, "-");
  return /^-?\d+(?:[.,]\d+)?$/.test(text) ? `${text.replace(",", ".")} ${units === "us" ? "°F" : "°C"}` : typed;
}

/** The weekday on which weeks begin where a language is spoken, 0 is Sunday; Monday where nobody knows. */
export function firstWeekday(language: string): number {
  try {
    const locale: unknown = new Intl.Locale(language);
    const told = locale as { getWeekInfo?(): { readonly firstDay: number }; readonly weekInfo?: { readonly firstDay: number } };
    return (told.getWeekInfo?.() ?? told.weekInfo)?.firstDay === 7 ? 0 : 1;
  } catch {
    return 1;
  }
}
