import type { Draw } from "./draw";
import type { DrawnPiece } from "./random-pieces";
import type { DrawnWay } from "./random-places";

export interface DrawnReach {
  readonly place: string;
  readonly need: string;
  readonly depth?: string;
  readonly piece?: string;
}

type Need = Omit<DrawnReach, "place">;

const mm = (text: unknown): number => Number(String(text).split(" ")[0]);

/** Any need at all. A unit has the size of the piece named; without one none is drawn. */
export function plainNeed(draw: Draw, piece: string): Need {
  const need = draw.pick(["person", "sight", "hand", "arm", "hose", "machine", ...(piece === "" ? [] : ["unit"])]);
  if (need === "hand" || need === "arm") return { need, depth: draw.pick(["300 mm", "800 mm"]) };
  return need === "unit" ? { need, piece } : { need };
}

/** A need that gets through the way while nothing closes it. */
export function needFor(draw: Draw, way: DrawnWay, piece: DrawnPiece | null): Need {
  const possible = way.passes.flatMap((kind): string[] => {
    if (kind === "machine") return ["machine", "person", "hose", "arm"];
    if (kind === "person") return ["person", "sight", "hand", "arm", "hose"];
    if (kind === "arm") return ["arm", "hand"];
    if (kind === "unit") return piece !== null && fits(way, piece) ? ["unit", "unit"] : [];
    return [kind];
  });
  if (possible.length === 0) return { need: "sight" };
  const need = draw.pick(possible);
  const shallow = way.written.depth === "500 mm" && !way.passes.includes("person");
  if (need === "hand" || need === "arm") return { need, depth: shallow || draw.chance(50) ? "300 mm" : "800 mm" };
  return need === "unit" ? { need, piece: piece!.id } : { need };
}

function fits(way: DrawnWay, piece: DrawnPiece): boolean {
  const { long, wide, thick } = piece.written.size as { long: string; wide: string; thick: string };
  const hole = way.written.opening as { wide: string; high: string } | undefined;
  const through =
    hole === undefined || (mm(thick) <= Math.min(mm(hole.wide), mm(hole.high)) && mm(wide) <= Math.max(mm(hole.wide), mm(hole.high)));
  const short = way.written.longest === undefined || mm(long) <= mm(way.written.longest);
  return through && short && (way.written.bears === undefined || mm(piece.written.weight) <= mm(way.written.bears));
}
