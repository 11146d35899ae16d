const weekdays = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"] as const;
const months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"] as const;

/** How days and times of day are said; nothing that is planned depends on it. */
export interface DateStyle {
  /** "19 Jun" or "Jun 19". */
  readonly order: "day month" | "month day";
  /** "15:30" or "3:30 pm". */
  readonly hours: 24 | 12;
}

export const plainStyle: DateStyle = { order: "day month", hours: 24 };

/** One for the whole program, set where it starts: every drawing and sentence says a date alike. */
let style = plainStyle;

export function sayDates(next: DateStyle): void {
  style = next;
}

/** "Sat 19" of a Saturday (6). */
export const saidDay = (weekday: number, day: number): string => `${weekdays[weekday] ?? ""} ${day}`;

/** "19 Jun", "Jun 19" of the month 6. */
export function saidDate(day: number, month: number): string {
  const name = months[month - 1] ?? "";
  return style.order === "day month" ? `${day} ${name}` : `${name} ${day}`;
}

/** "Sat 19 Jun", "Sat Jun 19". */
export const saidWeekdayDate = (weekday: number, day: number, month: number): string =>
  `${weekdays[weekday] ?? ""} ${saidDate(day, month)}`;

/** "19 Jun 2027", "Jun 19, 2027". */
export const saidYearDate = (day: number, month: number, year: string): string =>
  `${saidDate(day, month)}${style.order === "day month" ? " " : ", "}${year}`;

/** "15:30", "3:30 pm" of 930 minutes after midnight. */
export function saidTime(minute: number): string {
  const hour = Math.floor(minute / 60);
  const rest = String(minute % 60).padStart(2, "0");
  if (style.hours === 24) return `${hour}:${rest}`;
  return `${hour % 12 === 0 ? 12 : hour % 12}:${rest} ${hour % 24 < 12 ? "am" : "pm"}`;
}
