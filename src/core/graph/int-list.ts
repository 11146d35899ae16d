/** A list of whole numbers that grows, in one typed array. */
export class IntList {
  data: Int32Array;
  length = 0;

  constructor(capacity = 16) {
    this.data = new Int32Array(Math.max(4, capacity));
  }

  push(value: number): void {
    if (this.length === this.data.length) {
      const larger = new Int32Array(2 * this.length);
      larger.set(this.data);
      this.data = larger;
    }
    this.data[this.length++] = value;
  }

  /** So many members of one value from here on; those before stay. */
  widen(length: number, value: number): void {
    if (length <= this.length) return;
    if (length > this.data.length) {
      const larger = new Int32Array(Math.max(length, 2 * this.data.length));
      larger.set(this.data.subarray(0, this.length));
      this.data = larger;
    }
    this.data.fill(value, this.length, length);
    this.length = length;
  }

  at(index: number): number {
    return this.data[index] as number;
  }

  /** The members so far, as a copy of exactly that length. */
  packed(): Int32Array {
    return this.data.slice(0, this.length);
  }
}
