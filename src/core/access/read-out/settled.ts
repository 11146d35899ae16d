import { type ClauseSearch, digraph, reachMany, topologicalOrder } from "../../graph";
import { orderVariable } from "../compile/layers";
import type { Program } from "../compile/program";

/** What an answer says about the program's clauses, and what is settled in every order. */
export class Settled {
  /**
   * @param answer a search that said yes
   * @param every one that said yes to the build alone, without what dates have refuted; may be the same
   */
  constructor(
    readonly program: Program,
    readonly answer: ClauseSearch,
    readonly every: ClauseSearch,
  ) {}

  /** Whether the option holds in the answer. What binds time alone counts as true. */
  holds(atom: number): boolean {
    return this.#bindsTimeOnly(atom) || this.answer.holds(orderVariable(this.program, atom));
  }

  /** 1 and -1: holds or fails in every order. 0 for what binds time alone. */
  always(atom: number): number {
    return this.#bindsTimeOnly(atom) ? 0 : this.every.settled(orderVariable(this.program, atom));
  }

  /** Whether the clause matters in every order. */
  matters(clause: number): boolean {
    const guard = this.program.guard.at(clause);
    return guard < 0 || this.every.settled(guard) === 1;
  }

  /** Options of the clause that could hold. */
  open(clause: number): number[] {
    return [...this.program.optionsOf(clause)].filter((atom) => this.always(atom) !== -1);
  }

  /** For each pair, 1 when precedences that hold in every order lead from the first to the second. */
  follow(from: ArrayLike<number>, to: ArrayLike<number>): Uint8Array {
    const { program, every } = this;
    const arcs: number[] = [];
    for (let atom = 0; atom < program.atoms; atom++) if (program.bare.at(atom) === atom && every.settled(atom) === 1) arcs.push(atom);
    const ends = (list: { at(atom: number): number }) => Int32Array.from(arcs, (a) => list.at(a));
    const graph = digraph(program.nodes, ends(program.from), ends(program.to));
    const order = topologicalOrder(graph);
    return order === null ? new Uint8Array(from.length) : reachMany(graph, order, from, to);
  }

  #bindsTimeOnly(atom: number): boolean {
    return !this.program.isSelector(atom) && !this.program.orders(atom);
  }
}
