import type { Amount, Build } from "../../build";
import { IntList } from "../../graph";
import { Facts } from "./facts";
import { Groups } from "./groups";
import { Pairs } from "./pairs";
import { Site } from "./site";

/** Options that are settled by the build itself. */
export const never = -1;
export const always = -2;

/** Ends of a link are told as 2 a + b, where a and b are 1 for the finish and 0 for the start of the step it comes from and of the one it leads to. */
const finishToStart = 2;

/**
 * The build as clauses. An atom is a selector or a link between ends of two steps, with least and most as positions in `amounts` (-1: none). A link from
 * finish to start that asks for more than a most `orders`: it is a precedence. Clauses list atoms, one of which must hold, preferred ones first.
 */
export class Program {
  readonly facts = new Facts();
  readonly site: Site;
  readonly amounts: Amount[] = [];
  readonly steps: number;
  /** Steps, then helping nodes that keep a ring of ways from vouching for itself. */
  nodes: number;
  readonly from: IntList;
  readonly to: IntList;
  readonly ends: IntList;
  readonly least: IntList;
  readonly most: IntList;
  /** The link without amounts that a link includes; the atom itself where it has none; -1 for one that does not order. */
  readonly bare: IntList;
  readonly clauseStart: IntList;
  readonly options: IntList;
  readonly groups: Groups;
  readonly guard: IntList;
  readonly fact: IntList;
  /** For telling reasons: the step a clause is asked of (-1: as the fact says) and the place in `needs`. */
  readonly asked: IntList;
  readonly need: IntList;
  readonly #amounts = new Map<Amount, number>();
  readonly #links = new Map<number, number[]>();
  readonly #bareLinks = new Pairs();

  constructor(readonly build: Build) {
    this.site = new Site(build);
    this.steps = build.steps.length;
    this.nodes = this.steps;
    // About as many as builds have; lists that are long enough from the start need not be copied.
    const about = 64 + 6 * this.steps;
    this.from = new IntList(about);
    this.to = new IntList(about);
    this.ends = new IntList(about);
    this.least = new IntList(about);
    this.most = new IntList(about);
    this.bare = new IntList(about);
    this.clauseStart = new IntList(about);
    this.options = new IntList(about);
    this.groups = new Groups(about);
    this.guard = new IntList(about);
    this.fact = new IntList(about);
    this.asked = new IntList(about);
    this.need = new IntList(about);
    this.clauseStart.push(0);
  }

  get atoms(): number {
    return this.from.length;
  }

  /** What dates have refuted: one of the literals (2a, or 2a + 1 for "not") of each must hold. */
  readonly refusals: { readonly fact: number; readonly literals: readonly number[] }[] = [];
  /** Links with amounts that the order layer must tell from their bare precedence, because a refusal speaks of them. */
  readonly live = new Set<number>();

  /** Pairs of a done step and one that is not, of which some clause could ask that the second be first. */
  readonly tooLate: number[] = [];

  isDone(s: number): boolean {
    return (this.build.steps[s]?.done ?? null) !== null;
  }

  get clauses(): number {
    return this.fact.length;
  }

  amount(amount: Amount | null): number {
    if (amount === null) return -1;
    let known = this.#amounts.get(amount);
    if (known === undefined) {
      known = this.amounts.push(amount) - 1;
      this.#amounts.set(amount, known);
    }
    return known;
  }

  selector(): number {
    return this.#atom(-1, -1, 0, -1, -1, -1);
  }

  /** So many selectors, numbered on from the one that is returned. */
  selectors(count: number): number {
    const first = this.atoms;
    for (let i = 0; i < count; i++) this.selector();
    return first;
  }

  node(): number {
    return this.nodes++;
  }

