import type { ElementShape, Face, FaceName } from "../../../core/build";
import { objectsOf, textOf } from "../../write/written";

export interface FaceRow {
  readonly face: FaceName;
  readonly name: string;
  /** What it is cast against while nothing is said. */
  readonly usual: Face["against"];
}

const row = (face: FaceName, name: string, usual: Face["against"] = "form"): FaceRow => ({ face, name, usual });
const top = row("top", "Top", "free");

/** The faces one can speak of, by shape; "sides" stands for all that go around. */
export function faceRows(shape: ElementShape): readonly FaceRow[] {
  switch (shape.kind) {
    case "wall":
      return [row("a", "First face"), row("b", "Second face"), row("ends", "Ends"), top];
    case "column":
    case "pier":
      return [row("sides", "Sides"), top];
    case "barrel":
      return [row("soffit", "Underside"), row("ends", "Ends"), top];
    case "stair":
      return [row("soffit", "Underside"), row("edges", "Risers"), row("sides", "Sides"), top];
    default:
      return [row("sides", "Sides"), row("soffit", "Underside", shape.kind === "deck slab" ? "form" : "earth"), top];
  }
}

const saidOf = (faces: unknown, face: string) => objectsOf(faces).find((one) => one.face === face);

/** What a face is cast against as written; the usual where nothing is said. */
export const faceAgainst = (faces: unknown, face: string, usual = "form"): string => textOf(saidOf(faces, face)?.against) || usual;

export const faceVisible = (faces: unknown, face: string): boolean => saidOf(faces, face)?.visible === true;

/** The faces with one changed; a face that says nothing but the usual goes. */
export function facesWith(
  faces: unknown,
  face: string,
  change: { readonly against?: string; readonly visible?: boolean },
  usual = "form",
): readonly unknown[] | undefined {
  const all = objectsOf(faces);
  const before = saidOf(faces, face);
  const { against, visible, ...rest } = { ...(before ?? { face }), ...change };
  const now = {
    ...rest,
    ...(against === undefined || against === usual ? {} : { against }),
    ...(visible === true ? { visible } : {}),
  };
  const says = Object.keys(now).length > 1;
  const next = before ? all.flatMap((one) => (one === before ? (says ? [now] : []) : [one])) : says ? [...all, now] : all;
  return next.length > 0 ? next : undefined;
}
