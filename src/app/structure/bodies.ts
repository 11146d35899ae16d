import type { Build, Solid } from "../../core/build";
import type { Selection } from "../state";

/** Steps that place a body, tie its bars, put up or take down what it is or what forms it, or work where it is. */
export function stepsOf(build: Build, solid: Solid): ReadonlySet<string> {
  const places = new Set<string>(solid.places);
  return new Set(
    build.steps.filter((step) => isOf(step, solid) || (step.place !== null && places.has(step.place))).map(({ id }) => id as string),
  );
}

function isOf(step: Build["steps"][number], { pour, bars, pieces, form }: Solid): boolean {
  const own = [...pieces, ...form];
  return step.id === pour || bars.includes(step.id) || [...step.puts, ...step.takes].some((piece) => own.includes(piece));
}

/** What a click on a body selects: its first place; where it has none, the step that places it or puts it up. */
export function selectionFor(build: Build, solid: Solid): Selection | null {
  const [place] = solid.places;
  if (place !== undefined) return { list: "places", id: place };
  const step = solid.pour ?? build.steps.find(({ puts }) => puts.some((piece) => solid.pieces.includes(piece)))?.id;
  return step === undefined ? null : { list: "steps", id: step };
}

/** The bodies that what is selected means. Of several in a place all of one name, where one of them was chosen on the drawing. */
export function litBodies(build: Build, solids: readonly Solid[], selected: Selection | null, chosen: string | null): ReadonlySet<string> {
  if (selected === null) return new Set();
  const body = solids.find(({ id }) => id === chosen);
  if (body && same(selectionFor(build, body), selected)) return idsOf(solids.filter(({ name }) => name === body.name));
  const { list, id } = selected;
  if (list === "places") return idsOf(solids.filter(({ places }) => places.some((place) => place === id)));
  if (list === "pieces") return idsOf(solids.filter(({ pieces, form }) => [...pieces, ...form].some((piece) => piece === id)));
  const step = list === "steps" ? build.steps[build.at.step.get(id) ?? -1] : undefined;
  return idsOf(step ? solids.filter((solid) => isOf(step, solid)) : []);
}

/** Whether two selections are of the same thing. */
const same = (a: Selection | null, b: Selection | null): boolean => a?.list === b?.list && a?.id === b?.id;

const idsOf = (solids: readonly Solid[]): ReadonlySet<string> => new Set(solids.map(({ id }) => id));
