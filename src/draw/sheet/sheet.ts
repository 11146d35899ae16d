import { siteTime } from "../../core/clock";
import { type Drawing, inOrder, type Mark, type Part, words } from "../marks/mark";
import type { Axis } from "../time/axis";
import { axisOf, usualDay } from "./axis-of";
import { drawnParts, elevationMarks, hasElevation, leastCorner } from "./elevation";
import { type Flag, layFlags, leastWidth } from "./flags";
import type { Frame, SheetAsked } from "./frame";
import { groundOf } from "./ground";
import { headMarks } from "./head";
import { type Band, type Block, type Lane, type Layout, layOut } from "./layout";
import { type Leader, leadersOf } from "./leaders";
import { blockMarks } from "./marks-blocks";
import { chalkMarks } from "./marks-chalk";
import { closingMarks } from "./marks-closings";
import { foldMarks, ghostMarks, slackMarks, todayMarks } from "./marks-more";
import { sectionMarks } from "./marks-section";
import { tailMarks } from "./marks-tails";
import { waitMarks } from "./marks-waits";
import { type Prepared, prepareLanes } from "./prepare";
import { bracketWidth, sideMarks, trackRoom } from "./side";
import { atOnce, type Slices } from "./slices";
import { footMarks } from "./strips";

/** The Dates sheet: places as lanes against time, in five parts that share their edges. */
export interface Sheet extends Drawing {
  readonly axis: Axis;
  readonly lanes: readonly Lane[];
  readonly bands: readonly Band[];
  readonly blocks: ReadonlyMap<number, Block>;
  readonly flags: readonly Flag[];
  readonly part: Readonly<Record<"corner" | "head" | "side" | "body" | "foot" | "footSide", Part>>;
  readonly leaders: readonly Leader[];
  /** The elevation in the corner, built up to an instant. */
  structure(at: number): readonly Mark[];
}

/** What a sheet needs whatever is in sight; handed back to `sheet` it is not made anew while one scrolls. */
export interface SheetBase {
  readonly prepared: Prepared;
  readonly axis: Axis;
  readonly elevation: boolean;
}

export const sheetBase = (asked: SheetAsked): SheetBase => atOnce(sheetBaseSlices(asked));

export function* sheetBaseSlices(asked: SheetAsked): Slices<SheetBase> {
  const elevation = hasElevation(asked);
  const frame = frameOf(asked);
  yield;
  return { prepared: yield* prepareLanes(frame), axis: frame.axis, elevation };
}

/** A pure function of what is asked: same build, plan and options, same marks. `base`: of the same question, whatever its sight. */
export const sheet = (asked: SheetAsked, base: SheetBase = sheetBase(asked)): Sheet => atOnce(sheetSlices(asked, base));

export function* sheetSlices(asked: SheetAsked, base: SheetBase): Slices<Sheet> {
  const { build, sight } = asked;
  const { prepared, elevation } = base;
  const { axis } = base;
  const seen = sight ? { from: axis.x(sight.from), to: axis.x(sight.to) } : null;
  const frame0: Frame = { ...prepared.frame, asked: { ...prepared.frame.asked, sight: sight ?? null }, seen };
  yield;
  const layout = yield* layOut(frame0, prepared);
  yield;
  const { flags, rows } = layFlags(frame0);
  yield;
  const width = Math.ceil(Math.max(prepared.width, leastWidth, ...flags.map(({ x, width }) => x + width + 4)));
  const frame: Frame = { ...frame0, axis: { ...frame0.axis, width } };
  const head = headMarks(frame, flags, rows, elevation ? leastCorner(frame.whole) : 0);
  yield;
  const side = sideMarks(frame, layout, elevation);
  yield;
  const drawn = elevation ? drawnParts(frame, side.width - trackRoom - bracketWidth - 4, head.height) : [];
  const leaders = leadersOf(layout, drawn, side.width, head.height, frame.whole);
  const shownLeaders = leaders.filter(({ shown }) => shown);
  const structure = (at: number) =>
    inOrder([...elevationMarks(frame, drawn, side.width, at), ...shownLeaders.flatMap(({ inCorner }) => inCorner)]);
  yield;
  const foot = footMarks(frame);
  yield;
  const bodyMarks: Mark[] = [];
  for (const make of bodyParts) {
    for (const mark of make(frame, layout)) if (bodyMarks.push(mark) % slice === 0) yield;
    yield;
  }
  const body = inOrder(bodyMarks);
  const footNames = foot.rows.map(
    ({ name, y }): Mark => words(`strip ${name}`, "text-soft", { text: name, x: side.width - 12, y, size: frame.text, anchor: "end" }),
  );
  const [left, top, bottom] = [side.width, head.height, head.height + layout.height];
  const part = {
    corner: { name: "corner", x: 0, y: 0, width: left, height: top, marks: structure(asked.today ?? 0) },
    head: { name: "head", x: left, y: 0, width, height: top, marks: inOrder(head.marks) },
    side: {
      name: "side",
      x: 0,
      y: top,
      width: left,
      height: layout.height,
      marks: inOrder([...side.marks, ...shownLeaders.flatMap(({ inSide }) => inSide)]),
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
    parts: [part.body, part.head, part.side, part.corner, part.foot, part.footSide],
    structure,
    leaders,
    part,
    axis: frame.axis,
    lanes: layout.lanes,
    bands: layout.bands,
    blocks: layout.blocks,
    flags,
  };
}

/** Of the body so many marks are made in a slice: the dearest, those of the chalk line, take a quarter of a ms each. */
const slice = 6;

/** What makes the marks of the body, in this order within a layer. Those that take long are made one by one, as they are asked for. */
const bodyParts: readonly ((frame: Frame, layout: Layout) => Iterable<Mark>)[] = [
  sectionMarks,
  (frame, { height }) => foldMarks(frame, height),
  (frame, layout) => (frame.asked.slack ? slackMarks(frame, layout) : []),
  tailMarks,
  waitMarks,
  ghostMarks,
  chalkMarks,
  blockMarks,
  closingMarks,
  (frame, { height }) => todayMarks(frame, height, "body"),
];

function frameOf(asked: SheetAsked): Frame {
  const { build, plan } = asked;
  const whole = asked.scale === "whole";
  const text = asked.text ?? 14;
  const time = siteTime(build.site.zone, build.start);
  const dense = !whole && (asked.dayWidth ?? usualDay) < denseDay;
  const block = whole ? 13 : dense ? text + 1 : text + 6;
  return {
    asked: { ...asked, units: asked.units ?? build.site.units },
    build,
    plan,
    time,
    axis: axisOf(asked, time, whole),
    whole,
    dense,
    text,
    seen: null,
    ground: groundOf(build, plan),
    block,
    row: block + (dense ? 4.5 : 7),
  };
}

/** Below this width of a site day the sheet is dense, px. */
const denseDay = 46;
