import { type Clock, type ElapsedMinute, lastRunning, never, notEver } from "../base";
import type { Problem, Solution } from "../schedule";
import { lastStart, type Net } from "../schedule";
import type { Bound } from "./bound";
import type { BookingDates, DeliveryDates } from "./plan";

/**
 * Deliveries and bookings of a plan. A delivery that nobody has promised comes as late as it can with no step moved; the latest date to order it follows
 * from there by its lead time.
 */
export function deliveryDates(bound: Bound, served: Problem, net: Net, s: Solution, late: Solution): DeliveryDates[] {
  const { build, clocks } = bound;
  const steps = build.steps.length;
  return build.deliveries.map((delivery, d) => {
    const j = steps + d;
    let neededBy: number = never;
    let firstStep = -1;
    for (let k = net.adj.outAt[j]!; k < net.adj.outAt[j + 1]!; k++) {
      const to = served.links.to[net.adj.out[k]!]!;
      if (s.start[to]! >= neededBy) continue;
      neededBy = s.start[to]!;
      firstStep = to;
    }
    const earliest = s.start[j]! as ElapsedMinute;
    const latest = neededBy >= never ? earliest : lastStart(served, j, neededBy as ElapsedMinute);
    const arrives = delivery.promised === null ? (Math.max(earliest, latest) as ElapsedMinute) : earliest;
    const order = delivery.ordered || delivery.lead === null ? null : clocks.of(delivery.lead.on).retreat(arrives, delivery.lead.amount);
    return {
      arrives,
      neededBy: neededBy as ElapsedMinute,
      firstStep,
      orderBy: order === null ? null : asked(clocks.calendar(delivery.calendar), order),
      slack: Math.max(0, Math.min(late.start[j]!, never) - arrives),
    };
  });
}

export function bookingDates(bound: Bound, s: Solution): BookingDates[] {
  const { build, clocks } = bound;
  return build.bookings.map((booking) => {
    const at = s.start[build.at.step.get(booking.step)!]! as ElapsedMinute;
    const by = booking.booked || booking.lead === null ? null : clocks.of(booking.lead.on).retreat(at, booking.lead.amount);
    return { at, bookBy: by === null ? null : asked(clocks.calendar(booking.calendar), by) };
  });
}

/**
 * Until when somebody is there to be asked: the last open minute of the calendar up to `by`. Where that is before the first day and `by` is not, `by` itself: what a
 * plan from that day on counts with.
 */
function asked(calendar: Clock, by: ElapsedMinute): ElapsedMinute | null {
  if (by <= notEver) return null;
  const open = lastRunning(calendar, by);
  return open <= notEver || (open < 0 && by >= 0) ? by : open;
}
