import { IntList } from "../int-list";
import type { Clauses } from "./clauses";

const none = -1;

/**
 * Two watched literals a clause, as linked lists through typed arrays. Slots 2c and 2c + 1 are the watches of clause c; literals keep their order of
 * preference, for a watch is a place in the clause, not a swap.
 */
export class Watches {
  readonly #head: IntList;
  readonly #next: IntList;
  readonly #place: IntList;

  constructor(variables: number, clauses: number) {
    this.#head = new IntList(2 * variables + 64);
    this.#next = new IntList(2 * clauses + 64);
    this.#place = new IntList(2 * clauses + 64);
    this.widen(variables);
    this.#place.widen(2 * clauses, none);
    this.#next.widen(2 * clauses, none);
  }

  widen(variables: number): void {
    this.#head.widen(2 * variables, none);
  }

  /** Watches two places of a clause; clauses come in order. */
  watch(clauses: Clauses, clause: number, first: number, second: number): void {
    if (this.#place.length < 2 * clause + 2) {
      this.#place.widen(2 * clause + 2, none);
      this.#next.widen(2 * clause + 2, none);
    }
    this.#link(clauses, 2 * clause, first);
    this.#link(clauses, 2 * clause + 1, second);
  }

  #link(clauses: Clauses, slot: number, place: number): void {
    const literal = clauses.literal(place);
    this.#place.data[slot] = place;
    this.#next.data[slot] = this.#head.at(literal);
    this.#head.data[literal] = slot;
  }

  /**
   * After `literal` became false: moves its watches on. Calls `unit(clause, literal)` where only one is left; that says false when it is false too.
   * @returns the clause with no literal left, or -1
   */
  falsified(
    clauses: Clauses,
    literal: number,
    value: (literal: number) => number,
    unit: (clause: number, literal: number) => boolean,
  ): number {
    let slot = this.#head.at(literal);
    let kept = none;
    while (slot !== none) {
      const following = this.#next.at(slot);
      const clause = slot >> 1;
      const otherPlace = this.#place.at(slot ^ 1);
      const other = clauses.literal(otherPlace);
      const moved = value(other) !== 1 && this.#moveOn(clauses, slot, otherPlace, value);
      if (moved) {
        if (kept === none) this.#head.data[literal] = following;
        else this.#next.data[kept] = following;
      } else {
        kept = slot;
        if (value(other) !== 1 && !unit(clause, other)) return clause;
      }
      slot = following;
    }
    return none;
  }

  #moveOn(clauses: Clauses, slot: number, otherPlace: number, value: (literal: number) => number): boolean {
    const clause = slot >> 1;
    for (let place = clauses.first(clause); place < clauses.end(clause); place++) {
      if (place === otherPlace || value(clauses.literal(place)) === -1) continue;
      this.#link(clauses, slot, place);
      return true;
    }
    return false;
  }
}
