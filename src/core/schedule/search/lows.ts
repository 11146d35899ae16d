import { never } from "../../base";
import type { Model } from "../proof/model";
import { JobQueue } from "../queue";
import type { Waits } from "./waits";

/** Rounds of waits that gain time end after so many moves a job. */
const mostMoves = 60;

/** Earliest starts while a schedule is being made: what waits say of the jobs that stand and of the earliest start of each. */
export class Lows {
  readonly low: Int32Array;
  /** Jobs that stand and would have to move, since the last `clear`. */
  readonly pushed: number[] = [];
  private readonly queue: JobQueue;

  constructor(
    private readonly model: Model,
    private readonly waits: Waits,
    private readonly start: Int32Array,
  ) {
    this.low = new Int32Array(model.jobs);
    this.queue = new JobQueue(model.jobs);
  }

  /** Sets lows from given ones and the jobs that stand; false where that cannot be. */
  begin(floor: Int32Array): boolean {
    const { low, start, queue } = this;
    this.pushed.length = 0;
    for (let j = 0; j < low.length; j++) {
      low[j] = Math.max(floor[j]!, start[j]!);
      queue.push(j);
    }
    return this.spread();
  }

  /** Raises one low and all that follows; false where some job would have no start left. */
  raise(j: number, t: number): boolean {
    if (!this.atLeast(j, t)) return false;
    return this.spread();
  }

  private spread(): boolean {
    const { model, waits, low, queue } = this;
    let fine = true;
    let left = mostMoves * low.length;
    for (let x = queue.pop(); x >= 0; x = queue.pop()) {
      // A queue is emptied even when nothing more is to be known.
      if (!fine) continue;
      if (--left < 0) fine = false;
      for (let k = waits.lagAt[x]!; fine && k < waits.lagAt[x + 1]!; k++) fine = this.atLeast(waits.lagTo[k]!, low[x]! + waits.lag[k]!);
      for (const a of waits.arcs[x]!) {
        if (!fine) break;
        const t = a.ahead(a.fromEnd === 0 ? low[x]! : model.maps[x]!.finish(low[x]!));
        if (a.toEnd === 0) fine = this.atLeast(a.to, t);
        else if (model.maps[a.to]!.finish(low[a.to]!) < t) fine = this.atLeast(a.to, model.maps[a.to]!.lastToFinish(t - 1) + 1);
      }
    }
    return fine;
  }

  private atLeast(j: number, t: number): boolean {
    if (t <= this.low[j]!) return true;
    const s = this.model.maps[j]!.atOrAfter(t);
    if (s >= never) return false;
    this.low[j] = s;
    if (this.start[j]! >= 0 && s > this.start[j]!) this.pushed.push(j);
    this.queue.push(j);
    return true;
  }
}
