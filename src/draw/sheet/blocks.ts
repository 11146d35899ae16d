import { textWidth } from "../text/measure";
import { stepLabel } from "../text/names";
import { clockLabel, momentLabel } from "../time/labels";
import type { Frame } from "./frame";
import type { Span } from "./rows";

export interface Piece {
  readonly text: string;
  readonly weight: 400 | 600;
  readonly role: "text" | "text-chalk" | "text-soft";
  readonly width: number;
}

/** A step in its lane, before it has a row. All x in px of the body. */
export interface BlockSpec {
  readonly step: number;
  readonly x0: number;
  readonly x1: number;
  /** Running stretches; pauses lie between them. */
  readonly stretches: readonly (readonly [number, number])[];
  readonly inside: boolean;
  /** Words beside the block: right of it unless `left`. */
  readonly beside: readonly Piece[];
  readonly left: boolean;
  /** What the chalk line waits for before this block, written to the left of it. */
  readonly reason: Piece | null;
  readonly crew: number;
  readonly crewInside: boolean;
  readonly closes: boolean;
  /** Room taken by the closing mark right of the block. */
  readonly closingRoom: number;
  /** What it covers along its row, in parts: a line may pass between the block and its words. */
  readonly parts: readonly Span[];
  /** The room it takes along its row. */
  readonly from: number;
  readonly to: number;
}

export const textGap = 9;
/** A closing mark at the end of a block needs this much, px. */
const closingRoom = 7;
export const crewPitch = 7;
const leastBlock = 5;

const piece = (text: string, size: number, role: Piece["role"], weight: 400 | 600 = 400): Piece => ({
  text,
  weight,
  role,
  width: textWidth(text, size, weight),
});

export const crewOf = (hands: readonly { readonly number: number }[]): number => hands.reduce((sum, { number }) => sum + number, 0);

/**
 * `edges`: where the lane's state changes; words keep off them where there is room on the other side. `onLeft`: all words before the block, as a second
 * choice for close rows. `stub`: room for a short wait right of the block, px.
 */
export function blockSpec(frame: Frame, step: number, edges: readonly number[], { onLeft = false, stub = 0 } = {}): BlockSpec {
  const { build, plan, text: size } = frame;
  const entry = build.steps[step]!;
  const dates = plan.steps[step]!;
  const [x0, x1] = endsOf(frame, step);
  const stretches = stretchesOf(frame, dates.pieces, x0, x1);
  const closing = frame.ground.closingOf.get(step);
  const crew = Math.min(crewOf(entry.hands), 8);
  const name = piece(stepLabel(entry), size, "text");
  const first = stretches[0] as readonly [number, number];
  const crewWide = crew === 0 ? 0 : crew * crewPitch + 4;
  const room = first[1] - first[0] - 10;
  const inside = name.width + (stretches.length === 1 ? crewWide : 0) <= room;
  const last = stretches[stretches.length - 1] as readonly [number, number];
  const crewInside = inside || last[1] - last[0] >= crewWide + 6;
  // A dense sheet tells hands by the day, at its foot.
  const crewShown = frame.dense && !crewInside ? 0 : crew;
  const beside: Piece[] = [];
  if (!inside) beside.push(name);
  if (closing) {
    const when =
      frame.asked.dayWidth !== undefined && frame.asked.dayWidth < 70
        ? clockLabel(frame.time, closing.at)
        : momentLabel(frame.time, closing.at);
    beside.push(piece(`closes ${when}`, size, "text", 600));
  }
  const why = reasonOf(frame, step);
  // At the left edge of the sheet there is no room before the block.
  const reason = why !== null && !onLeft && x0 - why.width - textGap >= 0 ? why : null;
  if (why !== null && reason === null) beside.push(why);
  const besideWide = beside.reduce((sum, { width }) => sum + width + textGap, 0) + (crewInside || crewShown === 0 ? 0 : crewWide + textGap);
  const mark = markRoom(frame, step, stub);
  const rightTo = x1 + mark + besideWide;
  const leftFrom = x0 - besideWide;
  const crossed = (from: number, to: number) => edges.some((edge) => edge > from + 1 && edge < to);
  const left = onLeft || (besideWide > 0 && reason === null && crossed(x1, rightTo) && leftFrom > 0 && !crossed(leftFrom, x0));
  return {
    step,
    x0,
    x1,
    stretches,
    inside,
    beside,
    left,
    reason,
    crew: crewShown,
    crewInside,
    closes: closing !== undefined,
    closingRoom: mark,
    parts: [
      ...(reason ? [{ from: x0 - reason.width - textGap, to: x0 - textGap }] : []),
      ...(left && besideWide > 0 ? [{ from: leftFrom, to: x0 - textGap }] : []),
      { from: x0, to: x1 + mark },
      ...(!left && besideWide > 0 ? [{ from: x1 + mark + textGap, to: rightTo }] : []),
    ],
    from: (left ? leftFrom : x0) - (reason ? reason.width + textGap + 4 : 0),
    to: left ? x1 + mark : rightTo,
  };
}

