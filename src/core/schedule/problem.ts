import type { Clock, ElapsedMinute } from "../base";

/**
 * Jobs, clocks, waits, capacities and windows; no building and no concrete. Parallel typed arrays, one entry a job.
 * A job's finish is `clocks[clock].advance(start, amount)`; its start is always a running minute (`begin`); an unbroken job lies in one run. The clocks of
 * jobs gather one a minute while they run; those of links may be any.
 */
export interface Problem {
  readonly jobs: number;
  readonly clocks: readonly Clock[];
  readonly clock: Int32Array;
  readonly amount: Int32Array;
  readonly unbroken: Uint8Array;
  /** Earliest start; latest finish (`never`: none); exact start (-1: free). */
  readonly release: Int32Array;
  readonly due: Int32Array;
  readonly fixed: Int32Array;
  readonly links: Links;
  readonly capacities: readonly Capacity[];
  /** Flat: job, capacity, number. */
  readonly demands: Int32Array;
  readonly stocks: readonly StockLevel[];
  readonly spans: readonly Span[];
  /** Ties between jobs are settled by this order (lower first). */
  readonly rank: Int32Array;
  readonly horizon: ElapsedMinute;
}

/**
 * end(from) + least <= end(to), and end(to) <= limit(end(from), most). End 0 start, 1 finish. `least` and `most` -1: none.
 */
export interface Links {
  readonly count: number;
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly fromEnd: Uint8Array;
  readonly toEnd: Uint8Array;
  readonly clock: Int32Array;
  readonly least: Int32Array;
  readonly most: Int32Array;
}

/**
 * A renewable number that varies over time: `levels[i]` from `times[i]` until `times[i + 1]`. Of kind "alone", a demand for the whole level (a place
 * taken for oneself) is held from start to finish whatever `holds` says.
 */
export interface Capacity {
  readonly id: string;
  readonly kind: "people" | "equipment" | "room" | "alone";
  readonly times: Int32Array;
  readonly levels: Int32Array;
  /** working: held only while the job's clock runs. span: held from start to finish through pauses. */
  readonly holds: "working" | "span";
}

/** What is in hand at the epoch, and what deliveries (jobs) add when they finish. */
export interface StockLevel {
  readonly id: string;
  readonly inHand: number;
  readonly arrivals: readonly { readonly job: number; readonly number: number }[];
}

/** `number` of a stock out from the start of job `out` until the finish of job `back` (-1: for good); `loss` never returns. */
export interface Span {
  readonly stock: number;
  readonly number: number;
  readonly loss: number;
  readonly out: number;
  readonly back: number;
}

export interface Solution {
  readonly start: Int32Array;
  readonly finish: Int32Array;
}

export type Status = "planned" | "proved" | "infeasible" | "not-found";

export interface Result {
  readonly status: Status;
  readonly solution: Solution | null;
  /** Starts and finishes by links and dates alone; as far as they got when infeasible. */
  readonly earliest: Solution;
  /** No plan can finish before this. */
  readonly bound: ElapsedMinute;
  readonly work: number;
  /**
   * When infeasible without people and stock: links, releases, dues and fixed dates that cannot hold together; remove any one and the rest can. Empty when
   * it takes capacities or stocks to be infeasible: then `refusalOf` finds such parts.
   */
  readonly witness: readonly NetworkPart[];
  /** When not found: the job for which the last pass had no time, and what it lacked. */
  readonly stuck: Stuck | null;
}

export interface Stuck {
  readonly job: number;
  readonly of: { readonly kind: "calendar" | "due" } | { readonly kind: "capacity" | "stock" | "link"; readonly index: number };
}

/** A side of a link; a job's length on its clock (without it, the job takes any time at any hour), or one of its dates. */
export type NetworkPart =
  | { readonly kind: "link"; readonly link: number; readonly side: "least" | "most" }
  | { readonly kind: "job" | "release" | "due" | "fixed"; readonly job: number };

/** What may take part in making a problem infeasible: of capacities and stocks, each as a whole. */
export type WitnessPart = NetworkPart | { readonly kind: "capacity" | "stock"; readonly index: number };
