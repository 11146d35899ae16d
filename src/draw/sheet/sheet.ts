import { type SiteTime, siteTime } from "../../core/clock";
import { type Drawing, inOrder, type Mark, type Part, words } from "../marks/mark";
import { type Axis, makeAxis } from "../time/axis";
import { elevationMarks, type Room } from "./elevation";
import { type Flag, layFlags } from "./flags";
import type { Frame, SheetAsked } from "./frame";
import { headMarks } from "./head";
import { type Band, type Block, type Lane, layOut, type Prepared, prepareLanes } from "./layout";
import { blockMarks } from "./marks-blocks";
import { chalkMarks } from "./marks-chalk";
import { closingMarks } from "./marks-closings";
import { foldMarks, ghostMarks, slackMarks, todayMarks } from "./marks-more";
import { sectionMarks } from "./marks-section";
import { tailMarks } from "./marks-tails";
import { waitMarks } from "./marks-waits";
import { sideMarks } from "./side";
import { footMarks } from "./strips";

/** The Dates sheet: places as lanes against time, in five parts that share their edges. */
export interface Sheet extends Drawing {
  readonly axis: Axis;
  readonly lanes: readonly Lane[];
  readonly bands: readonly Band[];
  readonly blocks: ReadonlyMap<number, Block>;
  readonly flags: readonly Flag[];
  /** Corner, head, side, body, foot. */
  readonly part: Readonly<Record<"corner" | "head" | "side" | "elevation" | "body" | "foot" | "footSide", Part>>;
  /** The elevation between two heights of the side, built up to an instant: for a screen that keeps it in sight. */
  structure(room: Room, at: number): readonly Mark[];
}

/** The day width at which ten weekends fit beside the names, px. */
export function dayWidthFor(width: number, weekends = 10): number {
  const each = width / weekends;
  return Math.max(47, Math.min(130, Math.floor((each - 32) / 2)));
}

/** What a sheet needs whatever is in sight; handed back to `sheet` it is not made anew while one scrolls. */
export interface SheetBase {
  readonly prepared: Prepared;
  readonly axis: Axis;
  readonly elevation: boolean;
}

export function sheetBase(asked: SheetAsked): SheetBase {
  const elevation = (asked.elevation ?? true) && asked.build.places.some((place) => place.elevation_mm !== null);
  const frame = frameOf(asked);
  return { prepared: prepareLanes(frame, elevation ? 150 : 132), axis: frame.axis, elevation };
}

/** A pure function of what is asked: same build, plan and options, same marks. `base`: of the same question, whatever its sight. */
export function sheet(asked: SheetAsked, base: SheetBase = sheetBase(asked)): Sheet {
  const { build, sight } = asked;
  const { prepared, elevation } = base;
  const { axis } = base;
  const seen = sight ? { from: axis.x(sight.from), to: axis.x(sight.to) } : null;
  const frame0: Frame = { ...prepared.frame, asked: { ...prepared.frame.asked, sight: sight ?? null }, seen };
  const layout = layOut(frame0, prepared);
  const { flags, rows } = layFlags(frame0);
  const width = Math.ceil(Math.max(prepared.width, leastWidth, ...flags.map(({ x, width }) => x + width + 4)));
  const frame: Frame = { ...frame0, axis: { ...frame0.axis, width } };
  const head = headMarks(frame, flags, rows);
  const side = sideMarks(frame, layout, elevation);
  const structure = (room: Room, at: number) => (elevation ? inOrder(elevationMarks(frame, layout, side.width, room, at)) : []);
  const foot = footMarks(frame);
  const body = inOrder([
    ...sectionMarks(frame, layout),
    ...foldMarks(frame, layout.height),
    ...(asked.slack ? slackMarks(frame, layout) : []),
    ...tailMarks(frame, layout),
    ...waitMarks(frame, layout),
    ...ghostMarks(frame, layout),
    ...chalkMarks(frame, layout),
    ...blockMarks(frame, layout),
    ...closingMarks(frame, layout),
    ...todayMarks(frame, layout.height, "body"),
  ]);
  const footNames = foot.rows.map(
    ({ name, y }): Mark => words(`strip ${name}`, "text-soft", { text: name, x: side.width - 12, y, size: frame.text, anchor: "end" }),
  );
  const [left, top, bottom] = [side.width, head.height, head.height + layout.height];
  const part = {
    corner: { name: "corner", x: 0, y: 0, width: left, height: top, marks: [] },
    head: { name: "head", x: left, y: 0, width, height: top, marks: inOrder(head.marks) },
    side: { name: "side", x: 0, y: top, width: left, height: layout.height, marks: inOrder(side.marks) },
    elevation: {
      name: "elevation",
      x: 0,
      y: top,
      width: left,
      height: layout.height,
      marks: structure({ from: 0, to: layout.height }, asked.today ?? 0),
    },
    body: { name: "body", x: left, y: top, width, height: layout.height, marks: body },
    footSide: { name: "footSide", x: 0, y: bottom, width: left, height: foot.height, marks: footNames },
    foot: {
      name: "foot",
      x: left,
      y: bottom,
      width,
      height: foot.height,
      marks: inOrder([...foot.marks, ...todayMarks(frame, foot.height, "foot")]),
    },
  };
  return {
    title: `${build.name}: dates`,
    width: left + width,
    height: bottom + foot.height,
    parts: [part.body, part.head, part.side, part.elevation, part.foot, part.footSide],
    structure,
    part,
    axis: frame.axis,
    lanes: layout.lanes,
    bands: layout.bands,
    blocks: layout.blocks,
    flags,
  };
}

function frameOf(asked: SheetAsked): Frame {
  const { build, plan } = asked;
  const whole = asked.scale === "whole";
  const text = asked.text ?? 14;
  const time = siteTime(build.site.zone, build.start);
  const block = whole ? 13 : text + 6;
  return {
    asked: { ...asked, units: asked.units ?? build.site.units },
    build,
    plan,
    time,
    axis: axisOf(asked, time, whole),
    whole,
    text,
    seen: null,
    closingOf: new Map([...plan.closings].reverse().map((closing) => [closing.step, closing])),
    chainAt: new Map(plan.chain.map(({ job }, index) => [job, index])),
    block,
    row: block + 7,
  };
}

/** So that month and today have room on the sheet of a short build. px */
const leastWidth = 360;

/** Instants beyond a decade are answers like "never", not dates. */
const [earliest, latest] = [-1_000_000, 6_000_000];

function axisOf(asked: SheetAsked, time: SiteTime, whole: boolean): Axis {
  const plans = [asked.plan, ...(asked.before ? [asked.before.plan] : [])];
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
  return makeAxis({
    time,
    // A weekday on which somebody only looks in, or something is dropped, stays folded.
    days: plans.flatMap(({ days }) => days.filter(({ site, steps }) => site || steps.length > 0)),
    from,
    to,
    folding: whole ? "whole" : asked.unfolded ? "unfolded" : "folded",
    dayWidth: whole ? 7.5 : (asked.dayWidth ?? 64),
  });
}
