import type { Weight } from "../text/measure";
import { textWidth } from "../text/measure";
import type { Role } from "./roles";

/** The thing in the build that a mark stands for. */
export interface Subject {
  readonly list: "steps" | "places" | "deliveries" | "bookings" | "waits" | "pieces" | "solids";
  readonly id: string;
}

/** Smallest upright rectangle round a mark, px in its part. */
export interface Bounds {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

interface Common extends Bounds {
  /** Unique in its drawing, made from the ids of the build, so that the same thing keeps its mark through a change. */
  readonly id: string;
  readonly role: Role;
  /** Higher is drawn later. */
  readonly layer: number;
  readonly of?: Subject;
}

export interface RectMark extends Common {
  readonly shape: "rect";
}

export interface PathMark extends Common {
  readonly shape: "path";
  readonly d: string;
}

export interface TextMark extends Common {
  readonly shape: "text";
  readonly text: string;
  /** Baseline. */
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly weight: Weight;
}

/** A plain shape. Its look follows from its role alone. */
export type Mark = RectMark | PathMark | TextMark;

/** One part of a drawing with its own origin; a screen may keep a part in sight while another scrolls. */
export interface Part {
  readonly name: string;
  /** Where it stands in the whole, px. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** In drawing order. */
  readonly marks: readonly Mark[];
}

export interface Drawing {
  readonly title: string;
  readonly width: number;
  readonly height: number;
  readonly parts: readonly Part[];
}

/** Layers from back to front. */
export const layers = {
  paper: 0,
  section: 10,
  fold: 14,
  rule: 16,
  slack: 20,
  tail: 24,
  wait: 28,
  ghost: 30,
  chalkThin: 34,
  plate: 40,
  block: 44,
  closing: 38,
  chalkHeavy: 52,
  text: 56,
  today: 39,
  link: 64,
} as const;

export const rect = (id: string, role: Role, layer: number, x0: number, y0: number, x1: number, y1: number, of?: Subject): RectMark => ({
  shape: "rect",
  id,
  role,
  layer,
  x0,
  y0,
  x1,
  y1,
  ...(of ? { of } : {}),
});

/** A run of straight strokes through points, closed or open. */
export function path(
  id: string,
  role: Role,
  layer: number,
  points: readonly (readonly [number, number])[],
  more: { readonly of?: Subject; readonly closed?: boolean } = {},
): PathMark {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const d = points.map(([x, y], index) => `${index === 0 ? "M" : "L"}${round(x)} ${round(y)}`).join("") + (more.closed ? "Z" : "");
  return {
    shape: "path",
    id,
    role,
    layer,
    d,
    x0: Math.min(...xs),
    y0: Math.min(...ys),
    x1: Math.max(...xs),
    y1: Math.max(...ys),
    ...(more.of ? { of: more.of } : {}),
  };
}

/** A path given as SVG path data, with its bounds. */
export const shape = (id: string, role: Role, layer: number, d: string, bounds: Bounds, of?: Subject): PathMark => ({
  shape: "path",
  id,
  role,
  layer,
  d,
  ...bounds,
  ...(of ? { of } : {}),
});

export interface TextAsked {
  readonly text: string;
  readonly x: number;
  /** Baseline. */
  readonly y: number;
  readonly size: number;
  readonly weight?: Weight;
  readonly anchor?: "start" | "middle" | "end";
  readonly of?: Subject;
  readonly layer?: number;
}

/** One line of text; bounds from the table of widths, ascent 0.75 and descent 0.22 of the size. */
export function words(id: string, role: Role, asked: TextAsked): TextMark {
  const weight = asked.weight ?? 400;
  const wide = textWidth(asked.text, asked.size, weight);
  const x = asked.anchor === "end" ? asked.x - wide : asked.anchor === "middle" ? asked.x - wide / 2 : asked.x;
  return {
    shape: "text",
    id,
    role,
    layer: asked.layer ?? layers.text,
    text: asked.text,
    x,
    y: asked.y,
    size: asked.size,
    weight,
    x0: x,
    y0: asked.y - 0.75 * asked.size,
    x1: x + wide,
    y1: asked.y + 0.22 * asked.size,
    ...(asked.of ? { of: asked.of } : {}),
  };
}

/** Two decimals at most, so that drawings compare as text. */
export const round = (value: number): number => Math.round(value * 100) / 100 || 0;

/** The outline of a circle, as a path. */
export const circle = (x: number, y: number, r: number): string =>
  `M${(x - r).toFixed(2)} ${y.toFixed(2)}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;

/** Marks in drawing order: by layer, then as made. */
export function inOrder(marks: readonly Mark[]): Mark[] {
  return marks
    .map((mark, index) => ({ mark, index }))
    .sort((a, b) => a.mark.layer - b.mark.layer || a.index - b.index)
    .map(({ mark }) => mark);
}
