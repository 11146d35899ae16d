import type { ElapsedMinute } from "../base";
import type { Booking, Build, Delivery } from "../build";
import type { Clocks } from "../clock";
import { fromMoment } from "./moments";

/**
 * From when on a delivery can be on site: the day that was promised; else as long after it is ordered as it takes. What is ordered counts from the first day of the
 * build; what is not can be ordered on the day from which work goes on, no sooner. Null where nothing is known.
 */
export function comesFrom(
  build: Build,
  clocks: Clocks,
  delivery: Delivery,
): { readonly at: ElapsedMinute; readonly by: "promised" | "lead" } | null {
  const { promised, lead, ordered } = delivery;
  if (promised !== null) return { at: fromMoment(clocks, promised), by: "promised" };
  if (lead === null) return null;
  return { at: clocks.of(lead.on).advance(ordered ? firstDay : goesOn(build, clocks), lead.amount), by: "lead" };
}

/** From when on what is booked for a step can be had, where neither a date is written nor that it was booked; null: nothing is known. */
export function bookedFrom(build: Build, clocks: Clocks, { date, lead, booked }: Booking): ElapsedMinute | null {
  return booked || date !== null || lead === null ? null : clocks.of(lead.on).advance(goesOn(build, clocks), lead.amount);
}

const firstDay = 0 as ElapsedMinute;

/** The minute from which what is left is planned. */
export function goesOn({ resumes }: Build, clocks: Clocks): ElapsedMinute {
  return resumes === null ? firstDay : (Math.max(firstDay, fromMoment(clocks, resumes)) as ElapsedMinute);
}
