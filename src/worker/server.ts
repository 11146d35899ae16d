import type { DocumentEdit } from "../core/base";
import { type About, type Answers, type Ask, protocolVersion, type Question, type Reply } from "./protocol";

export interface ServerOptions<Read> {
  /** The document with the edits made. */
  edited(document: unknown, change: readonly DocumentEdit[]): unknown;
  /** Null when it cannot be read as a build. */
  read(document: unknown): Read | null;
  answer<Q extends Question>(ask: Q, read: Read, more: Ask<Q>["with"]): Answers[Q] | Promise<Answers[Q]>;
  reply(reply: Reply): void;
  /** Lets messages that have come in meanwhile be heard before the next answer is worked out. */
  later(work: () => void): void;
}

/** The worker's end: hears every message at once, then answers only the newest question of each kind. */
export class Server<Read> {
  readonly #options: ServerOptions<Read>;
  #document: { readonly revision: number; readonly document: unknown } | null = null;
  #read: { readonly document: unknown; readonly read: Read | null } | null = null;
  #line = new Map<Question, { readonly ask: Ask; readonly document: unknown }>();
  #working = false;

  constructor(options: ServerOptions<Read>) {
    this.#options = options;
  }

  hear(ask: Ask): void {
    const head = { protocol: protocolVersion, revision: ask.revision, ask: ask.ask, rung: 0, done: true } as const;
    const document = this.#documentOf(ask.about);
    if (ask.protocol !== protocolVersion || document === undefined) {
      this.#options.reply({ ...head, refused: ask.protocol !== protocolVersion ? "protocol" : "base" });
      return;
    }
    this.#document = { revision: ask.revision, document };
    this.#line.delete(ask.ask);
    this.#line.set(ask.ask, { ask, document });
    if (this.#working) return;
    this.#working = true;
    this.#options.later(() => void this.#work());
  }

  #documentOf(about: About): unknown {
    if ("build" in about) return about.build;
    if (this.#document?.revision !== about.base) return undefined;
    return about.change.length === 0 ? this.#document.document : this.#options.edited(this.#document.document, about.change);
  }

  async #work(): Promise<void> {
    try {
      await this.#next();
    } catch (error) {
      // Thrown outside the promise it reaches the page as a lost worker, which is replaced.
      this.#options.later(() => {
        throw error;
      });
      return;
    }
    if (this.#line.size > 0) this.#options.later(() => void this.#work());
    else this.#working = false;
  }

  async #next(): Promise<void> {
    for (const [question, { ask, document }] of this.#line) {
      this.#line.delete(question);
      const head = {
        protocol: protocolVersion,
        revision: ask.revision,
        ask: question,
        rung: 0,
        done: true,
      };
      const last = this.#read;
      const known = last !== null && last.document === document ? last : { document, read: this.#options.read(document) };
      this.#read = known;
      const { read } = known;
      if (read === null) this.#options.reply({ ...head, refused: "document" } as Reply);
      else {
        const answer = await this.#options.answer(question, read, ask.with);
        this.#options.reply({ ...head, rung: "sought" in answer ? answer.sought.rung : 0, answer } as Reply);
      }
      break;
    }
  }
}
