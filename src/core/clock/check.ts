import type { Finding, Where } from "../base";
import { daysInMonth, readMoment } from "./dates";
import { holidayTable, holidayTables } from "./holidays";
import { siteTime } from "./site";
import { isZone, zone } from "./zone";

/** Whether the zone is one the platform knows: "America/New_York". */
export function checkZone(name: string, where: Where): Finding[] {
  return isZone(name) ? [] : [{ code: "clock.unknown-zone", severity: "stop", where, detail: { zone: name } }];
}

/**
 * Whether "2027-06-26" or "2027-06-26T07:30" is written so and exists. detail.why: "form" (not written so), "month", "day" (detail.days: how many that
 * month has) or "time".
 */
export function checkDate(text: string, where: Where): Finding[] {
  if (readMoment(text) !== null) return [];
  const finding = (detail: Finding["detail"]): Finding[] => [
    { code: "clock.no-such-date", severity: "stop", where, detail: { date: text, ...detail } },
  ];
  const match = /^(\d{4})-(\d{2})-(\d{2})(T\d{2}:\d{2})?$/.exec(text);
  if (match === null || Number(match[1]) < 1900) return finding({ why: "form" });
  const month = Number(match[2]);
  if (month < 1 || month > 12) return finding({ why: "month" });
  const days = daysInMonth(Number(match[1]), month);
  if (Number(match[3]) < 1 || Number(match[3]) > days) return finding({ why: "day", month, days });
  return finding({ why: "time" });
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
