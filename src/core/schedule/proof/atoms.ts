import type { StartMap } from "./start-map";
import { type Trail, wider } from "./trail";

/**
 * Bounds that have a name because a clause or a decision uses them, made when first needed (lazy clause generation: Ohrimenko, Stuckey & Codish 2009,
 * "Propagation via lazy clause generation"). Atom a says "variable x is at least v"; literal 2a that it is so, 2a + 1 that it is not. Whether a literal
 * holds is read off the bounds, so atoms of one variable need no clauses among them.
 */
export class Atoms {
  count = 0;
  variable = new Int32Array(1024);
  value = new Int32Array(1024);
  /** Of each literal: the side of a variable and the bound it speaks of. */
  side = new Int32Array(2048);
  bound = new Int32Array(2048);
  /** Both of a literal side by side, for the inner loop. */
  both = new Int32Array(4096);
  /** By variable: values in order, with their atoms. */
  readonly values: Int32Array[] = [];
  readonly ids: Int32Array[] = [];
  readonly size: Int32Array;

  constructor(
    variables: number,
    private readonly maps: readonly (StartMap | null)[],
  ) {
    this.size = new Int32Array(variables);
    for (let x = 0; x < variables; x++) {
      this.values.push(new Int32Array(8));
      this.ids.push(new Int32Array(8));
    }
  }

  /** The literal that says that a side is at least `b`. */
  literal(side: number, b: number): number {
    return (side & 1) === 0 ? 2 * this.atom(side >> 1, b) : 2 * this.atom(side >> 1, 1 - b) + 1;
  }

  /** The atom of a side's bound if there is one; -1. */
  known(side: number, b: number): number {
    const x = side >> 1;
    const v = this.allowed(x, (side & 1) === 0 ? b : 1 - b);
    const k = this.place(x, v);
    return k < this.size[x]! && this.values[x]![k] === v ? this.ids[x]![k]! : -1;
  }

  /** The number of the variable's atoms whose value is below `v`. */
  place(x: number, v: number): number {
    const values = this.values[x]!;
    let low = 0;
    let high = this.size[x]!;
    while (low < high) {
      const mid = (low + high) >> 1;
      if (values[mid]! < v) low = mid + 1;
      else high = mid;
    }
    return low;
  }

  private allowed(x: number, v: number): number {
    const map = this.maps[x];
    return map ? map.atOrAfter(v) : v;
  }

  private atom(x: number, asked: number): number {
    const v = this.allowed(x, asked);
    const k = this.place(x, v);
    const size = this.size[x]!;
    if (k < size && this.values[x]![k] === v) return this.ids[x]![k]!;
    const a = this.count++;
    if (a === this.variable.length) this.grow();
    this.variable[a] = x;
    this.value[a] = v;
    this.side[2 * a] = 2 * x;
    this.bound[2 * a] = v;
    this.side[2 * a + 1] = 2 * x + 1;
    this.bound[2 * a + 1] = 1 - v;
    this.both[4 * a] = 2 * x;
    this.both[4 * a + 1] = v;
    this.both[4 * a + 2] = 2 * x + 1;
    this.both[4 * a + 3] = 1 - v;
    if (size === this.values[x]!.length) {
      this.values[x] = wider(this.values[x]!);
      this.ids[x] = wider(this.ids[x]!);
    }
    const values = this.values[x]!;
    const ids = this.ids[x]!;
    values.copyWithin(k + 1, k, size);
    ids.copyWithin(k + 1, k, size);
    values[k] = v;
    ids[k] = a;
    this.size[x]!++;
    return a;
  }

  private grow(): void {
    this.variable = wider(this.variable);
    this.value = wider(this.value);
    this.side = wider(this.side);
    this.bound = wider(this.bound);
    this.both = wider(this.both);
  }
}

/** Whether a literal holds. */
export function holds(t: Trail, a: Atoms, literal: number): boolean {
  return t.bound[a.both[2 * literal]!]! >= a.both[2 * literal + 1]!;
}
