import { type ClauseSearch, digraph, reachMany, topologicalOrder } from "../../graph";
import { orderLiteral } from "../compile/layers";
import type { Program } from "../compile/program";

/** What an answer of the search says about the program's clauses, and what was settled before anything was chosen. */
export class Settled {
  constructor(
    readonly program: Program,
    readonly search: ClauseSearch,
  ) {}

  /** Whether the literal holds in the answer. What binds time alone counts as true. */
  holds(literal: number): boolean {
    const atom = literal >> 1;
    if (!this.program.isSelector(atom) && !this.program.orders(atom)) return true;
    const known = orderLiteral(this.program, literal);
    return this.search.holds(known >> 1) === ((known & 1) === 0);
  }

  /** 1 and -1: holds or fails in every order. */
  always(literal: number): number {
    const atom = literal >> 1;
    if (!this.program.isSelector(atom) && !this.program.orders(atom)) return 0;
    const known = orderLiteral(this.program, literal);
    const value = this.search.settled(known >> 1);
    return (known & 1) === 0 ? value : -value;
  }

  /** Whether the clause matters in every order. */
  matters(clause: number): boolean {
    const guard = this.program.guard.at(clause);
    return guard < 0 || this.search.settled(guard) === 1;
  }

  /** Literals of the clause that could hold. */
  open(clause: number): number[] {
    const open: number[] = [];
    for (let at = this.program.clauseStart.at(clause); at < this.program.clauseStart.at(clause + 1); at++) {
      const literal = this.program.literals.at(at);
      if (this.always(literal) !== -1) open.push(literal);
    }
    return open;
  }

  /** For each pair, 1 when precedences that hold in every order lead from the first to the second. */
  follow(from: ArrayLike<number>, to: ArrayLike<number>): Uint8Array {
    const { program } = this;
    const arcs: number[] = [];
    for (let atom = 0; atom < program.atoms; atom++) if (program.bare.at(atom) === atom && this.search.settled(atom) === 1) arcs.push(atom);
    const graph = digraph(
      program.nodes,
      Int32Array.from(arcs, (a) => program.from.at(a)),
      Int32Array.from(arcs, (a) => program.to.at(a)),
    );
    const order = topologicalOrder(graph);
    return order === null ? new Uint8Array(from.length) : reachMany(graph, order, from, to);
  }
}
