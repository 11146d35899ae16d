import { type Port, StoreError, type StoreTrouble } from "./port";

export type SaveState =
  | { readonly kind: "saved" }
  | { readonly kind: "saving" }
  | { readonly kind: "not-saved"; readonly trouble: StoreTrouble };

export interface SaverOptions {
  readonly port: Port;
  readonly key: string;
  readonly writer: string;
  /** Seq of the last action that the database has. */
  readonly seq: number;
  /** The state after everything recorded so far, its name and format. Asked for in the same turn in which it is numbered. */
  whole(): { readonly state: unknown; readonly name: string; readonly format: number };
  report(state: SaveState): void;
  now_ms(): number;
  /** Entries between two snapshots; bounds what a reload has to replay. */
  readonly every?: number;
}

/**
 * Writes every recorded action, in order, one write at a time. "saved" is reported only after the write of the last action has been
 * confirmed. After a failure the actions stay in line and go with the next attempt, so nothing recorded is ever skipped.
 */
export class Saver {
  readonly #options: SaverOptions;
  readonly #every: number;
  #pending: unknown[] = [];
  #seq: number;
  #sinceSnapshot = 0;
  /** The database does not have this build yet: the next write is the whole of it. */
  #fresh = false;
  #running: Promise<void> | null = null;
  /** Set once another program or tab owns the build: from then on nothing is written. */
  #stopped: StoreTrouble | null = null;

  constructor(options: SaverOptions) {
    this.#options = options;
    this.#every = options.every ?? 64;
    this.#seq = options.seq;
  }

  /** Puts the action in line. The state that `whole` returns must include it already. */
  record(action: unknown): void {
    this.#pending.push(action);
    this.#run();
  }

  /** For a build that the database does not have yet: writes the whole of it. */
  begin(): void {
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

  async #append(): Promise<void> {
    const { port, writer, key } = this.#options;
    const batch = this.#pending.slice();
    await port.append(
      writer,
      batch.map((action, index) => ({ key, seq: this.#seq + 1 + index, action })),
    );
    this.#confirm(batch.length);
    this.#sinceSnapshot += batch.length;
  }

  async #snapshot(): Promise<void> {
    const { port, writer, key } = this.#options;
    const count = this.#pending.length;
    const { state, name, format } = this.#options.whole();
    await port.snapshot(writer, { key, name, format, seq: this.#seq + count, state, touched_ms: this.#options.now_ms() });
    this.#confirm(count);
    this.#fresh = false;
    this.#sinceSnapshot = 0;
  }

  #confirm(count: number): void {
    this.#pending.splice(0, count);
    this.#seq += count;
  }
}
