import { IntList } from "../int-list";

/** Why a variable has its value: a clause (0 or more), or one of these. */
export const chosen = -1;
export const byTheory = -2;

/** The values given so far, in the order they were given, with the level of decision and the reason of each. */
export class Trail {
  readonly literals = new IntList(256);
  /** Length of the trail when each level above 0 began. */
  readonly marks: number[] = [];
  /** By literal, 1: it holds; -1: it does not; 0: open. */
  values: Int8Array;
  #level: Int32Array;
  #reason: Int32Array;
  #place: Int32Array;

  constructor(variables: number) {
    this.values = new Int8Array(2 * variables);
    this.#level = new Int32Array(variables);
    this.#reason = new Int32Array(variables);
    this.#place = new Int32Array(variables);
  }

  /** Makes sure that there is room for this many variables; the new ones have no value. */
  widen(variables: number): void {
    if (2 * variables <= this.values.length) return;
    const size = 2 * variables;
    const values = new Int8Array(2 * size);
    values.set(this.values);
    this.values = values;
    this.#level = larger(this.#level, size);
    this.#reason = larger(this.#reason, size);
    this.#place = larger(this.#place, size);
  }

  get level(): number {
    return this.marks.length;
  }

  get length(): number {
    return this.literals.length;
  }

  /** 1: the literal holds; -1: it does not; 0: open. */
  value = (literal: number): number => this.values[literal] as number;

  levelOf(variable: number): number {
    return this.#level[variable] as number;
  }

  reasonOf(variable: number): number {
    return this.#reason[variable] as number;
  }

  placeOf(variable: number): number {
    return this.#place[variable] as number;
  }

  give(literal: number, reason: number): void {
    const variable = literal >> 1;
    this.values[literal] = 1;
    this.values[literal ^ 1] = -1;
    this.#level[variable] = this.marks.length;
    this.#reason[variable] = reason;
    this.#place[variable] = this.literals.length;
    this.literals.push(literal);
  }

  /** Takes the last value back and says which literal it was. */
  takeBack(): number {
    const literal = this.literals.at(--this.literals.length);
    this.values[literal] = 0;
    this.values[literal ^ 1] = 0;
    return literal;
  }
}

function larger(old: Int32Array, size: number): Int32Array {
  const list = new Int32Array(size);
  list.set(old);
  return list;
}
