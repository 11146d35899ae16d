import { type Clock, type ElapsedMinute, never } from "../base";
import { IntList } from "../graph";

/** The unbroken runs of a clock from minute 0 on, by number, looked up as far as questions reach and kept for the next. */
export class Runs {
  readonly #from = new IntList(64);
  readonly #to = new IntList(64);
  #whole = false;
  /** The run that was asked for last. */
  #last = 0;

  constructor(readonly clock: Clock) {}

  /** Whether there is a run of this number. */
  has(run: number): boolean {
    while (run >= this.#to.length && this.#lookOn());
    return run < this.#to.length;
  }

  from(run: number): number {
    return this.#from.data[run]!;
  }

  to(run: number): number {
    return this.#to.data[run]!;
  }

  /** The number of the first run that ends after `t`; there need not be one. */
  at(t: number): number {
    while ((this.#to.length === 0 || this.#to.data[this.#to.length - 1]! <= t) && this.#lookOn());
    const ends = this.#to.data;
    let low = 0;
    let high = this.#to.length;
    // Most questions are about the run that was asked for last, or the next.
    if (this.#last < high && (this.#last === 0 || ends[this.#last - 1]! <= t)) {
      low = this.#last;
      if (low + 2 < high && ends[low + 1]! > t) high = low + 2;
    }
    while (low < high) {
      const mid = (low + high) >> 1;
      if (ends[mid]! <= t) low = mid + 1;
      else high = mid;
    }
    this.#last = low;
    return low;
  }

  #lookOn(): boolean {
    if (this.#whole) return false;
    const from = this.clock.begin((this.#to.length === 0 ? 0 : this.#to.at(this.#to.length - 1)) as ElapsedMinute);
    this.#whole = from >= never;
    if (this.#whole) return false;
    this.#from.push(from);
    this.#to.push(this.clock.runEnd(from));
    return true;
  }
}

/** Kept as long as their clocks, which are shared between plans. */
const known = new WeakMap<Clock, Runs>();

export function runsOf(clock: Clock): Runs {
  let runs = known.get(clock);
  if (runs === undefined) {
    runs = new Runs(clock);
    known.set(clock, runs);
  }
  return runs;
}
