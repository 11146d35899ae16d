import type { ElapsedMinute } from "../base";
import type { Build, Step } from "../build";
import { clocksOf } from "../clock";
import { siteAir } from "../pour";
import { type Left, leftBehind } from "./left-behind";
import type { Plan, SiteDay } from "./plan";

/** One step on a site day. */
export interface DayRow {
  /** Position in the build. */
  readonly step: number;
  /** Its work on this day, first and last minute, and whether it began before or goes on after. */
  readonly from: ElapsedMinute;
  readonly to: ElapsedMinute;
  readonly began: boolean;
  readonly goesOn: boolean;
  readonly done: boolean;
  /** Positions in `plan.closings` of what it closes on this day. */
  readonly closes: readonly number[];
}

/** A site day as a sheet to work from. Positions are those of the build and the plan. */
export interface DaySheet {
  readonly day: SiteDay;
  /** Local date of the day before it and after it on which anybody works, the crew or others; null where there is none. */
  readonly before: string | null;
  readonly after: string | null;
  /** Local date on which the crew is back; null where it is not. */
  readonly back: string | null;
  /** What is done first, so that a tick does not move what is about to be ticked; then by start. */
  readonly rows: readonly DayRow[];
  /** Lowest and highest of the day, degrees Celsius; null where nothing is given for the site. */
  readonly air: { readonly low_C: number; readonly high_C: number; readonly source: "usual" | "forecast" | "measured" } | null;
  /** Steps of this day that ask for it dry. */
  readonly dry: readonly number[];
  /** Steps in the shop or the store that could be done that day, the earliest planned first. */
  readonly shop: readonly number[];
  /** What the steps of this day that are not ticked want. */
  readonly tools: readonly string[];
  readonly materials: readonly { readonly what: string; readonly step: number }[];
  /** Deliveries that arrive after the site day before and by the end of this one. */
  readonly arrives: readonly number[];
  /** What has to be ordered and booked before the site day after this one. */
  readonly order: readonly number[];
  readonly book: readonly number[];
  readonly left: readonly Left[];
}

/** Days on which somebody of the crew works. */
export const workDays = (plan: Plan): readonly SiteDay[] => plan.days.filter((day) => day.site && day.steps.length > 0);

/** Days on which anybody works: an inspector, a lab or a yard among them, without the crew. Each has its sheet, as what was done is ticked there. */
export const sheetDays = (plan: Plan): readonly SiteDay[] => plan.days.filter((day) => day.steps.length > 0);

/**
 * The site day that comes next: the first, of those not before `date`, on which the crew works on a step that is not done; then one on which others do; where all
 * that is left lies before, the last of those. Null when nothing is left.
 * @param date local, "2027-06-26"
 */
export function nextSiteDay(build: Build, plan: Plan, date: string): string | null {
  const open = sheetDays(plan).filter((day) => day.steps.some((s) => build.steps[s]?.done === null));
  const ahead = open.filter((day) => day.date >= date);
  return (ahead.find(({ site }) => site) ?? ahead[0] ?? open.at(-1))?.date ?? null;
}

/** Steps that were planned to be finished before a local date and are not ticked. */
export function overdue(build: Build, plan: Plan, date: string): number[] {
  const { time } = clocksOf(build);
  const day = time.dayOfDate(date);
  if (day === null || plan.status !== "planned") return [];
  const until = time.startOf(day);
  return plan.steps.flatMap(({ finish }, s) => (finish <= until && build.steps[s]?.done === null ? [s] : []));
}

