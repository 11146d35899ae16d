import { layers, type Mark, path, rect, round, type Subject, shape, words } from "../marks/mark";
import { textWidth } from "../text/measure";
import type { Column } from "../time/axis";
import { dayLabel, monthOf } from "../time/labels";
import { type Flag, pennant } from "./flags";
import { type Frame, touches } from "./frame";

export interface Head {
  readonly height: number;
  readonly marks: readonly Mark[];
}

/** `least`: height that the corner beside it wants, px. Dates and flags above the lanes: today, months, days, then a lane of their own for what comes. */
export function headMarks(frame: Frame, flags: readonly Flag[], rows: number, least: number): Head {
  const { axis, text, whole } = frame;
  const line = text + 6;
  const marks: Mark[] = [];
  let y = 0;
  const today = frame.asked.today ?? null;
  const end = axis.columns[axis.columns.length - 1]!;
  if (today !== null && today >= axis.columns[0]!.from && today <= end.to) {
    const beside = todayTag(frame, today, monthMarks(frame, text, 0));
    if (beside === null) {
      marks.push(...(todayTag(frame, today, []) ?? []));
      y += line;
    } else marks.push(...beside);
  }
  marks.push(...monthMarks(frame, y + text, y));
  y += line;
  if (!whole) {
    if (frame.dense && !frame.asked.unfolded) {
      marks.push(...weekdayMarks(frame, y + text));
      y += text + 2;
    }
    marks.push(...dayMarks(frame, y + text, y));
    y += line;
  }
  const top = y + 4;
  const rowHeight = whole && !flags.some(({ worded }) => worded) ? pennant.high + 3 : text + 8;
  const foot = Math.max(least, top + rows * rowHeight + 4);
  // Flags of one day without words may need more rows than there are; they stand closer then, and never over the dates.
  const deepest = flags.reduce((most, { row }) => Math.max(most, row + 1), 1);
  const pitch = Math.min(rowHeight, (foot - 4 - top) / deepest);
  const yOf = (flag: Flag) => foot - 4 - (flag.row + 1) * pitch;
  for (const flag of flags)
    if (touches(frame, flag.x, flag.x + flag.width))
      marks.push(...flagMarks(frame, flag, yOf(flag), foot), ...ghostFlag(frame, flag, yOf(flag)));
  if (flags.length > 0)
    marks.push(
      path("flags top", "day-line", layers.rule, [
        [0, top - 2],
        [axis.width, top - 2],
      ]),
    );
  return { height: foot, marks };
}

/** In the row of the months, at the line or as near to it as their names let it be; null where it would stand too far off. */
function todayTag({ asked, axis, time, text }: Frame, today: number, months: readonly Mark[]): Mark[] | null {
  const label = `today, ${dayLabel(time, asked.today ?? today)}`;
  const wide = textWidth(label, text, 600) + 10;
  const wanted = Math.min(Math.max(0, axis.x(today) - wide / 2), Math.max(0, axis.width - wide));
  const names = months.filter(({ shape }) => shape === "text");
  const free = (x0: number) => x0 >= 0 && x0 + wide <= axis.width && names.every((name) => x0 + wide + 6 < name.x0 || x0 - 6 > name.x1);
  const places = [wanted, ...names.flatMap((name) => [name.x1 + 7, name.x0 - wide - 7])].filter(free);
  const nearest = places.sort((a, b) => Math.abs(a - wanted) - Math.abs(b - wanted))[0];
  if (nearest === undefined || Math.abs(nearest - wanted) > wide) return null;
  const x0 = nearest;
  return [
    rect("today tag", "today-tag", layers.today, x0, 0, x0 + wide, text + 5),
    words("today words", "text-paper", { text: label, x: x0 + 5, y: text, size: text, weight: 600 }),
  ];
}

function monthMarks({ axis, text, whole }: Frame, baseline: number, top: number): Mark[] {
  const firsts = axis.columns.filter(({ kind }) => kind !== "night" && kind !== "fold");
  const months = firsts.filter(({ date }, at) => date.slice(0, 7) !== firsts[at - 1]?.date.slice(0, 7));
  const marks: Mark[] = [];
  let yearSaid = "";
  let clear = Number.NEGATIVE_INFINITY;
  months.forEach((column, at) => {
    const month = column.date.slice(0, 7);
    // No line through the name of the month before.
    if (column.x0 >= clear - 4)
      marks.push(
        path(`month line ${month}`, "month-line", layers.rule, [
          [column.x0, top + 2],
          [column.x0, top + text + 6],
        ]),
      );
    if (column.x0 + 4 < clear) return;
    const year = month.slice(0, 4) === yearSaid ? "" : ` ${month.slice(0, 4)}`;
    const full = monthOf(column.date);
    const short = full.slice(0, 3);
    // Shorter where the next month begins soon: each gets its name before one of them gets its year.
    const names = [...(whole ? [] : [`${full}${year}`]), `${short}${year}`, short];
    const room = (months[at + 1]?.x0 ?? Number.POSITIVE_INFINITY) - column.x0 - 6;
    const name = names.find((one) => textWidth(one, text, 600) <= room) ?? short;
    if (name.endsWith(year)) yearSaid = month.slice(0, 4);
    const label = words(`month ${month}`, "text", { text: name, x: column.x0 + 4, y: baseline, size: text, weight: 600 });
    clear = label.x1 + 6;
    marks.push(label);
  });
  return marks;
}

