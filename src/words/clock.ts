import type { Sayings } from "./build/sayings";
import { plainDate } from "./dates";
import { listed, quoted } from "./text";
import { figure, list, text } from "./voice";

/** Sentences for what the clocks find in dates, zones and holiday tables. */
export const clockSayings = {
  "clock.unknown-zone": ({ at, detail }) =>
    `${at}: ${quoted(text(detail, "zone"))} is no time zone; write one like America/New_York or Europe/Berlin`,
  "clock.no-such-date": ({ at, detail }) => {
    const date = quoted(text(detail, "date"));
    if (text(detail, "why") === "day") return `${at}: ${date} does not exist, as that month has ${figure(detail, "days")} days`;
    if (text(detail, "why") === "month") return `${at}: ${date} does not exist, as months go from 01 to 12`;
    if (text(detail, "why") === "time") return `${at}: ${date} has no such time of day; hours go from 00 to 23 and minutes to 59`;
    return `${at}: ${date} is not a date; write it like 2027-06-26 or 2027-06-26T07:30`;
  },
  "clock.time-skipped": ({ at, detail }) => {
    const [moment, means] = [text(detail, "moment"), text(detail, "means")];
    return `${at}: on ${plainDate(moment)} the clocks go forward over ${moment.slice(11)}, so ${means.slice(11)} is meant`;
  },
  "clock.unknown-holidays": ({ at, detail }) =>
    `${at}: there is no table of holidays ${quoted(text(detail, "table"))}; there are ${listed(list(detail, "known").map(quoted))}`,
  "clock.holidays-end": ({ at, detail }) =>
    `${at}: the holidays ${quoted(text(detail, "table"))} are known from ${figure(detail, "from")} to ${figure(detail, "to")}; outside these years write the days off yourself`,
} satisfies Sayings;
