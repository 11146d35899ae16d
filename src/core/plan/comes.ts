import type { ElapsedMinute } from "../base";
import type { Build, Delivery } from "../build";
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
  const asked = ordered || build.resumes === null ? 0 : Math.max(0, fromMoment(clocks, build.resumes));
  return { at: clocks.of(lead.on).advance(asked as ElapsedMinute, lead.amount), by: "lead" };
}
