import { type Ground, type Member, markOf } from "./member";
import { Pass } from "./pass";
import type { Plain } from "./plain";

/** A plain problem for a population: forwards and backwards by turns (double justification: Valls, Ballestin & Quintanilla 2005, EJOR 165:375-386). */
export class PlainGround implements Ground {
  readonly jobs: number;
  readonly turns = 2;
  readonly weight: Int32Array;
  readonly late: Int32Array;
  readonly afterAt: Int32Array;
  readonly after: Int32Array;
  private readonly passes: readonly [Pass, Pass];
  private readonly start: Int32Array;
  private readonly bucket: Int32Array;

  constructor(private readonly plain: Plain) {
    const [ahead, behind] = plain.sides;
    this.jobs = ahead.jobs;
    this.weight = ahead.weight;
    const last = ahead.head.reduce((t, s, j) => Math.max(t, s + ahead.length[j]!), 0);
    this.late = behind.head.map((s, j) => last - s - ahead.length[j]!);
    this.afterAt = behind.at;
    this.after = behind.other;
    this.passes = [new Pass(ahead), new Pass(behind)];
    this.start = new Int32Array(this.jobs);
    this.bucket = new Int32Array(ahead.span + 2);
  }

  pass(turn: number, list: Int32Array, into: Member): number {
    const { start, jobs } = this;
    const { length } = this.plain.sides[0];
    const last = this.passes[turn]!.run(list, start);
    let ends = 0;
    for (let j = 0; j < jobs; j++) {
      into.start[j] = last - start[j]! - length[j]!;
      into.end[j] = last - start[j]!;
      if (into.start[j] === 0) ends++;
    }
    into.finish = last;
    into.score = last + ends / (jobs + 1);
    into.mark = markOf(into.start);
    this.sort(into, this.plain.sides[1 - turn]!.order);
    return 1;
  }

  starts(turn: number, m: Member): Int32Array | null {
    const { unit_min, released } = this.plain;
    if (turn === 1 && released) return null;
    return turn === 1 ? m.start.map((s) => s * unit_min) : m.end.map((e) => (m.finish - e) * unit_min);
  }

  finish(m: Member): number {
    return m.finish * this.plain.unit_min;
  }

  /** Jobs by start, equal ones as waits lead: counting sort. */
  private sort({ start, list, finish }: Member, order: Int32Array): void {
    const { bucket } = this;
    bucket.fill(0, 0, finish + 2);
    for (let j = 0; j < start.length; j++) bucket[start[j]! + 1]!++;
    for (let t = 0; t <= finish; t++) bucket[t + 1]! += bucket[t]!;
    for (let k = 0; k < order.length; k++) {
      const j = order[k]!;
      list[bucket[start[j]!]!++] = j;
    }
  }
}
