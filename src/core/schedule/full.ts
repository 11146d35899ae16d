import { IntList } from "../graph";

/** Numbers of things that are known to be full, a bit each, so that a search steps over many at once. */
export class Full {
  readonly #words = new IntList(16);

  add(at: number): void {
    while (this.#words.length <= at >> 5) this.#words.push(0);
    this.#words.data[at >> 5]! |= 1 << (at & 31);
  }

  /** Those from `first` to `last` are not full any more. */
  remove(first: number, last: number): void {
    for (let at = first; at <= last && at >> 5 < this.#words.length; at++) this.#words.data[at >> 5]! &= ~(1 << (at & 31));
  }

  /** The first number at or after `at` that is not known to be full. */
  next(at: number): number {
    let word = at >> 5;
    if (word >= this.#words.length) return at;
    let open = ~this.#words.at(word) & (-1 << (at & 31));
    while (open === 0) {
      word++;
      if (word === this.#words.length) return 32 * word;
      open = ~this.#words.at(word);
    }
    return 32 * word + 31 - Math.clz32(open & -open);
  }
}
