import { writtenId } from "../../base";
import type { Names } from "../link/names";
import type { Piece, Place, Reach, Step } from "../model";
import { rings, ungrounded } from "./ring";

/** Ways that lead through each other's places with no way in from anywhere else. */
export function checkWays(places: readonly Place[], positions: ReadonlyMap<string, number>, names: Names): void {
  const through = places.map((place) =>
    place.ways.map((way) => (way.through ? [positions.get(way.through.place) ?? -1].filter((i) => i >= 0) : [])),
  );
  const cutOff = ungrounded(places.length, (i) => through[i] ?? []);
  const next = (i: number): number[] => (cutOff[i] ? (through[i] ?? []).flat().filter((other) => cutOff[other]) : []);
  for (const ring of rings(places.length, next)) {
    const first = places[ring[0] ?? -1];
    if (first)
      names.say("build.way-ring", { list: "places", id: writtenId(first.id), key: "ways" }, { ring: ring.map((i) => places[i]?.id ?? "") });
  }
  const below = places.map((place) => place.below.map((id) => positions.get(id) ?? -1).filter((i) => i >= 0));
  for (const ring of rings(places.length, (i) => below[i] ?? [])) {
    const first = places[ring[0] ?? -1];
    if (first)
      names.say(
        "build.below-ring",
        { list: "places", id: writtenId(first.id), key: "below" },
        { ring: ring.map((i) => places[i]?.id ?? "") },
      );
  }
}

/** Reaches of places that nobody wrote a way into. */
export function checkReaches(
  places: readonly Place[],
  positions: ReadonlyMap<string, number>,
  steps: readonly Step[],
  pieces: readonly Piece[],
  names: Names,
): void {
  const shut = new Set(places.filter((place) => place.ways.length === 0).map((place) => String(place.id)));
  if (shut.size === 0) return;
  const check = (list: string, id: string, key: string, reaches: readonly Reach[]): void =>
    reaches.forEach((reach, i) => {
      const place = reach.any[0]?.place;
      if (place === undefined || !positions.has(place) || !reach.any.every((aim) => shut.has(aim.place))) return;
      names.say("build.no-way", { list, id: writtenId(id), key }, { part: reaches.length > 1 ? String(i + 1) : "", place });
    });
  for (const step of steps) check("steps", step.id, "reaches", step.reaches);
  for (const piece of pieces) check("pieces", piece.id, "off", piece.off);
}
