import { beginProof, type Problem, type Proof, type Search, type Solution } from "../../schedule";

/** Units of one search before it is another's turn. */
export const portion = 20;

/** Rounds of propagation in one go: on large builds one clash may take hundreds. */
const rounds = 40;

/** What such a piece counts for in a portion. */
const piece = 4;

/** A proof; what comes before its first clash takes a while by itself. */
export function* begun(p: Problem, first: Solution | null): Generator<number, Proof> {
  const proof = yield* eachFor(portion, beginProof(p, first));
  yield portion;
  return proof;
}

/** Goes on with a proof for one portion, piece by piece, each of which yields; returns the units of all, at least one. */
export function* goOn(search: Proof): Generator<number, number> {
  const units = (): number => search.clashes + search.schedules;
  const before = units();
  for (;;) {
    search.step(before + portion - units(), rounds);
    if (search.done || units() >= before + portion) return Math.max(1, units() - before);
    yield piece;
  }
}

/** The same for schedules that are bred; what comes before the first takes a while by itself. */
export function* breed(search: Search): Generator<number, number> {
  const before = search.schedules;
  if (before === 0) {
    search.begin();
    yield portion;
    search.step(1);
    yield portion;
  }
  search.step(before + portion - search.schedules);
  return search.schedules - before;
}

/** Work in pieces of which each counts for so much. */
export function* eachFor<T>(counts: number, going: Generator<unknown, T>): Generator<number, T> {
  let next = going.next();
  for (; next.done !== true; next = going.next()) yield counts;
  return next.value;
}

/** What it yields in the midst counts for nothing: its units are told by who asked, once. */
export const uncounted = <T>(going: Generator<number, T>): Generator<number, T> => eachFor(0, going);
