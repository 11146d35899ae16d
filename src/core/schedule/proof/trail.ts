import type { StartMap } from "./start-map";

/** What made a bound move. What each says of itself is in `why.ts`. */
export const Why = { decision: 0, clause: 1, lag: 2, arc: 3, order: 4, pair: 5, table: 6, edge: 7 } as const;

/**
 * Bounds of whole-number variables and the order in which they moved. Variable x has two sides: side 2x is its lower bound, side 2x + 1 its upper bound
 * negated; so every bound only rises, and "side s is at least b" is the one kind of statement there is. Its denial is "side s ^ 1 is at least 1 - b".
 * No Boolean stands for a bound until a clause needs one (atoms.ts): a clock of a year has half a million minutes.
 */
export class Trail {
  readonly bound: Int32Array;
  /** Bounds that hold without any decision. */
  readonly root: Int32Array;
  /** The latest move of each side; -1: none since the root. */
  readonly last: Int32Array;
  /** Of each move: side, new and old bound, the move of that side before it, level, and its reason. */
  side: Int32Array;
  to: Int32Array;
  was: Int32Array;
  before: Int32Array;
  level: Int32Array;
  why: Uint8Array;
  what: Int32Array;
  what2: Int32Array;
  size = 0;
  /** Moves before this one have been looked at by everyone. */
  head = 0;
  depth = 0;
  private starts = new Int32Array(256);
  /** Variables of which a bound has moved, either way, since someone last asked. */
  readonly changed: Int32Array;
  changedSize = 0;
  private readonly isChanged: Uint8Array;
  /** Times gone back, and by variable the number of these when a bound of it last rose. */
  returns = 0;
  readonly rose: Int32Array;
  /** The move that could not be made. */
  readonly clash = { side: -1, bound: 0, why: 0 as number, what: 0, what2: 0 };

  constructor(
    readonly variables: number,
    /** Allowed values where not every one is; null: all between the bounds. */
    readonly maps: readonly (StartMap | null)[],
    low: Int32Array,
    high: Int32Array,
  ) {
    this.bound = new Int32Array(2 * variables);
    for (let x = 0; x < variables; x++) {
      this.bound[2 * x] = low[x]!;
      this.bound[2 * x + 1] = -high[x]!;
    }
    this.root = this.bound.slice();
    this.last = new Int32Array(2 * variables).fill(-1);
    this.changed = new Int32Array(variables);
    this.isChanged = new Uint8Array(variables);
    this.rose = new Int32Array(variables).fill(-1);
    const room = 1024;
    this.side = new Int32Array(room);
    this.to = new Int32Array(room);
    this.was = new Int32Array(room);
    this.before = new Int32Array(room);
    this.level = new Int32Array(room);
    this.why = new Uint8Array(room);
    this.what = new Int32Array(room);
    this.what2 = new Int32Array(room);
  }

  low(x: number): number {
    return this.bound[2 * x]!;
  }

  high(x: number): number {
    return -this.bound[2 * x + 1]!;
  }

  /** Raises a side to `b` if it is lower; false when nothing is left of the variable (see `clash`). */
  raise(side: number, b: number, why: number, what: number, what2: number): boolean {
    const { bound } = this;
    const old = bound[side]!;
    if (b <= old) return true;
    const map = this.maps[side >> 1];
    let to = b;
    if (map) to = (side & 1) === 0 ? map.atOrAfter(b) : -map.atOrBefore(-b);
    if (to + bound[side ^ 1]! > 0) {
      const { clash } = this;
      clash.side = side;
      clash.bound = to;
      clash.why = why;
      clash.what = what;
      clash.what2 = what2;
      return false;
    }
    const e = this.size++;
    if (e === this.side.length) this.grow();
    this.side[e] = side;
    this.to[e] = to;
    this.was[e] = old;
    this.before[e] = this.last[side]!;
    this.level[e] = this.depth;
    this.why[e] = why;
    this.what[e] = what;
    this.what2[e] = what2;
    this.last[side] = e;
    bound[side] = to;
    this.rose[side >> 1] = this.returns;
    this.touch(side >> 1);
    return true;
  }

  /** Nothing has moved; a clash that no side is to blame for alone. */
  fail(why: number, what: number, what2: number): false {
    const { clash } = this;
    clash.side = -1;
    clash.why = why;
    clash.what = what;
    clash.what2 = what2;
    return false;
  }

  decide(side: number, b: number): void {
    if (this.depth === this.starts.length) this.starts = wider(this.starts);
    this.starts[this.depth++] = this.size;
    this.raise(side, b, Why.decision, 0, 0);
  }

  startOf(level: number): number {
    return this.starts[level - 1]!;
  }

  /** Takes the last move back. */
  pop(): void {
    const e = --this.size;
    const side = this.side[e]!;
    this.bound[side] = this.was[e]!;
    this.last[side] = this.before[e]!;
    this.touch(side >> 1);
  }

  private touch(x: number): void {
    if (this.isChanged[x] === 1) return;
    this.isChanged[x] = 1;
    this.changed[this.changedSize++] = x;
  }

  forgetChanged(): void {
    for (let k = 0; k < this.changedSize; k++) this.isChanged[this.changed[k]!] = 0;
    this.changedSize = 0;
  }

  /** What is true without decisions is true for good. */
  settle(): void {
    this.root.set(this.bound);
    this.last.fill(-1);
    this.size = 0;
    this.head = 0;
  }

  backTo(level: number): void {
    if (level >= this.depth) return;
    this.returns++;
    const end = this.starts[level]!;
    while (this.size > end) this.pop();
    this.depth = level;
    this.head = this.size;
  }

  /** The first move by which a side was at least `b`; -1: it is so without decisions. Asked of what is true. */
  moveOf(side: number, b: number): number {
    if (b <= this.root[side]!) return -1;
    let e = this.last[side]!;
    while (this.was[e]! >= b) e = this.before[e]!;
    return e;
  }

  /** The bound of a side just before move `e`. */
  boundBefore(side: number, e: number): number {
    let k = this.last[side]!;
    while (k >= e) k = this.before[k]!;
    return k < 0 ? this.root[side]! : this.to[k]!;
  }

  /** The weakest bound that says the same of the values there are. */
  weakest(side: number, b: number): number {
    const map = this.maps[side >> 1];
    if (!map) return b;
    return (side & 1) === 0 ? map.atOrBefore(b - 1) + 1 : 1 - map.atOrAfter(1 - b);
  }

  private grow(): void {
    this.side = wider(this.side);
    this.to = wider(this.to);
    this.was = wider(this.was);
    this.before = wider(this.before);
    this.level = wider(this.level);
    this.what = wider(this.what);
    this.what2 = wider(this.what2);
    const why = new Uint8Array(2 * this.why.length);
    why.set(this.why);
    this.why = why;
  }
}

export function wider(list: Int32Array): Int32Array<ArrayBuffer> {
  const out = new Int32Array(2 * list.length);
  out.set(list);
  return out;
}
