import { wider } from "./trail";

/** Stretches of time that moves rest on, as long as these moves stand. */
export class Stretches {
  from = new Int32Array(64);
  to = new Int32Array(64);
  private move = new Int32Array(64);
  private size = 0;

  /** Keeps a stretch for move `move`, the next to be made; returns its name. Those of moves that were taken back make room. */
  add(from: number, to: number, move: number): number {
    while (this.size > 0 && this.move[this.size - 1]! >= move) this.size--;
    if (this.size === this.from.length) {
      this.from = wider(this.from);
      this.to = wider(this.to);
      this.move = wider(this.move);
    }
    this.from[this.size] = from;
    this.to[this.size] = to;
    this.move[this.size] = move;
    return this.size++;
  }
}
