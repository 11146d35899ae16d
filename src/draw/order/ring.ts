import type { Finding, Statement } from "../../core/base";
import { type Drawing, inOrder, layers, type Mark, path, rect, words } from "../marks/mark";
import { wrap } from "../text/measure";

export interface RingAsked {
  readonly title: string;
  /** The sentence of a statement. */
  readonly say: (statement: Statement) => string;
  readonly text?: number;
  /** Width of the whole, px. */
  readonly width?: number;
}

const pad = 9;
const lane = 34;
const apart = 30;

/** Ids that a statement speaks of. */
const idsOf = (one: Statement): ReadonlySet<string> =>
  new Set([one.step, one.other, one.piece, one.place, ...(one.pieces ?? [])].filter((id): id is string => id !== undefined));

/** Puts statements so that neighbours speak of the same thing where they can; the first stays first. */
export function aroundRing(statements: readonly Statement[]): Statement[] {
  const left = [...statements];
  const out: Statement[] = left.splice(0, 1);
  while (left.length > 0) {
    const ids = idsOf(out[out.length - 1]!);
    const shared = left.map((one) => [...idsOf(one)].filter((id) => ids.has(id)).length);
    out.push(...left.splice(shared.indexOf(Math.max(...shared)), 1));
  }
  return out;
}

/**
 * A blocked order as the closed loop it is: its reasons as numbered sentences on one closed line, down one side and up the other. The line has no direction:
 * the reasons hold all at once.
 */
export function ringDrawing(finding: Finding, asked: RingAsked): Drawing {
  const text = asked.text ?? 14;
  const width = asked.width ?? 640;
  const line = text + 4;
  const statements = aroundRing(finding.because ?? []);
  const boxWidth = (width - lane) / 2;
  const sentences = statements.map((one, index) => wrap(`${index + 1}. ${asked.say(one)}`, boxWidth - 2 * pad, text));
  const down = Math.ceil(statements.length / 2);
  const heights = sentences.map((lines) => lines.length * line + 2 * pad);
  const rowHeights = Array.from({ length: down }, (_, row) => Math.max(heights[row] ?? 0, heights[statements.length - 1 - row] ?? 0));
  const marks: Mark[] = [];
  const boxes = statements.map((_, index) => {
    const left = index < down;
    const row = left ? index : statements.length - 1 - index;
    const y0 = rowHeights.slice(0, row).reduce((sum, high) => sum + high + apart, 0);
    const x0 = left ? 0 : boxWidth + lane;
    return { x0, x1: x0 + boxWidth, y0, y1: y0 + heights[index]! };
  });
  boxes.forEach((box, index) => {
    marks.push(rect(`reason box ${index}`, "block", layers.block, box.x0, box.y0, box.x1, box.y1));
    sentences[index]!.forEach((one, at) => {
      marks.push(words(`reason ${index} ${at}`, "text", { text: one, x: box.x0 + pad, y: box.y0 + pad + (at + 0.78) * line, size: text }));
    });
    if (boxes.length > 1) marks.push(lineTo(index, box, boxes[(index + 1) % boxes.length]!));
  });
  const height = boxes.reduce((most, { y1 }) => Math.max(most, y1), 0);
  return { title: asked.title, width, height, parts: [{ name: "ring", x: 0, y: 0, width, height, marks: inOrder(marks) }] };
}

interface Box {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

/** Down on the left, across at the foot, up on the right, across at the top; with a bend where the two sides are of different length. */
function lineTo(index: number, from: Box, to: Box): Mark {
  return path(`loop ${index}`, "loop-line", layers.link, lineBetween(from, to));
}

function lineBetween(from: Box, to: Box): (readonly [number, number])[] {
  const middle = (box: Box) => (box.x0 + box.x1) / 2;
  const below = to.y0 > from.y0;
  if (from.x0 === to.x0)
    return [
      [middle(from), below ? from.y1 : from.y0],
      [middle(to), below ? to.y0 : to.y1],
    ];
  const right = to.x0 > from.x0;
  const [top, foot] = [Math.max(from.y0, to.y0), Math.min(from.y1, to.y1)];
  const side = right ? from.x1 : from.x0;
  if (foot > top)
    return [
      [side, (top + foot) / 2],
      [right ? to.x0 : to.x1, (top + foot) / 2],
    ];
  // One stands lower than the other: out of its edge towards the other, and round a corner in the channel between the columns.
  const level = (from.y0 + from.y1) / 2;
  const into = (to.y0 + to.y1) / 2;
  const channel = (side + (right ? to.x0 : to.x1)) / 2;
  return [
    [side, level],
    [channel, level],
    [channel, into],
    [right ? to.x0 : to.x1, into],
  ];
}
