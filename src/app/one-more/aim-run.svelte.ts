import type { Aimed } from "../../core/plan";
import { newRun } from "./runs";

type Ask = (document: unknown, run: number) => Promise<Aimed | null>;

/** A search for a plan that is better by the aim of a document, portion by portion in the worker. */
export class AimRun {
  readonly #ask: Ask;
  #run = 0;
  working = $state(false);
  /** The worker could not. */
  lost = $state(false);
  found = $state.raw<{ readonly of: unknown; readonly aimed: Aimed } | null>(null);

  constructor(ask: Ask) {
    this.#ask = ask;
  }

  /** @param holds whether the answer is still asked for: the build is the one it was begun with */
  async look(document: unknown, holds: () => boolean): Promise<void> {
    const mine = newRun();
    this.#run = mine;
    this.working = true;
    this.lost = false;
    this.found = null;
    for (;;) {
      const aimed = await this.#ask(document, mine);
      if (this.#run !== mine) return;
      if (aimed === null || !holds()) {
        this.lost = aimed === null && holds();
        break;
      }
      this.found = { of: document, aimed };
      if (aimed.done) break;
    }
    this.working = false;
  }

  stop(): void {
    this.#run = 0;
    this.working = false;
  }
}
