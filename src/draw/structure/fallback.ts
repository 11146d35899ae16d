import { asId } from "../../core/base";
import type { Build, PourElement, Solid } from "../../core/build";

/** Where the bodies of a drawing come from: written, or for want of those laid out from pours or from the outlines of places. */
export type BodiesFrom = "written" | "pours" | "outlines" | "nothing";

export interface Bodies {
  readonly from: BodiesFrom;
  readonly solids: readonly Solid[];
}

const known = new WeakMap<Build, Bodies>();

/** What is drawn of a build. Where no bodies are written, the elements of its pours as boxes side by side; where there are none, the outlines of its places. */
export function bodiesOf(build: Build): Bodies {
  const found = known.get(build);
  if (found) return found;
  const made = written(build);
  known.set(build, made);
  return made;
}

function written(build: Build): Bodies {
  if (build.solids.length > 0) return { from: "written", solids: build.solids };
  const fromPours = laidOut(build);
  if (fromPours.length > 0) return { from: "pours", solids: fromPours };
  const fromPlaces = outlined(build);
  return fromPlaces.length > 0 ? { from: "outlines", solids: fromPlaces } : { from: "nothing", solids: [] };
}

const gap_mm = 600;
/** Of elements alike so many are drawn. */
const alike = 4;

function laidOut(build: Build): Solid[] {
  const all = build.pours.flatMap((pour) =>
    pour.elements.flatMap((element) =>
      Array.from(
        { length: Math.min(alike, element.number) },
        (_, copy): Solid => ({
          ...bare,
          id: `${pour.id} ${element.id} ${copy}`,
          name: element.name,
          ...bodyOf(element),
          pour: pour.step,
          ...partsOf(build, element),
        }),
      ),
    ),
  );
  return inRows(all);
}

/** Side by side in rows, the first in front, about twice as long as deep together. */
function inRows(all: readonly Solid[]): Solid[] {
  const ground = all.reduce((sum, { size_mm }) => sum + (size_mm.long + gap_mm) * (size_mm.wide + gap_mm), 0);
  const longest = Math.max(Math.sqrt(2 * ground), ...all.map(({ size_mm }) => size_mm.long));
  let [x, y, deep] = [0, 0, 0];
  return all.map((solid) => {
    const { long, wide } = solid.size_mm;
    if (x > 0 && x + long > longest) [x, y, deep] = [0, y + deep + gap_mm, 0];
    const from = x;
    x += long + gap_mm;
    deep = Math.max(deep, wide);
    return { ...solid, at_mm: { x: from + long / 2, y: y + wide / 2, z: 0 } };
  });
}

const bare = {
  at_mm: { x: 0, y: 0, z: 0 },
  thick_mm: null,
  steps: null,
  turn_deg: 0,
  pour: null,
  pieces: [],
  form: [],
  bars: [],
  places: [],
} as const;

/** Shape and size of an element; the batter of a wall and the waist of a stair are left out. */
function bodyOf({ shape }: PourElement): Pick<Solid, "shape" | "size_mm"> & Partial<Pick<Solid, "thick_mm" | "steps">> {
  switch (shape.kind) {
    case "column":
    case "pier":
      return { shape: shape.round ? "cylinder" : "box", size_mm: { long: shape.long_mm, wide: shape.wide_mm, high: shape.high_mm } };
    case "wall":
      return { shape: "box", size_mm: { long: shape.long_mm, wide: shape.thick_mm, high: shape.high_mm } };
    case "barrel":
      return {
        shape: "vault",
        size_mm: { long: shape.long_mm, wide: shape.span_mm, high: Math.max(1, shape.rise_mm) },
        thick_mm: shape.thick_mm,
      };
    case "stair":
      return {
        shape: "stairs",
        size_mm: { long: shape.steps * shape.tread_mm, wide: shape.wide_mm, high: shape.steps * shape.riser_mm },
        steps: shape.steps,
      };
    default:
      return { shape: "box", size_mm: { long: shape.long_mm, wide: shape.wide_mm, high: shape.thick_mm } };
  }
}

const temporary: ReadonlySet<string> = new Set(["form", "shore", "brace", "scaffold"]);

/** What an element's pieces are to its body: those that form or prop it, what it is, and the places that it fills. */
function partsOf(build: Build, element: PourElement): Pick<Solid, "pieces" | "form" | "places"> {
  const pieces = element.pieces.flatMap((id) => build.pieces[build.at.piece.get(id) ?? -1] ?? []);
  return {
    form: pieces.filter(({ sort }) => temporary.has(sort)).map(({ id }) => id),
    pieces: pieces.filter(({ sort }) => !temporary.has(sort)).map(({ id }) => id),
    places: [...new Set(pieces.flatMap(({ fills }) => fills))],
  };
}

/** How far back an outline is drawn, as its depth is not written. */
const depth_mm = 1200;

function outlined(build: Build): Solid[] {
  return build.places.flatMap((place): Solid[] => {
    const outline = place.elevation_mm;
    if (!outline) return [];
    return [
      {
        ...bare,
        id: `place ${place.id}`,
        name: place.name,
        shape: outline.shape === "gable" ? "gable" : "box",
        // A gable is seen from its end.
        ...(outline.shape === "gable"
          ? { turn_deg: 90, size_mm: { long: depth_mm, wide: outline.wide, high: outline.high } }
          : { size_mm: { long: outline.wide, wide: depth_mm, high: outline.high } }),
        at_mm: { x: outline.x + outline.wide / 2, y: 0, z: outline.y },
        pieces: build.pieces.filter(({ fills }) => fills.includes(asId(place.id))).map(({ id }) => id),
        places: [place.id],
      },
    ];
  });
}