function stretchesOf(
  { axis }: Frame,
  pieces: readonly (readonly [number, number])[],
  x0: number,
  x1: number,
): readonly (readonly [number, number])[] {
  const out: [number, number][] = [];
  for (const [from, to] of pieces) {
    const [a, b] = [axis.x(from), Math.max(axis.x(to), axis.x(from))];
    const before = out[out.length - 1];
    // A lunch break of a few px is not drawn as a pause.
    if (before && a - before[1] < 5) before[1] = b;
    else out.push([a, b]);
  }
  if (out.length === 0) return [[x0, x1]];
  const last = out[out.length - 1] as [number, number];
  last[1] = Math.max(last[1], x1);
  return out;
}

/** Room the reason of a gap needs before it is worth writing, px. */
const leastGap = 10;

function reasonOf(frame: Frame, step: number): Piece | null {
  const { build, plan, axis, text: size, ground } = frame;
  const at = ground.chainAt.get(step);
  if (at === undefined) return null;
  const before = at > 0 ? plan.chain[at - 1] : undefined;
  if (before && before.job < build.steps.length) {
    const gap = axis.x(plan.steps[step]!.start) - axis.x(plan.steps[before.job]!.finish);
    if (gap < leastGap) return null;
  }
  const words = ground.reason(step);
  return words === null ? null : piece(words, size, "text-chalk");
}

/** Right of a block, px: its closing mark, or a short wait. */
function markRoom({ plan, ground }: Frame, step: number, stub: number): number {
  const closing = ground.closingOf.get(step);
  return Math.max(closing && closing.at > plan.steps[step]!.start ? closingRoom : 0, stub);
}

/** Where a block stands. */
function endsOf({ plan, axis }: Frame, step: number): readonly [x0: number, x1: number] {
  const { start, finish } = plan.steps[step]!;
  const x0 = axis.x(start);
  return [x0, Math.max(axis.x(finish), x0 + leastBlock)];
}

/** A block alone: in the whole build, and out of sight; its pauses only where it is drawn (`paused`). */
export function bareSpec(frame: Frame, step: number, { stub, paused }: { readonly stub: number; readonly paused: boolean }): BlockSpec {
  const [x0, x1] = endsOf(frame, step);
  return {
    step,
    x0,
    x1,
    stretches: paused ? stretchesOf(frame, frame.plan.steps[step]!.pieces, x0, x1) : [[x0, x1]],
    inside: false,
    beside: [],
    left: false,
    reason: null,
    crew: 0,
    crewInside: false,
    closes: frame.ground.closingOf.has(step),
    closingRoom: markRoom(frame, step, stub),
    parts: [{ from: x0, to: x1 }],
    from: x0,
    to: x1,
  };
}
