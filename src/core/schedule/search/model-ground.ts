import { byKey } from "../by-key";
import type { Model } from "../proof/model";
import { holdsOf } from "./holds";
import { type Ground, type Member, markOf } from "./member";
import { ModelPass } from "./model-pass";
import { waitsOf } from "./waits";

/** Finishes of passes in which jobs found no place come after all others. */
export const unfinished = 0x4000_0000;

/** A problem of any kind for a population. */
export class ModelGround implements Ground {
  readonly jobs: number;
  readonly turns = 1;
  readonly weight: Int32Array;
  readonly late: Int32Array;
  readonly afterAt: Int32Array;
  readonly after: Int32Array;
  private readonly maker: ModelPass;

  /** `order`: jobs so that waits lead forward where they can. */
  constructor(model: Model, order: Int32Array) {
    const { jobs } = model;
    this.jobs = jobs;
    const place = new Int32Array(jobs);
    order.forEach((j, k) => {
      place[j] = k;
    });
    const waits = waitsOf(model, place);
    const holds = holdsOf(model);
    this.maker = new ModelPass(model, waits, holds);
    this.late = model.high.slice(0, jobs);
    this.weight = Int32Array.from(holds.asked, (list) =>
      Math.round(list.reduce((sum, a) => sum + (1000 * a.number) / Math.max(1, model.shared[a.shared]!.level), 0)),
    );
    const pairs = waits.before.flatMap((list, j) => Array.from(list, (i) => [i, j] as const)).filter(([i, j]) => place[i]! < place[j]!);
    this.afterAt = new Int32Array(jobs + 1);
    for (const [i] of pairs) this.afterAt[i + 1]!++;
    for (let j = 0; j < jobs; j++) this.afterAt[j + 1]! += this.afterAt[j]!;
    const fill = this.afterAt.slice();
    this.after = new Int32Array(pairs.length);
    for (const [i, j] of pairs) this.after[fill[i]!++] = j;
  }

  pass(_turn: number, list: Int32Array, into: Member): number {
    const { maker, jobs } = this;
    const open = maker.run(list);
    into.start.set(maker.start);
    into.end.set(maker.end);
    into.finish = open > 0 ? unfinished + open : into.end.reduce((a, b) => Math.max(a, b), 0);
    into.score = into.finish + into.end.reduce((n, t) => n + (t === into.finish ? 1 : 0), 0) / (jobs + 1);
    into.mark = markOf(into.start);
    into.list.set(byKey(jobs, (j) => into.start[j]!));
    return Math.max(1, Math.ceil(maker.placed / Math.max(1, jobs)));
  }

  finish(m: Member): number {
    return m.finish;
  }

  starts(_turn: number, m: Member): Int32Array {
    return m.start.slice();
  }
}
