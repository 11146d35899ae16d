import type { DocumentEdit } from "../core/base";
import { type Answers, type Ask, protocolVersion, type Question, type Questions, type Reply } from "./protocol";

/** As much of a Worker as the page needs. */
export interface WorkerLike {
  postMessage(message: unknown): void;
  terminate(): void;
  onmessage: ((event: MessageEvent) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
  onmessageerror: ((event: MessageEvent) => void) | null;
}

/** The document asked about; `from` says how it came out of one that may have been sent before. */
export interface Subject {
  readonly document: unknown;
  readonly from?: { readonly document: unknown; readonly change: readonly DocumentEdit[] };
}

interface Waiting {
  readonly revision: number;
  readonly subject: Subject;
  readonly with: unknown;
  settle(answer: unknown): void;
}

/** Losses in a row, without an answer between, after which the worker is given up. */
const patience = 3;

/** A worker that is asked something and says nothing for this long hangs: it is replaced. The slowest answers take a few seconds. */
export const hangsAfter_ms = 60_000;

/**
 * The page's end. One question of each kind is waited for: a newer one settles the older with null. A worker that fails is replaced, and
 * gets the last document whole with whatever is still waited for.
 */
export class Link {
  readonly #make: () => WorkerLike;
  #worker: WorkerLike | null = null;
  #revision = 0;
  /** The document that the worker has, as far as the page knows. */
  #base: { readonly revision: number; readonly document: unknown } | null = null;
  #waiting = new Map<Question, Waiting>();
  #losses = 0;
  #watch: ReturnType<typeof setTimeout> | undefined;

  constructor(make: () => WorkerLike) {
    this.#make = make;
  }

  /** Starts the worker ahead of the first question. */
  begin(): void {
    this.#connected();
  }

  /** The answer, or null when it was overtaken by a newer question of its kind or cannot be had. */
  ask<Q extends Question>(ask: Q, subject: Subject, more: Questions[Q]): Promise<Answers[Q] | null> {
    this.#waiting.get(ask)?.settle(null);
    return new Promise((settle) => {
      this.#revision += 1;
      this.#waiting.set(ask, { revision: this.#revision, subject, with: more, settle: (answer) => settle(answer as Answers[Q] | null) });
      this.#send(ask);
    });
  }

  close(): void {
    this.#drop();
    this.#giveUp();
  }

  #giveUp(): void {
    for (const waiting of this.#waiting.values()) waiting.settle(null);
    this.#waiting.clear();
    this.#losses = 0;
    this.#watchOver();
  }

  /** From now on the worker has its time to say something, as long as something is waited for. */
  #watchOver(): void {
    clearTimeout(this.#watch);
    this.#watch = this.#waiting.size === 0 ? undefined : setTimeout(() => this.#lost(), hangsAfter_ms);
  }

  #send(ask: Question): void {
    const waiting = this.#waiting.get(ask);
    if (!waiting) return;
    const { document, from } = waiting.subject;
    const base = this.#base;
    const about =
      base && base.document === document
        ? { base: base.revision, change: [] }
        : base && from && base.document === from.document
          ? { base: base.revision, change: from.change }
          : { build: document };
    this.#base = { revision: waiting.revision, document };
    this.#connected().postMessage({ protocol: protocolVersion, revision: waiting.revision, about, ask, with: waiting.with } as Ask);
    // Asked again and again, a worker that hangs is still found out: the time runs from the first question that it leaves open.
    if (this.#watch === undefined) this.#watchOver();
  }

  #connected(): WorkerLike {
    if (this.#worker) return this.#worker;
    const worker = this.#make();
    worker.onmessage = ({ data }) => this.#hear(data as Reply);
    worker.onerror = () => this.#lost();
    worker.onmessageerror = () => this.#lost();
    this.#worker = worker;
    return worker;
  }

  #hear(reply: Reply): void {
    const waiting = this.#waiting.get(reply.ask);
    this.#watchOver();
    if (reply.protocol !== protocolVersion) {
      this.#lost();
    } else if (waiting?.revision === reply.revision) {
      if ("refused" in reply) this.#refused(reply.ask, reply.refused);
      else this.#answered(reply.ask, reply.answer, reply.done);
    }
  }

  #refused(ask: Question, refused: "base" | "protocol" | "document"): void {
    if (refused === "protocol") {
      this.#lost();
    } else if (refused === "base") {
      this.#base = null;
      this.#send(ask);
    } else {
      this.#answered(ask, null, true);
    }
  }

  #answered(ask: Question, answer: unknown, done: boolean): void {
    this.#losses = 0;
    if (!done) return;
    const waiting = this.#waiting.get(ask);
    this.#waiting.delete(ask);
    waiting?.settle(answer);
    this.#watchOver();
  }

  #lost(): void {
    this.#drop();
    this.#losses += 1;
    if (this.#losses > patience) {
      this.#giveUp();
      return;
    }
    for (const ask of [...this.#waiting.keys()]) this.#send(ask);
  }

  #drop(): void {
    clearTimeout(this.#watch);
    this.#watch = undefined;
    if (this.#worker) {
      this.#worker.onmessage = null;
      this.#worker.onerror = null;
      this.#worker.onmessageerror = null;
      this.#worker.terminate();
    }
    this.#worker = null;
    this.#base = null;
  }
}
