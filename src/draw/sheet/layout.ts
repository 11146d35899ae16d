import type { BlockSpec } from "./blocks";
import { type Frame, touches } from "./frame";
import type { LaneSpec } from "./lanes";
import { type Packed, packLane, wordless } from "./pack";
import type { Prepared } from "./prepare";
import type { Span } from "./rows";
import type { Slices } from "./slices";
import type { WaitRun } from "./waits";

export interface Lane extends LaneSpec {
  /** Where its state changes, px. */
  readonly edges: readonly number[];
  readonly y0: number;
  readonly y1: number;
  readonly lines: readonly string[];
  /** The section drawn in it: less high than the lane where nothing stands in sight. */
  readonly section: { readonly y0: number; readonly y1: number };
  /** Nothing stands in it in sight. */
  readonly thin: boolean;
  /** Top of its first row. */
  readonly top: number;
}

export interface Block extends BlockSpec {
  readonly lane: number;
  /** Position in `bands`. */
  readonly band: number;
  readonly y0: number;
  readonly y1: number;
}

export interface WaitPlace extends WaitRun {
  readonly lane: number;
  readonly y0: number;
  readonly y1: number;
}

/** Room that something takes in a row. */
export interface Taken extends Span {
  readonly what: "block" | "wait" | "words";
}

/** One row of one lane, with what stands in it; below it the channel in which the chalk line and tails run. */
export interface Band {
  readonly lane: number;
  readonly y0: number;
  readonly y1: number;
  readonly channel: number;
  /** Sorted, px. */
  readonly taken: readonly Taken[];
}

export interface Layout {
  readonly lanes: readonly Lane[];
  readonly blocks: ReadonlyMap<number, Block>;
  /** Blocks in sight; the rest are there for the arrow keys alone. */
  readonly visible: readonly Block[];
  readonly waits: readonly WaitPlace[];
  readonly bands: readonly Band[];
  readonly height: number;
  readonly nameWidth: number;
}

interface Gaps {
  readonly lane: number;
  readonly ground: number;
  readonly top: number;
  readonly foot: number;
}
const roomy: Gaps = { lane: 8, ground: 22, top: 6, foot: 4 };
const close: Gaps = { lane: 3, ground: 12, top: 4, foot: 3 };
const wholeGaps: Gaps = { lane: 3, ground: 22, top: 4, foot: 4 };
/** Height of the section of a lane in which nothing stands, px. */
const thinSection = 6;

export function* layOut(frame: Frame, prepared: Prepared): Slices<Layout> {
  const packed: Packed[] = [];
  for (const lane of prepared.lanes) {
    packed.push(packLane(frame, lane));
    yield;
  }
  const { lanes, height } = place(frame, prepared, packed);
  yield;
  return { ...(yield* stand(frame, prepared, packed, lanes)), lanes, height, nameWidth: prepared.nameWidth };
}

/** The lanes from the top down, each with the height of its rows. */
function place(frame: Frame, prepared: Prepared, packed: readonly Packed[]): { readonly lanes: Lane[]; readonly height: number } {
  const { whole, text, block, row } = frame;
  const gaps = whole ? wholeGaps : frame.dense ? close : roomy;
  const lanes: Lane[] = [];
  let y = 4;
  prepared.lanes.forEach(({ spec, lines, edges }, lane) => {
    const { count } = packed[lane]!;
    const before = lanes[lane - 1];
    const layered = before !== undefined && spec.bracket !== null && spec.bracket === before.bracket;
    const thin = count === 0;
    if (before && before.offSite !== spec.offSite) y += gaps.ground;
    else if (before && !layered && !(thin && before.thin)) y += gaps.lane;
    const nameHeight = lines.length * (text + 3);
    const height = thin ? nameHeight : Math.max(nameHeight + (frame.dense ? 2 : 4), whole ? block + 8 : gaps.top + count * row + gaps.foot);
    const middle = y + height / 2;
    const section = thin ? { y0: middle - thinSection / 2, y1: middle + thinSection / 2 } : { y0: y, y1: y + height };
    lanes.push({ ...spec, edges, y0: y, y1: y + height, lines, section, thin, top: thin ? section.y0 : y + (whole ? 4 : gaps.top) });
    y += height;
  });
  return { lanes, height: y + 6 };
}

function takenBy(block: BlockSpec | undefined, run: WaitRun | undefined, { from, to }: Span): Taken[] {
  if (block) return block.parts.map((part) => ({ ...part, what: part.from === block.x0 ? "block" : "words" }));
  const end = run ? Math.min(to, run.x1) : to;
  return [{ from, to: end, what: "wait" }, ...(to > end ? [{ from: end, to, what: "words" } as const] : [])];
}

/** Field by field: a thousand of them are made for every sheet, and a spread takes many times as long. */
const placedAt = (one: BlockSpec, lane: number, band: number, y0: number, y1: number): Block => ({
  step: one.step,
  x0: one.x0,
  x1: one.x1,
  stretches: one.stretches,
  inside: one.inside,
  beside: one.beside,
  left: one.left,
  reason: one.reason,
  crew: one.crew,
  crewInside: one.crewInside,
  closes: one.closes,
  closingRoom: one.closingRoom,
  parts: one.parts,
  from: one.from,
  to: one.to,
  lane,
  band,
  y0,
  y1,
});

/** What stands in the rows. */
function* stand(
  frame: Frame,
  prepared: Prepared,
  packed: readonly Packed[],
  lanes: readonly Lane[],
): Slices<Pick<Layout, "blocks" | "visible" | "waits" | "bands">> {
  const bands: Band[] = [];
  const blocks = new Map<number, Block>();
  const waits: WaitPlace[] = [];
  for (const [lane, { rowOf, count, blocks: placed, runs, spans }] of packed.entries()) {
    const { thin, top } = lanes[lane]!;
    const high = thin ? thinSection : frame.block;
    const yOf = (index: number) => top + index * frame.row;
    const firstBand = bands.length;
    const taken: Taken[][] = Array.from({ length: Math.max(1, count) }, () => []);
    spans.forEach((span, at) => {
      if (touches(frame, span.from, span.to)) taken[rowOf[at]!]?.push(...takenBy(placed[at], runs[at - placed.length], span));
    });
    taken.forEach((row, index) => {
      row.sort((a, b) => a.from - b.from);
      bands.push({ lane, y0: yOf(index), y1: yOf(index) + high, channel: yOf(index) + high + 2.5, taken: row });
    });
    placed.forEach((one, at) => {
      const index = rowOf[at] as number;
      blocks.set(one.step, placedAt(one, lane, firstBand + index, yOf(index), yOf(index) + high));
    });
    runs.forEach((run, at) => {
      const index = rowOf[placed.length + at] as number;
      if (touches(frame, run.x0, run.to)) waits.push({ ...run, lane, y0: yOf(index), y1: yOf(index) + high });
    });
    yield;
  }
  for (const run of prepared.stubs.values()) {
    const block = blocks.get(run.from);
    if (block && touches(frame, run.x0, run.x1)) waits.push({ ...wordless(run), lane: block.lane, y0: block.y0, y1: block.y1 });
  }
  const visible = [...blocks.values()].filter(({ from, to }) => touches(frame, from, to));
  return { blocks, visible, waits, bands };
}
