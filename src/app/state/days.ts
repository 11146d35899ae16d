import { saidDay, saidTime, saidYearDate } from "../../core/clock";

/** How long what was thrown away, and each day's last state, can be brought back. */
export const keptDays = 30;
export const day_ms = 86_400_000;

/** When something thrown away at that instant goes for good. */
export const goneAfter_ms = (removed_ms: number): number => removed_ms + keptDays * day_ms;

/** Local date of an instant, "2027-05-04". */
export function localDay(at_ms: number): string {
  const at = new Date(at_ms);
  const two = (number: number): string => String(number).padStart(2, "0");
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}

/** "Tue 4 May 2027" of the day at the machine's own place, as dates are said. */
export function dayWords(at_ms: number): string {
  const at = new Date(at_ms);
  const [weekday] = saidDay(at.getDay(), at.getDate()).split(" ");
  return `${weekday} ${saidYearDate(at.getDate(), at.getMonth() + 1, String(at.getFullYear()))}`;
}

/** "Tue 4 May 2027, 15:30". */
export function momentWords(at_ms: number): string {
  const at = new Date(at_ms);
  return `${dayWords(at_ms)}, ${saidTime(at.getHours() * 60 + at.getMinutes())}`;
}

/** "640 bytes", "48 kB", "2.1 MB": powers of ten, as disks are sold. */
export function sizeWords(bytes: number): string {
  if (bytes < 1000) return `${bytes} bytes`;
  if (bytes < 999_500) return `${Math.round(bytes / 1000)} kB`;
  return `${(bytes / 1_000_000).toFixed(1)} MB`;
}
