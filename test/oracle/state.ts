import type { PlaceId } from "../../src/core/base";
import type { Amount, Build, Passage } from "../../src/core/build";
import { passes } from "./passes";

/** What a build says of its ways and pieces, to be left out one by one. A place that is not walled can be got to by one way more, open to that need. */
export interface Facts {
  readonly closes: (piece: string, place: string, way: string) => boolean;
  readonly makes: (piece: string, place: string, way: string) => boolean;
  readonly fills: (piece: string, place: string) => boolean;
  readonly through: (place: string, way: string) => boolean;
  readonly walled: (place: string, need: Passage) => boolean;
}

const always = () => true;
export const asWritten: Facts = { closes: always, makes: always, fills: always, through: always, walled: always };

/** The steps done so far, bit i for position i of `build.steps`. At most 30 steps. */
export type Done = number;

export const has = (done: Done, step: number): boolean => step >= 0 && (done & (1 << step)) !== 0;

/** A piece that was there from the start or put up, and not taken down, by the steps done. */
export function stands(build: Build, piece: number, done: Done): boolean {
  const p = build.pieces[piece]!;
  return (p.fromStart || has(done, p.up)) && !has(done, p.down);
}

/** Whether the amount may have passed by now, as far as order goes: the strength of a pour not before that pour; anything else at any time. */
export const mayHavePassed = (build: Build, amount: Amount, done: Done): boolean =>
  amount.on.kind !== "strength" || has(done, build.at.step.get(amount.on.pour)!);

/** Whether the piece must be in the way of a step done right after `done`. One that goes by itself may be gone by then; one put up by the step itself is let off. */
function inTheWay(build: Build, piece: number, step: number, done: Done): boolean {
  const p = build.pieces[piece]!;
  const mayBeGone = p.goesAfter !== null && mayHavePassed(build, p.goesAfter, done);
  return p.up !== step && !mayBeGone && stands(build, piece, done);
}

/** Whether the step can use what the piece makes: it stands, or the step puts it up, and the step does not take it down. */
function serves(build: Build, piece: number, step: number, done: Done): boolean {
  const p = build.pieces[piece]!;
  return p.down !== step && (p.up === step || stands(build, piece, done));
}

function wayUsable(build: Build, facts: Facts, place: string, way: string, step: number, done: Done): boolean {
  const names = (refs: readonly { place: string; way: string }[]) => refs.some((r) => r.place === place && r.way === way);
  return build.pieces.every((p, i) => {
    const shut = names(p.closes) && facts.closes(p.id, place, way) && inTheWay(build, i, step, done);
    const missing = names(p.makes) && facts.makes(p.id, place, way) && !serves(build, i, step, done);
    return !shut && !missing;
  });
}

const filled = (build: Build, facts: Facts, place: PlaceId, step: number, done: Done): boolean =>
  build.pieces.some((p, i) => p.fills.includes(place) && facts.fills(p.id, place) && inTheWay(build, i, step, done));

export interface Errand {
  readonly step: number;
  readonly place: PlaceId;
  readonly need: Passage;
}

/** Whether the errand's need gets to its place while its step is done, walked outwards; a place already on the walk does not vouch for itself. */
export function reaches(
  build: Build,
  { step, place, need }: Errand,
  done: Done,
  facts: Facts = asWritten,
  onTheWay: readonly string[] = [],
): boolean {
  const here = `${place} ${JSON.stringify(need)}`;
  if (onTheWay.includes(here) || filled(build, facts, place, step, done)) return false;
  if (!facts.walled(place, need)) return true;
  return build.places[build.at.place.get(place)!]!.ways.some((way) => {
    if (!passes(way, need) || !wayUsable(build, facts, place, way.id, step, done)) return false;
    if (way.through === null || !facts.through(place, way.id)) return true;
    return reaches(build, { step, place: way.through.place, need: way.through.need }, done, facts, [...onTheWay, here]);
  });
}

/** Whether some set of holders of the piece stands whole. A holder that goes by itself holds nothing. */
export function isHeld(build: Build, piece: number, done: Done): boolean {
  return build.pieces[piece]!.heldBy.some((set) =>
    set.every((id) => {
      const holder = build.at.piece.get(id)!;
      return build.pieces[holder]!.goesAfter === null && stands(build, holder, done);
    }),
  );
}

/** Whether the place is closed all through a step done right after `done`: what goes by itself closes nothing for that, though what it made may be gone with it. */
export function isClosed(build: Build, place: number, step: number, done: Done): boolean {
  const { id, ways } = build.places[place]!;
  const stays = (piece: number) =>
    stands(build, piece, done) && build.pieces[piece]!.down !== step && build.pieces[piece]!.goesAfter === null;
  const mayBeGone = (piece: number) => {
    const { goesAfter, fromStart, up, down } = build.pieces[piece]!;
    if (goesAfter === null) return has(done, down);
    return (fromStart || has(done, up)) && mayHavePassed(build, goesAfter, done);
  };
  const each = [...build.pieces.keys()];
  if (each.some((i) => build.pieces[i]!.fills.includes(id) && stays(i))) return true;
  return (
    ways.length > 0 &&
    ways.every((way) => {
      const names = (refs: readonly { place: string; way: string }[]) => refs.some((r) => r.place === id && r.way === way.id);
      return each.some((i) => (names(build.pieces[i]!.closes) && stays(i)) || (names(build.pieces[i]!.makes) && mayBeGone(i)));
    })
  );
}
