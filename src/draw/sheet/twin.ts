import type { Build } from "../../core/build";
import { siteTime } from "../../core/clock";
import type { Plan } from "../../core/plan";
import { begunBefore } from "../../words";
import { nameOf, stepLabel } from "../text/names";
import { dateLabel, momentLabel, spanLabel } from "../time/labels";
import { crewOf } from "./blocks";
import { laneOfSteps } from "./lanes";
import { gapReason } from "./reasons";
import { dayRows, visitRows, waitRows } from "./twin-more";

/** One row of the sheet as text, for screen readers and print. */
export interface TwinRow {
  readonly list: "steps" | "deliveries" | "bookings" | "waits" | "visits" | "days";
  /** Of the step, delivery or booking; of the step that starts a wait or is looked after on a visit; the date of a day. */
  readonly id: string;
  /** Unique in the table. */
  readonly key: string;
  readonly at: number;
  readonly name: string;
  readonly place: string;
  readonly when: string;
  readonly hands: string;
  /** Closings, waits that start here, whether it is on the chalk line, slack. */
  readonly notes: readonly string[];
}

export const twinHeadings = ["what", "where", "when", "hands", "notes"] as const;

/** Everything the sheet shows, in the order of time: days with their hands and daylight, steps, waits, visits, deliveries and bookings. */
export function twinRows(build: Build, plan: Plan): TwinRow[] {
  const time = siteTime(build.site.zone, build.start);
  const laneOf = laneOfSteps(build);
  const rows: Omit<TwinRow, "key">[] = plan.steps.map((dates, index) => {
    const step = build.steps[index]!;
    const notes: string[] = [];
    for (const closing of plan.closings)
      if (closing.step === index)
        notes.push(
          `${build.pieces[closing.piece]?.name ?? "it"} closes ${closed(build, closing.piece)} ${momentLabel(time, closing.at)}${closing.forGood ? ", for good" : ""}`,
        );
    if (dates.onChain) {
      const why = gapReason(build, plan, dates.holder);
      notes.push(why === null ? "on the chalk line" : `on the chalk line: ${why}`);
    } else if (dates.slack > 0) notes.push(`slack to ${momentLabel(time, dates.latestFinish)}`);
    const hands = crewOf(step.hands);
    return {
      list: "steps",
      id: step.id,
      at: dates.start,
      name: stepLabel(step),
      place: placeName(build, laneOf[index] as number),
      when: begunBefore(step, build)?.span ?? spanLabel(time, dates.start, dates.finish),
      hands: hands === 0 ? "" : String(hands),
      notes,
    };
  });
  build.deliveries.forEach((delivery, index) => {
    const dates = plan.deliveries[index];
    if (!dates) return;
    const notes = [`needed by ${momentLabel(time, dates.neededBy)}`];
    if (!delivery.ordered && dates.orderBy !== null) notes.unshift(`order by ${dateLabel(time, dates.orderBy)}`);
    if (dates.arrives > dates.neededBy) notes.push("late");
    rows.push({
      list: "deliveries",
      id: delivery.id,
      at: dates.arrives,
      name: delivery.name,
      place: "",
      when: dateLabel(time, dates.arrives),
      hands: "",
      notes,
    });
  });
  build.bookings.forEach((booking, index) => {
    const dates = plan.bookings[index];
    if (!dates) return;
    const notes = booking.booked ? ["booked"] : dates.bookBy === null ? [] : [`book by ${dateLabel(time, dates.bookBy)}`];
    rows.push({
      list: "bookings",
      id: booking.id,
      at: dates.at,
      name: booking.name,
      place: "",
      when: momentLabel(time, dates.at),
      hands: "",
      notes,
    });
  });
  rows.push(...waitRows(build, plan), ...visitRows(build, plan), ...dayRows(build, plan));
  const seen = new Map<string, number>();
  return rows
    .sort((a, b) => a.at - b.at)
    .map((row) => {
      const key = `${row.list} ${row.id}`;
      const count = (seen.get(key) ?? 0) + 1;
      seen.set(key, count);
      return { ...row, key: `${key} ${count}` };
    });
}

function closed(build: Build, piece: number): string {
  const { closes, fills } = build.pieces[piece] ?? { closes: [], fills: [] };
  const ids = new Set([...fills, ...closes.map(({ place }) => place)]);
  return [...ids].map((id) => placeName(build, build.at.place.get(id) ?? -1)).join(", ");
}

function placeName(build: Build, index: number): string {
  const place = build.places[index];
  return place ? nameOf(place) : "";
}
