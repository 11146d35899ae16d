import type { Proof, Search } from "../../schedule";

/** Units of one search before it is another's turn. */
export const portion = 20;

/** So many of them are done in one go: clashes of large builds take some milliseconds each. */
const piece = 5;

/** Goes on with a proof for one portion, piece by piece; yields what each took, and returns the units of all, at least one. */
export function* goOn(search: Proof): Generator<number, number> {
  const before = search.clashes + search.schedules;
  for (let done = piece; ; done += piece) {
    search.step(piece);
    if (search.done || done >= portion) break;
    yield piece;
  }
  return Math.max(1, search.clashes + search.schedules - before);
}

/** The same for schedules that are bred; what comes before the first takes a while by itself. */
export function* breed(search: Search): Generator<number, number> {
  const before = search.schedules;
  if (before === 0) {
    search.step(1);
    yield portion;
  }
  search.step(before + portion - search.schedules);
  return search.schedules - before;
}
