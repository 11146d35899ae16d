/** Literal 2v: variable v holds. Literal 2v + 1: it does not. */
export const holds = (variable: number): number => 2 * variable;
export const fails = (variable: number): number => 2 * variable + 1;
export const opposite = (literal: number): number => literal ^ 1;
export const variableOf = (literal: number): number => literal >> 1;

/**
 * Clauses over Boolean variables. Variable v with `from[v] >= 0` is an arc: while it holds, the arc leads from `from[v]` to `to[v]`, and arcs that hold
 * form no ring. The others are selectors. Clause c reads: one of `literals[start[c]] .. literals[start[c + 1] - 1]`, preferred ones first.
 */
export interface ClauseProblem {
  readonly nodes: number;
  readonly variables: number;
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly start: Int32Array;
  readonly literals: Int32Array;
  /** The statement each clause comes from, 0 or more. */
  readonly statement: Int32Array;
  /** The selector while which holds the clause matters (its negation is then the clause's last literal); -1: always. */
  readonly guard: Int32Array;
  readonly time: TimeLayer | null;
}

/**
 * Delays that hold with a variable: those of variable v stand at `start[v] .. start[v + 1] - 1`. Those after the last variable's always hold; among themselves
 * they must gain no time in a ring. Nodes are instants, a numbering of their own.
 */
export interface TimeLayer {
  readonly nodes: number;
  readonly start: Int32Array;
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly delay: Float64Array;
}
