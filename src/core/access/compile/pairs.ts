/**
 * A number for each of some pairs of numbers (0 or more), in typed arrays: what is looked up most while a build is compiled. Open addressing, at most half full.
 */
export class Pairs {
  #first = new Int32Array(64).fill(-1);
  #second = new Int32Array(64);
  #value = new Int32Array(64);
  #count = 0;

  /** The pair's number; -1 where it has none. */
  get(a: number, b: number): number {
    const at = this.#placeOf(a, b);
    return (this.#first[at] as number) < 0 ? -1 : (this.#value[at] as number);
  }

  set(a: number, b: number, value: number): void {
    const at = this.#placeOf(a, b);
    this.#value[at] = value;
    if ((this.#first[at] as number) >= 0) return;
    this.#first[at] = a;
    this.#second[at] = b;
    if (2 * ++this.#count > this.#first.length) this.#widen();
  }

  /** Where the pair stands, or would. */
  #placeOf(a: number, b: number): number {
    const last = this.#first.length - 1;
    const mixed = Math.imul(a, 0x9e37_79b1) ^ Math.imul(b, 0x85eb_ca6b);
    let at = (mixed ^ (mixed >>> 15)) & last;
    while ((this.#first[at] as number) >= 0 && (this.#first[at] !== a || this.#second[at] !== b)) at = (at + 1) & last;
    return at;
  }

  #widen(): void {
    const [first, second, value] = [this.#first, this.#second, this.#value];
    this.#first = new Int32Array(4 * first.length).fill(-1);
    this.#second = new Int32Array(4 * first.length);
    this.#value = new Int32Array(4 * first.length);
    this.#count = 0;
    for (let at = 0; at < first.length; at++) {
      if ((first[at] as number) >= 0) this.set(first[at] as number, second[at] as number, value[at] as number);
    }
  }
}
