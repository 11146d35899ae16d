import type { Draw } from "./draw";
import type { Loose, Size } from "./random-builds";
import type { DrawnReach } from "./random-needs";
import type { DrawnPiece } from "./random-pieces";
import type { DrawnPlace } from "./random-places";
import { openWays } from "./random-reaches";

const aims = (reaches: unknown): readonly DrawnReach[] =>
  ((reaches ?? []) as readonly (DrawnReach | { readonly any: readonly DrawnReach[] })[]).flatMap((r) => ("any" in r ? r.any : [r]));

/** Here and there a hold point; now and then at a place that is not seen by then, or is worked at later. @param steps by turn */
export function drawHoldPoints(
  draw: Draw,
  size: Size,
  places: readonly DrawnPlace[],
  pieces: readonly DrawnPiece[],
  steps: readonly Loose[],
): void {
  const works = steps.map((step, turn) => [
    ...aims(step.reaches),
    ...pieces.filter((p) => p.take === turn).flatMap((p) => aims(p.written.off)),
  ]);
  steps.forEach((step, turn) => {
    if (!draw.chance(7)) return;
    const seen = new Set(
      openWays(places, pieces, turn)
        .filter((way) => way.passes.some((kind) => kind === "sight" || kind === "person" || kind === "machine"))
        .map((way) => way.full.split(".")[0]),
    );
    const later = new Set(works.slice(turn + 1).flatMap((list) => list.filter((a) => a.need !== "sight").map((a) => a.place)));
    const filled = (place: string) => pieces.some((p) => p.put >= 0 && p.put <= turn && (p.written.fills as string[]).includes(place));
    const fit = places.filter(({ id }) => seen.has(id) && !later.has(id) && !filled(id));
    const any = draw.chance(5 * size.careless);
    if (any || fit.length > 0) step.holdPoint = { places: [draw.pick(any ? places : fit).id] };
  });
}
