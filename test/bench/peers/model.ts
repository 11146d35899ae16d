import { completion } from "../schedule/check";
import type { Calendar, Row } from "../schedule/files";

/** A row of a file in the words of a general-purpose solver: variables, sums and tables. */
export interface PeerModel {
  readonly horizon: number;
  readonly jobs: readonly PeerJob[];
  /** The start of `to` is at least, or at most, `by` after the start (0) or finish (1) of `from`. */
  readonly waits: readonly {
    readonly from: number;
    readonly end: 0 | 1;
    readonly to: number;
    readonly by: number;
    readonly most: boolean;
  }[];
  readonly capacities: readonly number[];
}

/** A job takes `length`; or, where that depends on its start, it has these starts and ends where `finishes` says. */
export interface PeerJob {
  readonly length: number | null;
  readonly starts: readonly number[];
  readonly finishes: readonly number[];
  readonly requests: readonly number[];
}

/** From the file's own words; nothing of the engine is asked. */
export function modelOf(row: Row, calendars: readonly Calendar[]): PeerModel {
  if (row.kind === "clocks") {
    return {
      horizon: row.horizon,
      capacities: row.cap,
      jobs: row.acts.map((act, i) => (act.kind === "dummy" ? fixed(0, act.req) : tabled(row, calendars, i))),
      waits: row.arcs.flatMap(([from, to, least, most]) => [
        { from, end: 1 as const, to, by: least, most: false },
        ...(most === null ? [] : [{ from, end: 1 as const, to, by: most, most: true }]),
      ]),
    };
  }
  const jobs = row.dur.map((length, i) => fixed(length, row.req[i]!));
  if (row.kind === "plain") {
    const waits = row.succ.flatMap((list, from) => list.map((to) => ({ from, end: 1 as const, to, by: 0, most: false })));
    return { horizon: row.dur.reduce((a, b) => a + b, 0), jobs, waits, capacities: row.cap };
  }
  // As long as every job by its longest wait: if anything fits, something fits within.
  const longest = [...row.dur];
  for (const [i, , lag] of row.arcs) longest[i] = Math.max(longest[i]!, lag);
  const waits = row.arcs.map(([from, to, by]) => ({ from, end: 0 as const, to, by, most: false }));
  return { horizon: longest.reduce((a, b) => a + b, 0), jobs, waits, capacities: row.cap };
}

function fixed(length: number, requests: readonly number[]): PeerJob {
  return { length, starts: [], finishes: [], requests };
}

function tabled(row: Extract<Row, { kind: "clocks" }>, calendars: readonly Calendar[], i: number): PeerJob {
  const starts: number[] = [];
  const finishes: number[] = [];
  for (let t = 0; t <= row.horizon; t++) {
    const end = completion(row, calendars, i, t);
    if (typeof end === "string") continue;
    starts.push(t);
    finishes.push(end);
  }
  return { length: null, starts, finishes, requests: row.acts[i]!.req };
}
