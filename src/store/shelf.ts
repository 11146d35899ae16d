import { Lease, type LeasePort, type LeaseState } from "./lease";
import { type KeptName, type Port, StoreError, type StoreTrouble } from "./port";
import { replay } from "./restore";
import { Saver, type SaveState } from "./saver";

/** A build taken from the shelf. `mine` is false when another tab changes it. */
export interface Taken<State> {
  readonly key: string;
  readonly state: State;
  readonly mine: boolean;
}

export interface ShelfOptions<State> {
  /** Null where the browser gives no storage: then `trouble` says why and nothing is kept. */
  readonly port: Port | null;
  readonly trouble: StoreTrouble | null;
  readonly tabs: LeasePort;
  /** Tells this tab from others. */
  readonly tab: string;
  readonly format: number;
  apply(state: State, action: unknown): State;
  /** The state of the open build, everything recorded included, with its name. */
  whole(): { readonly state: State; readonly name: string };
  onSave(state: SaveState): void;
  onLease(state: LeaseState): void;
  now_ms(): number;
  newKey(): string;
}

/** The builds this browser keeps: the open one is written as it changes, by one tab at a time. */
export class Shelf<State> {
  readonly #options: ShelfOptions<State>;
  readonly #lease: Lease;
  #saver: Saver | null = null;
  #key: string | null = null;
  #touched = false;

  constructor(options: ShelfOptions<State>) {
    this.#options = options;
    this.#lease = new Lease({
      port: options.tabs,
      tab: options.tab,
      beforeRelease: async () => {
        await this.#saver?.flush();
      },
      report: (state) => {
        if (state === "theirs") this.#saver?.stop("taken");
        options.onLease(state);
      },
    });
  }

  /** The build that was open last, or null where there is none. Throws StoreError. */
  async restore(): Promise<Taken<State> | null> {
    const key = (await this.#options.port?.open()) ?? null;
    return key === null ? null : this.take(key);
  }

  /** A kept build; to be looked at only where another tab has it. Throws StoreError: newer, failed. */
  async take(key: string): Promise<Taken<State> | null> {
    return this.#open(key, await this.#lease.take(key));
  }

  /** The same build, for this tab to change: the other tab finishes writing and lets go. */
  async takeOver(): Promise<Taken<State> | null> {
    return this.#key === null ? null : this.#open(this.#key, await this.#lease.takeOver(this.#key));
  }

  /** Puts a build on the shelf that was not there; one that was opened and never changed makes room for it. */
  begin(): void {
    const before = this.#key;
    const forget = before !== null && !this.#touched && this.#saver !== null;
    const key = this.#options.newKey();
    this.#key = key;
    this.#touched = false;
    this.#start(key, 0)?.begin();
    void this.#lease.take(key);
    if (forget) void this.#saver?.flush().then(() => this.#options.port?.forget(before).catch(() => undefined));
  }

  /** Writes one action; `whole` must include it already. */
  record(action: unknown): void {
    this.#touched = true;
    if (this.#saver === null) this.#options.onSave({ kind: "not-saved", trouble: this.#options.trouble ?? "failed" });
    else this.#saver.record(action);
  }

  /** Of the open build. */
  get key(): string | null {
    return this.#key;
  }

  async flush(): Promise<void> {
    await this.#saver?.flush();
  }

  async list(): Promise<readonly KeptName[]> {
    return (await this.#options.port?.list().catch(() => [])) ?? [];
  }

  async forget(key: string): Promise<void> {
    if (key !== this.#key) await this.#options.port?.forget(key);
  }

  /** For the case that a newer program changes the database under this page. */
  stop(trouble: StoreTrouble): void {
    this.#saver?.stop(trouble);
    this.#options.onSave({ kind: "not-saved", trouble });
  }

  close(): void {
    this.#lease.close();
  }

  async #open(key: string, mine: boolean): Promise<Taken<State> | null> {
    const { port, apply, tab } = this.#options;
    if (port === null) throw new StoreError(this.#options.trouble ?? "failed");
    if (mine) await port.claim(tab, key);
    const kept = await port.load(key);
    if (kept === null) return null;
    if (kept.snapshot.format > this.#options.format) throw new StoreError("newer");
    const { state, seq } = replay(kept, apply);
    this.#key = key;
    this.#touched = seq > 0;
    this.#saver = null;
    if (mine) {
      this.#start(key, seq);
      this.#options.onSave({ kind: "saved" });
    }
    return { key, state, mine };
  }

  #start(key: string, seq: number): Saver | null {
    const { port, tab, format, whole, onSave, now_ms } = this.#options;
    this.#saver = null;
    if (port === null) {
      onSave({ kind: "not-saved", trouble: this.#options.trouble ?? "failed" });
      return null;
    }
    const saver: Saver = new Saver({
      port,
      key,
      writer: tab,
      seq,
      whole: () => ({ ...whole(), format }),
      report: (state) => {
        if (this.#saver === saver) onSave(state);
      },
      now_ms,
    });
    this.#saver = saver;
    return saver;
  }
}
