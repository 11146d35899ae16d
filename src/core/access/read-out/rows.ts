import { type Digraph, digraph, IntList, membersAt } from "../../graph";
import type { Program } from "../compile/program";
import type { Reasons } from "./reasons";
import type { Settled } from "./settled";

/** Links that an answer uses, one row for each clause that asks for one, in the clauses' order. */
export interface Rows {
  readonly atom: Int32Array;
  readonly clause: Int32Array;
  readonly reason: Int32Array;
  /** By clause, the option that the answer took; -1 where the clause does not matter to it. */
  readonly taken: Int32Array;
}

/** Walks from the clauses that always matter through the selectors they use; of several options that hold the preferred one counts. */
export function readRows(program: Program, settled: Settled, reasons: Reasons): Rows {
  const taken = takenOptions(program, settled);
  const all = program.clauses;
  const atoms = new Int32Array(all);
  const clauses = new Int32Array(all);
  const why = new Int32Array(all);
  const from = program.from.data;
  let rows = 0;
  for (let clause = 0; clause < all; clause++) {
    const atom = taken[clause] as number;
    // Neither an option that was not taken, nor a selector, nor a link between helping nodes.
    if (atom < 0 || (from[atom] as number) < 0 || (from[atom] as number) >= program.steps) continue;
    atoms[rows] = atom;
    clauses[rows] = clause;
    why[rows++] = reasons.of(clause, atom);
  }
  return { atom: atoms.slice(0, rows), clause: clauses.slice(0, rows), reason: why.slice(0, rows), taken };
}

function takenOptions(program: Program, settled: Settled): Int32Array {
  const taken = new Int32Array(program.clauses).fill(-1);
  const todo = new IntList(program.clauses);
  const matter = (guard: number): void => {
    for (let c = program.groups.first(guard); c >= 0; c = program.groups.next(c)) todo.push(c);
  };
  matter(-1);
  for (let i = 0; i < todo.length; i++) {
    const clause = todo.at(i);
    if (taken[clause] !== -1) continue;
    const option = settled.taken(clause);
    taken[clause] = option;
    if (program.isSelector(option)) matter(option);
  }
  return taken;
}

/** The precedences of the rows as a graph over the steps, those with amounts first; `rowOf` tells the row of each arc. */
export function graphOfRows(program: Program, rows: Rows): { readonly graph: Digraph; readonly rowOf: Int32Array } {
  const rowOf = new IntList(rows.atom.length);
  const atoms = new IntList(rows.atom.length);
  for (const wanted of [false, true]) {
    for (let r = 0; r < rows.atom.length; r++) {
      const atom = rows.atom[r] as number;
      if (!program.orders(atom) || (program.bare.at(atom) === atom) !== wanted) continue;
      rowOf.push(r);
      atoms.push(atom);
    }
  }
  return { graph: graphOfAtoms(program, atoms), rowOf: rowOf.packed() };
}

/** All precedences of the answer, those included that only keep a refuted set from coming back. */
export function graphOfAnswer(program: Program, settled: Settled, rows: Rows): Digraph {
  const atoms = new IntList(rows.taken.length);
  for (let c = 0; c < rows.taken.length; c++) {
    const atom = rows.taken[c] as number;
    if (atom >= 0 && program.orders(atom) && program.from.at(atom) < program.steps) atoms.push(atom);
  }
  for (const { literals } of program.refusals) {
    for (const l of literals) if ((l & 1) === 0 && settled.holds(l >> 1)) atoms.push(l >> 1);
  }
  return graphOfAtoms(program, atoms);
}

function graphOfAtoms(program: Program, atoms: IntList): Digraph {
  const packed = atoms.packed();
  return digraph(program.steps, membersAt(program.from.data, packed), membersAt(program.to.data, packed));
}
