import { never, notEver } from "../../base";
import { Finder } from "./finder";

/**
 * Which starts a job may have and where each ends: stretches [from, to] of starts with one length each, in time order. Starts in between are not allowed.
 * Finishes never fall from one stretch to the next, so both directions are searches in a rising list.
 */
export class StartMap {
  readonly size: number;
  /** The one length where all starts lie in one stretch; -1. */
  readonly only: number;
  private readonly first: Int32Array;
  /** Made when first asked: of most jobs nothing is. */
  private starts: Finder | null = null;
  private ends: Finder | null = null;

  constructor(
    readonly from: Int32Array,
    readonly to: Int32Array,
    readonly length: Int32Array,
  ) {
    this.size = from.length;
    this.only = this.size === 1 ? length[0]! : -1;
    this.first = from.map((s, k) => s + length[k]!);
  }

  /** The first start at or after `t`; `never` if there is none. */
  atOrAfter(t: number): number {
    const k = this.stretchAt(t);
    if (k >= 0 && t <= this.to[k]!) return t;
    return k + 1 < this.size ? this.from[k + 1]! : never;
  }

  /** The last start at or before `t`; `notEver` if there is none. */
  atOrBefore(t: number): number {
    const k = this.stretchAt(t);
    if (k < 0) return notEver;
    return Math.min(t, this.to[k]!);
  }

  /** Where the job ends when it starts at `s`, one of its starts. */
  finish(s: number): number {
    if (this.only >= 0) return s + this.only;
    return s + this.length[Math.max(0, this.stretchAt(s))]!;
  }

  /** The last start with a finish at or before `x`; less than any start if there is none. */
  lastToFinish(x: number): number {
    if (this.only >= 0) return Math.min(x - this.only, this.to[0]!);
    this.ends ??= new Finder(this.first);
    const k = this.ends.at(x);
    if (k < 0) return notEver;
    const s = x - this.length[k]!;
    return Math.min(s, this.to[k]!);
  }

  /** The last stretch that begins at or before `t`; -1 before the first. */
  private stretchAt(t: number): number {
    this.starts ??= new Finder(this.from);
    return this.starts.at(t);
  }
}
