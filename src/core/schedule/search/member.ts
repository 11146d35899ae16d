/** A schedule in a population, in the time of the reading that goes next: starts, ends, and the jobs by start. */
export interface Member {
  finish: number;
  /** What is less is better: the finish, and of equals the one at which fewer jobs end. */
  score: number;
  /** The same for the same starts. */
  mark: number;
  readonly start: Int32Array;
  readonly end: Int32Array;
  readonly list: Int32Array;
}

/** The finish and the score of a member that no pass has written yet. */
export const absent = Number.MAX_SAFE_INTEGER;

export function memberOf(jobs: number): Member {
  return { finish: absent, score: absent, mark: 0, start: new Int32Array(jobs), end: new Int32Array(jobs), list: new Int32Array(jobs) };
}

/** Problems of fewer jobs are small: what has measured best for them is not best for others. */
export const fewJobs = 45;

/** Tells schedules apart by their starts. */
export function markOf(start: Int32Array): number {
  let mark = 0;
  for (let j = 0; j < start.length; j++) mark = (mark + Math.imul(start[j]! + 7, Math.imul(2 * j + 1, 0x9e3779b1))) | 0;
  return mark;
}

/** What a population needs to know of a problem. */
export interface Ground {
  readonly jobs: number;
  /** 2 where a schedule can be made from the end too, so that every pass pushes the jobs of the last to the other side; else 1. */
  readonly turns: 1 | 2;
  /** By job: how much of all there is it takes while it lasts. */
  readonly weight: Int32Array;
  /** By job: its latest start as far as waits say, and the jobs that go after it, packed. */
  readonly late: Int32Array;
  readonly afterAt: Int32Array;
  readonly after: Int32Array;
  /** Makes a schedule along a list, as turn `turn` does, and writes it into a member as the next turn reads it. The number of passes it counts for. */
  pass(turn: number, list: Int32Array, into: Member): number;
  /** The starts, in minutes, of what turn `turn` made; null where they may not be a schedule. */
  starts(turn: number, m: Member): Int32Array | null;
  /** The finish of what a turn made, in minutes. */
  finish(m: Member): number;
}
