import { isObject, listOf, objectsOf, textOf } from "../write/written";

/** Whose holidays a calendar's table keeps, as one says it. */
export const holidayPlaces: Readonly<Record<string, string>> = {
  au: "Australia",
  ca: "Canada",
  de: "Germany",
  fr: "France",
  "gb-england": "England",
  ie: "Ireland",
  nz: "New Zealand",
  "us-federal": "United States, federal",
};

/** Whether a calendar keeps the holidays of a table is nobody's word: kits take the table by the time zone of the site. */
export interface GuessedHolidays {
  readonly id: string;
  readonly name: string;
  readonly place: string;
}

/** Calendars that keep a table of holidays, of a document with parts from kits. */
export function guessedHolidays(document: unknown): readonly GuessedHolidays[] {
  if (!isObject(document) || objectsOf(document.parts).length === 0) return [];
  return listOf(document, "calendars").flatMap((calendar) => {
    const table = textOf(calendar.holidays);
    if (table === "") return [];
    const id = textOf(calendar.id);
    return [{ id, name: textOf(calendar.name) || id.replaceAll("-", " "), place: holidayPlaces[table] ?? table }];
  });
}
