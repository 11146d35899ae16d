import { type Atoms, holds } from "./atoms";
import { type Trail, Why, wider } from "./trail";

/** Cells of a clause before its literals: how many, the fewest levels it spanned when learned or used, last use. */
export const head = 3;

/** Clauses of no more levels than these are kept for good. */
export const fewLevels = 3;

const listCells = 3;
const watchCells = 3;

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
  /** Lists of watches, looked at when a literal becomes false: clause, and side and bound of the blocking literal. One array for all, as they are short. */
  private watches = new Int32Array(1 << 14);
  private used = 0;
  /** By literal: where its list begins, the cells filled of it and the cells there are for it. */
  private lists = new Int32Array(listCells * 4096);

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
      const list = listCells * literal;
      if (list < this.lists.length && this.lists[list + 1]! > 0 && !this.fall(literal)) return false;
    }
    return true;
  }

  private fall(literal: number): boolean {
    const { trail, atoms, cells } = this;
    const { bound } = trail;
    const { both } = atoms;
    const list = listCells * literal;
    const begin = this.lists[list]!;
    const end = begin + this.lists[list + 1]!;
    let { watches } = this;
    let kept = begin;
    for (let k = begin; k < end; k += watchCells) {
      const c = watches[k]!;
      let side = watches[k + 1]!;
      let least = watches[k + 2]!;
      if (bound[side]! < least) {
        let first = cells[c]!;
        if (first === literal) {
          first = cells[c + 1]!;
          cells[c] = first;
          cells[c + 1] = literal;
        }
        side = both[2 * first]!;
        least = both[2 * first + 1]!;
        if (bound[side]! < least) {
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
            watches = this.watches;
            continue;
          }
          // Nothing else is left of it: its first literal holds, or nothing can be.
          const possible = bound[side ^ 1]! < 1 - least;
          if (!possible) trail.fail(Why.clause, c, 0);
          if (!possible || !trail.raise(side, least, Why.clause, c, 0)) {
            watches.copyWithin(kept, k, end);
            this.lists[list + 1] = kept - begin + end - k;
            return false;
          }
        }
      }
      watches[kept] = c;
      watches[kept + 1] = side;
      watches[kept + 2] = least;
      kept += watchCells;
    }
    this.lists[list + 1] = kept - begin;
    return true;
  }

  private watch(literal: number, c: number, blocker: number): void {
    const list = listCells * literal;
    while (list >= this.lists.length) this.lists = wider(this.lists);
    const { lists } = this;
    const filled = lists[list + 1]!;
    if (filled === lists[list + 2]!) this.widen(list, filled);
    const k = lists[list]! + filled;
    this.watches[k] = c;
    this.watches[k + 1] = this.atoms.both[2 * blocker]!;
    this.watches[k + 2] = this.atoms.both[2 * blocker + 1]!;
    lists[list + 1] = filled + watchCells;
  }

  /** Gives a list twice the room at the end; where it was is lost until the next `reduce`. */
  private widen(list: number, filled: number): void {
    const room = Math.max(4 * watchCells, 2 * filled);
    while (this.used + room > this.watches.length) this.watches = wider(this.watches);
    const begin = this.lists[list]!;
    this.watches.copyWithin(this.used, begin, begin + filled);
    this.lists[list] = this.used;
    this.lists[list + 2] = room;
    this.used += room;
  }

  /** Keeps the clauses that `keep` wants and that are not true for good. Only where nothing on the trail names a clause. */
  reduce(keep: (c: number) => boolean): void {
    const { cells, trail, atoms } = this;
    this.lists.fill(0);
    this.used = 0;
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
