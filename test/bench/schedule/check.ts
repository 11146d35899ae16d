import type { Calendar, ClockRow, Row } from "./files";

/**
 * Whether starts are a schedule of a row, worked out from the file's own words hour by hour, and its finish (start of the last activity); shares nothing
 * with the scheduler. Returns what is wrong, or the finish.
 */
export function check(row: Row, calendars: readonly Calendar[], start: ArrayLike<number>): number | string {
  if (start.length !== row.n) return `${start.length} starts for ${row.n} activities`;
  const finish: number[] = [];
  for (let i = 0; i < row.n; i++) {
    if (!Number.isInteger(start[i]) || start[i]! < 0) return `activity ${i} starts at ${start[i]}`;
    const end = row.kind === "clocks" ? completion(row, calendars, i, start[i]!) : start[i]! + row.dur[i]!;
    if (typeof end === "string") return end;
    finish.push(end);
  }
  return links(row, start, finish) ?? capacities(row, start, finish) ?? start[row.n - 1]!;
}

/** Where activity `i` ends when it starts at `start`, hour by hour; or why it cannot. */
export function completion(row: ClockRow, calendars: readonly Calendar[], i: number, start: number): number | string {
  const act = row.acts[i]!;
  if (act.kind === "dummy") return start;
  if (act.kind === "cure") {
    const day = Math.floor(start / 24);
    const hours = act.cureHours![Math.min(day, act.cureHours!.length - 1)]!;
    return start + hours > row.horizon ? `activity ${i} ends after the horizon` : start + hours;
  }
  const c = calendars[act.cal]!;
  const works = (t: number): boolean => c.days.includes(Math.floor(t / 24) % 7) && t % 24 >= c.from && t % 24 < c.to;
  if (!works(start)) return `activity ${i} starts in an hour that is not worked`;
  let left = act.work;
  let t = start;
  for (; left > 0; t++) {
    if (works(t)) left--;
    else if (act.kind === "solid") return `activity ${i} is interrupted at ${t}`;
    if (t > row.horizon) return `activity ${i} ends after the horizon`;
  }
  return t;
}

function links(row: Row, start: ArrayLike<number>, finish: readonly number[]): string | null {
  if (row.kind === "plain") {
    for (let i = 0; i < row.n; i++) for (const j of row.succ[i]!) if (start[j]! < finish[i]!) return `${j} starts before ${i} has ended`;
    return null;
  }
  if (row.kind === "lags") {
    for (const [i, j, lag] of row.arcs) if (start[j]! < start[i]! + lag) return `${j} starts less than ${lag} after ${i}`;
    return null;
  }
  for (const [i, j, min, max] of row.arcs) {
    if (start[j]! < finish[i]! + min) return `${j} starts less than ${min} after ${i} has ended`;
    if (max !== null && start[j]! > finish[i]! + max) return `${j} starts more than ${max} after ${i} has ended`;
  }
  return null;
}

function capacities(row: Row, start: ArrayLike<number>, finish: readonly number[]): string | null {
  const req = row.kind === "clocks" ? row.acts.map((a) => a.req) : row.req;
  for (let r = 0; r < row.cap.length; r++) {
    for (let i = 0; i < row.n; i++) {
      let used = 0;
      for (let j = 0; j < row.n; j++) if (start[j]! <= start[i]! && start[i]! < finish[j]!) used += req[j]![r]!;
      if (used > row.cap[r]!) return `${used} of ${row.cap[r]} of resource ${r} taken at ${start[i]}`;
    }
  }
  return null;
}
