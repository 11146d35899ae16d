import type { Solid } from "../../core/build";
import { spread } from "../forms/spread";
import { type Bounds, type Mark, path, rect, round, shape, words } from "../marks/mark";
import { textWidth, wrap } from "../text/measure";
import type { Fit } from "./frame";
import { type BodyLook, type Way, wayOf } from "./paint";
import type { Painted } from "./painted";
import { type Flat, holds } from "./view";

/** A name beside the drawing, with the point in sight that it means, mm on the drawing. */
export interface Label {
  readonly id: string;
  readonly name: string;
  readonly at: Flat;
  readonly area: number;
  readonly lit: boolean;
  readonly later: boolean;
}

/** Bodies in sight, each name once, at the middle of the largest face of it that shows; those that are there first, then by how much shows. */
export function labelsOf(painted: readonly Painted[], solids: readonly Pick<Solid, "id" | "name">[], bodies: readonly BodyLook[]): Label[] {
  const ways = bodies.map(wayOf);
  const best = new Map<string, Label>();
  painted.forEach((bit, index) => {
    const [body, solid, way] = [bodies[bit.body] as BodyLook, solids[bit.body] as Pick<Solid, "id" | "name">, ways[bit.body] as Way];
    if (way === "none" || way === "dug") return;
    for (const { points, area } of bit.faces) {
      const known = best.get(solid.name);
      if (known && !outranks({ lit: body.lit, later: way === "later", area }, known)) continue;
      const at = middleOf(points);
      if (!isSeen(painted, ways, index, at)) continue;
      best.set(solid.name, { id: solid.id, name: solid.name, at, area, lit: body.lit, later: way === "later" });
    }
  });
  return [...best.values()].sort((a, b) => (outranks(a, b) ? -1 : outranks(b, a) ? 1 : 0));
}

type Rank = Pick<Label, "lit" | "later" | "area">;

function outranks(a: Rank, b: Rank): boolean {
  if (a.lit !== b.lit) return a.lit;
  return a.later === b.later ? a.area > b.area : b.later;
}

function middleOf(points: readonly Flat[]): Flat {
  const sum = points.reduce(([x, y], [px, py]): Flat => [x + px, y + py], [0, 0]);
  return [sum[0] / points.length, sum[1] / points.length];
}

/** Whether nothing nearer lies over a point of a bit; what is to come hides nothing that is there. */
function isSeen(painted: readonly Painted[], ways: readonly Way[], index: number, at: Flat): boolean {
  const { body, bit } = painted[index] as Painted;
  const later = ways[body] === "later";
  return !painted.some((other, place) => {
    if (other.bit === bit) return false;
    const way = ways[other.body];
    return place > index && (way === "solid" || (way === "later" && later)) && holds(other.outline, at);
  });
}

interface Columns {
  readonly left: readonly Label[];
  readonly right: readonly Label[];
  readonly leftWide: number;
  readonly rightWide: number;
}

/** px of the longest line of a label; a longer name is broken. */
const longest = 132;
const labelGap = 14;

const linesOf = (label: Label, text: number): string[] => wrap(label.name, longest, text, label.lit ? 600 : 400);

/** Which names stand on which side of the drawing, as many as its height holds; where one side would take most of them, those next to the middle change over. */
export function columnsOf(labels: readonly Label[], middle: number, high: number, text: number): Columns {
  const sides: [Label[], Label[]] = [[], []];
  const full = [0, 0];
  const xs = labels.map(({ at }) => at[0]).sort((a, b) => a - b);
  const parting = ((xs[xs.length >> 1] ?? middle) + middle) / 2;
  for (const label of labels) {
    const tall = linesOf(label, text).length * text * 1.2 + 4;
    const wanted = label.at[0] < parting ? 0 : 1;
    // Where its own side is full a name goes to neither: a line across the drawing would run through others.
    if ((full[wanted] as number) + tall > high) continue;
    full[wanted] = (full[wanted] as number) + tall;
    (sides[wanted] as Label[]).push(label);
  }
  const wide = (side: readonly Label[]) =>
    side.length === 0
      ? 0
      : labelGap + Math.max(...side.flatMap((label) => linesOf(label, text).map((line) => textWidth(line, text, label.lit ? 600 : 400))));
  return { left: sides[0], right: sides[1], leftWide: wide(sides[0]), rightWide: wide(sides[1]) };
}

/** Names in a column on either side, spread so that none stands on another, each with a line to its body. */
export function labelMarks(columns: Columns, fit: Fit, width: number, text: number): Mark[] {
  const { left, right, leftWide, rightWide } = columns;
  return [
    ...side(left, { near: leftWide - labelGap, way: -1 }, fit, text),
    ...side(right, { near: width - rightWide + labelGap, way: 1 }, fit, text),
  ];
}

/** So many chosen bodies are named each at its place; of more, only the first. */
const fewChosen = 3;

/** Where there is no room for names beside the drawing: those of what is chosen. `boxes`: round the bodies by their ids, px. */
export function chosenMarks(labels: readonly Label[], boxes: ReadonlyMap<string, Bounds>, fit: Fit, width: number, text: number): Mark[] {
  const chosen = labels.filter(({ lit }) => lit);
  const few = chosen.length > 1 && chosen.length <= fewChosen ? besideEach(chosen, boxes, width, text) : null;
  return few ?? overDrawing(chosen, fit, width, text);
}

