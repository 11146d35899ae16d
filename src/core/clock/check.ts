import type { Finding, Where } from "../base";
import { readMoment } from "./dates";
import { holidayTable, holidayTables } from "./holidays";
import { siteTime } from "./site";
import { isZone, zone } from "./zone";

/** Whether the zone is one the platform knows: "America/New_York". */
export function checkZone(name: string, where: Where): Finding[] {
  return isZone(name) ? [] : [{ code: "clock.unknown-zone", severity: "stop", where, detail: { zone: name } }];
}

/** A note where the site's clocks skip the time of day on that date, so that it is read as the first minute after. The zone must be known. */
export function checkSkipped(moment: string, zoneName: string, where: Where): Finding[] {
  const read = readMoment(moment);
  if (read === null || !zone(zoneName).skips(read.number * 1440 + read.minute)) return [];
  const time = siteTime(zoneName, moment.slice(0, 10));
  const means = time.momentOf(time.at(0, read.minute));
  return [{ code: "clock.time-skipped", severity: "note", where, detail: { moment, means } }];
}

/** Whether the holiday table exists (detail.known: those there are) and reaches from the build's first year on (detail.from, detail.to). */
export function checkHolidays(name: string, firstYear: number, where: Where): Finding[] {
  const table = holidayTable(name);
  if (table === null) return [{ code: "clock.unknown-holidays", severity: "stop", where, detail: { table: name, known: holidayTables } }];
  if (firstYear >= table.from && firstYear <= table.to) return [];
  return [
    { code: "clock.holidays-end", severity: "look", where, detail: { table: name, year: firstYear, from: table.from, to: table.to } },
  ];
}
