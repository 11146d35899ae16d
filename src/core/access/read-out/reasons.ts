import type { DetailValue, Statement, StepId } from "../../base";
import { type Passage, pourOf, type Wait } from "../../build";
import { needDetail } from "../compile/facts";
import type { Program } from "../compile/program";
import { amounts } from "../compile/waits";

/** Facts as the reasons of single precedences: who is at the far end, and what must pass. */
export class Reasons {
  readonly statements: Statement[] = [];
  readonly #needs: { readonly kind: Passage["kind"]; readonly detail: Record<string, DetailValue> }[] = [];

  constructor(readonly program: Program) {}

  /** Position of the reason for a link that clause `c` asks for. @param atom the link; -1 where it is a choice not yet of two steps */
  of(clause: number, atom: number): number {
    const { program } = this;
    const fact = program.facts.statement(program.fact.at(clause));
    const asked = program.asked.at(clause);
    const from = atom < 0 ? -1 : program.from.at(atom);
    const to = atom < 0 ? -1 : program.to.at(atom);
    if (fact.rule === "choice") return this.#ofChoice({ ...fact }, clause, atom);
    const need = program.need.at(clause);
    const pour = this.#pour(atom);
    const needsStep = asked >= 0 && fact.step === undefined;
    const needsOther = fact.other === undefined && from >= 0 && asked >= 0;
    const needsNeed = need >= 0 && fact.need === undefined;
    if (!needsStep && !needsOther && !needsNeed && pour === undefined) return this.statements.push(fact) - 1;
    const { rule, id, piece, pieces, place, way } = fact;
    const { steps } = program.build;
    const step = needsStep ? (steps[asked]?.id ?? "") : fact.step;
    const other = needsOther ? (steps[from === asked ? to : from]?.id ?? "") : fact.other;
    const own = needsNeed ? this.#need(need) : null;
    let detail = own?.detail ?? fact.detail;
    if (own !== null && fact.detail !== undefined) detail = { ...fact.detail, ...detail };
    if (pour !== undefined) detail = { ...detail, pour };
    // Written out: thousands of copies with members added later would each have a shape of their own.
    return this.statements.push({ rule, id, piece, pieces, place, way, step, other, need: own?.kind ?? fact.need, detail }) - 1;
  }

  /** What must pass, told once for all reasons that say nothing else of it. */
  #need(need: number): { readonly kind: Passage["kind"]; readonly detail: Record<string, DetailValue> } {
    let known = this.#needs[need];
    if (known === undefined) {
      const passage = this.program.site.needs[need] as Passage;
      known = { kind: passage.kind, detail: needDetail(passage) };
      this.#needs[need] = known;
    }
    return known;
  }

  /** The pour whose strength or warm time the link waits for. */
  #pour(atom: number): StepId | undefined {
    if (atom < 0) return undefined;
    const { amounts, least, most } = this.program;
    const named = (at: number): StepId | undefined => {
      const on = at < 0 ? undefined : amounts[at]?.on;
      return on === undefined ? undefined : (pourOf(on) ?? undefined);
    };
    return named(least.at(atom)) ?? named(most.at(atom));
  }

  #ofChoice(statement: { -readonly [K in keyof Statement]: Statement[K] }, clause: number, atom: number): number {
    const { build, from, to } = this.program;
    const detail: Record<string, DetailValue> = { ...statement.detail };
    if (atom >= 0) {
      statement.step = build.steps[from.at(atom)]?.id ?? "";
      statement.other = build.steps[to.at(atom)]?.id ?? "";
      const pour = this.#pour(atom);
      const taken = this.#alternative(clause);
      const spoken = (w: Wait, of: string): boolean => [w.least, w.most].some((a) => a !== null && pourOf(a.on) === of);
      const ofTo = taken?.waits.filter((w) => w.to === statement.other);
      const wait = ofTo?.find((w) => w.from === statement.step) ?? ofTo?.find((w) => pour !== undefined && spoken(w, pour));
      Object.assign(detail, taken === undefined ? {} : { by: taken.name }, wait === undefined ? {} : amounts(wait), pour && { pour });
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
    const choice = program.build.choices.find((c) => c.id === program.facts.statement(fact).id);
    for (let at = program.clauseStart.at(first), i = 0; at < program.clauseStart.at(first + 1); at++, i++) {
      if (program.options.at(at) === guard) return choice?.either[i];
    }
    return undefined;
  }
}
