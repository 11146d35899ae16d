import { type Port, StoreError, type StoreTrouble, type Version } from "./port";

export type SaveState =
  | { readonly kind: "saved" }
  | { readonly kind: "saving" }
  | { readonly kind: "not-saved"; readonly trouble: StoreTrouble };

/** A build as it is after an action. Never changed in place. */
export interface Whole {
  readonly state: unknown;
  readonly name: string;
}

/** Actions that the database has not confirmed, the first of them with this seq. */
export interface Unsaved {
  readonly first: number;
  readonly actions: readonly unknown[];
}

export interface SaverOptions {
  readonly port: Port;
  readonly key: string;
  readonly writer: string;
  readonly format: number;
  /** Seq of the last action that the database has. */
  readonly seq: number;
  keepVersion(version: Version): Promise<void>;
  report(state: SaveState): void;
  now_ms(): number;
  /** Entries between two snapshots; bounds what a reload has to replay. */
  readonly every?: number;
}

/**
 * Writes every recorded action, in order, one write at a time. "saved" is reported only after the write of the last action has been
 * confirmed. After a failure the actions stay in line and go with the next attempt, so nothing recorded is ever skipped. What is written
 * is what was handed over with the action, never what the page shows by then: that may be another build.
 */
export class Saver {
  readonly #options: SaverOptions;
  readonly #every: number;
  #pending: unknown[] = [];
  #versions: Version[] = [];
  #whole: Whole | null = null;
  #seq: number;
  #sinceSnapshot = 0;
  /** The database does not have this build: the next write is the whole of it. */
  #fresh = false;
  #running: Promise<void> | null = null;
  /** Set once another program or tab owns the build: from then on nothing is written. */
  #stopped: StoreTrouble | null = null;

  constructor(options: SaverOptions) {
    this.#options = options;
    this.#every = options.every ?? 64;
    this.#seq = options.seq;
  }

  /** Puts the action in line. `whole` is the build after it; `before` a state to be kept that it would write over. */
  record(action: unknown, whole: Whole, before?: Version): void {
    this.#pending.push(action);
    this.#whole = whole;
    if (before) this.#versions.push(before);
    this.#run();
  }

  /** For a build that the database does not have yet: writes the whole of it. */
  begin(whole: Whole): void {
    this.#whole = whole;
    this.#fresh = true;
    this.#run();
  }

  /** Tries again what is in line and settles when that attempt is over. */
  async flush(): Promise<void> {
    if (!this.allSaved) this.#run();
    await this.#running;
  }

  /** No write starts after this. */
  stop(trouble: StoreTrouble): void {
    this.#stopped = trouble;
  }

  get allSaved(): boolean {
    return this.#pending.length === 0 && !this.#fresh;
  }

  get unsaved(): Unsaved | null {
    return this.#pending.length === 0 ? null : { first: this.#seq + 1, actions: this.#pending.slice() };
  }

  #run(): void {
    if (this.#stopped !== null) {
      this.#options.report({ kind: "not-saved", trouble: this.#stopped });
      return;
    }
    this.#options.report({ kind: "saving" });
    this.#running ??= this.#drain();
  }

  /** Leaves `#running` empty in the same turn in which it finds nothing more to do: an action recorded right after starts a new one. */
  async #drain(): Promise<void> {
    await null;
    try {
      await this.#keepVersions();
      while (!this.allSaved) {
        if (this.#stopped !== null) throw new StoreError(this.#stopped);
        if (this.#fresh || this.#sinceSnapshot + this.#pending.length >= this.#every) await this.#snapshot();
        else await this.#append();
      }
      this.#running = null;
      this.#options.report({ kind: "saved" });
    } catch (error) {
      this.#running = null;
      const trouble = error instanceof StoreError ? error.trouble : "failed";
      if (trouble === "taken" || trouble === "upgraded" || trouble === "newer") this.#stopped = trouble;
      this.#options.report({ kind: "not-saved", trouble });
    }
  }

  /** Before the actions that follow them. A version that cannot be kept now waits for the next attempt; it holds up no action. */
  async #keepVersions(): Promise<void> {
    while (this.#versions.length > 0 && this.#stopped === null) {
      try {
        await this.#options.keepVersion(this.#versions[0]);
      } catch {
        return;
      }
      this.#versions.shift();
    }
  }

  async #append(): Promise<void> {
    const { port, writer, key, now_ms } = this.#options;
    const batch = this.#pending.slice();
    const entries = batch.map((action, index) => ({ key, seq: this.#seq + 1 + index, action }));
    try {
      await port.append(writer, entries, { name: this.#whole?.name ?? "", changed_ms: now_ms() });
    } catch (error) {
      if (!(error instanceof StoreError && error.trouble === "gone")) throw error;
      // Somebody has cleared the browser's storage under the page: what is in memory is all there is.
      this.#fresh = true;
      return;
    }
    this.#confirm(batch.length);
    this.#sinceSnapshot += batch.length;
  }

  async #snapshot(): Promise<void> {
    const { port, writer, key, format, now_ms } = this.#options;
    const count = this.#pending.length;
    const { state, name } = this.#whole as Whole;
    await port.snapshot(writer, { key, name, format, seq: this.#seq + count, state, touched_ms: now_ms() }, true);
    this.#confirm(count);
    this.#fresh = false;
    this.#sinceSnapshot = 0;
  }

  #confirm(count: number): void {
    this.#pending.splice(0, count);
    this.#seq += count;
  }
}
