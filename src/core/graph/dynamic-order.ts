import { positions } from "./order";

/** More than this are sorted by the language's own sort. */
const manyNodes = 24;

/**
 * A topological order kept up while arcs come and go (Pearce and Kelly 2006): adding an arc that already leads forward costs nothing, another
 * reorders only the nodes between its ends. Arcs are numbered by the caller and taken out in the reverse order of going in.
 */
export class DynamicOrder {
  /** Where each node stands. */
  readonly at: Int32Array;
  /** Nodes looked at so far: the count of work. */
  work = 0;
  readonly #firstOut: Int32Array;
  readonly #firstIn: Int32Array;
  #nextOut: Int32Array;
  #nextIn: Int32Array;
  #from: Int32Array;
  #to: Int32Array;
  readonly #seen: Int32Array;
  readonly #by: Int32Array;
  #round = 0;

  /** @param from,to ends of every arc that may be added; @param order nodes in the order to start from */
  constructor(nodes: number, from: Int32Array, to: Int32Array, order: Int32Array | null) {
    this.at = order === null ? Int32Array.from({ length: nodes }, (_, u) => u) : positions(order);
    this.#from = from;
    this.#to = to;
    this.#firstOut = new Int32Array(nodes).fill(-1);
    this.#firstIn = new Int32Array(nodes).fill(-1);
    this.#nextOut = new Int32Array(from.length);
    this.#nextIn = new Int32Array(from.length);
    this.#seen = new Int32Array(nodes);
    this.#by = new Int32Array(nodes);
  }

  /** More arcs may be added from now on; the ends of the old ones stay as they were. */
  widen(from: Int32Array, to: Int32Array): void {
    this.#from = from;
    this.#to = to;
    this.#nextOut = grown(this.#nextOut, from.length);
    this.#nextIn = grown(this.#nextIn, from.length);
  }

  /** Adds the arc; false, with nothing changed, when it would close a ring. */
  add(arc: number): boolean {
    const u = this.#from[arc] as number;
    const v = this.#to[arc] as number;
    if ((this.at[u] as number) >= (this.at[v] as number) && !this.#makeRoom(u, v)) return false;
    this.#nextOut[arc] = this.#firstOut[u] as number;
    this.#firstOut[u] = arc;
    this.#nextIn[arc] = this.#firstIn[v] as number;
    this.#firstIn[v] = arc;
    return true;
  }

  /** Takes out the arc that was added last of those still in. */
  remove(arc: number): void {
    this.#firstOut[this.#from[arc] as number] = this.#nextOut[arc] as number;
    this.#firstIn[this.#to[arc] as number] = this.#nextIn[arc] as number;
  }

  /** Whether arcs lead from u to v. Looks only at nodes that stand between them. */
  reaches(u: number, v: number): boolean {
    if (u === v) return true;
    return (this.at[u] as number) < (this.at[v] as number) && this.#forward(u, v) === null;
  }

  /** The fewest arcs that lead from u to v, among those `use` allows; empty from a node to itself, null when none do. */
  path(u: number, v: number, use: (arc: number) => boolean): number[] | null {
    const round = ++this.#round;
    const limit = this.at[v] as number;
    const queue = [u];
    this.#seen[u] = round;
    for (let head = 0; head < queue.length && this.#seen[v] !== round; head++) {
      const x = queue[head] as number;
      for (let a = this.#firstOut[x] as number; a !== -1; a = this.#nextOut[a] as number) {
        const y = this.#to[a] as number;
        if (this.#seen[y] === round || (this.at[y] as number) > limit || !use(a)) continue;
        this.#seen[y] = round;
        this.#by[y] = a;
        queue.push(y);
      }
    }
    this.work += queue.length;
    if (this.#seen[v] !== round) return null;
    const path: number[] = [];
    for (let y = v; y !== u; y = this.#from[this.#by[y] as number] as number) path.push(this.#by[y] as number);
    return path.reverse();
  }

  /** Moves what v leads to behind what leads to u; false when v leads to u. */
  #makeRoom(u: number, v: number): boolean {
    const ahead = this.#forward(v, u);
    if (ahead === null) return false;
    const behind = this.#backward(u, v);
    const { at } = this;
    this.#byPlace(behind);
    this.#byPlace(ahead);
    // Both are in order: their places together are merged from the two, and given first to those behind.
    const places = new Int32Array(behind.length + ahead.length);
    for (let b = 0, a = 0, i = 0; i < places.length; i++) {
      const next = b < behind.length ? (at[behind[b] as number] as number) : Number.POSITIVE_INFINITY;
      const other = a < ahead.length ? (at[ahead[a] as number] as number) : Number.POSITIVE_INFINITY;
      places[i] = Math.min(next, other);
      if (next < other) b++;
      else a++;
    }
    for (let i = 0; i < places.length; i++) {
      const node = i < behind.length ? behind[i] : ahead[i - behind.length];
      at[node as number] = places[i] as number;
    }
    return true;
  }

  /** Puts nodes in the order of their places; a few at a time, mostly nearly in order. */
  #byPlace(nodes: number[]): void {
    const { at } = this;
    if (nodes.length > manyNodes) {
      nodes.sort((a, b) => (at[a] as number) - (at[b] as number));
      return;
    }
    for (let i = 1; i < nodes.length; i++) {
      const node = nodes[i] as number;
      let k = i;
      for (; k > 0 && (at[nodes[k - 1] as number] as number) > (at[node] as number); k--) nodes[k] = nodes[k - 1] as number;
      nodes[k] = node;
    }
  }

  /** Nodes that `u` leads to and that stand no further than `v`; null when `v` is one of them. */
  #forward(u: number, v: number): number[] | null {
    if (u === v) return null;
    const round = ++this.#round;
    const limit = this.at[v] as number;
    const found = [u];
    this.#seen[u] = round;
    for (let head = 0; head < found.length; head++) {
      this.work++;
      for (let a = this.#firstOut[found[head] as number] as number; a !== -1; a = this.#nextOut[a] as number) {
        const y = this.#to[a] as number;
        if (y === v) return null;
        if (this.#seen[y] === round || (this.at[y] as number) > limit) continue;
        this.#seen[y] = round;
        found.push(y);
      }
    }
    return found;
  }

  /** Nodes that lead to `u` and stand no earlier than `v`. */
  #backward(u: number, v: number): number[] {
    const round = ++this.#round;
    const limit = this.at[v] as number;
    const found = [u];
    this.#seen[u] = round;
    for (let head = 0; head < found.length; head++) {
      for (let a = this.#firstIn[found[head] as number] as number; a !== -1; a = this.#nextIn[a] as number) {
        const x = this.#from[a] as number;
        if (this.#seen[x] === round || (this.at[x] as number) < limit) continue;
        this.#seen[x] = round;
        found.push(x);
      }
    }
    this.work += found.length;
    return found;
  }
}

function grown(old: Int32Array, length: number): Int32Array {
  const larger = new Int32Array(length);
  larger.set(old);
  return larger;
}
