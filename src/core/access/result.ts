import type { Finding, Statement } from "../base";
import type { Amount, Build } from "../build";

/**
 * Every derived or written precedence, one row a statement, as parallel arrays. Steps are positions in `build.steps`.
 * Row r reads: end `fromEnd[r]` of step `from[r]`, plus `amounts[least[r]]`, is at or before end `toEnd[r]` of step `to[r]`; where `most[r]` is not
 * -1 also: end `toEnd[r]` of `to[r]` is at most `amounts[most[r]]` after that end of `from[r]`. Without amounts: finish to start.
 * A row with `orders[r]` = 0 binds time only (an upper wait).
 */
export interface Arcs {
  readonly count: number;
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly fromEnd: Uint8Array;
  readonly toEnd: Uint8Array;
  readonly least: Int32Array;
  readonly most: Int32Array;
  readonly orders: Uint8Array;
  /** Position in `statements`: the reason. */
  readonly reason: Int32Array;
  /** 1: true in every order. 0: chosen, another order is possible too. */
  readonly forced: Uint8Array;
  /** 1: follows from the others. Never 1 for a row with an amount. */
  readonly redundant: Uint8Array;
  /** Names the row's link, amounts included, when it is handed back as refuted. The same for the same build, refused or not. */
  readonly link?: Int32Array;
}

/** An open question of order: several ways to satisfy one statement; `chosen` is the one the plan uses. */
export interface OpenChoice {
  readonly statement: number;
  readonly options: readonly { readonly arcs: readonly (readonly [from: number, to: number])[] }[];
  readonly chosen: number;
}

export interface Access {
  /** False when no order satisfies every statement; then `findings` hold minimal sets and ways out and `order` is empty. */
  readonly possible: boolean;
  readonly findings: readonly Finding[];
  readonly statements: readonly Statement[];
  readonly amounts: readonly Amount[];
  readonly arcs: Arcs;
  readonly choices: readonly OpenChoice[];
  /** Step positions in an order that satisfies everything; ties in document order. */
  readonly order: Int32Array;
}

export type Why = { readonly verdict: "must" | "chosen"; readonly links: readonly WhyLink[] } | { readonly verdict: "none" };

export interface WhyLink {
  readonly from: number;
  readonly to: number;
  readonly reason: Statement;
}

export type May =
  | { readonly verdict: "yes" }
  | { readonly verdict: "no"; readonly finding: Finding }
  | { readonly verdict: "not-found"; readonly tried: number };

/**
 * A precedence that dates refuted together with others: the steps, and the row's `link`. Without a link, or with that of a bare precedence, it is the
 * precedence itself that is refuted; with one that has an amount only that amount, so that another option of the same statement is taken.
 */
export type RefusedLink = readonly [from: number, to: number, link?: number];

/** The room's functions; see its index. `refuse` hands back sets of arc rows that dates have refuted together; access then chooses again. `work`: the most, in steps of the search. */
export interface AccessRoom {
  access(build: Build, refuse?: readonly (readonly RefusedLink[])[], work?: number): Access;
  why(build: Build, result: Access, before: number, after: number): Why;
  may(build: Build, before: number, after: number, work?: number): May;
  lastChances(build: Build, result: Access): readonly Closing[];
}

/** A piece that closes or fills something when it is put up, with everything that reaches what it closes and is ordered before it. */
export interface Closing {
  readonly piece: number;
  readonly step: number;
  readonly before: readonly {
    readonly step: number;
    readonly what: "work" | "embed" | "check" | "photograph" | "inspection";
    readonly forced: boolean;
  }[];
  /** True when the piece never comes off again: what it closes is closed for good. */
  readonly forGood: boolean;
}
