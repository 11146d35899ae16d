import { type Display, type DocumentEdit, never } from "../../core/base";
import type { Build } from "../../core/build";
import { type SiteTime, siteTime } from "../../core/clock";
import type { Bought, OneMoreRow, OneMoreTable } from "../../core/plan";
import { counted, sentence, spelled, spelledFigure, upper } from "../text";
import { type Voice, voice, workWords } from "../voice";
import { ofThing } from "./of-thing";

export interface OneMoreWords {
  /** The finish as it stands; why there is no table where there is none. */
  readonly lead: string;
  /** What buys most stands first, what buys nothing last. */
  readonly rows: readonly OneMoreLine[];
}

export interface OneMoreLine {
  /** "A day off for Ruth and Owen" */
  readonly what: string;
  /** What the first buys, and the second. */
  readonly sentence: string;
  readonly buys: boolean;
  /** The change that makes the first so, and what it is called in a list of changes. */
  readonly edits: readonly DocumentEdit[];
  readonly change: string;
}

/** What one more of everything would buy, in sentences. `build` is the one as it stands. */
export function oneMoreWords(table: OneMoreTable, build: Build, display?: Display): OneMoreWords {
  const say = voice(build, display);
  const time = siteTime(build.site.zone, build.start);
  if (table.done && table.finish >= never) return { lead: "The build has no dates yet, so nothing can be said of more.", rows: [] };
  const lead = table.finish >= never ? "" : leadOf(table, say);
  const rows = table.rows.map((row) => ({ row, line: lineOf(row, table, say, time) }));
  rows.sort((a, b) => gainOf(b.row) - gainOf(a.row));
  return { lead, rows: rows.map(({ line }) => line) };
}

function leadOf({ finish, planned }: OneMoreTable, say: Voice): string {
  if (planned <= finish) return `As it stands the finish is ${say.finish(finish)}.`;
  return `As it stands the finish is ${say.finish(planned)}. Another order of the work alone makes it ${say.finish(finish)}: what more buys is counted from there.`;
}

/** "67 of 383 plans made" */
export const oneMoreProgress = ({ made, toMake }: OneMoreTable): string => `${made} of ${counted(toMake, "plan")} made`;

const gainOf = ({ bought }: OneMoreRow): number => bought[0]?.earlier_min ?? 0;

function lineOf(row: OneMoreRow, table: OneMoreTable, say: Voice, time: SiteTime): OneMoreLine {
  const what = upper(whatOf(row, say));
  const [first, second] = row.bought;
  const change = first?.date == null ? whatOf(row, say) : `${whatOf(row, say)} on ${say.day(time.minuteOf(first.date) ?? 0)}`;
  const edits = first?.edits ?? [];
  if (first === undefined || first.earlier_min === 0) {
    const tried = row.dates > 1 ? `, on whichever of ${spelled(row.dates, "day")} tried` : "";
    return { what, sentence: `Buys nothing${tried}.`, buys: false, edits, change };
  }
  const on = first.date === null ? "" : `on ${say.day(time.minuteOf(first.date) ?? 0)} `;
  const said = [
    sentence(
      `${on}it is worth ${worth(first, table.finish, time)}: the finish is ${say.finish(first.finish)} instead of ${say.finish(table.finish)}`,
    ),
  ];
  if (second !== undefined) said.push(sentence(secondOf(second, first, say, time)));
  return { what, sentence: said.join(" "), buys: true, edits, change };
}

function secondOf(second: Bought, first: Bought, say: Voice, time: SiteTime): string {
  if (second.earlier_min === 0) return "a second buys nothing";
  const on = second.date === null ? "" : `, on ${say.day(time.minuteOf(second.date) ?? 0)},`;
  return `a second${on} is worth ${worth(second, first.finish, time)} more`;
}

/** "a week", "five days, one of them a site day", "2 h on its last day" */
function worth({ finish, siteDays, earlier_min }: Bought, before: number, time: SiteTime): string {
  const days = time.dayOf(before - 1) - time.dayOf(finish - 1);
  if (days === 0) return `${workWords(earlier_min)} on its last day`;
  const weeks = days / 7;
  const span = Number.isInteger(weeks)
    ? weeks === 1
      ? "a week"
      : `${spelledFigure(weeks)} weeks`
    : days === 1
      ? "a day"
      : spelled(days, "day");
  return `${span} (${siteDays === 0 ? "no site day" : spelled(siteDays, "site day")})`;
}

function whatOf({ kind, id, who, number }: OneMoreRow, say: Voice): string {
  switch (kind) {
    case "day-off":
      return `a day off for ${say.people(who)}`;
    case "helper-day":
      return who.length === 0 ? "a day of a helper" : `one more day of ${say.people(who)}`;
    case "visit-day":
      return `one more day of ${say.thing("calendars", id)}`;
    case "other-date":
      return `another date for ${say.thing("bookings", id)}`;
    case "stock":
    case "equipment":
      return ofThing(id, number, say);
  }
}
