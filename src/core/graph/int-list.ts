/** A list of whole numbers that grows, in one typed array. */
export class IntList {
  data: Int32Array;
  length = 0;
  /** Members there is room for: an own number, as a typed array works its length out. */
  #room: number;

  constructor(capacity = 16) {
    this.#room = Math.max(4, capacity);
    this.data = new Int32Array(this.#room);
  }

  push(value: number): void {
    if (this.length === this.#room) this.#grow(2 * this.length);
    this.data[this.length++] = value;
  }

  /** So many members of one value from here on; those before stay. */
  widen(length: number, value: number): void {
    if (length <= this.length) return;
    if (length > this.#room) this.#grow(Math.max(length, 2 * this.#room));
    this.data.fill(value, this.length, length);
    this.length = length;
  }

  #grow(room: number): void {
    const larger = new Int32Array(room);
    larger.set(this.data);
    this.data = larger;
    this.#room = room;
  }

  at(index: number): number {
    return this.data[index] as number;
  }

  /** The members so far, as a copy of exactly that length. */
  packed(): Int32Array {
    return this.data.slice(0, this.length);
  }
}

/** Of a list, what stands at some places. */
export function membersAt(list: Int32Array, places: Int32Array): Int32Array {
  const members = new Int32Array(places.length);
  for (let i = 0; i < members.length; i++) members[i] = list[places[i] as number] as number;
  return members;
}
