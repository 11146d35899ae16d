import type { Draw } from "./draw";
import type { Loose, Size } from "./random-builds";
import type { DrawnPiece } from "./random-pieces";

/** A pour among the steps and, here and there instead of hours, shares of the strength it gathers: of what it puts up itself and of anything else. */
export class Strengths {
  /** Turn of the pour; -1: the build has none. */
  readonly #turn: number;
  readonly #mostly: boolean;

  constructor(
    readonly draw: Draw,
    readonly size: Pick<Size, "careless">,
    readonly names: readonly string[],
  ) {
    this.#turn = draw.chance(55) ? draw.below(names.length - 1) : -1;
    this.#mostly = this.#turn >= 0 && draw.chance(60);
  }

  /** What makes the step of that turn a pour. */
  pour(turn: number): Loose {
    return turn === this.#turn ? { sort: "pour", pour: { strength: "28 MPa", cement: this.draw.pick(["III", "I"]) } } : {};
  }

  /** The amount, or a strength in its place; for a step of that turn only after the pour unless it is drawn carelessly. */
  or(amount: string, turn = Number.POSITIVE_INFINITY): string {
    if (!this.#mostly || !this.draw.chance(60) || (turn <= this.#turn && !this.draw.chance(this.size.careless))) return amount;
    return `${this.draw.pick([5, 10])} % of ${this.names[this.#turn]}`;
  }

  /** Amounts already drawn for pieces. */
  ofPieces(pieces: readonly DrawnPiece[]): void {
    for (const { written } of pieces) {
      for (const key of ["holdsItself", "goesAfter"]) if (typeof written[key] === "string") written[key] = this.or(written[key]);
    }
  }

  /** Amounts already drawn for waits. */
  ofWaits(waits: readonly Loose[]): void {
    for (const wait of waits) {
      for (const key of ["least", "most"]) {
        if (typeof wait[key] === "string") wait[key] = this.or(wait[key], this.names.indexOf(wait.to as string));
      }
    }
  }
}
