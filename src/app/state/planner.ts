import type { DocumentEdit, Finding } from "../../core/base";
import type { Build } from "../../core/build";
import { type Plan, plan } from "../../core/plan";
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

/** Plans in the page or, where that takes long, in the worker. Both give the same plan, byte for byte. */
export class Planner {
  readonly #link: Link;
  readonly #now_ms: () => number;
  /** The same document gives the same plan, so undo and redo need not plan again. */
  readonly #known = new WeakMap<object, Plan>();
  #plans = 0;
  #slowOnes = 0;

  constructor(link: Link, now_ms: () => number) {
    this.#link = link;
    this.#now_ms = now_ms;
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
    if (build.steps.length <= quickUpTo && this.#slowOnes < slowInARow) return this.#quick(document, build);
    return this.#link.ask(trial ? "trial" : "plan", { document, ...(from ? { from } : {}) }, {}).then((answer) => {
      if (answer) this.#known.set(document, answer.plan);
      return answer?.plan ?? null;
    });
  }

  #quick(document: object, build: Build): Plan {
    const start_ms = this.#now_ms();
    const made = plan(build);
    this.#plans += 1;
    // The first plans of a page are slower than those that follow: they tell nothing.
    const slow = this.#plans > 2 && this.#now_ms() - start_ms > patience_ms;
    this.#slowOnes = slow ? this.#slowOnes + 1 : 0;
    this.#known.set(document, made);
    return made;
  }
}
