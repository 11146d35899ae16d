/** How a run between two restarts chooses: around the best schedule, as most clauses want, or so with a finish at the bound. */
export type Manner = "best" | "wanted" | "bound";

/** Clashes of the shortest run. */
const unit = 200;

/** Of so many runs of one length one is guided otherwise than the rest. */
const turns = 4;

/** Of so many of the shortest runs one tries a finish at the bound. */
const probes = 8;

/**
 * The runs of a search, one after the other: their lengths after Luby, Sinclair & Zuckerman (1993), and by turns, among runs of one length, what guides them.
 */
export class Runs {
  manner: Manner = "best";
  /** Clashes that are left of the run. */
  left = unit;
  private index = 0;
  private readonly seen = new Map<number, number>();

  /** @param most what guides three runs of four */
  next(most: "best" | "wanted"): void {
    this.index++;
    const length = luby(this.index);
    const turn = (this.seen.get(length) ?? 0) + 1;
    this.seen.set(length, turn);
    this.left = unit * length;
    this.manner = (turn % turns === 0) === (most === "wanted") ? "best" : "wanted";
    if (length === 1 && turn % probes === 3) this.manner = "bound";
  }
}

/** 1 1 2 1 1 2 4 and so on, from k = 0. */
export function luby(k: number): number {
  let size = 1;
  while (size < k + 1) size = 2 * size + 1;
  let at = k;
  while (size - 1 !== at) {
    size = (size - 1) >> 1;
    at %= size;
  }
  return (size + 1) >> 1;
}
