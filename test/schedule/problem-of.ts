import { type Clock, type ElapsedMinute, never } from "../../src/core/base";
import { clocksOf, elapsed, type Runs, WorkingClock } from "../../src/core/clock";
import type { Capacity, Problem, Span, StockLevel } from "../../src/core/schedule";

export interface JobSpec {
  readonly clock?: number;
  readonly amount: number;
  readonly unbroken?: boolean;
  readonly release?: number;
  readonly due?: number;
  readonly fixed?: number;
}

export interface LinkSpec {
  readonly from: number;
  readonly to: number;
  readonly ends?: "FS" | "SS" | "FF" | "SF";
  readonly clock?: number;
  readonly least?: number;
  readonly most?: number;
}

export interface ProblemSpec {
  readonly jobs: readonly JobSpec[];
  readonly links?: readonly LinkSpec[];
  readonly clocks?: readonly Clock[];
  readonly capacities?: readonly Capacity[];
  readonly demands?: readonly (readonly [job: number, capacity: number, number: number])[];
  readonly stocks?: readonly StockLevel[];
  readonly spans?: readonly Span[];
  readonly horizon?: number;
}

/** A problem from rows; clock 0 is elapsed time unless clocks are given. */
export function problemOf(spec: ProblemSpec): Problem {
  const { jobs } = spec;
  const links = spec.links ?? [];
  return {
    jobs: jobs.length,
    clocks: spec.clocks ?? [elapsed],
    clock: Int32Array.from(jobs, (j) => j.clock ?? 0),
    amount: Int32Array.from(jobs, (j) => j.amount),
    unbroken: Uint8Array.from(jobs, (j) => (j.unbroken ? 1 : 0)),
    release: Int32Array.from(jobs, (j) => j.release ?? 0),
    due: Int32Array.from(jobs, (j) => j.due ?? never),
    fixed: Int32Array.from(jobs, (j) => j.fixed ?? -1),
    links: {
      count: links.length,
      from: Int32Array.from(links, (l) => l.from),
      to: Int32Array.from(links, (l) => l.to),
      fromEnd: Uint8Array.from(links, (l) => ((l.ends ?? "FS")[0] === "F" ? 1 : 0)),
      toEnd: Uint8Array.from(links, (l) => ((l.ends ?? "FS")[1] === "F" ? 1 : 0)),
      clock: Int32Array.from(links, (l) => l.clock ?? 0),
      least: Int32Array.from(links, (l) => l.least ?? -1),
      most: Int32Array.from(links, (l) => l.most ?? -1),
    },
    capacities: spec.capacities ?? [],
    demands: Int32Array.from((spec.demands ?? []).flat()),
    stocks: spec.stocks ?? [],
    spans: spec.spans ?? [],
    rank: Int32Array.from(jobs, (_, i) => i),
    horizon: (spec.horizon ?? 4 * 366 * 1440) as ElapsedMinute,
  };
}

/** A number that is there for good. */
export function constant(id: string, kind: Capacity["kind"], number: number, holds: Capacity["holds"] = "working"): Capacity {
  return { id, kind, times: Int32Array.of(0), levels: Int32Array.of(number), holds };
}

/** Runs the given minutes [from, to) of every period. */
export function repeating(id: string, period: number, windows: readonly (readonly [number, number])[]): Clock {
  return new WorkingClock(id, (from, to): Runs => {
    const out: number[] = [];
    for (let base = Math.floor(from / period) * period; base < to; base += period) {
      for (const [a, b] of windows) if (base + a < to && base + b > from) out.push(Math.max(from, base + a), Math.min(to, base + b));
    }
    return out;
  });
}

export { elapsed };

/** An office that is open from 8 to 16 every day and counts requests until 15:00, as a clock of its days. */
export function officeDays(): Clock {
  const open = [{ from_min: 480, to_min: 960 }];
  return clocksOf({
    site: { zone: "UTC", latitude: 45, longitude: 0 },
    start: "2027-03-06",
    usual: "office",
    calendars: [
      {
        id: "office",
        week: Array.from({ length: 7 }, () => open),
        off: [],
        extra: new Map(),
        holidays: null,
        daylightOnly: false,
        cutOff_min: 900,
      },
    ],
    people: [],
  }).office("office");
}
