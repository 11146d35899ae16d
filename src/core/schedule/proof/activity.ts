import type { Atoms } from "./atoms";
import { type Trail, wider } from "./trail";

/**
 * Atoms by how much they had to do with clashes of late, the most first (VSIDS: Moskewicz et al. 2001), in a binary heap. What is found decided is taken out
 * and put back when its level is left.
 */
export class Activity {
  private score = new Float64Array(1024);
  private heap = new Int32Array(1024);
  private place = new Int32Array(1024).fill(-1);
  private size = 0;
  private step = 1;
  /** By atom: learned clauses that want it, less those that want its denial. */
  private votes = new Int32Array(1024);
  /** Atoms taken out, with the level at which they were. */
  private out = new Int32Array(1024);
  private outLevel = new Int32Array(1024);
  private outSize = 0;

  constructor(
    private readonly trail: Trail,
    private readonly atoms: Atoms,
    private readonly fading: number,
  ) {}

  bump(atom: number): void {
    if (atom >= this.score.length) this.grow(atom);
    const score = this.score[atom]! + this.step;
    this.score[atom] = score;
    if (score > 1e100) {
      for (let a = 0; a < this.score.length; a++) this.score[a]! *= 1e-100;
      this.step *= 1e-100;
    }
    if (this.place[atom]! >= 0) this.up(this.place[atom]!);
  }

  /** A literal of a new clause. */
  enter(literal: number): void {
    const atom = literal >> 1;
    this.bump(atom);
    if (this.place[atom]! < 0) this.push(atom);
    this.votes[atom]! += (literal & 1) === 0 ? 1 : -1;
  }

  /** Of an atom's two literals the one that more clauses wanted when learned (counted by literal as in Chaff, but for good); where as many did, its denial. */
  wanted(atom: number): number {
    return this.votes[atom]! > 0 ? 2 * atom : 2 * atom + 1;
  }

  fade(): void {
    this.step /= this.fading;
  }

  /** The undecided atom that matters most; -1: none. */
  next(): number {
    const { trail, atoms } = this;
    while (this.size > 0) {
      const a = this.heap[0]!;
      const x = atoms.variable[a]!;
      const v = atoms.value[a]!;
      if (trail.low(x) < v && v <= trail.high(x)) return a;
      this.takeFirst();
      if (this.outSize === this.out.length) {
        this.out = wider(this.out);
        this.outLevel = wider(this.outLevel);
      }
      this.out[this.outSize] = a;
      this.outLevel[this.outSize++] = trail.depth;
    }
    return -1;
  }

  /** Levels above `level` are being left. */
  backTo(level: number): void {
    while (this.outSize > 0 && this.outLevel[this.outSize - 1]! > level) {
      const a = this.out[--this.outSize]!;
      if (this.place[a]! < 0) this.push(a);
    }
  }

  private push(atom: number): void {
    if (this.size === this.heap.length) this.heap = wider(this.heap);
    this.place[atom] = this.size;
    this.heap[this.size++] = atom;
    this.up(this.size - 1);
  }

  private takeFirst(): void {
    const { heap, place } = this;
    place[heap[0]!] = -1;
    const last = heap[--this.size]!;
    if (this.size === 0) return;
    heap[0] = last;
    place[last] = 0;
    this.down(0);
  }

  private up(at: number): void {
    const { heap, place, score } = this;
    const atom = heap[at]!;
    const own = score[atom]!;
    let k = at;
    while (k > 0) {
      const parent = (k - 1) >> 1;
      const other = heap[parent]!;
      if (score[other]! >= own) break;
      heap[k] = other;
      place[other] = k;
      k = parent;
    }
    heap[k] = atom;
    place[atom] = k;
  }

  private down(at: number): void {
    const { heap, place, score, size } = this;
    const atom = heap[at]!;
    const own = score[atom]!;
    let k = at;
    for (;;) {
      let child = 2 * k + 1;
      if (child >= size) break;
      if (child + 1 < size && score[heap[child + 1]!]! > score[heap[child]!]!) child++;
      const other = heap[child]!;
      if (score[other]! <= own) break;
      heap[k] = other;
      place[other] = k;
      k = child;
    }
    heap[k] = atom;
    place[atom] = k;
  }

  private grow(atom: number): void {
    const room = Math.max(2 * this.score.length, atom + 1);
    const score = new Float64Array(room);
    score.set(this.score);
    this.score = score;
    const place = new Int32Array(room).fill(-1);
    place.set(this.place);
    this.place = place;
    const votes = new Int32Array(room);
    votes.set(this.votes);
    this.votes = votes;
  }
}
