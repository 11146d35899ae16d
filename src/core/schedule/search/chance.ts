/** Quick chance for the inner loop: the same number, the same sequence (xorshift: Marsaglia 2003, Journal of Statistical Software 8(14)). */
export class Chance {
  private x: number;

  constructor(seed: number) {
    this.x = Math.imul(seed + 1, 0x9e3779b1) | 0 || 1;
    for (let k = 0; k < 8; k++) this.next();
  }

  /** A whole number of 32 bits, without sign, never 0. */
  private next(): number {
    let { x } = this;
    x ^= x << 13;
    x ^= x >>> 17;
    x ^= x << 5;
    this.x = x;
    return x >>> 0;
  }

  /** At least 0, less than 1. */
  fraction(): number {
    return this.next() / 0x1_0000_0000;
  }

  /** A whole number of at least 0, less than `count`. */
  below(count: number): number {
    return Math.floor(this.fraction() * count);
  }
}
