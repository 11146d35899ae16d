/**
 * A binary heap of whole numbers with a key each: the smallest key first, equal keys by the smaller item, so that what comes
 * out never depends on the order of going in. Forty lines of our own because the small libraries leave ties open.
 */
export class Heap {
  #items: number[] = [];
  #keys: number[] = [];

  get size(): number {
    return this.#items.length;
  }

  push(item: number, key: number): void {
    let at = this.#items.length;
    while (at > 0) {
      const parent = (at - 1) >> 1;
      if (!before(key, item, this.#keys[parent] as number, this.#items[parent] as number)) break;
      this.#set(at, this.#items[parent] as number, this.#keys[parent] as number);
      at = parent;
    }
    this.#set(at, item, key);
  }

  /** The smallest key; undefined when empty. */
  peekKey(): number | undefined {
    return this.#keys[0];
  }

  /** Takes the first item out; undefined when empty. */
  pop(): number | undefined {
    const first = this.#items[0];
    const item = this.#items.pop();
    const key = this.#keys.pop();
    const size = this.#items.length;
    if (size === 0 || item === undefined || key === undefined) return first;
    let at = 0;
    for (;;) {
      let child = 2 * at + 1;
      if (child >= size) break;
      if (child + 1 < size && this.#less(child + 1, child)) child++;
      if (!before(this.#keys[child] as number, this.#items[child] as number, key, item)) break;
      this.#set(at, this.#items[child] as number, this.#keys[child] as number);
      at = child;
    }
    this.#set(at, item, key);
    return first;
  }

  #set(at: number, item: number, key: number): void {
    this.#items[at] = item;
    this.#keys[at] = key;
  }

  #less(a: number, b: number): boolean {
    return before(this.#keys[a] as number, this.#items[a] as number, this.#keys[b] as number, this.#items[b] as number);
  }
}

const before = (keyA: number, itemA: number, keyB: number, itemB: number): boolean => keyA < keyB || (keyA === keyB && itemA < itemB);