  /** s finishes (and what `least` says passes) before t starts. */
  before(s: number, t: number, least = -1, most = -1): number {
    if (s === t) return never;
    let bare = this.#bareLinks.get(s, t);
    if (bare < 0) {
      bare = this.atoms;
      this.#bareLinks.set(s, t, bare);
      this.#atom(s, t, finishToStart, -1, -1, bare);
      if (this.isDone(t) && !this.isDone(s)) this.tooLate.push(t, s);
    }
    return least < 0 && most < 0 ? bare : this.#link(s, t, finishToStart, least, most, bare);
  }

  /** Helping node `outer` comes before helping node `inner`. */
  inside(outer: number, inner: number): number {
    return outer === inner ? never : this.#atom(outer, inner, finishToStart, -1, -1, this.atoms);
  }

  /** A link that binds time only. */
  timed(s: number, fromEnd: number, t: number, toEnd: number, least: number, most: number): number {
    return this.#link(s, t, 2 * fromEnd + toEnd, least, most, -1);
  }

  isSelector(atom: number): boolean {
    return (this.from.data[atom] as number) < 0;
  }

  orders(atom: number): boolean {
    return (this.bare.data[atom] as number) >= 0;
  }

  /** One of the options holds while the guard does (-1: always). Nothing is added when one is settled already. */
  clause(fact: number, guard: number, options: readonly number[], asked = -1, need = -1): void {
    if (options.includes(always)) return;
    for (const option of options) if (option !== never) this.options.push(option);
    this.#end(fact, guard, asked, need);
  }

  /** The same for one option or two, of which there are most. */
  must(fact: number, guard: number, first: number, second: number, asked = -1, need = -1): void {
    if (first === always || second === always) return;
    if (first !== never) this.options.push(first);
    if (second !== never) this.options.push(second);
    this.#end(fact, guard, asked, need);
  }

  /** The same for so many options that are numbered on from the first. */
  oneOf(fact: number, guard: number, first: number, count: number, asked: number, need: number): void {
    for (let i = 0; i < count; i++) this.options.push(first + i);
    this.#end(fact, guard, asked, need);
  }

  #end(fact: number, guard: number, asked: number, need: number): void {
    this.clauseStart.push(this.options.length);
    this.groups.add(this.guard.length, guard);
    this.guard.push(guard);
    this.fact.push(fact);
    this.asked.push(asked);
    this.need.push(need);
  }

  /** A clause for each of the options, all of which hold while the guard does. */
  each(fact: number, guard: number, options: readonly number[], asked = -1, need = -1): void {
    for (const option of options) this.must(fact, guard, option, never, asked, need);
  }

  /** One option that stands for all of these together. */
  together(fact: number, options: readonly number[], asked = -1, need = -1): number {
    if (options.includes(never)) return never;
    const open = options.includes(always) ? options.filter((option) => option !== always) : options;
    if (open.length < 2) return open[0] ?? always;
    const selector = this.selector();
    this.each(fact, selector, open, asked, need);
    return selector;
  }

  /** The same for two options. */
  both(fact: number, first: number, second: number, asked = -1, need = -1): number {
    if (first === never || second === never) return never;
    if (first === always) return second;
    if (second === always) return first;
    const selector = this.selector();
    this.must(fact, selector, first, never, asked, need);
    this.must(fact, selector, second, never, asked, need);
    return selector;
  }

  /** The same link is one atom, however many clauses speak of it. */
  #link(from: number, to: number, ends: number, least: number, most: number, bare: number): number {
    const between = this.#links.get(from * this.steps + to);
    const known = between?.find((atom) => this.ends.at(atom) === ends && this.least.at(atom) === least && this.most.at(atom) === most);
    if (known !== undefined) return known;
    const atom = this.#atom(from, to, ends, least, most, bare);
    if (between === undefined) this.#links.set(from * this.steps + to, [atom]);
    else between.push(atom);
    return atom;
  }

  #atom(from: number, to: number, ends: number, least: number, most: number, bare: number): number {
    this.from.push(from);
    this.to.push(to);
    this.ends.push(ends);
    this.least.push(least);
    this.most.push(most);
    this.bare.push(bare);
    return this.atoms - 1;
  }
}
