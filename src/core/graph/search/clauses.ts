import { IntList } from "../int-list";
import type { ClauseProblem } from "./problem";

/** The clauses of a problem and those learned since. A learned clause belongs to no statement but has parents. */
export class Clauses {
  readonly given: number;
  readonly start: IntList;
  readonly literals: IntList;
  readonly #statement: Int32Array;
  readonly #parents: number[][] = [];

  constructor(problem: ClauseProblem) {
    this.given = problem.statement.length;
    this.start = listOf(problem.start);
    this.literals = listOf(problem.literals);
    this.#statement = problem.statement;
  }

  get count(): number {
    return this.start.length - 1;
  }

  first(clause: number): number {
    return this.start.data[clause] as number;
  }

  end(clause: number): number {
    return this.start.data[clause + 1] as number;
  }

  literal(at: number): number {
    return this.literals.data[at] as number;
  }

  statement(clause: number): number {
    return clause < this.given ? (this.#statement[clause] as number) : -1;
  }

  /** @param parents `clauseParent` and `variableParent` numbers */
  learn(literals: readonly number[], parents: number[]): number {
    for (const literal of literals) this.literals.push(literal);
    this.start.push(this.literals.length);
    this.#parents.push(parents);
    return this.count - 1;
  }

  parents(clause: number): readonly number[] {
    return clause < this.given ? [] : (this.#parents[clause - this.given] as number[]);
  }
}

/** What a learned clause was made from: another clause, or a variable settled before anything was decided. */
export const clauseParent = (clause: number): number => 2 * clause;
export const variableParent = (variable: number): number => 2 * variable + 1;

function listOf(values: Int32Array): IntList {
  const list = new IntList(values.length + 64);
  list.data.set(values);
  list.length = values.length;
  return list;
}
