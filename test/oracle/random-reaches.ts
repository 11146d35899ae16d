import type { Draw } from "./draw";
import type { Loose, Size } from "./random-builds";
import { type DrawnReach, needFor, plainNeed } from "./random-needs";
import type { DrawnPiece } from "./random-pieces";
import type { DrawnPlace, DrawnWay } from "./random-places";

/** Pieces that stand while the step of that turn is done, those it puts up itself left out. */
export const standing = (pieces: readonly DrawnPiece[], turn: number): DrawnPiece[] => pieces.filter((p) => p.put < turn && turn <= p.take);

/** Ways that nothing closes, to places that nothing fills, during the turn; through others of the same kind only. What passes is not looked at. */
export function openWays(places: readonly DrawnPlace[], pieces: readonly DrawnPiece[], turn: number): DrawnWay[] {
  const shut = (key: string, what: string) => standing(pieces, turn).some((p) => !p.bySelf && (p.written[key] as string[]).includes(what));
  const lacks = (way: string) => pieces.some((p) => (p.written.makes as string[]).includes(way) && !(p.put <= turn && turn < p.take));
  let open = places.flatMap((p) => (shut("fills", p.id) ? [] : p.ways.filter((w) => !shut("closes", w.full) && !lacks(w.full))));
  for (const _ of places) {
    const to = (w: DrawnWay) => (w.written.through as { place: string } | undefined)?.place ?? w.written.through;
    open = open.filter((w) => to(w) === undefined || open.some((o) => o.full.startsWith(`${to(w)}.`)));
  }
  return open;
}

/** Somewhere the step of that turn can get to if nothing is done carelessly; `piece`: brought through as one. */
export function drawReach(
  draw: Draw,
  size: Size,
  places: readonly DrawnPlace[],
  pieces: readonly DrawnPiece[],
  turn: number,
  piece: string | null,
): Loose[] {
  const open = openWays(places, pieces, turn);
  const careless = draw.chance(size.careless);
  if (open.length === 0 && !careless) return [];
  const one = (): DrawnReach => {
    if (open.length === 0 || careless) return { place: draw.pick(places).id, ...plainNeed(draw, draw.pick(pieces).id) };
    const way = draw.pick(open);
    return { place: way.full.split(".")[0]!, ...needFor(draw, way, pieces.find((p) => p.id === piece) ?? draw.pick(pieces)) };
  };
  return [draw.chance(12) ? { any: [one(), one()] } : { ...one() }];
}
