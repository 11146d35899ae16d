import type { Draw } from "./draw";
import type { Loose, Size } from "./random-builds";
import { between, type DrawnPlace, named } from "./random-places";
import { drawReach } from "./random-reaches";

/** Steps are drawn by their turn in an order that would do, and written down in another. */
export interface DrawnPiece {
  readonly id: string;
  /** Turn of the step that puts it up; -1: stands from the start. `take` Infinity: never. */
  readonly put: number;
  readonly take: number;
  readonly bySelf: boolean;
  readonly written: Loose;
}

export function drawPieces(draw: Draw, size: Size, places: readonly DrawnPlace[], steps: number): DrawnPiece[] {
  const ways = places.flatMap((p) => p.ways.map((w) => w.full));
  const pieces: DrawnPiece[] = [];
  for (const id of named("piece", between(draw, size.pieces))) {
    const put = draw.chance(18) ? -1 : draw.below(steps - 1);
    const bySelf = draw.chance(12);
    const last = draw.chance(3) ? put : Math.min(steps - 1, put + 1 + draw.below(steps - put - 1));
    const take = bySelf || draw.chance(45) || last < 0 ? Number.POSITIVE_INFINITY : last;
    const holders = draw.chance(size.careless) ? pieces : pieces.filter((p) => p.put <= put && p.take > put && !p.bySelf);
    const held = holders.length > 0 && draw.chance(55);
    const written: Loose = {
      id,
      name: id,
      sort: "other",
      ...(put < 0 ? { fromStart: true } : {}),
      ...(bySelf ? { goesAfter: "2 h" } : {}),
      closes: draw.some(ways, draw.pick([0, 15, 35])),
      makes: draw.chance(30) ? [draw.pick(ways)] : [],
      fills: draw.chance(14) ? [draw.pick(places).id] : [],
      size: { long: draw.pick(["1500 mm", "2500 mm"]), wide: draw.pick(["400 mm", "800 mm", "1000 mm"]), thick: "100 mm" },
      weight: draw.pick(["30 kg", "80 kg"]),
      ...(held ? heldBy(draw, holders, pieces) : {}),
    };
    pieces.push({ id, put, take, bySelf, written });
  }
  for (const p of pieces) {
    if (Number.isFinite(p.take) && draw.chance(45)) p.written.off = drawReach(draw, size, places, pieces, p.take, p.id);
  }
  return pieces;
}

function heldBy(draw: Draw, holders: readonly DrawnPiece[], all: readonly DrawnPiece[]): Loose {
  const set = (from: readonly DrawnPiece[]) => [...new Set([draw.pick(from).id, ...(draw.chance(25) ? [draw.pick(from).id] : [])])];
  const itself = draw.chance(45) ? { holdsItself: draw.chance(70) ? "3 h" : true } : {};
  return { heldBy: [set(holders), ...(draw.chance(60) ? [set(all)] : [])], ...itself };
}
