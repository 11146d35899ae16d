import type { ClauseSearch } from "../../graph";
import { orderVariables } from "../compile/layers";
import type { Program } from "../compile/program";

/** What an answer says about the program's clauses, and what is settled in every order. */
export class Settled {
  /** By atom, 1 where it holds in the answer. What binds time alone counts as true. */
  readonly #holds: Uint8Array;
  /** By atom, 1 and -1 where it holds or fails in every order; 0 for either, and where it binds time alone. */
  readonly #always: Int8Array;

  /**
   * @param answer a search that said yes
   * @param every one that said yes to the build alone, without what dates have refuted; may be the same
   */
  constructor(
    readonly program: Program,
    answer: ClauseSearch,
    readonly every: ClauseSearch,
  ) {
    this.#holds = new Uint8Array(program.atoms).fill(1);
    this.#always = new Int8Array(program.atoms);
    const variables = orderVariables(program);
    for (let atom = 0; atom < variables.length; atom++) {
      const variable = variables[atom] as number;
      if (variable < 0) continue;
      if (!answer.holds(variable)) this.#holds[atom] = 0;
      this.#always[atom] = every.settled(variable);
    }
  }

  /** The preferred option of the clause that holds in the answer. */
  taken(clause: number): number {
    const { options, clauseStart } = this.program;
    const end = clauseStart.data[clause + 1] as number;
    for (let at = clauseStart.data[clause] as number; at < end; at++) {
      const atom = options.data[at] as number;
      if (this.#holds[atom] === 1) return atom;
    }
    return -1;
  }

  /** Whether the atom holds in the answer. */
  holds(atom: number): boolean {
    return this.#holds[atom] === 1;
  }

  /** Whether the clause matters in every order. */
  matters(clause: number): boolean {
    const guard = this.program.guard.at(clause);
    return guard < 0 || this.#always[guard] === 1;
  }

  /** The preferred option of the clause that could hold; -1 when none could. */
  usual(clause: number): number {
    const { program } = this;
    for (let at = program.clauseStart.at(clause); at < program.clauseStart.at(clause + 1); at++) {
      const atom = program.options.at(at);
      if (this.#always[atom] !== -1) return atom;
    }
    return -1;
  }

  /** How many options of the clause could hold. */
  openCount(clause: number): number {
    const { options, clauseStart } = this.program;
    const end = clauseStart.data[clause + 1] as number;
    let count = 0;
    for (let at = clauseStart.data[clause] as number; at < end; at++) if (this.#always[options.data[at] as number] !== -1) count++;
    return count;
  }

  /** Options of the clause that could hold. */
  open(clause: number): number[] {
    const { program } = this;
    const open: number[] = [];
    for (let at = program.clauseStart.at(clause); at < program.clauseStart.at(clause + 1); at++) {
      const atom = program.options.at(at);
      if (this.#always[atom] !== -1) open.push(atom);
    }
    return open;
  }

  /** For each pair, 1 when precedences that hold in every order lead from the first to the second. */
  follow(from: ArrayLike<number>, to: ArrayLike<number>): Uint8Array {
    return this.every.leads(from, to, true);
  }
}
