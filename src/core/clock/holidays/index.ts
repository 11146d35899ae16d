import { textOf } from "../dates";
import au from "./au.json";
import ca from "./ca.json";
import de from "./de.json";
import fr from "./fr.json";
import gbEngland from "./gb-england.json";
import ie from "./ie.json";
import nz from "./nz.json";
import usFederal from "./us-federal.json";

/** Days off by name, with the years the table speaks of. Dates are those on which it is kept, substitute days among them. */
export interface HolidayTable {
  readonly from: number;
  readonly to: number;
  readonly days: Readonly<Record<string, readonly string[]>>;
}

const tables: ReadonlyMap<string, HolidayTable> = new Map<string, HolidayTable>([
  ["au", au],
  ["ca", ca],
  ["de", de],
  ["fr", fr],
  ["gb-england", gbEngland],
  ["ie", ie],
  ["nz", nz],
  ["us-federal", usFederal],
]);

/** What a calendar's `holidays` may say. */
export const holidayTables: readonly string[] = [...tables.keys()];

export function holidayTable(name: string): HolidayTable | null {
  return tables.get(name) ?? null;
}

const read = new Map<string, ReadonlyMap<string, string>>();

/** By date as it is written: a clock asks for a year or two, and most of a table need not be read. */
function days(name: string): ReadonlyMap<string, string> {
  const known = read.get(name);
  if (known !== undefined) return known;
  const fresh = new Map<string, string>();
  for (const [holiday, dates] of Object.entries(tables.get(name)?.days ?? {})) {
    for (const date of dates) if (!fresh.has(date)) fresh.set(date, holiday);
  }
  read.set(name, fresh);
  return fresh;
}

/** Whether a day number (dates.ts) is a holiday of the table; never for null or an unknown table. */
export function holidaysOf(name: string | null): (number: number) => boolean {
  if (name === null) return () => false;
  const kept = days(name);
  return (number) => kept.has(textOf(number));
}

/** "Labour Day", or null when the local date is no holiday of the table. */
export function holidayName(table: string, date: string): string | null {
  return days(table).get(date) ?? null;
}
