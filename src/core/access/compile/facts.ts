import type { DetailValue, Statement } from "../../base";
import type { Passage } from "../../build";
import { type RuleName, rules } from "../rules";

/** Where in the document a fact stands: lists in the document's order, then the place in the list. */
export const lists = { places: 0, pieces: 1, steps: 2, waits: 3, choices: 4 } as const;

/** Everything the build says about order, one statement each, numbered as they come up. */
export class Facts {
  readonly statements: Statement[] = [];
  readonly #rank: number[] = [];

  /** A new fact. @param list,position where it stands in the document */
  add(statement: Statement & { readonly rule: RuleName }, list: keyof typeof lists, position: number): number {
    this.statements.push(statement);
    this.#rank.push(lists[list] * 1e9 + position);
    return this.statements.length - 1;
  }

  kind(fact: number): (typeof rules)[RuleName]["kind"] {
    return rules[(this.statements[fact] as Statement).rule as RuleName].kind;
  }

  /** The order in which a minimal set tries to do without them: facts, then reaches, dates, links, each in document order backwards; what was asked last. */
  tryOut(facts: readonly number[]): number[] {
    const kinds = ["fact", "reach", "date", "link"];
    const turn = (fact: number): number => (this.statements[fact]?.rule === "asked" ? kinds.length : kinds.indexOf(this.kind(fact)));
    const rank = (fact: number): number => this.#rank[fact] as number;
    return [...facts].sort((a, b) => turn(a) - turn(b) || rank(b) - rank(a) || b - a);
  }

  /** Document order. */
  inOrder(facts: readonly number[]): number[] {
    return [...facts].sort((a, b) => (this.#rank[a] as number) - (this.#rank[b] as number) || a - b);
  }
}

/** What must pass, as details of a statement. */
export function needDetail(need: Passage): Record<string, DetailValue> {
  if (need.kind === "hand" || need.kind === "arm") return { depth_mm: need.depth_mm };
  if (need.kind !== "unit") return {};
  const { long_mm, wide_mm, thick_mm, mass_kg, piece } = need;
  return { long_mm, wide_mm, thick_mm, mass_kg, ...(piece === null ? {} : { unit: piece }) };
}

/** The same text for needs that pass the same ways. */
export function needKey(need: Passage): string {
  if (need.kind === "hand" || need.kind === "arm") return `${need.kind} ${need.depth_mm}`;
  if (need.kind !== "unit") return need.kind;
  return `unit ${need.long_mm} ${need.wide_mm} ${need.thick_mm} ${need.mass_kg} ${need.piece ?? ""}`;
}
