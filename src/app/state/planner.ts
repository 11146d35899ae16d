import type { DocumentEdit, Finding } from "../../core/base";
import type { Build } from "../../core/build";
import { type Plan, plan } from "../../core/plan";
import type { Link } from "../../worker";

/** Up to this many steps a plan takes a few milliseconds and is made in the page, in the same frame as the edit. */
export const quickUpTo = 500;

/** Plans in the page or, for a large build, in the worker. */
export class Planner {
  readonly #link: Link;
  /** The same document gives the same plan, so undo and redo need not plan again. */
  readonly #known = new WeakMap<object, Plan>();

  constructor(link: Link) {
    this.#link = link;
  }

  /** The findings with the ways out that work; null when overtaken or the worker is lost. */
  async ways(document: object, findings: readonly Finding[]): Promise<readonly Finding[] | null> {
    return (await this.#link.ask("ways", { document }, { findings }))?.findings ?? null;
  }

  /** The plan at once, or a promise of it; the promise gives null when it was overtaken or the worker is lost. */
  plan(
    document: object,
    build: Build,
    from?: { readonly document: unknown; readonly change: readonly DocumentEdit[] },
  ): Plan | Promise<Plan | null> {
    const known = this.#known.get(document);
    if (known) return known;
    if (build.steps.length <= quickUpTo) {
      const made = plan(build);
      this.#known.set(document, made);
      return made;
    }
    return this.#link.ask("plan", { document, ...(from ? { from } : {}) }, {}).then((answer) => {
      if (answer) this.#known.set(document, answer.plan);
      return answer?.plan ?? null;
    });
  }
}
