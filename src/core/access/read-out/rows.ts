import { type Digraph, digraph, IntList } from "../../graph";
import type { Program } from "../compile/program";
import type { Reasons } from "./reasons";
import type { Settled } from "./settled";

/** Links that an answer uses, one row for each clause that asks for one, in the clauses' order. */
export interface Rows {
  readonly atom: Int32Array;
  readonly clause: Int32Array;
  readonly reason: Int32Array;
  /** Every clause that matters to the answer, with the option it took. */
  readonly used: readonly (readonly [clause: number, option: number])[];
}

/** Walks from the clauses that always matter through the selectors they use; of several options that hold the preferred one counts. */
export function readRows(program: Program, settled: Settled, reasons: Reasons): Rows {
  const used = usedClauses(program, settled);
  const rows = used.filter(([c, atom]) => !program.isSelector(atom) && program.from.at(atom) < program.steps && !isRefusal(program, c));
  return {
    atom: Int32Array.from(rows, ([, atom]) => atom),
    clause: Int32Array.from(rows, ([c]) => c),
    reason: Int32Array.from(rows, ([c, atom]) => reasons.of(c, program.from.at(atom), program.to.at(atom))),
    used,
  };
}

/** That dates refuted a set of precedences is no precedence itself. */
export const isRefusal = (program: Program, clause: number): boolean =>
  program.facts.statements[program.fact.at(clause)]?.rule === "refused";

function usedClauses(program: Program, settled: Settled): readonly (readonly [number, number])[] {
  const taken = new Int32Array(program.clauses).fill(-1);
  const groups = groupsOf(program);
  const todo = new IntList(program.clauses);
  for (const clause of groups.get(-1) ?? []) todo.push(clause);
  for (let i = 0; i < todo.length; i++) {
    const clause = todo.at(i);
    if (taken[clause] !== -1) continue;
    const option = program.optionsOf(clause).find((atom) => settled.holds(atom)) as number;
    taken[clause] = option;
    if (program.isSelector(option)) for (const next of groups.get(option) ?? []) todo.push(next);
  }
  const used: [number, number][] = [];
  taken.forEach((option, clause) => {
    if (option !== -1) used.push([clause, option]);
  });
  return used;
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

/** The precedences of the rows as a graph over the steps, those with amounts first; `rowOf` tells the row of each arc. */
export function graphOfRows(program: Program, rows: Rows): { readonly graph: Digraph; readonly rowOf: readonly number[] } {
  const bare = (r: number): number => (program.bare.at(rows.atom[r] as number) === rows.atom[r] ? 1 : 0);
  const ordering = [...rows.atom.keys()].filter((r) => program.orders(rows.atom[r] as number));
  const rowOf = [...ordering.filter((r) => bare(r) === 0), ...ordering.filter((r) => bare(r) === 1)];
  const ends = (list: IntList) => Int32Array.from(rowOf, (r) => list.at(rows.atom[r] as number));
  return { graph: digraph(program.steps, ends(program.from), ends(program.to)), rowOf };
}

/** All precedences of the answer, those included that only keep a refuted set from coming back. */
export function graphOfAnswer(program: Program, rows: Rows): Digraph {
  const atoms = rows.used.map(([, atom]) => atom).filter((atom) => program.orders(atom) && program.from.at(atom) < program.steps);
  const ends = (list: IntList) => Int32Array.from(atoms, (atom) => list.at(atom));
  return digraph(program.steps, ends(program.from), ends(program.to));
}
