import type { SiteTime } from "../../core/clock";
import type { SiteDay } from "../../core/plan";

export type Folding = "folded" | "unfolded" | "whole";

export interface AxisAsked {
  readonly time: SiteTime;
  /** Days with something on them, of one plan or of two together; any order. */
  readonly days: readonly Pick<SiteDay, "date" | "from" | "to" | "site">[];
  /** What the axis must cover besides the days. */
  readonly from: number;
  readonly to: number;
  readonly folding: Folding;
  readonly dayWidth: number;
}

export interface Column {
  /** site: a site day. visit: a day with only a visit or an inspection. fold: idle days. night: the hours between. day: a day unfolded. */
  readonly kind: "site" | "visit" | "fold" | "night" | "day";
  /** Local date of its first minute. */
  readonly date: string;
  readonly from: number;
  readonly to: number;
  readonly x0: number;
  readonly x1: number;
}

/** Time to px and back; piecewise straight and never backwards. */
export interface Axis {
  readonly columns: readonly Column[];
  readonly width: number;
  x(t: number): number;
  t(x: number): number;
}

/** A day of one hour's visit is drawn as if it had this much, so that the hour is no wider than an hour elsewhere looks. */
const leastSpan_min = 360;
const pad_min = 20;

interface Widths {
  readonly site: number;
  readonly visit: number;
  readonly night: number;
  readonly fold: number;
}

function widthsOf(folding: Folding, dayWidth: number): Widths {
  // Whole build: a weekend with its week is about 20 px.
  if (folding === "whole")
    return { site: dayWidth, visit: Math.max(3, dayWidth * 0.4), night: Math.max(1, dayWidth * 0.13), fold: Math.max(3, dayWidth * 0.4) };
  const between = (least: number, value: number, most: number) => Math.max(least, Math.min(most, value));
  return {
    site: dayWidth,
    visit: between(22, dayWidth * 0.85, Math.max(52, dayWidth * 0.6)),
    night: between(3, dayWidth * 0.1, 6),
    fold: between(12, dayWidth * 0.45, 26),
  };
}

export const makeAxis = (asked: AxisAsked): Axis => axesOf(asked)(asked.dayWidth);

/** The axis at one width of a day after another: which days there are does not depend on it. */
export function axesOf(asked: Omit<AxisAsked, "dayWidth">): (dayWidth: number) => Axis {
  if (asked.folding === "unfolded") return (dayWidth) => fromColumns(unfolded({ ...asked, dayWidth }));
  const stretches = folded(asked);
  return (dayWidth) => fromColumns(laidOut(stretches, widthsOf(asked.folding, dayWidth)));
}

type Stretch = Omit<Column, "kind" | "x0" | "x1"> & { readonly kind: keyof Widths };

function laidOut(stretches: readonly Stretch[], widths: Widths): Column[] {
  let x = 0;
  return stretches.map((stretch) => {
    const x0 = x;
    x += widths[stretch.kind];
    return { ...stretch, x0, x1: x };
  });
}

function folded(asked: Omit<AxisAsked, "dayWidth">): Stretch[] {
  const { time } = asked;
  const columns: Stretch[] = [];
  let end = Number.NEGATIVE_INFINITY;
  const push = (kind: Stretch["kind"], from: number, to: number) => {
    columns.push({ kind, date: time.local(from).date, from, to });
    end = to;
  };
  for (const day of united(asked)) {
    const number = time.dayOf(day.from);
    const from = Math.max(day.from, end);
    const first = columns.length === 0;
    if (first && asked.from < from) push("fold", Math.min(asked.from, from - 1440), from);
    else if (!first && from > end) {
      const next = number - time.dayOf(end - 1) <= 1;
      push(next ? "night" : "fold", end, from);
    }
    push(day.site ? "site" : "visit", from, Math.max(day.to, from + 60));
  }
  if (columns.length === 0) push("fold", asked.from, Math.max(asked.to, asked.from + 1440));
  else if (asked.to > end) push("fold", end, Math.max(asked.to, end + 1440));
  return columns;
}

/** One entry a date, from first to last, with a little room at both ends. */
function united({ time, days }: Pick<AxisAsked, "time" | "days">): { from: number; to: number; site: boolean }[] {
  const byDate = new Map<string, { from: number; to: number; site: boolean }>();
  for (const day of days) {
    const known = byDate.get(day.date);
    const entry = known ?? { from: day.from, to: day.to, site: day.site };
    byDate.set(day.date, {
      from: Math.min(entry.from, day.from),
      to: Math.max(entry.to, day.to),
      site: entry.site || day.site,
    });
  }
  return [...byDate.entries()]
    .map(([date, { from, to, site }]) => {
      const near = time.dayOf(from);
      // A date is read only where it is not the one of its first hour: that takes longer than all the rest.
      const number = time.dateOf(near) === date ? near : (time.dayOfDate(date) ?? near);
      const short = Math.max(pad_min, (leastSpan_min - (to - from)) / 2);
      return {
        from: Math.max(time.startOf(number), Math.round(from - short)),
        to: Math.min(time.startOf(number + 1), Math.round(to + short)),
        site,
      };
    })
    .sort((a, b) => a.from - b.from);
}

function unfolded({ time, days, from, to, dayWidth }: AxisAsked): Column[] {
  const starts = [from, ...days.map((day) => day.from)];
  const ends = [to, ...days.map((day) => day.to)];
  const first: number = time.dayOf(least(starts));
  const last: number = time.dayOf(-least(ends.map((end) => -end)) - 1);
  const wide = Math.max(24, dayWidth * 0.5);
  const columns: Column[] = [];
  for (let day: number = first; day <= Math.max(first, last); day += 1) {
    const x0 = (day - first) * wide;
    columns.push({ kind: "day", date: time.dateOf(day), from: time.startOf(day), to: time.startOf(day + 1), x0, x1: x0 + wide });
  }
  return columns;
}

const least = (values: readonly number[]): number => values.reduce((a, b) => Math.min(a, b));

function fromColumns(columns: readonly Column[]): Axis {
  const last = columns[columns.length - 1] as Column;
  const find = (value: number, end: "to" | "x1"): Column => {
    let low = 0;
    let high = columns.length - 1;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((columns[middle] as Column)[end] < value) low = middle + 1;
      else high = middle;
    }
    return columns[low] as Column;
  };
  const between = (value: number, a0: number, a1: number, b0: number, b1: number) =>
    b0 + (Math.min(Math.max(value, a0), a1) - a0) * (a1 > a0 ? (b1 - b0) / (a1 - a0) : 0);
  return {
    columns,
    width: last.x1,
    x: (t) => {
      const at = find(t, "to");
      return between(t, at.from, at.to, at.x0, at.x1);
    },
    t: (x) => {
      const at = find(x, "x1");
      return between(x, at.x0, at.x1, at.from, at.to);
    },
  };
}
