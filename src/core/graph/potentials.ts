import { Heap } from "../base";

/**
 * Times that respect every delay put in: `at[v] >= at[u] + delay` for each arc u -> v (Cotton and Maler 2006). Taking arcs out leaves the times as
 * they are, for fewer arcs are respected all the more. Arcs are taken out in the reverse order of going in.
 */
export class Potentials {
  readonly at: Float64Array;
  /** Nodes moved so far: the count of work. */
  work = 0;
  readonly #from: Int32Array;
  readonly #to: Int32Array;
  readonly #delay: Float64Array;
  readonly #first: Int32Array;
  readonly #next: Int32Array;

  constructor(nodes: number, from: Int32Array, to: Int32Array, delay: Float64Array) {
    this.at = new Float64Array(nodes);
    this.#from = from;
    this.#to = to;
    this.#delay = delay;
    this.#first = new Int32Array(nodes).fill(-1);
    this.#next = new Int32Array(from.length);
  }

  /** Adds the arc. Null when times exist; else the arcs of a ring that gains time, this one last, with nothing changed. */
  add(arc: number): number[] | null {
    const u = this.#from[arc] as number;
    const ring = this.#move(arc);
    if (ring !== null) return ring;
    this.#next[arc] = this.#first[u] as number;
    this.#first[u] = arc;
    return null;
  }

  /** Takes out the arc that was added last of those still in. */
  remove(arc: number): void {
    this.#first[this.#from[arc] as number] = this.#next[arc] as number;
  }

  /** Pushes nodes later, those that must move furthest first, so that each moves once. */
  #move(arc: number): number[] | null {
    const u = this.#from[arc] as number;
    const v = this.#to[arc] as number;
    const gain = (this.at[u] as number) + (this.#delay[arc] as number) - (this.at[v] as number);
    if (gain <= 0) return null;
    if (u === v) return [arc];
    const owed = new Map<number, number>([[v, gain]]);
    const by = new Map<number, number>();
    const moved = new Map<number, number>();
    const queue = new Heap();
    queue.push(v, -gain);
    for (let x = queue.pop(); x !== undefined; x = queue.pop()) {
      if (moved.has(x)) continue;
      this.work++;
      const time = (this.at[x] as number) + (owed.get(x) as number);
      moved.set(x, time);
      for (let a = this.#first[x] as number; a !== -1; a = this.#next[a] as number) {
        const y = this.#to[a] as number;
        if (moved.has(y)) continue;
        const more = time + (this.#delay[a] as number) - (this.at[y] as number);
        if (more <= (owed.get(y) ?? 0)) continue;
        owed.set(y, more);
        by.set(y, a);
        if (y === u) return [...this.#back(by, u, v), arc];
        queue.push(y, -more);
      }
    }
    for (const [x, time] of moved) this.at[x] = time;
    return null;
  }

  #back(by: ReadonlyMap<number, number>, u: number, v: number): number[] {
    const ring: number[] = [];
    for (let x = u; x !== v; x = this.#from[by.get(x) as number] as number) ring.push(by.get(x) as number);
    return ring.reverse();
  }
}
