import type { Access } from "../../core/access";
import type { Build } from "../../core/build";
import { type Drawing, inOrder, layers, type Mark, rect, round, type Subject, shape, words } from "../marks/mark";
import { type Near, nodeOf } from "./graph";
import { type Arrow, type OrderLayout, orderLayout, type StepBox } from "./layout";

const head = 6;
const margin = 12;

/** Rules that the builder writes as links; every other arrow is derived and carries the door mark. */
const written = /^(wait|choice|asked|not-before|deadline|fixed)$/;

/** The drawing, and for each step ("s:" and its id) what the arrows join it to: for the arrow keys. */
export interface OrderDrawing extends Drawing {
  readonly near: Readonly<Record<string, Near>>;
}

export interface OrderAsked {
  readonly text?: number;
  readonly layout?: OrderLayout;
}

/** The steps as a layered drawing from left to right; arrows derived from what is reached and closed carry a small door. */
export function orderDrawing(build: Build, access: Access, asked: OrderAsked = {}): OrderDrawing {
  const text = asked.text ?? 14;
  const layout = asked.layout ?? orderLayout(build, access, text);
  const marks = inOrder([
    ...layout.arrows.flatMap((arrow) => arrowMarks(build, access, arrow)),
    ...layout.boxes.flatMap((box) => boxMarks(build, box, text)),
  ]);
  const [width, height] = [Math.ceil(layout.width) + 2 * margin, Math.ceil(layout.height) + 2 * margin];
  return {
    near: Object.fromEntries(layout.near.map((one, step) => [nodeOf(build.steps[step]!.id), one])),
    title: `${build.name}: order`,
    width,
    height,
    parts: [{ name: "order", x: margin, y: margin, width: width - 2 * margin, height: height - 2 * margin, marks }],
  };
}

function boxMarks(build: Build, box: StepBox, text: number): Mark[] {
  const step = build.steps[box.step]!;
  const of: Subject = { list: "steps", id: step.id };
  const line = text + 3;
  return [
    rect(`step ${step.id}`, step.sort === "pour" ? "block-pour" : "block", layers.block, box.x0, box.y0, box.x1, box.y1, of),
    ...box.lines.map((one, index) =>
      words(`step name ${step.id} ${index}`, "text", { text: one, x: box.x0 + 8, y: box.y0 + 4 + (index + 0.8) * line, size: text, of }),
    ),
  ];
}

function arrowMarks(build: Build, access: Access, arrow: Arrow): Mark[] {
  const of: Subject = { list: "steps", id: build.steps[arrow.to]!.id };
  const id = `${build.steps[arrow.from]!.id} ${build.steps[arrow.to]!.id}`;
  const { points } = arrow;
  const [endX, endY] = points[points.length - 1]!;
  const line = [...points.slice(0, -1), [endX - head, endY] as const];
  const chosen = access.arcs.forced[arrow.row] === 0;
  const marks: Mark[] = [
    shape(`arrow ${id}`, chosen ? "arrow-chosen" : "arrow", layers.tail, curve(line), boundsOf(line), of),
    shape(
      `head ${id}`,
      "arrow-head",
      layers.tail,
      `M${round(endX)} ${round(endY)}l${-head - 1} -3.5v7Z`,
      { x0: endX - head, x1: endX, y0: endY - 3.5, y1: endY + 3.5 },
      of,
    ),
  ];
  const rule = access.statements[access.arcs.reason[arrow.row] ?? -1]?.rule ?? "";
  if (!written.test(rule)) marks.push(door(id, middleOf(line), of));
  return marks;
}

/** A door in plan, ajar: leaf and swing. */
function door(id: string, [x, y]: readonly [number, number], of: Subject): Mark {
  const r = 5;
  const d = `M${round(x - r)} ${round(y + r)}h${2 * r}M${round(x - r)} ${round(y + r)}v${-2 * r}A${2 * r} ${2 * r} 0 0 1 ${round(x + r)} ${round(y + r)}Z`;
  return shape(`door ${id}`, "door", layers.tail + 1, d, { x0: x - r, x1: x + r, y0: y - r, y1: y + r }, of);
}

/** Level at every corner, so that arrows leave and enter their boxes straight. */
function curve(points: readonly (readonly [number, number])[]): string {
  return points
    .map(([x, y], index) => {
      if (index === 0) return `M${round(x)} ${round(y)}`;
      const [px, py] = points[index - 1]!;
      const middle = round((px + x) / 2);
      return `C${middle} ${round(py)} ${middle} ${round(y)} ${round(x)} ${round(y)}`;
    })
    .join("");
}

function middleOf(points: readonly (readonly [number, number])[]): readonly [number, number] {
  const [a, b] = [points[0]!, points[1]!];
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}

function boundsOf(points: readonly (readonly [number, number])[]) {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return { x0: Math.min(...xs), x1: Math.max(...xs), y0: Math.min(...ys), y1: Math.max(...ys) };
}
