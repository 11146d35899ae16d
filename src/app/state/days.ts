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

const language = (): string => {
  try {
    return Intl.DateTimeFormat.supportedLocalesOf(navigator.language)[0] ?? "en-US";
  } catch {
    return "en-US";
  }
};

const format = (options: Intl.DateTimeFormatOptions): ((at_ms: number) => string) => {
  let made: Intl.DateTimeFormat | null = null;
  return (at_ms) => {
    made ??= new Intl.DateTimeFormat(language(), options);
    return made.format(at_ms);
  };
};

/** "Tue, May 4, 2027" as the builder's own machine writes dates. */
export const dayWords = format({ weekday: "short", day: "numeric", month: "short", year: "numeric" });
/** The same with the time of day. */
export const momentWords = format({
  weekday: "short",
  day: "numeric",
  month: "short",
  year: "numeric",
  hour: "numeric",
  minute: "2-digit",
});

/** "640 bytes", "48 kB", "2.1 MB": powers of ten, as disks are sold. */
export function sizeWords(bytes: number): string {
  if (bytes < 1000) return `${bytes} bytes`;
  if (bytes < 1_000_000) return `${Math.round(bytes / 1000)} kB`;
  return `${(bytes / 1_000_000).toFixed(1)} MB`;
}
