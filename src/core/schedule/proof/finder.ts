/**
 * Finds places in a list of rising numbers, as often as propagation asks: the range is cut into about as many parts of one width as there are numbers, and what lies
 * before each part is known, so that little is left to halve.
 */
export class Finder {
  private readonly base: number;
  private readonly last: number;
  private readonly shift: number;
  /** Of each part, the place at its beginning; one more at the end. */
  private readonly marks: Int32Array;

  /** @param list at least one number, none lower than the one before */
  constructor(private readonly list: Int32Array) {
    const n = list.length;
    this.base = list[0]!;
    this.last = list[n - 1]!;
    const range = this.last - this.base;
    let shift = 0;
    while (range / 2 ** shift > 2 * n) shift++;
    this.shift = shift;
    const parts = Math.floor(range / 2 ** shift) + 1;
    this.marks = new Int32Array(parts + 1).fill(n - 1);
    let k = 0;
    for (let part = 0; part < parts; part++) {
      const from = this.base + part * 2 ** shift;
      while (k + 1 < n && list[k + 1]! <= from) k++;
      this.marks[part] = k;
    }
  }

  /** Largest k with list[k] <= t; -1 before the first. */
  at(t: number): number {
    if (t < this.base) return -1;
    const { list, marks } = this;
    if (t >= this.last) return list.length - 1;
    const part = (t - this.base) >> this.shift;
    let low = marks[part]!;
    let high = marks[part + 1]!;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (list[middle]! <= t) low = middle;
      else high = middle - 1;
    }
    return low;
  }
}
