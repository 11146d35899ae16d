import type { DocumentEdit, Finding } from "../../core/base";
import type { Build } from "../../core/build";
import { begin, type History } from "../../core/edit";
import { compare, keep, type Plan } from "../../core/plan";
import { comparisonSentences, findingSentence } from "../../words";
import type { Desk, Selection } from "./desk";
import { type Action, act, edited } from "./history";
import { againstKept } from "./kept";
import { isBlock, type Made, movedBetween, nearest, type Reading, reading } from "./made";
import type { PlanAsked, Planner } from "./planner";
import { Typing } from "./typing";

export interface BuildDeskOptions {
  readonly planner: Planner;
  /** Every change of the work, after it is made, with the work before and after it. */
  record(action: Action, before: History, after: History): void;
  units(build: Build | null): "us" | "metric";
  /** Today's date at a zone. */
  today(zone: string | null): string;
  now_ms(): number;
  remember(selected: Selection | null): void;
}

interface Settling {
  /** How the document came out of the one before. */
  readonly from?: PlanAsked["from"];
  readonly undone?: boolean;
  /** The document as read, where that was done already. */
  readonly read?: Reading | undefined;
}

/** The open build: its document with history, and the plan that follows from it. */
export class BuildDesk implements Desk {
  readonly #options: BuildDeskOptions;
  #work = $state.raw<History>(begin(null));
  #read = $state.raw<Reading>({ build: null, findings: [] });
  #made = $state.raw<Made | null>(null);
  #redoing = $state(false);
  /** What stands in the way of that plan, with ways out; these are tried in the worker and come later. */
  #ways = $state.raw<{ readonly plan: Plan; readonly findings: readonly Finding[] } | null>(null);
  #moved = $state.raw<Desk["moved"]>(null);
  #trial = $state.raw<Desk["trial"]>(null);
  #selected = $state.raw<Selection | null>(null);
  readonly #typing = new Typing<Made | null>();
  #asked = 0;
  #tried = 0;
  saved = $state<Desk["saved"]>("saved");
  readOnly = $state(false);
  said = $state("");
  /** Planning failed for a fault of the program. */
  broken = $state(false);

  constructor(options: BuildDeskOptions) {
    this.#options = options;
  }

