import type { Sayings } from "./build/sayings";
import { plainDate } from "./dates";
import { listed, quoted } from "./text";
import { figure, list, text } from "./voice";

/** Sentences for what the clocks find in dates, zones and holiday tables. */
export const clockSayings = {
  "clock.unknown-zone": ({ at, detail }) =>
    `${at}: ${quoted(text(detail, "zone"))} is no time zone; write one like America/New_York or Europe/Berlin`,
  "clock.time-skipped": ({ at, detail }) => {
    const [moment, means] = [text(detail, "moment"), text(detail, "means")];
    return `${at}: on ${plainDate(moment)} the clocks go forward over ${moment.slice(11)}, so ${means.slice(11)} is meant`;
  },
  "clock.unknown-holidays": ({ at, detail }) =>
    `${at}: there is no table of holidays ${quoted(text(detail, "table"))}; there are ${listed(list(detail, "known").map(quoted))}`,
  "clock.holidays-end": ({ at, detail }) =>
    `${at}: the holidays ${quoted(text(detail, "table"))} are known from ${figure(detail, "from")} to ${figure(detail, "to")}; outside these years write the days off yourself`,
} satisfies Sayings;
