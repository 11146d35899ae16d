import type { DetailValue, Statement } from "../../base";
import type { Passage } from "../../build";
import { needDetail } from "../compile/facts";
import type { Program } from "../compile/program";
import { amounts } from "../compile/waits";

/** Facts as the reasons of single precedences: who is at the far end, and what must pass. */
export class Reasons {
  readonly statements: Statement[] = [];

  constructor(readonly program: Program) {}

  /** Position of the reason for a precedence that clause `c` asks for. @param from,to its steps; -1 where it is a choice not yet of two steps */
  of(clause: number, from: number, to: number): number {
    const { program } = this;
    const fact = program.facts.statements[program.fact.at(clause)] as Statement;
    const asked = program.asked.at(clause);
    const id = (s: number): string | undefined => program.build.steps[s]?.id;
    const statement: { -readonly [K in keyof Statement]: Statement[K] } = { ...fact };
    if (fact.rule === "choice") return this.#ofChoice(statement, clause, from, to);
    if (asked >= 0 && fact.step === undefined) statement.step = id(asked) as string;
    const far = from === asked ? to : from;
    if (fact.other === undefined && from >= 0 && asked >= 0) statement.other = id(far) as string;
    const need = program.need.at(clause);
    if (need >= 0 && fact.need === undefined) {
      const passage = this.program.site.needs[need] as Passage;
      statement.need = passage.kind;
      statement.detail = { ...fact.detail, ...needDetail(passage) };
    }
    return this.statements.push(statement) - 1;
  }

  #ofChoice(statement: { -readonly [K in keyof Statement]: Statement[K] }, clause: number, from: number, to: number): number {
    const { build } = this.program;
    const detail: Record<string, DetailValue> = { ...statement.detail };
    if (from >= 0) {
      statement.step = build.steps[from]?.id ?? "";
      statement.other = build.steps[to]?.id ?? "";
      const taken = this.#alternative(clause);
      const wait = taken?.waits.find((w) => w.from === statement.step && w.to === statement.other);
      Object.assign(detail, taken === undefined ? {} : { by: taken.name }, wait === undefined ? {} : amounts(wait));
    }
    statement.detail = detail;
    return this.statements.push(statement) - 1;
  }

  /** The alternative of a choice that a clause under its selector belongs to: the selectors stand in the clause before in the same order. */
  #alternative(clause: number) {
    const { program } = this;
    const guard = program.guard.at(clause);
    const fact = program.fact.at(clause);
    let first = clause;
    while (first >= 0 && (program.fact.at(first) !== fact || program.guard.at(first) >= 0)) first--;
    const choice = program.build.choices.find((c) => c.id === program.facts.statements[fact]?.id);
    for (let at = program.clauseStart.at(first), i = 0; at < program.clauseStart.at(first + 1); at++, i++) {
      if (program.options.at(at) === guard) return choice?.either[i];
    }
    return undefined;
  }
}