function dayMarks(frame: Frame, baseline: number, top: number): Mark[] {
  const { axis, text } = frame;
  const seen = axis.columns.filter(({ x0, x1 }) => touches(frame, x0, x1));
  const folds = seen.filter(({ kind }) => kind === "fold");
  const days = seen.filter(({ kind }) => kind !== "fold" && kind !== "night");
  return [
    ...inStretches("breaks", "fold-break", folds, { y0: top, y1: top + text + 8 }, (column) => breakMark(column, top + text / 2 + 3)),
    ...inStretches(
      "day lines",
      "day-line",
      days,
      { y0: top, y1: top + text + 8 },
      ({ x0 }) => `M${round(x0)} ${round(top)}V${round(top + text + 8)}`,
    ),
    ...days.map((column) => dayMark(frame, column, baseline)),
  ];
}

/** With the name of the day where there is room for it, and where it does not stand over it already. */
function dayMark({ time, text, dense, asked }: Frame, column: Column, baseline: number): Mark {
  const wide = column.x1 - column.x0;
  const { weekday } = time.local(column.from);
  const full = dayLabel(time, column.from);
  const isNamed = dense && !asked.unfolded;
  const name = !isNamed && column.kind !== "day" && textWidth(full, text) + 4 <= wide ? full : `${Number(column.date.slice(8))}`;
  const weight = column.kind === "day" && (weekday === 0 || weekday === 6) ? 600 : 400;
  const role = column.kind === "visit" ? "text-soft" : "text";
  return words(`day ${column.date}`, role, { text: name, x: column.x0 + 3, y: baseline, size: text, weight });
}

/** So many columns share one mark of what stands at each: a screen shows a stretch of the sheet at a time, and elements are dear. */
const stretch = 12;

function inStretches(
  id: string,
  role: "fold-break" | "day-line",
  columns: readonly Column[],
  { y0, y1 }: { readonly y0: number; readonly y1: number },
  strokes: (column: Column) => string,
): Mark[] {
  const marks: Mark[] = [];
  for (let at = 0; at < columns.length; at += stretch) {
    const some = columns.slice(at, at + stretch);
    const bounds = { x0: some[0]!.x0, y0, x1: some[some.length - 1]!.x1, y1 };
    marks.push(shape(`${id} ${at}`, role, layers.rule, some.map(strokes).join(""), bounds));
  }
  return marks;
}

/** Where a day is too narrow for its name beside its date, the name over it in two letters. */
function weekdayMarks(frame: Frame, baseline: number): Mark[] {
  return frame.axis.columns.flatMap((column): Mark[] => {
    if (column.kind === "fold" || column.kind === "night" || !touches(frame, column.x0, column.x1)) return [];
    const name = dayLabel(frame.time, column.from).slice(0, 2);
    return [words(`weekday ${column.date}`, "text-soft", { text: name, x: column.x0 + 3, y: baseline, size: frame.text })];
  });
}

/** The two slanting strokes by which a drafter says that a length is left out. */
function breakMark({ x0, x1 }: Column, y: number): string {
  const middle = (x0 + x1) / 2;
  return [-3, 3].map((at) => `M${round(middle + at - 2.5)} ${round(y + 6)}l5 -12`).join("");
}

function flagMarks(frame: Frame, flag: Flag, y: number, foot: number): Mark[] {
  const of: Subject = { list: flag.list, id: flag.id };
  const id = `${flag.list} ${flag.id}`;
  const top = y + 2;
  const { wide, high } = pennant;
  const role = flag.late ? "flag-late" : (`flag-${flag.sort}` as const);
  const d =
    flag.sort === "delivery"
      ? `M${flag.x} ${top}h${wide}l-3 ${high / 2}l3 ${high / 2}h${-wide}Z`
      : flag.sort === "booking"
        ? `M${flag.x} ${top}l${wide} ${high / 2}l${-wide} ${high / 2}Z`
        : `M${flag.x} ${top}h${wide}v${high}h${-wide}Z`;
  const marks: Mark[] = [
    path(
      `pole ${id}`,
      flag.onChain ? "flag-chalk" : "pole",
      layers.rule + 1,
      [
        [flag.x, top],
        [flag.x, foot],
      ],
      { of },
    ),
    shape(`flag ${id}`, role, layers.block, d, { x0: flag.x, y0: top, x1: flag.x + wide, y1: top + high }, of),
  ];
  if (flag.worded) {
    const look = flag.late ? "text-warn" : flag.onChain ? "text-chalk" : "text";
    marks.push(words(`label ${id}`, look, { text: flag.label, x: flag.x + wide + 5, y: y + 0.86 * frame.text, size: frame.text, of }));
  }
  return marks;
}

/** Where a flag stood in the plan before. */
function ghostFlag({ asked, axis }: Frame, flag: Flag, y: number): Mark[] {
  const before = asked.before;
  if (!before || flag.list === "steps") return [];
  const at =
    flag.list === "deliveries"
      ? before.plan.deliveries[before.build.at.delivery.get(flag.id) ?? -1]?.arrives
      : before.plan.bookings[before.build.at.booking.get(flag.id) ?? -1]?.at;
  if (at === undefined || at === flag.at) return [];
  const [x, top] = [axis.x(at), y + 2];
  const { wide, high } = pennant;
  const box: [number, number][] = [
    [x, top],
    [x + wide, top],
    [x + wide, top + high],
    [x, top + high],
  ];
  return [path(`ghost ${flag.list} ${flag.id}`, "ghost", layers.ghost, box, { closed: true, of: { list: flag.list, id: flag.id } })];
}
