/**
 * A time of day as somebody types it, "7am", "7:30 PM", "7.30", "13:00" or "7", as the document writes it, "7:30"; null where it is none.
 * Twelve is noon with pm and midnight with am.
 */
export function timeTyped(typed: string): string | null {
  const [, hour = "", minute = "00", half] = /^(\d{1,2})(?:[:.](\d{2}))?\s*(?:([ap])\.?m\.?)?$/i.exec(typed.trim()) ?? [];
  if (hour === "" || Number(minute) > 59) return null;
  if (half === undefined) return `${Number(hour)}:${minute}`;
  if (Number(hour) < 1 || Number(hour) > 12) return null;
  return `${(Number(hour) % 12) + (half.toLowerCase() === "p" ? 12 : 0)}:${minute}`;
}
