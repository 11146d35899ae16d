import type { Build } from "../../core/build";

/** Whether what fills a place is ground or backfill rather than concrete. `by`: the piece that filled it; -1: what stood there from the start. */
export function isEarth(build: Build, place: number, by: number): boolean {
  const id = build.places[place]?.id;
  const piece = build.pieces[by] ?? build.pieces.find(({ fromStart, fills }) => fromStart && fills.some((one) => one === id));
  return piece?.sort === "earth" || piece?.sort === "fill";
}
