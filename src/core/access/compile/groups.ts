import { IntList } from "../../graph";

/** Clauses by guard, each group in the order of its clauses. */
export class Groups {
  readonly #first: IntList;
  readonly #last: IntList;
  readonly #next: IntList;

  /** @param about how many clauses and guards there will be */
  constructor(about = 64) {
    this.#first = new IntList(about);
    this.#last = new IntList(about);
    this.#next = new IntList(about);
  }

  /** Clauses come in order; `guard` -1 is the group that always matters. */
  add(clause: number, guard: number): void {
    if (this.#first.length < guard + 2) {
      this.#first.widen(guard + 2, -1);
      this.#last.widen(guard + 2, -1);
    }
    this.#next.push(-1);
    const last = this.#last.data[guard + 1] as number;
    if (last < 0) this.#first.data[guard + 1] = clause;
    else this.#next.data[last] = clause;
    this.#last.data[guard + 1] = clause;
  }

  /** The group's first clause; -1 when it has none. */
  first(guard: number): number {
    return guard + 1 < this.#first.length ? (this.#first.data[guard + 1] as number) : -1;
  }

  /** The clause after it in its group; -1 after the last. */
  next(clause: number): number {
    return this.#next.data[clause] as number;
  }
}
