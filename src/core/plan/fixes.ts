import type { Build, LocalMoment } from "../build";
import { isDate } from "./moments";

/** A date that one step is to start on: its own (booking -1), or that of a booking (position in the build). */
export interface Fix {
  readonly booking: number;
  readonly moment: LocalMoment;
}

/** By step, the dates it is to start on, its own first. */
export function fixesOf(build: Build): ReadonlyMap<number, readonly Fix[]> {
  const by = new Map<number, Fix[]>();
  build.steps.forEach(({ fixed }, s) => {
    if (fixed !== null) by.set(s, [{ booking: -1, moment: fixed }]);
  });
  build.bookings.forEach(({ step, date }, booking) => {
    if (date === null) return;
    const s = build.at.step.get(step)!;
    by.set(s, [...(by.get(s) ?? []), { booking, moment: date }]);
  });
  return by;
}

/** Two moments can be kept by one start when they are the same, or one is the date of the other. */
function agree(a: LocalMoment, b: LocalMoment): boolean {
  return a === b || (isDate(a) !== isDate(b) && a.slice(0, 10) === b.slice(0, 10));
}

/** Those that one start can keep, the first before the others. */
export function together(fixes: readonly Fix[]): readonly Fix[] {
  const kept: Fix[] = [];
  for (const fix of fixes) if (kept.every((k) => agree(k.moment, fix.moment))) kept.push(fix);
  return kept;
}

/** The first two that no start can keep; null when one can keep all. */
export function firstClash(fixes: readonly Fix[]): readonly [Fix, Fix] | null {
  for (const [k, b] of fixes.entries()) {
    const a = fixes.slice(0, k).find((x) => !agree(x.moment, b.moment));
    if (a !== undefined) return [a, b];
  }
  return null;
}
