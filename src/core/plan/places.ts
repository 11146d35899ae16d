import type { PlaceId } from "../base";
import type { Build } from "../build";
import type { Capacity } from "../schedule";

export interface PlaceNeeds {
  readonly capacities: readonly Capacity[];
  /** Job, position in `capacities`, number. */
  readonly demands: readonly (readonly [number, number, number])[];
  /** Steps with more people than the place has room for: position of step and place. */
  readonly crowded: readonly (readonly [step: number, place: number])[];
}

/**
 * Room (people at once in a place) and places taken alone, as capacities. A step works in the places it reaches as a person and in the place it is drawn
 * in, unless it only reaches into that (a hose, an arm). In each of them are as many of its people as can be when one at least is in each of the others. A
 * step that is too many for a place is let in when nobody else is there; a finding says so.
 */
export function placeNeeds(build: Build): PlaceNeeds {
  const capacities: Capacity[] = [];
  const demands: [number, number, number][] = [];
  const crowded: [number, number][] = [];
  const limited = build.places.some((p) => p.room !== null);
  const takers = build.steps.some((s) => s.alone.length > 0);
  if (!limited && !takers) return { capacities, demands, crowded };
  const { inside, apart } = workers(build);
  build.places.forEach((place, q) => {
    if (place.room === null) return;
    const at = capacities.length;
    const users = inside[q]!;
    if (users.length === 0) return;
    capacities.push(constant(place.id, "room", place.room));
    for (const s of users) {
      const people = Math.max(1, handsOf(build, s) - apart[s]! + 1);
      if (people > place.room && apart[s] === 1) crowded.push([s, q]);
      if (place.room > 0) demands.push([s, at, Math.min(people, place.room)]);
    }
  });
  const takersOf = new Map<string, number[]>();
  build.steps.forEach((step, s) => {
    for (const id of step.alone) takersOf.set(id, [...(takersOf.get(id) ?? []), s]);
  });
  for (const [id, alone] of takersOf) {
    const users = new Set(withBelow(build, id as PlaceId).flatMap((q) => inside[q]!));
    for (const s of alone) users.delete(s);
    if (users.size === 0 && alone.length === 1) continue;
    const all = users.size + 1;
    const at = capacities.length;
    capacities.push(constant(id, "alone", all));
    for (const s of alone) demands.push([s, at, all]);
    for (const s of [...users].sort((a, b) => a - b)) demands.push([s, at, 1]);
  }
  return { capacities, demands, crowded };
}

/** By place, the steps that work in it, in document order; by step, in how many places it works at once (several of which any one will do are one). */
function workers(build: Build): { readonly inside: readonly (readonly number[])[]; readonly apart: Int32Array } {
  const inside: number[][] = build.places.map(() => []);
  const apart = new Int32Array(build.steps.length);
  build.steps.forEach((step, s) => {
    if (step.place === null && step.reaches.length === 0) return;
    const [only] = step.reaches.length === 1 && step.reaches[0]!.any.length === 1 ? step.reaches[0]!.any : [];
    // Most steps reach one place, and are drawn there or nowhere.
    if (only !== undefined && (step.place === null || step.place === only.place)) {
      if (only.need.kind !== "person") return;
      apart[s] = 1;
      inside[build.at.place.get(only.place)!]!.push(s);
      return;
    }
    const groups = new Map<string, readonly PlaceId[]>();
    for (const { any } of step.reaches) {
      const bodily = any.filter((r) => r.need.kind === "person").map((r) => r.place);
      if (bodily.length > 0) groups.set(bodily.length === 1 ? bodily[0]! : [...new Set(bodily)].sort().join(" "), bodily);
    }
    const { place } = step;
    if (place !== null && !step.reaches.some(({ any }) => any.some((r) => r.place === place))) groups.set(place, [place]);
    apart[s] = groups.size;
    for (const id of new Set([...groups.values()].flat())) inside[build.at.place.get(id)!]!.push(s);
  });
  return { inside, apart };
}

/** A place and everything below it, below that, and so on. */
export function withBelow(build: Build, place: PlaceId): number[] {
  const seen = new Set<number>();
  const todo = [build.at.place.get(place)!];
  for (let q = todo.pop(); q !== undefined; q = todo.pop()) {
    if (seen.has(q)) continue;
    seen.add(q);
    for (const id of build.places[q]!.below) todo.push(build.at.place.get(id)!);
  }
  return [...seen].sort((a, b) => a - b);
}

export function handsOf(build: Build, step: number): number {
  let total = 0;
  for (const h of build.steps[step]!.hands) total += h.number;
  return total;
}

export function constant(id: string, kind: Capacity["kind"], number: number, holds: Capacity["holds"] = "working"): Capacity {
  return { id, kind, times: Int32Array.of(0), levels: Int32Array.of(number), holds };
}
