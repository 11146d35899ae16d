import { parseQuantity } from "../../core/base";
import { textOf, type Written } from "../write/written";

type Units = "us" | "metric";

/** What can be cast, as the view names it. */
export const shapeKinds = [
  { id: "column", name: "a column" },
  { id: "pier", name: "a pier" },
  { id: "wall", name: "a wall" },
  { id: "footing", name: "a footing" },
  { id: "slab", name: "a slab on the ground" },
  { id: "deck slab", name: "a slab on a deck" },
  { id: "barrel", name: "a barrel vault" },
  { id: "stair", name: "a stair" },
] as const;

export type ShapeKind = (typeof shapeKinds)[number]["id"];

export type FormKind = "column" | "wall" | "deck" | "edge";

/** The form that goes with a shape. */
export const formKindOf: Readonly<Record<ShapeKind, FormKind>> = {
  column: "column",
  pier: "column",
  wall: "wall",
  footing: "edge",
  slab: "edge",
  "deck slab": "deck",
  barrel: "deck",
  stair: "deck",
};

/** Lengths in both units, round in each; a new build is written in its own. */
const written = (units: Units, us: string, metric: string): string => (units === "us" ? us : metric);

/** A shape to begin with: an ordinary one of its kind, every figure of it to be changed. */
export function newShape(kind: ShapeKind, units: Units): Written {
  const l = (us: string, metric: string) => written(units, us, metric);
  switch (kind) {
    case "column":
    case "pier":
      return { kind, long: l("12 in", "300 mm"), wide: l("12 in", "300 mm"), high: l("6 ft", "1.8 m") };
    case "wall":
      return { kind, long: l("8 ft", "2.4 m"), thick: l("8 in", "200 mm"), high: l("4 ft", "1.2 m") };
    case "footing":
      return { kind, long: l("8 ft", "2.4 m"), wide: l("16 in", "400 mm"), thick: l("8 in", "200 mm") };
    case "slab":
      return { kind, long: l("10 ft", "3 m"), wide: l("8 ft", "2.4 m"), thick: l("4 in", "100 mm") };
    case "deck slab":
      return { kind, long: l("10 ft", "3 m"), wide: l("8 ft", "2.4 m"), thick: l("6 in", "150 mm") };
    case "barrel":
      return { kind, long: l("10 ft", "3 m"), span: l("8 ft", "2.4 m"), rise: l("2 ft", "600 mm"), thick: l("6 in", "150 mm") };
    case "stair":
      return {
        kind,
        wide: l("3 ft", "900 mm"),
        steps: 4,
        riser: l("7 in", "180 mm"),
        tread: l("11 in", "280 mm"),
        thick: l("6 in", "150 mm"),
      };
  }
}

/** Heights above the foot for bands or wales: close at the foot, where the head is largest, wider above. `high`: height in the unit of the steps. */
export function heightsUpTo(high: number, units: Units, kind: "bands" | "wales"): readonly string[] {
  const us = units === "us";
  const [first, gap, more, widest] =
    kind === "bands" ? (us ? [4, 7, 1.5, 18] : [100, 180, 40, 450]) : us ? [8, 16, 2, 24] : [200, 400, 50, 600];
  const least = us ? 3 : 75;
  const heights: number[] = [];
  let step = gap as number;
  for (
    let at = Math.min(first as number, high / 2);
    at <= high - least || heights.length === 0;
    at += step, step = Math.min(widest as number, step + (more as number))
  )
    heights.push(Math.round(at * (us ? 2 : 0.2)) / (us ? 2 : 0.2));
  return heights.map((at) => `${at} ${us ? "in" : "mm"}`);
}

/** Fasteners whose figure nobody has read off anything yet: named as a guess. */
const guessed = (units: Units, name: string, us: string, metric: string): Written => ({
  name,
  carries: written(units, us, metric),
  from: "own guess",
});

/** A form to begin with: what one would build from plywood and 2x4. `high_mm`: height of the concrete, where it stands up. */
export function newForm(kind: FormKind, units: Units, high_mm: number): Written {
  const l = (us: string, metric: string) => written(units, us, metric);
  const high = units === "us" ? high_mm / 25.4 : high_mm;
  const sheathing = { ply: "3/4", grain: "across" };
  const doubled = { size: "2x4", pieces: 2 };
  switch (kind) {
    case "column":
      return {
        kind,
        sheathing,
        battens: { stuff: { size: "2x4", flat: true }, spacing: l("6 in", "150 mm") },
        bands: { stuff: doubled, at: heightsUpTo(high, units, "bands"), bolt: guessed(units, "1/2 in bolt", "2000 lb", "9 kN") },
      };
    case "wall":
      return {
        kind,
        sheathing,
        studs: { stuff: "2x4", spacing: l("12 in", "300 mm") },
        wales: { stuff: doubled, at: heightsUpTo(high, units, "wales") },
        ties: { by: guessed(units, "form tie", "2000 lb", "9 kN"), spacing: l("24 in", "600 mm") },
      };
    case "deck":
      return {
        kind,
        sheathing,
        joists: { stuff: "2x6", spacing: l("12 in", "300 mm") },
        stringers: { stuff: "4x6", spacing: l("4 ft", "1.2 m") },
        shores: { stuff: "4x4", spacing: l("4 ft", "1.2 m"), high: l("7 ft", "2.1 m") },
      };
    case "edge":
      return {
        kind,
        boards: high_mm > 235 ? "2x12" : high_mm > 185 ? "2x10" : high_mm > 140 ? "2x8" : "2x6",
        stakes: { spacing: l("3 ft", "900 mm") },
      };
  }
}

/** How high the sides of a shape as written stand, mm: its height, or else its thickness. */
export const highOf = (shape: Written): number => parseQuantity("length", textOf(shape.high) || textOf(shape.thick)) ?? 300;

/** An element with a form, all of it to be changed. */
export function newElement(id: string, name: string, kind: ShapeKind, units: Units): Written {
  const shape = newShape(kind, units);
  return { id, name, shape, form: newForm(formKindOf[kind], units, highOf(shape)) };
}

/** Concrete to begin with: what the drawing asks is not known. */
export const newMix = (units: Units, strength: string): Written => ({
  strength: strength === "" ? written(units, "4000 psi", "28 MPa") : strength,
});

/** A held rate to begin with: 5 ft/h (1.5 m/h), nobody named yet. */
export const newHeld = (units: Units): Written => ({ pass: written(units, "9 in", "225 mm"), every: "9 min" });

export const newBrace = (units: Units, rise_mm: number): Written => {
  const inches = Math.max(12, Math.round((rise_mm / 25.4) * 0.75));
  const metres = Math.max(300, Math.round((rise_mm * 0.75) / 50) * 50);
  const rise = written(units, `${inches} in`, `${metres} mm`);
  return { stuff: "2x4", spacing: written(units, "4 ft", "1.2 m"), run: rise, rise };
};

export const newHoldDown = (units: Units): Written => ({ by: guessed(units, "anchor", "1000 lb", "4.5 kN"), number: 4 });
export const newFastener = (units: Units, name: string): Written => guessed(units, name, "1000 lb", "4.5 kN");
export const newMudsills = (units: Units): Written => ({
  long: written(units, "2 ft", "600 mm"),
  wide: written(units, "9 1/4 in", "235 mm"),
  stuff: { size: "2x10", flat: true },
});