/** The sheet of one site day; null where the plan has no work on that date. */
export function daySheet(build: Build, plan: Plan, date: string): DaySheet | null {
  const days = sheetDays(plan);
  const at = days.findIndex((day) => day.date === date);
  const day = days[at];
  if (day === undefined) return null;
  const { time } = clocksOf(build);
  const number = time.dayOf(day.from);
  const [start, end] = [time.startOf(number), time.startOf(number + 1)];
  const next = days.find(({ site }, k) => site && k > at);
  const since = days.findLast(({ site }, k) => site && k < at)?.to ?? 0;
  const until = next?.from ?? Number.POSITIVE_INFINITY;
  const air = siteAir(build);
  const rows = rowsOf(build, plan, day, start, end);
  const steps = rows.map(({ step }) => step);
  const toDo = steps.filter((s) => build.steps[s]!.done === null);
  return {
    day,
    before: days[at - 1]?.date ?? null,
    after: days[at + 1]?.date ?? null,
    back: next?.date ?? null,
    rows,
    air: air.known || build.site.days_C.some((one) => one.date === date) ? air.day(number) : null,
    dry: steps.filter((s) => build.steps[s]!.weather?.dry === true),
    shop: shopWork(build, plan, day, steps),
    tools: [...new Set(toDo.flatMap((s) => build.steps[s]!.tools))],
    materials: toDo.flatMap((s) => build.steps[s]!.materials.map((what) => ({ what, step: s }))),
    arrives: indexes(plan.deliveries, ({ arrives, firstStep }) => firstStep >= 0 && arrives >= since && arrives < end),
    order: indexes(plan.deliveries, ({ orderBy, arrives }, d) => {
      const { ordered } = build.deliveries[d]!;
      return !ordered && orderBy !== null && orderBy < until && arrives >= start;
    }),
    book: indexes(plan.bookings, ({ bookBy, at: when }, b) => {
      const { booked, step } = build.bookings[b]!;
      return !booked && bookBy !== null && bookBy < until && when >= start && build.steps[build.at.step.get(step)!]!.done === null;
    }),
    left: leftBehind(build, plan, day.to, next?.from ?? null),
  };
}

function rowsOf(build: Build, plan: Plan, day: SiteDay, start: number, end: number): DayRow[] {
  return day.steps
    .flatMap((step): DayRow[] => {
      const dates = plan.steps[step]!;
      const pieces = (dates.pieces.length === 0 ? [[dates.start, dates.finish] as const] : dates.pieces).filter(
        ([from, to]) => from < end && (to > start || from === to),
      );
      if (pieces.length === 0) return [];
      return [
        {
          step,
          from: Math.max(start, Math.min(...pieces.map(([from]) => from))) as ElapsedMinute,
          to: Math.min(end, Math.max(...pieces.map(([, to]) => to))) as ElapsedMinute,
          began: dates.start < start,
          goesOn: dates.finish > end,
          done: build.steps[step]!.done !== null,
          closes: day.closings.filter((c) => plan.closings[c]!.step === step),
        },
      ];
    })
    .sort((a, b) => Number(b.done) - Number(a.done) || a.from - b.from || a.to - b.to || a.step - b.step);
}

/** Sides of a build on which work goes on in the rain. */
const roofed: readonly string[] = ["off-site", "shop", "store", "workshop"];

const isIndoors = (build: Build, step: Step): boolean => {
  const place = step.place === null ? undefined : build.places[build.at.place.get(step.place) ?? -1];
  return place?.side !== null && place?.side !== undefined && roofed.includes(place.side.trim().toLowerCase());
};

/** What nothing stands before that would not be done by that morning, and is done under a roof. */
function shopWork(build: Build, plan: Plan, day: SiteDay, today: readonly number[]): number[] {
  const { arcs } = plan.access;
  const held = new Set<number>();
  for (let r = 0; r < arcs.count; r++) if (arcs.orders[r] === 1 && plan.steps[arcs.from[r]!]!.finish > day.from) held.add(arcs.to[r]!);
  return build.steps
    .flatMap((step, s) => {
      const ready = step.done === null && !held.has(s) && plan.steps[s]!.start > day.from && isIndoors(build, step);
      const here = step.needs.every((id) => plan.deliveries[build.at.delivery.get(id)!]!.arrives <= day.from);
      return ready && here && !today.includes(s) ? [s] : [];
    })
    .sort((a, b) => plan.steps[a]!.start - plan.steps[b]!.start || a - b);
}

function indexes<T>(list: readonly T[], which: (item: T, at: number) => boolean): number[] {
  return list.flatMap((item, at) => (which(item, at) ? [at] : []));
}
