import { objectsOf, textOf } from "../../write/written";

/** What a face is cast against as written; a form where nothing is said. */
export const faceAgainst = (faces: unknown, face: string): string =>
  textOf(objectsOf(faces).find((one) => one.face === face)?.against) || "form";

/** The faces with one changed; a face that says nothing but the usual goes. */
export function facesWith(faces: unknown, face: string, against: string): readonly unknown[] | undefined {
  const all = objectsOf(faces);
  const before = all.find((one) => one.face === face);
  const { against: _before, ...rest } = before ?? { face };
  const now = against === "form" ? rest : { ...rest, against };
  const says = Object.keys(now).length > 1;
  const next = before ? all.flatMap((one) => (one === before ? (says ? [now] : []) : [one])) : says ? [...all, now] : all;
  return next.length > 0 ? next : undefined;
}
