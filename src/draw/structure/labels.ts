import type { Solid } from "../../core/build";
import { spread } from "../forms/spread";
import { type Mark, path, words } from "../marks/mark";
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
export function labelsOf(painted: readonly Painted[], solids: readonly Solid[], bodies: readonly BodyLook[]): Label[] {
  const ways = bodies.map(wayOf);
  const best = new Map<string, Label>();
  painted.forEach((bit, index) => {
    const [body, solid, way] = [bodies[bit.body] as BodyLook, solids[bit.body] as Solid, ways[bit.body] as Way];
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

/** Whether nothing that is drawn later lies over a point of a bit: what is to come is drawn before all that is there. */
function isSeen(painted: readonly Painted[], ways: readonly Way[], index: number, at: Flat): boolean {
  const { body, bit } = painted[index] as Painted;
  const later = ways[body] === "later";
  return !painted.some((other, place) => {
    if (other.bit === bit) return false;
    const way = ways[other.body];
    const covers = way === "solid" ? later || place > index : way === "later" && later && place > index;
    return covers && holds(other.outline, at);
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
export const labelGap = 14;

const linesOf = (label: Label, text: number): string[] => wrap(label.name, longest, text, label.lit ? 600 : 400);

/** Which names stand on which side of the drawing, as many as its height holds. */
export function columnsOf(labels: readonly Label[], middle: number, high: number, text: number): Columns {
  const sides: [Label[], Label[]] = [[], []];
  const full = [0, 0];
  for (const label of labels) {
    const tall = linesOf(label, text).length * text * 1.2 + 4;
    const wanted = label.at[0] < middle ? 0 : 1;
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
  return [
    ...side(columns.left, columns.leftWide, "left", fit, width, text),
    ...side(columns.right, columns.rightWide, "right", fit, width, text),
  ];
}

function side(labels: readonly Label[], wide: number, which: "left" | "right", fit: Fit, width: number, text: number): Mark[] {
  const row = text * 1.2;
  const wishes = labels.map((label) => ({ y: fit.place(label.at)[1], high: linesOf(label, text).length * row + 4 }));
  const middles = spread(wishes, 0, fit.height);
  return labels.flatMap((label, index): Mark[] => {
    const middle = middles[index] as number;
    const lines = linesOf(label, text);
    const first = middle - ((lines.length - 1) * row) / 2 + text * 0.28;
    const near = which === "left" ? wide - labelGap : width - wide + labelGap;
    const of = { list: "solids", id: label.id } as const;
    const at = fit.place(label.at);
    const rim: Flat = [which === "left" ? near + 4 : near - 4, middle];
    const role = label.later ? "text-soft" : "text";
    return [
      path(`leader ${label.id}`, "leader", 5, [rim, at], { of }),
      ...lines.map((line, at) =>
        words(`label ${label.id} ${at}`, role, {
          text: line,
          x: near,
          y: first + at * row,
          size: text,
          weight: label.lit ? 600 : 400,
          anchor: which === "left" ? "end" : "start",
          of,
        }),
      ),
    ];
  });
}
