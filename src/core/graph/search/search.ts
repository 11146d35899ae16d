import { Agenda } from "./agenda";
import { analyse } from "./analyse";
import { Clauses } from "./clauses";
import { arcsThatHold, leading, ringClosers } from "./closing";
import { longer } from "./longer";
import { type ClauseProblem, fails, holds } from "./problem";
import { type Clash, clauseClash, ringClash } from "./reasons";
import { startOrder } from "./start-order";
import { Theory } from "./theory";
import { type Refutation, trace, traceAssumed } from "./trace";
import { byTheory, chosen, Trail } from "./trail";
import { Watches } from "./watches";

/** yes: values for all were found. no: refuted. budget: the work allowed was spent first. */
export type Answer = "yes" | "no" | "budget";

/** Most passes over all open arcs before anything is decided; what they would still find, the search finds. */
const closingRounds = 12;
/**
 * The clause search: conflict-driven, with arcs that form no ring as theory. The same problem gives the same answer, and decisions follow the
 * order of clauses and of literals in them.
 */
export class ClauseSearch {
  /** Steps of work so far. */
  work = 0;
  readonly #clauses: Clauses;
  readonly #trail: Trail;
  readonly #theory: Theory;
  readonly #watches: Watches;
  readonly #agenda: Agenda;
  #from: Int32Array;
  #to: Int32Array;
  #variables: number;
  #head = 0;
  #lead = 0;
  #rounds = closingRounds;
  #arcsClosed = -1;
  #refutation: Refutation | null = null;
  #never: Refutation | null = null;
  #failed = -1; // a literal that was assumed and fails

