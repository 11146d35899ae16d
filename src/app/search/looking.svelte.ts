import type { Served } from "../../core/build";
import type { Sought } from "../../core/plan";

/** How far the page looks by itself, and how far when it is asked to look longer. */
const byItself = 10_000;
const longer = 100_000;

/** So long after the last change the looking begins: not while somebody is typing. */
const rest_ms = 1500;

export interface LookAnswer {
  readonly sought: Sought;
  readonly served: Served | null;
}

/** resting: will begin by itself. looking. stopped: by hand. ended: as far as it was to go. lost: the worker could not. */
export type Phase = "resting" | "looking" | "stopped" | "ended" | "lost";

/** The search for an earlier finish, portion by portion in the worker, while nothing else is done. What is known belongs to one document. */
export class Looking {
  readonly #ask: (document: unknown, upTo: number) => Promise<LookAnswer | null>;
  #document: unknown = null;
  #upTo = byItself;
  #run = 0;
  #timer: ReturnType<typeof setTimeout> | undefined;
  /** The last sentence of a plan found that was read out. */
  said = "";
  answer = $state.raw<LookAnswer | null>(null);
  phase = $state<Phase>("resting");

  constructor(ask: (document: unknown, upTo: number) => Promise<LookAnswer | null>) {
    this.#ask = ask;
  }

  get upTo(): number {
    return this.#upTo;
  }

  /** Nothing is being done to this document: go on with it, or, where it may begin by itself, begin after a while. */
  rest(document: unknown, byItself: boolean): void {
    if (document !== this.#document) this.#take(document, null, "resting");
    if (this.phase === "looking") void this.#look();
    else if (this.phase === "resting" && byItself) this.#timer = setTimeout(() => void this.#look(), rest_ms);
  }

  /** Something is being done: the worker is left alone. */
  pause(): void {
    this.#run += 1;
    clearTimeout(this.#timer);
  }

  stop(): void {
    this.pause();
    this.phase = "stopped";
  }

  /** At once, or on from where it was stopped. */
  begin(): void {
    this.pause();
    void this.#look();
  }

  further(): void {
    this.#upTo = longer;
    this.begin();
  }

  /** The plan that was found is now that of this document: what is known of it at the end of the search stays known; else it goes on from there. */
  took(document: unknown): void {
    const { answer } = this;
    if (answer === null) return;
    const { sought } = answer;
    this.pause();
    if (!sought.done && sought.rung < byItself) return;
    this.#take(document, { sought: { ...sought, finishWas: sought.finish, gain: 0 }, served: null }, "ended");
  }

  #take(document: unknown, answer: LookAnswer | null, phase: Phase): void {
    this.#document = document;
    this.#upTo = byItself;
    this.answer = answer;
    this.phase = phase;
  }

  async #look(): Promise<void> {
    this.#run += 1;
    const run = this.#run;
    this.phase = "looking";
    for (;;) {
      const answer = await this.#ask(this.#document, this.#upTo);
      if (run !== this.#run) return;
      if (answer === null) {
        this.phase = "lost";
        return;
      }
      this.answer = answer;
      if (!answer.sought.done && answer.sought.rung < this.#upTo) continue;
      this.phase = "ended";
      return;
    }
  }
}
