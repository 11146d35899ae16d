import { type Clauses, clauseParent, variableParent } from "./clauses";
import { opposite } from "./problem";
import { type Clash, reasonLiterals } from "./reasons";
import type { Theory } from "./theory";
import type { Trail } from "./trail";

export interface Lesson {
  /** The literal that must hold from now on first, then one of the level to go back to. */
  readonly literals: number[];
  readonly level: number;
  readonly parents: number[];
}

/** Resolves a clash back to the first unique implication point of the trail's level, which at least one of its literals must be of. */
export function analyse(clash: Clash, clauses: Clauses, trail: Trail, theory: Theory): Lesson {
  const parents = clash.clause >= 0 ? [clauseParent(clash.clause)] : [];
  const seen = new Set<number>();
  const rest: number[] = [];
  let open = 0;
  const look = (literals: readonly number[]): void => {
    for (const literal of literals) {
      const variable = literal >> 1;
      if (seen.has(variable)) continue;
      seen.add(variable);
      const level = trail.levelOf(variable);
      if (level === 0) parents.push(variableParent(variable));
      else if (level === trail.level) open++;
      else rest.push(literal);
    }
  };
  look(clash.literals);
  for (let at = trail.length - 1; ; at--) {
    const literal = trail.literals.at(at);
    const variable = literal >> 1;
    if (!seen.has(variable) || trail.levelOf(variable) !== trail.level) continue;
    if (--open === 0) return lesson(opposite(literal), rest, parents, trail);
    const reason = trail.reasonOf(variable);
    if (reason >= 0) parents.push(clauseParent(reason));
    look(reasonLiterals(variable, clauses, trail, theory));
  }
}

function lesson(first: number, rest: number[], parents: number[], trail: Trail): Lesson {
  const levelOf = (literal: number) => trail.levelOf(literal >> 1);
  const literals = [first, ...rest.sort((a, b) => levelOf(b) - levelOf(a) || a - b)];
  return { literals, level: rest.length === 0 ? 0 : levelOf(rest[0] as number), parents };
}
