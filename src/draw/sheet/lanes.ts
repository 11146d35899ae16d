import type { Build, Place } from "../../core/build";
import type { Plan } from "../../core/plan";
import { nameOf } from "../text/names";

/** A lane before it has a height: one place, or the steps that name none. */
export interface LaneSpec {
  readonly key: string;
  readonly name: string;
  /** Position in `build.places`; -1: no place. */
  readonly place: number;
  readonly offSite: boolean;
  /** Lanes with the same one are layers of one place, or copies of one, and stand together in a bracket. */
  readonly bracket: string | null;
}

const offSiteSides = /^(off.?site|shop|store|yard|office|home|supplier)/i;

function isOffSite(place: Place): boolean {
  return place.side !== null && offSiteSides.test(place.side);
}

function bracketOf(build: Build, place: Place): string | null {
  if (place.layerOf !== null) return place.layerOf;
  if (place.group !== null) return `group ${place.group.written}`;
  const hasLayers = build.places.some((other) => other.layerOf === place.id);
  return hasLayers ? place.id : null;
}

/** Lane of each step: the place it names, else the first it reaches, else none. */
export function laneOfSteps(build: Build): Int32Array {
  return Int32Array.from(build.steps, (step) => {
    const named = step.place ?? step.reaches[0]?.any[0]?.place ?? null;
    return named === null ? -1 : (build.at.place.get(named) ?? -1);
  });
}

/**
 * Lanes from top to bottom: the roof first, the ground last, then what is off site, then work that names no place. A place where nothing
 * happens and whose state never changes gets none.
 */
export function laneOrder(build: Build, plan: Plan): LaneSpec[] {
  const used = new Set<number>(laneOfSteps(build));
  plan.stands.places.forEach((states, place) => {
    if (states.length > 1) used.add(place);
  });
  const places = build.places.map((place, index) => ({ place, index })).filter(({ index }) => used.has(index));
  const bracket = new Map(places.map(({ place, index }) => [index, bracketOf(build, place)]));
  // Layers stand together at the height of the highest of them.
  const height = new Map<string, number>();
  for (const { place, index } of places) {
    const key = bracket.get(index) ?? place.id;
    height.set(key, Math.max(height.get(key) ?? Number.NEGATIVE_INFINITY, place.level));
  }
  const keyOf = (index: number, place: Place) => bracket.get(index) ?? place.id;
  places.sort(
    (a, b) =>
      Number(isOffSite(a.place)) - Number(isOffSite(b.place)) ||
      (height.get(keyOf(b.index, b.place)) as number) - (height.get(keyOf(a.index, a.place)) as number) ||
      compare(keyOf(a.index, a.place), keyOf(b.index, b.place)) ||
      b.place.level - a.place.level ||
      a.index - b.index,
  );
  const lanes: LaneSpec[] = places.map(({ place, index }) => ({
    key: place.id,
    name: nameOf(place),
    place: index,
    offSite: isOffSite(place),
    bracket: alone(bracket, bracket.get(index) ?? null) ? null : (bracket.get(index) ?? null),
  }));
  if (used.has(-1)) lanes.push({ key: "none", name: "No one place", place: -1, offSite: true, bracket: null });
  return lanes;
}

function alone(all: ReadonlyMap<number, string | null>, key: string | null): boolean {
  let count = 0;
  for (const other of all.values()) if (other === key) count += 1;
  return count < 2;
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