/** Each over its body or under it, on paper of its own; null where there is no room for one of them. */
function besideEach(chosen: readonly Label[], boxes: ReadonlyMap<string, Bounds>, width: number, text: number): Mark[] | null {
  const taken: Bounds[] = [...boxes.values()];
  const marks: Mark[] = [];
  for (const label of chosen) {
    const box = boxes.get(label.id);
    if (!box) return null;
    const wide = textWidth(label.name, text, 600);
    const x = Math.max(3, Math.min(width - wide - 3, (box.x0 + box.x1 - wide) / 2));
    const of = { list: "solids", id: label.id } as const;
    const at = (y: number) => words(`label ${label.id}`, "text", { text: label.name, x, y, size: text, weight: 600, of });
    const name = [at(box.y0 - 0.35 * text), at(box.y1 + 0.95 * text)].find(
      (one) => one.y0 >= 0 && one.x1 <= width && taken.every((other) => !overlapping(one, other)),
    );
    if (!name) return null;
    taken.push(name);
    marks.push(rect(`plate ${label.id}`, "plate", 5, name.x0 - 3, name.y0 - 1, name.x1 + 3, name.y1 + 1, of), name);
  }
  return marks;
}

const overlapping = (a: Bounds, b: Bounds): boolean => a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1;

/** The name of the first on a line of its own over the drawing, as far as it goes. */
function overDrawing(labels: readonly Label[], fit: Fit, width: number, text: number): Mark[] {
  const label = labels.find(({ lit }) => lit);
  const line = label && wrap(label.name, width, text, 600)[0];
  if (!label || line === undefined) return [];
  const of = { list: "solids", id: label.id } as const;
  const name = words(`label ${label.id}`, "text", { text: line, x: 0, y: text, size: text, weight: 600, of });
  if (name.x1 > width) return [];
  const at = fit.place(label.at);
  return [name, path(`leader ${label.id}`, "leader", 5, [[Math.min(at[0], name.x1), name.y1 + 2], at], { of })];
}

interface Side {
  /** Where the names begin, px, and which way they go from there. */
  readonly near: number;
  readonly way: 1 | -1;
}

function side(labels: readonly Label[], { near, way }: Side, fit: Fit, text: number): Mark[] {
  const row = text * 1.2;
  const rim = near - 4 * way;
  const placed = untangled(
    labels.map((label) => ({ label, lines: linesOf(label, text), at: fit.place(label.at) })),
    rim,
    (one) => one.lines.length * row + 4,
    fit.height,
  );
  return placed.flatMap(({ one: { label, lines, at }, middle }): Mark[] => {
    const first = middle - ((lines.length - 1) * row) / 2 + text * 0.28;
    const of = { list: "solids", id: label.id } as const;
    const [x, y] = at;
    return [
      path(`leader ${label.id}`, "leader", 5, [[rim, middle], at], { of }),
      shape(
        `leader end ${label.id}`,
        "leader-dot",
        5,
        `M${round(x - 2)} ${round(y)}a2 2 0 1 0 4 0a2 2 0 1 0 -4 0Z`,
        { x0: x - 2, y0: y - 2, x1: x + 2, y1: y + 2 },
        of,
      ),
      ...lines.map((line, index) =>
        words(`label ${label.id} ${index}`, label.later ? "text-soft" : "text", {
          text: line,
          x: near,
          y: first + index * row,
          size: text,
          weight: label.lit ? 600 : 400,
          anchor: way === -1 ? "end" : "start",
          of,
        }),
      ),
    ];
  });
}

/** One below the other in the order of what they mean; two whose lines would cross change places. */
function untangled<T extends { readonly at: Flat }>(
  all: readonly T[],
  rim: number,
  tall: (one: T) => number,
  high: number,
): { one: T; middle: number }[] {
  const order = [...all].sort((a, b) => a.at[1] - b.at[1]);
  const wishes = order.map(({ at }) => at[1]);
  const middles = () =>
    spread(
      order.map((one, i) => ({ y: wishes[i] as number, high: tall(one) })),
      0,
      high,
    );
  for (let turn = 0; turn < order.length; turn += 1) {
    const at = middles();
    const crossing = order.findIndex((one, i) => {
      const next = order[i + 1];
      return next !== undefined && meets([rim, at[i] as number], one.at, [rim, at[i + 1] as number], next.at);
    });
    if (crossing < 0) break;
    order.splice(crossing, 2, order[crossing + 1] as T, order[crossing] as T);
  }
  const at = middles();
  return order.map((one, i) => ({ one, middle: at[i] as number }));
}

/** Whether two strokes cross. */
function meets(a: Flat, b: Flat, c: Flat, d: Flat): boolean {
  const turn = (p: Flat, q: Flat, r: Flat) => Math.sign((q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]));
  return turn(a, b, c) !== turn(a, b, d) && turn(c, d, a) !== turn(c, d, b);
}
