import { IntList } from "../int-list";
import type { Clauses } from "./clauses";
import type { Trail } from "./trail";

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
    const literal = clauses.literals.data[place] as number;
    this.#place.data[slot] = place;
    const head = this.#head.data;
    this.#next.data[slot] = head[literal] as number;
    head[literal] = slot;
  }

  /**
   * After `literal` became false: moves its watches on. Calls `unit(clause, literal)` where only one is left; that says false when it is false too.
   * @returns the clause with no literal left, or -1
   */
  falsified(clauses: Clauses, literal: number, trail: Trail, unit: (clause: number, literal: number) => boolean): number {
    const next = this.#next.data;
    const { values } = trail;
    let slot = this.#head.data[literal] as number;
    let kept = none;
    while (slot !== none) {
      const following = next[slot] as number;
      const clause = slot >> 1;
      const otherPlace = this.#place.data[slot ^ 1] as number;
      const other = clauses.literals.data[otherPlace] as number;
      const moved = values[other] !== 1 && this.#moveOn(clauses, slot, otherPlace, values);
      if (moved) {
        if (kept === none) this.#head.data[literal] = following;
        else next[kept] = following;
      } else {
        kept = slot;
        if (values[other] !== 1 && !unit(clause, other)) return clause;
      }
      slot = following;
    }
    return none;
  }

  #moveOn(clauses: Clauses, slot: number, otherPlace: number, values: Int8Array): boolean {
    const clause = slot >> 1;
    const end = clauses.end(clause);
    const literals = clauses.literals.data;
    for (let place = clauses.first(clause); place < end; place++) {
      if (place === otherPlace || values[literals[place] as number] === -1) continue;
      this.#link(clauses, slot, place);
      return true;
    }
    return false;
  }
}
