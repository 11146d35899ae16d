import { type Digraph, digraph, IntList } from "../../graph";
import type { Program } from "../compile/program";
import type { Reasons } from "./reasons";
import type { Settled } from "./settled";

/** Links that an answer uses, one row for each clause that asks for one, in the clauses' order. */
export interface Rows {
  readonly atom: Int32Array;
  readonly clause: Int32Array;
  readonly reason: Int32Array;
  /** Clauses with something to choose that the answer uses, with the literal it took. */
  readonly used: readonly (readonly [clause: number, literal: number])[];
}

/** Walks from the clauses that always matter through the selectors they use; of several options that hold the preferred one counts. */
export function readRows(program: Program, settled: Settled, reasons: Reasons): Rows {
  const taken = new Map<number, number>();
  const groups = groupsOf(program);
  const todo: number[] = [];
  const need = (clauses: readonly number[]): void => {
    for (const clause of clauses) todo.push(clause);
  };
  need(groups.get(-1) ?? []);
  for (let clause = todo.pop(); clause !== undefined; clause = todo.pop()) {
    if (taken.has(clause)) continue;
    const literal = firstThatHolds(program, settled, clause);
    taken.set(clause, literal);
    if ((literal & 1) === 0 && program.isSelector(literal >> 1)) need(groups.get(literal >> 1) ?? []);
  }
  const used = [...taken].sort((a, b) => a[0] - b[0]);
  const atom = new IntList(used.length);
  const clause = new IntList(used.length);
  const reason = new IntList(used.length);
  for (const [c, literal] of used) {
    const link = literal >> 1;
    if ((literal & 1) === 1 || program.isSelector(link) || program.from.at(link) >= program.steps) continue;
    atom.push(link);
    clause.push(c);
    reason.push(reasons.of(c, program.from.at(link), program.to.at(link)));
  }
  return { atom: atom.packed(), clause: clause.packed(), reason: reason.packed(), used };
}

/** Clauses by guard. */
export function groupsOf(program: Program): ReadonlyMap<number, readonly number[]> {
  const groups = new Map<number, number[]>();
  for (let c = 0; c < program.clauses; c++) {
    const guard = program.guard.at(c);
    const group = groups.get(guard);
    if (group) group.push(c);
    else groups.set(guard, [c]);
  }
  return groups;
}

function firstThatHolds(program: Program, settled: Settled, clause: number): number {
  for (let at = program.clauseStart.at(clause); at < program.clauseStart.at(clause + 1); at++) {
    if (settled.holds(program.literals.at(at))) return program.literals.at(at);
  }
  return -1;
}

/** The precedences of the rows as a graph over the steps, those with amounts first; `rowOf` tells the row of each arc. */
export function graphOfRows(program: Program, rows: Rows): { readonly graph: Digraph; readonly rowOf: readonly number[] } {
  const bare = (r: number): number => (program.bare.at(rows.atom[r] as number) === rows.atom[r] ? 1 : 0);
  const rowOf = [...rows.atom.keys()].filter((r) => program.orders(rows.atom[r] as number)).sort((a, b) => bare(a) - bare(b) || a - b);
  const ends = (list: IntList) => Int32Array.from(rowOf, (r) => list.at(rows.atom[r] as number));
  return { graph: digraph(program.steps, ends(program.from), ends(program.to)), rowOf };
}
