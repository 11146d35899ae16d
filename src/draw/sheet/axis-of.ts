import type { SiteTime } from "../../core/clock";
import type { Plan } from "../../core/plan";
import { type Axis, axesOf, type Folding } from "../time/axis";
import type { SheetAsked } from "./frame";
import { each, remembered } from "./remembered";

/** Width of a site day where none is asked for, px. */
export const usualDay = 64;

/** Instants beyond a decade are answers like "never", not dates. */
const [earliest, latest] = [-1_000_000, 6_000_000];

/** The axis of a sheet: from the first thing on it to the last, in the plan and in the one it is compared with. */
export function axisOf(asked: SheetAsked, time: SiteTime, whole: boolean): Axis {
  const axisAt = sheetAxes(asked, time, whole);
  return whole ? filling(axisAt, asked.fill ?? 0) : axisAt(asked.dayWidth ?? usualDay);
}

/** Widths of a site day in the whole scale, px: a long build at the narrowest, a short one as wide as its room lets it be. */
const [narrowestWhole, widestWhole] = [7.5, 96];

function filling(axisAt: (dayWidth: number) => Axis, room: number): Axis {
  let axis = axisAt(narrowestWhole);
  if (axis.width >= room) return axis;
  let [low, high] = [narrowestWhole, widestWhole];
  while (high - low > 0.25) {
    const middle = (low + high) / 2;
    const wider = axisAt(middle);
    if (wider.width > room) high = middle;
    else [low, axis] = [middle, wider];
  }
  return axis;
}

/** The same at any width of a day. */
export function sheetAxes({ plan, before, unfolded }: SheetAsked, time: SiteTime, whole: boolean): (dayWidth: number) => Axis {
  return axesAlong(plan, before?.plan ?? plan)(time)(whole ? "whole" : unfolded ? "unfolded" : "folded");
}

const axesAlong = remembered((plan: Plan, before: Plan) =>
  each((time: SiteTime) => each((folding: Folding) => axesFor(time, before === plan ? [plan] : [plan, before], folding))),
);

function axesFor(time: SiteTime, plans: readonly Plan[], folding: Folding): (dayWidth: number) => Axis {
  let [from, to] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  const cover = (t: number) => {
    if (t < earliest || t > latest) return;
    from = Math.min(from, t);
    to = Math.max(to, t);
  };
  for (const plan of plans) {
    for (const { start, finish } of plan.steps) {
      cover(start);
      cover(finish);
    }
    for (const { arrives } of plan.deliveries) cover(arrives);
    for (const { at } of plan.bookings) cover(at);
  }
  if (from > to) [from, to] = [0, 1440];
  return axesOf({
    time,
    // A weekday on which somebody only looks in, or something is dropped, stays folded.
    days: plans.flatMap(({ days }) => days.filter(({ site, steps }) => site || steps.length > 0)),
    from,
    to,
    folding,
  });
}
