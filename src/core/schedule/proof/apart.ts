import { JobQueue } from "../queue";
import type { Lag } from "./model";

/** No difference follows. */
const none = -(1 << 29);

/**
 * By how much one start is at least later than another, by waits of one length alone, however many lie between (longest paths, corrected until nothing moves:
 * Ford 1956, Bellman 1958). Where there are most-waits a difference may be below 0.
 */
export class Apart {
  /** By the earlier one, then the later. */
  private readonly least: Int32Array;
  /** By side, whether it follows from any. */
  private readonly moved: Uint8Array;

  /** @param lags without a circle by which something would be later than itself */
  constructor(
    readonly variables: number,
    lags: readonly Lag[],
  ) {
    const n = variables;
    // A wait read backwards says the same.
    const forward = lags.filter((l) => (l.from & 1) === 0);
    const after: Lag[][] = Array.from({ length: n }, () => []);
    for (const l of forward) after[l.from >> 1]!.push(l);
    this.least = new Int32Array(n * n).fill(none);
    this.moved = new Uint8Array(2 * n);
    for (const l of lags) this.moved[l.to] = 1;
    const { least } = this;
    const queue = new JobQueue(n);
    for (let from = 0; from < n; from++) {
      const row = from * n;
      least[row + from] = 0;
      queue.push(from);
      for (let x = queue.pop(); x >= 0; x = queue.pop()) {
        for (const { to, lag } of after[x]!) {
          const y = to >> 1;
          if (least[row + x]! + lag <= least[row + y]!) continue;
          least[row + y] = least[row + x]! + lag;
          queue.push(y);
        }
      }
      least[row + from] = none;
    }
  }

  /** Whether a side follows from any other. */
  moves(side: number): boolean {
    return this.moved[side] === 1;
  }

  /** Whether "side `of` is at least b" makes another side at least c, two sides of one kind: of two other variables, and by waits alone. */
  follows(of: number, b: number, side: number, c: number): boolean {
    const { variables: n, least } = this;
    if (((of ^ side) & 1) === 1 || of >= 2 * n || side >= 2 * n) return false;
    const x = of >> 1;
    const y = side >> 1;
    // A latest start says of what comes before what an earliest one says of what comes after.
    return b + ((of & 1) === 0 ? least[x * n + y]! : least[y * n + x]!) >= c;
  }
}
