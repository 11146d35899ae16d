import type { DateStyle } from "../../core/clock";

/** How dates are said on this machine: as its own language does, or as was chosen. */
export type Dates = "system" | "day month 24" | "month day 12";

const chosen: Readonly<Record<Exclude<Dates, "system">, DateStyle>> = {
  "day month 24": { order: "day month", hours: 24 },
  "month day 12": { order: "month day", hours: 12 },
};

/** The order of day and month and the hours of a language; "en-US" says Jun 26 and 3:30 pm. */
export function styleOf(dates: Dates, language: string): DateStyle {
  if (dates !== "system") return chosen[dates];
  const format = new Intl.DateTimeFormat(known(language), { month: "short", day: "numeric", hour: "numeric" });
  const parts = format.formatToParts(0).map(({ type }) => type);
  return {
    order: parts.indexOf("month") < parts.indexOf("day") ? "month day" : "day month",
    hours: format.resolvedOptions().hour12 === true ? 12 : 24,
  };
}

/** What the machine calls its language may be none that its formats know. */
function known(language: string): string {
  try {
    return Intl.DateTimeFormat.supportedLocalesOf(language)[0] ?? "en-GB";
  } catch {
    return "en-GB";
  }
}