  /** @param without statements whose clauses are left out (1) */
  constructor(problem: ClauseProblem, without: Uint8Array | null = null) {
    const active = (clause: number): boolean => without === null || without[problem.statement[clause] as number] !== 1;
    this.#from = problem.from;
    this.#to = problem.to;
    this.#variables = problem.variables;
    this.#clauses = new Clauses(problem);
    this.#trail = new Trail(problem.variables);
    this.#theory = new Theory(problem, startOrder(problem, active));
    this.#watches = new Watches(problem.variables, problem.statement.length);
    this.#agenda = new Agenda(problem, active);
    let clash: Clash | null = null;
    for (let c = 0; c < this.#clauses.given; c++) if (active(c)) clash = this.#takeIn(c) ?? clash;
    if (clash !== null) this.#never = trace(clash, this.#clauses, this.#trail, this.#theory);
  }

  /**
   * Looks for values under which every clause holds, and the assumed literals too.
   * @param budget most work to spend on this question
   * @param lead begins with this option of a clause instead of the first (0), and goes round, to see how different an answer can be
   */
  solve(assumed: readonly number[] = [], budget = Number.POSITIVE_INFINITY, lead = 0): Answer {
    this.#goBack(0);
    this.#lead = lead;
    [this.#refutation, this.#failed] = [this.#never, -1];
    const end = this.work + this.#theory.work + budget;
    while (this.#refutation === null) {
      const clash = this.#propagate();
      if (clash !== null) {
        if (!this.#learn(clash)) this.#refutation = this.#never = trace(clash, this.#clauses, this.#trail, this.#theory);
      } else if (this.#trail.level > 0 || !this.#close()) {
        if (this.work + this.#theory.work > end) return "budget";
        if (!this.#step(assumed)) return this.#failed < 0 ? "yes" : "no";
      }
    }
    return "no";
  }

  /** All work so far, that on arcs included. */
  get spent(): number {
    return this.work + this.#theory.work;
  }

  /** After "yes": whether the variable holds in the answer. */
  holds(variable: number): boolean {
    return this.#trail.value(holds(variable)) === 1;
  }

  /** 1 or -1 when the value followed before anything was decided; else 0. */
  settled(variable: number): number {
    const value = this.#trail.value(holds(variable));
    return value !== 0 && this.#trail.levelOf(variable) === 0 ? value : 0;
  }

  /** After "yes": for each pair, 1 when arcs of the answer (only those that held before anything was decided) lead from the first to the second. */
  leads(from: ArrayLike<number>, to: ArrayLike<number>, always = false): Uint8Array {
    const length = always ? this.#trail.marks[0] : undefined;
    return leading(arcsThatHold(this.#trail, this.#theory, length), this.#theory, from, to);
  }

  /** After "yes": whether arcs of the answer lead from one node to the other; for a few pairs. */
  leadsTo(from: number, to: number): boolean {
    return this.#theory.order.reaches(from, to);
  }

  /** After "yes": when an instant of the time layer is, at the earliest found; only differences mean anything. */
  instant(node: number): number {
    return this.#theory.instant(node);
  }

  /** After "no", before the next question: what it rests on. */
  get refutation(): Refutation {
    if (this.#failed >= 0) return traceAssumed(this.#failed, this.#clauses, this.#trail, this.#theory);
    return this.#refutation ?? { statements: [], assumptions: [] };
  }

  /** One more variable, an arc, to be assumed. */
  addArc(from: number, to: number): number {
    this.#goBack(0);
    const variable = this.#variables++;
    if (variable >= this.#from.length) {
      this.#from = longer(this.#from, 2 * variable + 16);
      this.#to = longer(this.#to, 2 * variable + 16);
      this.#theory.widen(this.#from, this.#to);
    }
    this.#from[variable] = from;
    this.#to[variable] = to;
    this.#trail.widen(this.#variables);
    this.#watches.widen(this.#variables);
    return variable;
  }

  #takeIn(clause: number): Clash | null {
    const first = this.#clauses.first(clause);
    const size = this.#clauses.end(clause) - first;
    if (size > 1) this.#watches.watch(this.#clauses, clause, first, first + 1);
    else if (size === 0 || !this.#give(this.#clauses.literal(first), clause)) return clauseClash(this.#clauses, clause);
    return null;
  }

  /** Gives the literal the value true; false when it already fails. */
  #give(literal: number, reason: number): boolean {
    const value = this.#trail.value(literal);
    if (value === 0) this.#trail.give(literal, reason);
    return value !== -1;
  }

  #propagate(): Clash | null {
    const unit = (clause: number, literal: number) => this.#give(literal, clause);
    for (; this.#head < this.#trail.length; this.#head++) {
      this.work++;
      const literal = this.#trail.literals.data[this.#head] as number;
      if ((literal & 1) === 0) {
        const ring = this.#theory.take(literal >> 1, this.#trail);
        if (ring !== null) return ringClash(ring);
      }
      const clause = this.#watches.falsified(this.#clauses, literal ^ 1, this.#trail, unit);
      if (clause >= 0) {
        this.#head++;
        return clauseClash(this.#clauses, clause);
      }
    }
    return null;
  }

  /** Learns from a clash and goes back; false when nothing was decided that could be taken back. */
  #learn(clash: Clash): boolean {
    const level = clash.literals.reduce((most, literal) => Math.max(most, this.#trail.levelOf(literal >> 1)), 0);
    this.#goBack(level);
    if (level === 0) return false;
    const lesson = analyse(clash, this.#clauses, this.#trail, this.#theory);
    this.work += lesson.literals.length;
    this.#goBack(lesson.level);
    const clause = this.#clauses.learn(lesson.literals, lesson.parents);
    const first = this.#clauses.first(clause);
    if (lesson.literals.length > 1) this.#watches.watch(this.#clauses, clause, first, first + 1);
    this.#give(lesson.literals[0] as number, clause);
    return true;
  }

  #goBack(level: number): void {
    if (this.#trail.level <= level) return;
    const length = this.#trail.marks[level] as number;
    while (this.#trail.length > length) {
      const taken = this.#trail.length <= this.#head;
      const literal = this.#trail.takeBack();
      if (taken && (literal & 1) === 0) this.#theory.letGo(literal >> 1);
    }
    this.#head = Math.min(this.#head, length);
    this.#trail.marks.length = level;
    this.#agenda.goBack(level);
  }

  /** Before anything is decided: every open arc that would close a ring fails, until no more follow. True when some value was given. */
  #close(): boolean {
    if (this.#rounds === 0) return false;
    this.#rounds--;
    if (this.#closeOnce()) return true;
    this.#rounds = 0;
    return false;
  }

  #closeOnce(): boolean {
    const arcs = arcsThatHold(this.#trail, this.#theory);
    if (arcs.length === this.#arcsClosed) return false;
    this.#arcsClosed = arcs.length;
    const refuted = ringClosers(arcs, this.#variables, this.#trail, this.#theory);
    for (const v of refuted) this.#trail.give(fails(v), byTheory);
    return refuted.length > 0;
  }

  /** Decides one thing, or finds that one more fails. False when there is nothing left to decide or an assumption fails. */
  #step(assumed: readonly number[]): boolean {
    while (this.#trail.level < assumed.length) {
      const literal = assumed[this.#trail.level] as number;
      if (this.#trail.value(literal) === -1) {
        this.#failed = literal;
        return false;
      }
      this.#begin();
      if (this.#trail.value(literal) === 0) {
        this.#trail.give(literal, chosen);
        return true;
      }
    }
    if (this.#trail.level === 0) this.#agenda.settle(this.#clauses, this.#trail);
    const clause = this.#agenda.next(this.#clauses, this.#trail);
    if (clause < 0) return false;
    this.#decide(clause);
    return true;
  }

  #begin(): void {
    this.#agenda.keep();
    this.#trail.marks.push(this.#trail.length);
  }

  /** Takes the first open literal of the clause that is not refuted; a refuted one fails from now on, which may settle the clause by itself. */
  #decide(clause: number): void {
    const first = this.#clauses.first(clause);
    const size = this.#clauses.end(clause) - first;
    for (let i = 0; i < size; i++) {
      this.work++;
      const literal = this.#clauses.literal(first + ((i + this.#lead) % size));
      if (this.#trail.value(literal) !== 0) continue;
      const variable = literal >> 1;
      if ((literal & 1) === 0 && this.#theory.isArc(variable) && this.#theory.refutes(variable)) {
        this.#trail.give(fails(variable), byTheory);
      } else {
        this.#begin();
        this.#trail.give(literal, chosen);
      }
      return;
    }
  }
}