  get work(): History {
    return this.#work;
  }
  get document(): unknown {
    return this.#work.document;
  }
  get build(): Build | null {
    return this.#read.build;
  }
  get plan(): Plan | null {
    return this.#made?.plan ?? null;
  }
  get planOf(): Build | null {
    return this.#made?.of ?? null;
  }
  /** What reading and planning found, the gravest first. */
  readonly findings = $derived([
    ...this.#read.findings,
    ...(this.#redoing ? [] : this.#ways && this.#ways.plan === this.#made?.plan ? this.#ways.findings : (this.#made?.plan.findings ?? [])),
  ]);
  get redoing(): boolean {
    return this.#redoing;
  }
  get moved(): Desk["moved"] {
    return this.#moved;
  }
  get trial(): Desk["trial"] {
    return this.#trial;
  }
  get selected(): Selection | null {
    return this.#selected;
  }
  readonly units = $derived.by(() => this.#options.units(this.#read.build));
  readonly today = $derived.by(() => this.#options.today(this.#read.build?.site.zone ?? null));
  readonly kept = $derived.by(() => (this.#trial ? againstKept(this.#trial.build, this.#trial.plan) : againstKept(this.planOf, this.plan)));
  get undoWords(): string | null {
    return this.readOnly ? null : (this.#work.done.at(-1)?.words ?? null);
  }
  get redoWords(): string | null {
    return this.readOnly ? null : (this.#work.undone.at(-1)?.words ?? null);
  }

  /** The first view is painted: what makes plans in the page may come. */
  ready(): void {
    void this.#options.planner.ready();
  }

  /** Takes up another document with its history. */
  load(work: History, selected: Selection | null = null): void {
    this.#typing.end();
    this.#trial = null;
    this.#tried += 1;
    this.#moved = null;
    this.#made = null;
    this.#selected = selected;
    this.#settle(work, null);
  }

  /** The same build as another tab has changed it: what is on screen stays until the new plan is there. */
  follow(work: History): void {
    this.#typing.end();
    this.#trial = null;
    this.#tried += 1;
    this.#moved = null;
    this.#settle(work, null);
  }

  select(selection: Selection | null): void {
    this.#selected = selection;
    this.#options.remember(selection);
  }

  edit(edits: readonly DocumentEdit[], words: string): void {
    if (this.readOnly || edits.length === 0) return;
    this.#typing.end();
    this.#do({ do: "edit", edits, words, joins: false }, this.#made);
  }

  attempt(edits: readonly DocumentEdit[], words: string, typing?: string): readonly string[] {
    if (this.readOnly) return ["This build can only be looked at here."];
    const now_ms = this.#options.now_ms();
    const going = this.#typing.goesOn(typing, now_ms);
    const action: Action = { do: "edit", edits, words, joins: going !== null };
    const work = act(this.#work, action);
    const read = reading(work.document);
    if (read.build === null) {
      const stop = nearest(read.findings, edits);
      return stop ? [findingSentence(stop, this.#read.build, this.units)] : [];
    }
    if (work === this.#work) return [];
    const before = going === null ? this.#made : going.before;
    this.#typing.made(typing, now_ms, before);
    this.#do(action, before, { work, read });
    return [];
  }

  tryOut(edits: readonly DocumentEdit[] | null): void {
    this.#tried += 1;
    const ticket = this.#tried;
    const made = this.#made;
    if (edits === null || made === null) {
      this.#trial = null;
      return;
    }
    const document = edited(this.#work.document, edits);
    const { build } = reading(document);
    if (build === null) {
      this.#trial = null;
      return;
    }
    const show = (plan: Plan | null): void => {
      if (plan === null || ticket !== this.#tried) return;
      const comparison = compare(made.plan, plan, build);
      this.#trial = { build, plan, comparison, sentences: comparisonSentences(comparison, build, plan, this.units) };
    };
    const plan = this.#options.planner.plan({
      document: document as object,
      build,
      from: { document: this.#work.document, change: edits },
      trial: true,
    });
    if (plan instanceof Promise) void plan.then(show);
    else show(plan);
  }

  dismissMoved(): void {
    this.#moved = null;
  }

  keepPlan(): void {
    const { plan, planOf } = this;
    if (plan?.status !== "planned" || planOf === null || this.#redoing) return;
    this.edit([{ path: ["kept"], value: { ...keep(planOf, plan), on: this.today } }], "keep this plan");
    this.say("This plan is kept. What changes from now on is compared with it.");
  }

  undo(): void {
    if (this.undoWords === null) return;
    this.say(`undone: ${this.undoWords}`);
    this.#typing.end();
    this.#do({ do: "undo" }, this.#made);
  }

  redo(): void {
    if (this.redoWords === null) return;
    this.say(`done again: ${this.redoWords}`);
    this.#typing.end();
    this.#do({ do: "redo" }, this.#made);
  }

  say(sentence: string): void {
    this.said = sentence;
  }

  /** `ready`: what the action comes to, where it has been looked at already. */
  #do(action: Action, before: Made | null, ready?: { readonly work: History; readonly read: Reading }): void {
    const was = this.#work;
    const from = was.document;
    const work = ready?.work ?? act(was, action);
    if (work === was) return;
    this.#trial = null;
    this.#tried += 1;
    this.#work = work;
    // Written down before anything is made of it: whatever happens next, the change is kept.
    this.#options.record(action, was, work);
    const change = action.do === "edit" ? { document: from, change: action.edits } : undefined;
    this.#settle(work, before, { from: change, undone: action.do === "undo", read: ready?.read });
  }

  /** A fault of ours: the build stays open and can be changed, undone and saved. */
  #fault(error: unknown): void {
    this.#redoing = false;
    this.broken = true;
    reportError(error);
  }

  async #tryWays(document: object, plan: Plan): Promise<void> {
    const findings = await this.#options.planner.ways(document, plan.findings);
    if (findings !== null) this.#ways = { plan, findings };
  }

  /** Reads and plans; what is on screen stays until the new plan is there. */
  #settle(work: History, before: Made | null, { from, undone = false, read = reading(work.document) }: Settling = {}): void {
    this.#work = work;
    this.#read = read;
    this.#asked += 1;
    const ticket = this.#asked;
    const build = this.#read.build;
    if (build === null) {
      this.#redoing = false;
      return;
    }
    const show = (plan: Plan | null): void => {
      if (ticket !== this.#asked) return;
      this.#redoing = false;
      if (plan === null) {
        this.broken = true;
        return;
      }
      this.#made = { plan, of: build };
      if (plan.findings.some(isBlock)) void this.#tryWays(work.document as object, plan);
      this.#moved = before === null ? null : movedBetween(before, { plan, of: build }, this.units, undone);
      if (this.#moved) this.say(this.#moved.sentences[0] ?? "");
    };
    this.broken = false;
    try {
      const plan = this.#options.planner.plan({ document: work.document as object, build, from });
      if (plan instanceof Promise) {
        this.#redoing = true;
        plan.then(show).catch((error) => this.#fault(error));
      } else show(plan);
    } catch (error) {
      this.#fault(error);
    }
  }
}
