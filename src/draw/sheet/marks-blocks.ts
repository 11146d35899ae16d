import { circle, layers, type Mark, path, rect, type Subject, words } from "../marks/mark";
import { stepLabel } from "../text/names";
import { crewPitch, type Piece, textGap } from "./blocks";
import type { Frame } from "./frame";
import type { Block, Layout } from "./layout";
import { plates } from "./plate";

const dot = 2.4;

/** The marks of every step: block, name, crew, and where its words cross a change of state a plate that keeps them readable. */
export function* blockMarks(frame: Frame, layout: Layout): Generator<Mark, void, void> {
  for (const block of layout.visible) yield* frame.whole ? wholeMarks(frame, block) : oneBlock(frame, layout, block);
}

function wholeMarks({ build }: Frame, block: Block): Mark[] {
  const step = build.steps[block.step]!;
  const of: Subject = { list: "steps", id: step.id };
  return [
    rect(
      `block ${step.id}`,
      step.sort === "pour" ? "block-pour" : "block",
      layers.block,
      block.x0,
      block.y0,
      Math.max(block.x1, block.x0 + 4),
      block.y1,
      of,
    ),
  ];
}

function oneBlock(frame: Frame, layout: Layout, block: Block): Mark[] {
  const step = frame.build.steps[block.step]!;
  const of: Subject = { list: "steps", id: step.id };
  const size = frame.text;
  const baseline = block.y0 + (frame.block + 0.68 * size) / 2;
  const role = step.sort === "pour" ? "block-pour" : "block";
  const marks: Mark[] = block.stretches.map(([x0, x1], index) =>
    rect(index === 0 ? `block ${step.id}` : `block ${step.id} ${index}`, role, layers.block, x0, block.y0, x1, block.y1, of),
  );
  for (let index = 1; index < block.stretches.length; index += 1) {
    const [from, to] = [block.stretches[index - 1]![1], block.stretches[index]![0]];
    const inset = (block.y1 - block.y0) * 0.3;
    for (const [name, y] of [
      ["a", block.y0 + inset],
      ["b", block.y1 - inset],
    ] as const)
      marks.push(
        path(
          `pause ${step.id} ${index} ${name}`,
          "pause",
          layers.block,
          [
            [from, y],
            [to, y],
          ],
          { of },
        ),
      );
  }
  const first = block.stretches[0]!;
  const last = block.stretches[block.stretches.length - 1]!;
  if (block.inside) marks.push(words(`name ${step.id}`, "text", { text: stepLabel(step), x: first[0] + 5, y: baseline, size, of }));
  let x = block.left ? block.x0 : block.x1 + block.closingRoom;
  const put = (piece: Piece, index: number) => {
    if (block.left) x -= piece.width + textGap;
    const start = block.left ? x : x + textGap;
    const label = words(index === 0 && !block.inside ? `name ${step.id}` : `beside ${step.id} ${index}`, piece.role, {
      text: piece.text,
      x: start,
      y: baseline,
      size,
      weight: piece.weight,
      of,
    });
    marks.push(...plates(frame, layout.lanes[block.lane]!, label, block.y0 + 1, block.y1 - 1), label);
    if (!block.left) x = start + piece.width;
  };
  const pieces = block.left ? [...block.beside].reverse() : block.beside;
  for (const piece of pieces) put(piece, block.beside.indexOf(piece));
  marks.push(
    ...crewMarks(block, block.crewInside ? last[1] - 5 : block.left ? x - textGap : x + textGap + block.crew * crewPitch, of, step.id),
  );
  if (block.reason) {
    const label = words(`reason ${step.id}`, "text-chalk", {
      text: block.reason.text,
      x: block.x0 - textGap - block.reason.width,
      y: baseline,
      size,
      of,
    });
    marks.push(...plates(frame, layout.lanes[block.lane]!, label, block.y0 + 1, block.y1 - 1), label);
  }
  return marks;
}

/** Dots for hands, from the right. */
function crewMarks(block: Block, right: number, of: Subject, id: string): Mark[] {
  const y = (block.y0 + block.y1) / 2;
  return Array.from({ length: block.crew }, (_, index) => {
    const x = right - index * crewPitch - dot;
    return {
      shape: "path",
      id: `crew ${id} ${index}`,
      role: "crew",
      layer: layers.text,
      d: circle(x, y, dot),
      x0: x - dot,
      x1: x + dot,
      y0: y - dot,
      y1: y + dot,
      of,
    } satisfies Mark;
  });
}
