import { textWidth } from "../text/measure";
import { dayLabel } from "../time/labels";
import type { Frame } from "./frame";
import { packFlags } from "./rows";

export type FlagSort = "delivery" | "booking" | "inspection";

/** Something that comes on a day: a delivery, a booked pump or inspector, an inspection with no booking of its own. */
export interface Flag {
  readonly sort: FlagSort;
  readonly list: "deliveries" | "bookings" | "steps";
  readonly id: string;
  readonly name: string;
  readonly label: string;
  readonly at: number;
  readonly late: boolean;
  /** Whether its date is the builder's to move. */
  readonly movable: boolean;
  readonly onChain: boolean;
  readonly x: number;
  readonly width: number;
  /** False where there is no room for its words. */
  readonly worded: boolean;
  /** Counted from the foot of the flags' lane. */
  readonly row: number;
}

export const pennant = { wide: 9, high: 9 } as const;

/** So that month and today have room on the sheet of a short build. px */
export const leastWidth = 360;

/** In the whole scale words take the room that the elevation leaves beside it, in so many rows, and only of so many flags as can be told apart there. */
const [wholeRows, mostWorded] = [8, 60];

/** Every flag with its row, and how many rows there are. */
export function layFlags(frame: Frame): { readonly flags: readonly Flag[]; readonly rows: number } {
  const { build, plan, axis, time, text, whole } = frame;
  const flags: Omit<Flag, "row" | "x" | "width" | "worded">[] = [];
  build.deliveries.forEach((delivery, index) => {
    const dates = plan.deliveries[index];
    if (!dates) return;
    const late = dates.arrives > dates.neededBy;
    const onChain = plan.chain.some(
      ({ job, holder }) => job === build.steps.length + index || (holder.kind === "delivery" && holder.delivery === index),
    );
    flags.push({
      sort: "delivery",
      list: "deliveries",
      id: delivery.id,
      name: delivery.name,
      label: `${delivery.name}, ${dayLabel(time, dates.arrives)}${late ? ", late" : ""}`,
      at: dates.arrives,
      late,
      movable: true,
      onChain,
    });
  });
  const booked = new Set<string>();
  build.bookings.forEach((booking, index) => {
    const dates = plan.bookings[index];
    if (!dates) return;
    booked.add(booking.step);
    const inspection = build.steps[build.at.step.get(booking.step) ?? -1]?.sort === "inspection";
    flags.push({
      sort: inspection ? "inspection" : "booking",
      list: "bookings",
      id: booking.id,
      name: booking.name,
      label: `${booking.name}, ${dayLabel(time, dates.at)}`,
      at: dates.at,
      late: false,
      movable: true,
      onChain: false,
    });
  });
  build.steps.forEach((step, index) => {
    const dates = plan.steps[index];
    if (step.sort !== "inspection" || booked.has(step.id) || !dates) return;
    flags.push({
      sort: "inspection",
      list: "steps",
      id: step.id,
      name: step.name,
      label: `${step.name}, ${dayLabel(time, dates.start)}`,
      at: dates.start,
      late: false,
      movable: false,
      onChain: dates.onChain,
    });
  });
  flags.sort((a, b) => a.at - b.at);
  const placed = flags.map((flag) => ({ ...flag, x: axis.x(flag.at), words: pennant.wide + 5 + textWidth(flag.label, text) }));
  const { sight } = frame.asked;
  const [from, to] = sight ? [axis.x(sight.from), axis.x(sight.to)] : [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  // What stands before the left edge would show the end of its words alone.
  const seen = placed.filter(({ x }) => x >= from && x <= to);
  const most = whole ? wholeRows : (frame.asked.flagRows ?? Number.POSITIVE_INFINITY);
  const counts = Number.isFinite(most);
  const mute = new Set<object>(counts ? placed : []);
  const widthOf = (flag: (typeof placed)[number]) => (mute.has(flag) ? pennant.wide : flag.words);
  const pack = () => packFlags(seen.map((flag) => ({ from: flag.x, to: flag.x + widthOf(flag) })));
  // Where rows are few, words go to what is late or sets the finish, then to what comes first.
  const worth = (flag: (typeof placed)[number]) => Number(flag.late) * 2 + Number(flag.onChain);
  if (counts && !(whole && placed.length > mostWorded))
    for (const flag of [...seen].sort((a, b) => worth(b) - worth(a) || a.at - b.at)) {
      // The whole build is not made wider by what is written on it.
      if (whole && flag.x + flag.words > Math.max(axis.width, leastWidth)) continue;
      mute.delete(flag);
      if (pack().count > most) mute.add(flag);
    }
  const { rowOf, count } = pack();
  const rows = new Map(seen.map((flag, index) => [flag, rowOf[index] as number]));
  return {
    flags: placed.map((flag) => ({ ...flag, width: widthOf(flag), worded: !mute.has(flag), row: rows.get(flag) ?? 0 })),
    rows: Math.max(1, counts && !whole && placed.length > 0 ? most : count),
  };
}
