import type { ElapsedMinute } from "../base";
import type { Bound } from "./bound";
import type { Holder } from "./plan";
import type { Turn } from "./turns";

/** A wait before people before a window; what is of one kind, by what lets go last, then in document order. */
const weight: Readonly<Record<Holder["kind"], number>> = {
  wait: 0,
  delivery: 0,
  people: 1,
  equipment: 2,
  room: 2,
  alone: 2,
  stock: 2,
  "not-before": 3,
  fixed: 3,
  booking: 3,
  notice: 3,
  resumes: 3,
  done: 3,
  window: 3,
  "start-of-build": 4,
  "on-purpose": 5,
  kept: 5,
  aim: 5,
};

/** Something that by itself leads to a start of a job. */
export interface Candidate {
  /** The link it comes by, and the job; -1: a date. */
  readonly link: number;
  readonly from: number;
  readonly ready: ElapsedMinute;
  /** The start it leads to in the plan, and in the replay. */
  readonly leads: number;
  readonly replayed: number;
}

/** Whether the first is told rather than the second: by what lets go last, where asked for by kind before that. */
export function isBefore(bound: Bound, turns: readonly Turn[], a: Candidate, b: Candidate, byKind: boolean): boolean {
  const left = byKind ? weightOf(bound, turns, a) : 0;
  const right = byKind ? weightOf(bound, turns, b) : 0;
  return left < right || (left === right && a.ready > b.ready);
}

function weightOf(bound: Bound, turns: readonly Turn[], { link }: Candidate): number {
  return weight[link < 0 ? "not-before" : (turnOf(bound, turns, link)?.kind ?? "wait")];
}

/** The turn that a link stands for; null for one that was written. */
export function turnOf(bound: Bound, turns: readonly Turn[], link: number): Turn | null {
  const written = bound.problem.links.count;
  return link < written ? null : turns[link - written]!;
}

/** What a candidate is to job `j`, in the builder's terms. */
export function holderOf(bound: Bound, turns: readonly Turn[], j: number, { link, from, ready }: Candidate): Holder {
  if (link < 0) {
    const of = bound.releaseOf[j];
    return dated(of === "booking" || of === "fixed" || of === "notice" || of === "resumes" ? of : "not-before", ready);
  }
  const turn = turnOf(bound, turns, link);
  if (turn !== null) return { kind: turn.kind, job: from, of: turn.of };
  const row = bound.row[link]!;
  return row < 0 ? { kind: "delivery", delivery: from - bound.build.steps.length } : { kind: "wait", job: from, row };
}

export function dated(kind: "not-before" | "fixed" | "booking" | "notice" | "resumes" | "done", date: ElapsedMinute): Holder {
  return { kind, date };
}
