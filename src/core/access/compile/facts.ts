import type { DetailValue, Statement } from "../../base";
import type { Passage } from "../../build";
import { IntList } from "../../graph";
import { type RuleName, rules } from "../rules";

/** Where in the document a fact stands: lists in the document's order, then the place in the list. */
export const lists = { places: 0, pieces: 1, steps: 2, waits: 3, choices: 4 } as const;

type Said = Statement & { readonly rule: RuleName };
type Making = (a: number, b: number) => Said;

/** Everything the build says about order, one statement each, numbered as they come up. */
export class Facts {
  /** For one that nobody has asked for yet, what makes it. */
  readonly #statements: (Statement | Making)[] = [];
  readonly #rank: number[] = [];
  /** What the statements that are made later are made of. */
  readonly #a = new IntList(512);
  readonly #b = new IntList(512);

  /** A new fact. @param list,position where it stands in the document */
  add(statement: Said, list: keyof typeof lists, position: number): number {
    return this.#add(statement, 0, 0, lists[list] * 1e9 + position);
  }

  /** A new fact that no row gives as its reason: put into words, by `make(a, b)`, only when it is asked for. */
  addLater(make: Making, a: number, b: number, list: keyof typeof lists, position: number): number {
    return this.#add(make, a, b, lists[list] * 1e9 + position);
  }

  #add(statement: Said | Making, a: number, b: number, rank: number): number {
    this.#a.push(a);
    this.#b.push(b);
    this.#rank.push(rank);
    return this.#statements.push(statement) - 1;
  }

  get count(): number {
    return this.#statements.length;
  }

  statement(fact: number): Statement {
    const known = this.#statements[fact] as Statement | Making;
    if (typeof known !== "function") return known;
    const made = known(this.#a.at(fact), this.#b.at(fact));
    this.#statements[fact] = made;
    return made;
  }

  get statements(): readonly Statement[] {
    return this.#statements.map((_, fact) => this.statement(fact));
  }

  kind(fact: number): (typeof rules)[RuleName]["kind"] {
    return rules[this.statement(fact).rule as RuleName].kind;
  }

  /** The order in which a minimal set tries to do without them: facts, then reaches, dates, links, each in document order backwards; what was asked last. */
  tryOut(facts: readonly number[]): number[] {
    const kinds = ["fact", "reach", "date", "link"];
    const turn = (fact: number): number => (this.statement(fact).rule === "asked" ? kinds.length : kinds.indexOf(this.kind(fact)));
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
