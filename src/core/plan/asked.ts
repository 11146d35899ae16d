import type { DocumentEdit, ElapsedMinute, WayOut } from "../base";
import type { Build } from "../build";
import { clocksOf } from "../clock";
import type { Plan } from "./plan";

/** Something that has to be ordered or booked: its list, its id there, and the last minute to do so. */
export interface ToAsk {
  readonly list: "deliveries" | "bookings";
  readonly id: string;
  readonly by: ElapsedMinute;
}

/** Ticks that it was ordered or booked, or takes that tick off. */
export function askedEdit({ list, id }: Pick<ToAsk, "list" | "id">, was: boolean): DocumentEdit {
  const path = [list, `id=${id}`, list === "deliveries" ? "ordered" : "booked"];
  return was ? { path, value: true } : { path };
}

/** The tick as a way out. */
export function askedFor(ask: Pick<ToAsk, "list" | "id">): WayOut {
  const { list, id } = ask;
  return {
    kind: "asked-for",
    detail: list === "deliveries" ? { delivery: id } : { booking: id },
    edits: [askedEdit(ask, true)],
  };
}

/** What is neither ordered nor promised, or not booked, for what is still to be done; in time order. */
function stillToAsk(build: Build, plan: Plan): ToAsk[] {
  const open = (step: number): boolean => build.steps[step]?.done === null;
  const out: ToAsk[] = [];
  plan.deliveries.forEach(({ orderBy, firstStep }, at) => {
    const { id, ordered, promised } = build.deliveries[at]!;
    if (orderBy !== null && !ordered && promised === null && open(firstStep)) out.push({ list: "deliveries", id, by: orderBy });
  });
  plan.bookings.forEach(({ bookBy }, at) => {
    const { id, booked, step } = build.bookings[at]!;
    if (bookBy !== null && !booked && open(build.at.step.get(step)!)) out.push({ list: "bookings", id, by: bookBy });
  });
  return out.sort((a, b) => a.by - b.by);
}

/**
 * Of these, what had to be asked for before a local date.
 * @param date "2027-06-26"
 */
export function askOverdue(build: Build, plan: Plan, date: string): ToAsk[] {
  const { time } = clocksOf(build);
  const day = time.dayOfDate(date);
  if (day === null || plan.status !== "planned") return [];
  const start = time.startOf(day);
  return stillToAsk(build, plan).filter(({ by }) => by < start);
}
