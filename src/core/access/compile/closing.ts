import { never, type Program } from "./program";
import { Stand } from "./stand";

/** When a place is closed: filled, or every way of it closed, or gone with what made it. */
export class Closing {
  /** Steps that put up what fills it. */
  readonly fills: readonly number[];
  /** Steps that put up what closes or fills it. */
  readonly by: readonly number[];
  readonly #stand: Stand;
  readonly #fillers: readonly number[];
  readonly #firstWay: number;
  readonly #endWay: number;

  constructor(
    readonly program: Program,
    q: number,
  ) {
    const { site } = program;
    const stand = new Stand(program);
    this.#stand = stand;
    this.#fillers = site.fillers[q] as number[];
    this.#firstWay = site.firstWay[q] as number;
    this.#endWay = site.firstWay[q + 1] as number;
    const by: number[] = [];
    const ups = (pieces: readonly number[]): void => {
      for (const p of pieces) if (stand.piece(p).up >= 0) by.push(stand.piece(p).up);
    };
    ups(this.#fillers);
    this.fills = by.slice();
    for (let way = this.#firstWay; way < this.#endWay; way++) ups(site.closers[way] as number[]);
    this.by = by;
  }

  /**
   * Options for "closed while s goes on": put up before s and not taken down before s is done. What was closed and opened again is open; a place that was
   * filled stays so until that is dug out.
   */
  closedAt(s: number, fact: number): readonly number[] {
    let filled = none;
    for (const p of this.#fillers) filled = kept(filled, this.#during(p, s, fact));
    const { closers, makers } = this.program.site;
    const each: (readonly number[])[] = [];
    for (let way = this.#firstWay; way < this.#endWay; way++) {
      let options = none;
      for (const p of closers[way] as number[]) options = kept(options, this.#during(p, s, fact));
      for (const p of makers[way] as number[]) options = kept(options, this.#stand.gone(p, s, fact));
      each.push(options);
    }
    if (each.length === 0 || each.some((options) => options.length === 0)) return filled;
    const shut = this.program.selector();
    for (const options of each) this.program.clause(fact, shut, options, s);
    return [...filled, shut];
  }

  /** One option for "the piece stands all through s"; `never` where it cannot. On what goes by itself nobody relies. */
  #during(p: number, s: number, fact: number): number {
    if (this.#stand.piece(p).goesAfter !== null) return never;
    return this.program.both(fact, this.#stand.up(p, s), this.#stand.stillThere(p, s), s);
  }
}

const none: readonly number[] = [];

function kept(options: readonly number[], option: number): readonly number[] {
  if (option === never) return options;
  return options.length === 0 ? [option] : [...options, option];
}
