import { type Atoms, fails, holds } from "./atoms";
import { type Trail, Why, wider } from "./trail";

/** Cells of a clause before its literals: how many, levels it spanned when learned, last use. */
export const head = 3;

/**
 * Learned clauses in one flat array, each watched by two of its literals (Moskewicz et al. 2001, "Chaff"; a blocking literal beside each watch as in
 * MiniSat 2.2). A clause is named by the place of its first literal.
 */
export class Clauses {
  cells = new Int32Array(1 << 16);
  end = 0;
  count = 0;
  /** Clauses entered so far: the time by which their last use is told. */
  now = 0;
  /** By literal: pairs of clause and blocking literal, looked at when the literal becomes false. */
  private watches: (Int32Array | undefined)[] = [];
  private filled = new Int32Array(4096);

  constructor(
    private readonly trail: Trail,
    private readonly atoms: Atoms,
  ) {}

  /** Enters a clause of at least two literals, the first two to be watched; returns its name. */
  add(literals: Int32Array, size: number, spread: number): number {
    while (this.end + head + size > this.cells.length) this.cells = wider(this.cells);
    const c = this.end + head;
    this.cells[c - 3] = size;
    this.cells[c - 2] = spread;
    this.cells[c - 1] = ++this.now;
    for (let k = 0; k < size; k++) this.cells[c + k] = literals[k]!;
    this.end = c + size;
    this.count++;
    this.watch(literals[0]!, c, literals[1]!);
    this.watch(literals[1]!, c, literals[0]!);
    return c;
  }

  size(c: number): number {
    return this.cells[c - 3]!;
  }

  /** A side rose from `was` to `to`: everything that follows by clauses; false on a clash. */
  rise(side: number, was: number, to: number): boolean {
    const { atoms } = this;
    const x = side >> 1;
    const up = (side & 1) === 0;
    // From below, "x < v" fails for v in (was, to]; from above, "x >= v" fails for v in (-to, -was].
    const from = up ? was + 1 : 1 - to;
    const until = up ? to : -was;
    const values = atoms.values[x]!;
    const ids = atoms.ids[x]!;
    const size = atoms.size[x]!;
    for (let k = atoms.place(x, from); k < size && values[k]! <= until; k++) {
      const literal = 2 * ids[k]! + (up ? 1 : 0);
      if (literal < this.filled.length && this.filled[literal]! > 0 && !this.fall(literal)) return false;
    }
    return true;
  }

  private fall(literal: number): boolean {
    const { trail, atoms, cells } = this;
    const { bound } = trail;
    const { both } = atoms;
    const list = this.watches[literal]!;
    const end = this.filled[literal]!;
    let kept = 0;
    for (let k = 0; k < end; k += 2) {
      const c = list[k]!;
      const blocker = list[k + 1]!;
      if (bound[both[2 * blocker]!]! >= both[2 * blocker + 1]!) {
        list[kept++] = c;
        list[kept++] = blocker;
        continue;
      }
      let first = cells[c]!;
      if (first === literal) {
        first = cells[c + 1]!;
        cells[c] = first;
        cells[c + 1] = literal;
      }
      if (first !== blocker && bound[both[2 * first]!]! >= both[2 * first + 1]!) {
        list[kept++] = c;
        list[kept++] = first;
        continue;
      }
      const last = c + cells[c - 3]!;
      let other = c + 2;
      for (; other < last; other++) {
        const denied = 2 * (cells[other]! ^ 1);
        if (bound[both[denied]!]! < both[denied + 1]!) break;
      }
      if (other < last) {
        const next = cells[other]!;
        cells[c + 1] = next;
        cells[other] = literal;
        this.watch(next, c, first);
        continue;
      }
      list[kept++] = c;
      list[kept++] = first;
      if (fails(trail, atoms, first)) trail.fail(Why.clause, c, 0);
      else if (trail.raise(atoms.side[first]!, atoms.bound[first]!, Why.clause, c, 0)) continue;
      for (let m = k + 2; m < end; m++) list[kept++] = list[m]!;
      this.filled[literal] = kept;
      return false;
    }
    this.filled[literal] = kept;
    return true;
  }

  private watch(literal: number, c: number, blocker: number): void {
    while (literal >= this.filled.length) this.filled = wider(this.filled);
    const n = this.filled[literal]!;
    let list = this.watches[literal];
    if (list === undefined) {
      list = new Int32Array(8);
      this.watches[literal] = list;
    } else if (n === list.length) {
      list = wider(list);
      this.watches[literal] = list;
    }
    list[n] = c;
    list[n + 1] = blocker;
    this.filled[literal] = n + 2;
  }

  /** Keeps the clauses that `keep` wants and that are not true for good. Only where nothing on the trail names a clause. */
  reduce(keep: (c: number) => boolean): void {
    const { cells, trail, atoms } = this;
    this.filled.fill(0);
    let to = 0;
    this.count = 0;
    for (let from = 0; from < this.end; ) {
      const c = from + head;
      const size = cells[from]!;
      from = c + size;
      let met = false;
      for (let k = 0; k < size && !met; k++) met = holds(trail, atoms, cells[c + k]!);
      if (met || !keep(c)) continue;
      cells.copyWithin(to, c - head, from);
      const moved = to + head;
      to = moved + size;
      this.count++;
      this.watch(cells[moved]!, moved, cells[moved + 1]!);
      this.watch(cells[moved + 1]!, moved, cells[moved]!);
    }
    this.end = to;
  }
}
