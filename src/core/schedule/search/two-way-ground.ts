import { byKey } from "../by-key";
import type { Model } from "../proof/model";
import { type Ground, type Member, markOf } from "./member";
import { ModelGround } from "./model-ground";

/**
 * A problem of any kind for a population, forwards and backwards by turns. What is made from the end keeps no dates, most-waits and stock (see mirrored): it is the
 * order for a pass from the beginning and no schedule itself.
 */
export class TwoWayGround implements Ground {
  readonly jobs: number;
  readonly turns = 2;
  readonly weight: Int32Array;
  readonly late: Int32Array;
  readonly afterAt: Int32Array;
  readonly after: Int32Array;
  private readonly ways: readonly [ModelGround, ModelGround];

  /** `model` and `back`: the problem and its mirror; `order`, `orderBack`: jobs so that waits lead forward where they can. */
  constructor(model: Model, order: Int32Array, back: Model, orderBack: Int32Array) {
    const ahead = new ModelGround(model, order);
    this.ways = [ahead, new ModelGround(back, orderBack)];
    this.jobs = ahead.jobs;
    this.weight = ahead.weight;
    this.late = ahead.late;
    this.afterAt = ahead.afterAt;
    this.after = ahead.after;
  }

  pass(turn: number, list: Int32Array, into: Member): number {
    const passes = this.ways[turn]!.pass(0, list, into);
    const last = into.end.reduce((a, b) => Math.max(a, b), 0);
    for (let j = 0; j < this.jobs; j++) {
      const start = into.start[j]!;
      into.start[j] = last - into.end[j]!;
      into.end[j] = last - start;
    }
    into.mark = markOf(into.start);
    into.list.set(byKey(this.jobs, (j) => into.start[j]!));
    return passes;
  }

  finish(m: Member): number {
    return m.finish;
  }

  starts(turn: number, m: Member): Int32Array | null {
    return turn === 1 ? null : m.end.map((e) => m.finish - e);
  }
}
