import type { DocumentEdit, Finding } from "../../core/base";
import type { Build } from "../../core/build";
import type { Plan } from "../../core/plan";
import type { Link } from "../../worker";

/** Up to this many steps a plan takes a few milliseconds and is made in the page, in the same frame as the edit. */
export const quickUpTo = 500;

/** A machine on which plans take longer than this leaves the next ones to the worker, so that typing never waits for them. */
const patience_ms = 60;

/** So many in a row: a single slow one tells only that the machine was busy, and the way through the worker costs more than most plans. */
const slowInARow = 3;

export interface PlanAsked {
  readonly document: object;
  readonly build: Build;
  /** How the document came out of another one. */
  readonly from?: { readonly document: unknown; readonly change: readonly DocumentEdit[] };
  /** Not an edit that was made, only one that is tried. */
  readonly trial?: boolean;
}

export type Engine = (build: Build) => Plan;
export const fetchEngine = (): Promise<Engine> => import("./engine").then(({ plan }) => plan);

/** Plans in the page or, until that can or where that takes long, in the worker. Both give the same plan, byte for byte. */
export class Planner {
  readonly #link: Link;
  readonly #now_ms: () => number;
  /** The same document gives the same plan, so undo and redo need not plan again. */
  readonly #known = new WeakMap<object, Plan>();
  #plans = 0;
  #slowOnes = 0;
  readonly #fetch: () => Promise<Engine>;
  #engine: Engine | null = null;
  #coming: Promise<void> | null = null;
  #arrived = (): void => {};
  readonly #came = new Promise<void>((resolve) => {
    this.#arrived = resolve;
  });

  constructor(link: Link, now_ms: () => number, fetch: () => Promise<Engine> = fetchEngine) {
    this.#link = link;
    this.#now_ms = now_ms;
    this.#fetch = fetch;
  }

  /** From when this is done plans of usual size are made in the page; where it cannot be had, the worker goes on making them. */
  ready(): Promise<void> {
    this.#coming ??= this.#fetch().then(
      (engine) => {
        this.#engine = engine;
        this.#arrived();
      },
      () => {
        this.#coming = null;
      },
    );
    return this.#coming;
  }

  /** The findings with the ways out that work; null when overtaken or the worker is lost. */
  async ways(document: object, findings: readonly Finding[]): Promise<readonly Finding[] | null> {
    return (await this.#link.ask("ways", { document }, { findings }))?.findings ?? null;
  }

  /** The plan at once, or a promise of it; the promise gives null when it was overtaken or the worker is lost. */
  plan(asked: PlanAsked): Plan | Promise<Plan | null> {
    const { document, build, from, trial } = asked;
    const known = this.#known.get(document);
    if (known) return known;
    const quick = build.steps.length <= quickUpTo && this.#slowOnes < slowInARow;
    if (quick && this.#engine) return this.#quick(this.#engine, document, build);
    const answered = this.#link.ask(trial ? "trial" : "plan", { document, ...(from ? { from } : {}) }, {}).then((answer) => {
      if (answer) this.#known.set(document, answer.plan);
      return answer?.plan ?? null;
    });
    return quick && !this.#engine ? this.#first(document, build, answered) : answered;
  }

  /** A worker that is lost, or slower than the engine, does not leave the first view without a plan. */
  #first(document: object, build: Build, answered: Promise<Plan | null>): Promise<Plan | null> {
    const here = async (): Promise<Plan | null> =>
      this.#known.get(document) ?? (this.#engine && this.#quick(this.#engine, document, build));
    const lost = answered.then((plan) => plan ?? this.ready().then(here));
    return Promise.race([lost, this.#came.then(here)]);
  }

  #quick(engine: Engine, document: object, build: Build): Plan {
    const start_ms = this.#now_ms();
    const made = engine(build);
    this.#plans += 1;
    // The first plans of a page are slower than those that follow: they tell nothing.
    const slow = this.#plans > 2 && this.#now_ms() - start_ms > patience_ms;
    this.#slowOnes = slow ? this.#slowOnes + 1 : 0;
    this.#known.set(document, made);
    return made;
  }
}
