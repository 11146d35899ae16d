import type { Place } from "../../core/build";
import { type Bounds, layers, type Mark, shape, words } from "../marks/mark";
import type { Role } from "../marks/roles";
import { dateLabel } from "../time/labels";
import { isEarth } from "./earth";
import type { Frame, SheetAsked } from "./frame";
import { lastOf } from "./remembered";

type Outline = NonNullable<Place["elevation_mm"]>;

/** One place as drawn in the elevation, px in the corner of the sheet. */
export interface Drawn extends Bounds {
  readonly place: number;
  readonly id: string;
  /** Its outline as path data. */
  readonly d: string;
}

const edge = 6;
/** Height of the line in which the day stands. px */
export const caption = 20;

/** Least height of the corner that holds the elevation, px. */
export const leastCorner = (whole: boolean): number => (whole ? 210 : 172);

/** Whether a sheet shows the structure. */
export const hasElevation = ({ elevation, build }: SheetAsked): boolean =>
  (elevation ?? true) && build.places.some((place) => place.elevation_mm !== null);

/** The structure in proportion, as large as the corner of the sheet lets it be. Empty where no place has an outline. */
export const drawnParts = ({ build }: Frame, width: number, height: number): readonly Drawn[] =>
  fitted({
    parts: build.places.flatMap(({ id, elevation_mm }, place) => (elevation_mm ? [{ id, place, outline: elevation_mm }] : [])),
    width,
    height,
  });

interface Fitting {
  readonly parts: readonly { readonly id: string; readonly place: number; readonly outline: Outline }[];
  readonly width: number;
  readonly height: number;
}

const fitted = lastOf(({ parts, width, height }: Fitting): readonly Drawn[] => {
  if (parts.length === 0) return [];
  const all = {
    x0: Math.min(...parts.map(({ outline }) => outline.x)),
    x1: Math.max(...parts.map(({ outline }) => outline.x + outline.wide)),
    y0: Math.min(...parts.map(({ outline }) => outline.y)),
    y1: Math.max(...parts.map(({ outline }) => outline.y + outline.high)),
  };
  const scale = Math.min((width - 2 * edge) / Math.max(1, all.x1 - all.x0), (height - 2 * edge) / Math.max(1, all.y1 - all.y0));
  const toX = (x: number) => edge + (x - all.x0) * scale;
  const toY = (y: number) => height - edge - (y - all.y0) * scale;
  return parts.map(({ place, id, outline }) => {
    const bounds = {
      x0: toX(outline.x),
      x1: toX(outline.x + outline.wide),
      y0: toY(outline.y + outline.high),
      y1: toY(outline.y),
    };
    return { place, id, d: outlinePath(outline.shape, bounds), ...bounds };
  });
});

/** The elevation as it stands at an instant, and the day of that instant beside its top. Small parts lie on large ones. */
export function elevationMarks(frame: Frame, parts: readonly Drawn[], width: number, at: number): Mark[] {
  if (parts.length === 0) return [];
  const size = (one: Drawn) => (one.x1 - one.x0) * (one.y1 - one.y0);
  const ordered = [...parts].sort((a, b) => size(b) - size(a) || a.place - b.place);
  return [
    words("elevation day", "text-soft", {
      text: `on ${dateLabel(frame.time, at)}`,
      x: width - 6,
      y: frame.text,
      size: frame.text,
      anchor: "end",
    }),
    ...ordered.map((one, rank) =>
      shape(`part ${one.id}`, lookOf(frame, one.place, at), layers.block + rank / 100, one.d, boundsOf(one), {
        list: "places",
        id: one.id,
      }),
    ),
  ];
}

const boundsOf = ({ x0, y0, x1, y1 }: Bounds): Bounds => ({ x0, y0, x1, y1 });

/** The state of a place at the instant the elevation is drawn for. */
function lookOf({ plan, build }: Frame, place: number, at: number): Role {
  const states = plan.stands.places[place] ?? [];
  const index = states.findLastIndex(({ from }) => from <= at);
  const state = states[Math.max(0, index)];
  if (!state || state.state === "open") return "outline";
  if (index <= 0 && state.state === "closed") return "outline-later";
  if (state.state === "closed") return "outline-closed";
  return isEarth(build, place, state.by) ? "outline-earth" : "outline-concrete";
}

function outlinePath(shape: Outline["shape"], { x0, y0, x1, y1 }: Bounds): string {
  const n = (value: number) => value.toFixed(1);
  const middle = (x0 + x1) / 2;
  if (shape === "gable") return `M${n(x0)} ${n(y1)}L${n(middle)} ${n(y0)}L${n(x1)} ${n(y1)}Z`;
  if (shape === "arch") {
    const [rx, ry] = [(x1 - x0) / 2, Math.min((x1 - x0) / 2, y1 - y0)];
    return `M${n(x0)} ${n(y1)}V${n(y0 + ry)}A${n(rx)} ${n(ry)} 0 0 1 ${n(x1)} ${n(y0 + ry)}V${n(y1)}Z`;
  }
  return `M${n(x0)} ${n(y0)}H${n(x1)}V${n(y1)}H${n(x0)}Z`;
}
