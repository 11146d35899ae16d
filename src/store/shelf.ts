import { Lease, type TabMessage, tabsVersion } from "./lease";
import { boarded } from "./lifeboat";
import { type Kept, type ListPort, type Port, StoreError, type StoreTrouble, type Version } from "./port";
import { replay } from "./restore";
import { Saver, type Whole } from "./saver";
import type { ShelfOptions, Storage, Taken } from "./shelf-options";

/** The builds this browser keeps: the open one is written as it changes, by one tab at a time; other tabs follow. */
export class Shelf<State> {
  readonly #options: ShelfOptions<State>;
  readonly #lease: Lease;
  readonly #stopListening: () => void;
  #storage: Storage;
  #saver: Saver | null = null;
  #key: string | null = null;
  #touched = false;
  #passing = false;
  /** What this tab knows of a build that another one changes. */
  #seen: { readonly state: State | null; readonly seq: number } | null = null;
  #following: Promise<void> = Promise.resolve();
  /** The build before is still being written. */
  #leaving: Promise<void> = Promise.resolve();
  #behind = false;
  /** Something of the open build is in the lifeboat. */
  #boarded = false;

  constructor(options: ShelfOptions<State>) {
    this.#options = options;
    this.#storage = options.storage;
    this.#lease = new Lease({
      port: options.tabs,
      tab: options.tab,
      beforeRelease: async () => {
        await this.#leaving;
        await this.#saver?.flush();
      },
      report: (state, build) => {
        // Of a build that this tab has left meanwhile it says nothing about the one that is open.
        if ((state === "theirs" || state === "handing") && build !== this.#key) return;
        if (state === "theirs") this.#lost();
        options.onLease(state);
      },
    });
    this.#stopListening = options.tabs.listen((message) => this.#hear(message));
  }

  /** The build that this tab had open, or the one that was open last in any; null where there is none. Throws StoreError. */
  async restore(preferred: string | null = null): Promise<Taken<State> | null> {
    const port = this.port;
    if (port === null) return null;
    const kept = preferred === null ? null : await this.take(preferred);
    const key = kept === null ? await port.open() : null;
    return key === null ? kept : this.take(key);
  }

  /** A kept build; to be looked at only where another tab has it. Throws StoreError: newer, failed. */
  async take(key: string): Promise<Taken<State> | null> {
    await this.#saver?.flush();
    // Looked at before what is open is let go of.
    if (!(await this.#load(key))) return null;
    return this.#open(key, await this.#lease.take(key));
  }

  /** The same build, for this tab to change: the other tab finishes writing and lets go. */
  async takeOver(): Promise<Taken<State> | null> {
    return this.#key === null ? null : this.#open(this.#key, await this.#lease.takeOver(this.#key));
  }

  /** Puts a build on the shelf that was not there. `passing`: it can be had again any time, and makes room for the next if it was never changed. */
  begin(state: State, passing = false): void {
    const [before, old] = [this.#key, this.#saver];
    const forget = before !== null && !this.#touched && this.#passing && old !== null;
    this.#passing = passing;
    const key = this.#options.newKey();
    this.#key = key;
    this.#touched = false;
    this.#seen = null;
    const saver = this.#start(key, 0);
    saver?.begin(this.#whole(state));
    // What is still in line for the one before is written while it is still this tab's.
    this.#leaving = old?.flush() ?? Promise.resolve();
    void this.#leaving.then(() => this.#key === key && this.#lease.take(key));
    if (!saver) return;
    void saver.flush().then(async () => {
      if (forget && saver.allSaved) await this.port?.forget(before).catch(() => undefined);
      this.listed(key);
    });
  }

  /** Lets go of the open build, which stays kept: what is shown from now on is not on the shelf. */
  async leave(): Promise<void> {
    const saver = this.#saver;
    this.#saver = null;
    this.#key = null;
    this.#seen = null;
    await saver?.flush();
    if (this.#key === null) this.#lease.letGo();
  }

  /** Writes one action, which has led to `state`; `before` is a version to keep that it would write over. */
  record(action: unknown, state: State, before?: Version): void {
    this.#touched = true;
    if (this.#saver === null) this.#options.onSave({ kind: "not-saved", trouble: this.trouble ?? "failed" });
    else this.#saver.record(action, this.#whole(state), before);
  }

  /** Of the open build. */
  get key(): string | null {
    return this.#key;
  }

  /** Null where the browser gives no storage: then `trouble` says why and nothing is kept. */
  get port(): (Port & ListPort) | null {
    return "port" in this.#storage ? this.#storage.port : null;
  }

  get trouble(): StoreTrouble | null {
    return "trouble" in this.#storage ? this.#storage.trouble : null;
  }

  /** Tries again what is in line. */
  async flush(): Promise<void> {
    await this.#saver?.flush();
  }

  /** Storage that was refused is there after all: what is open is written whole. */
  found(storage: Storage, state: State | null): void {
    if (this.port !== null || "trouble" in storage) return;
    this.#storage = storage;
    if (state !== null) this.begin(state);
  }

  /** Puts what is not on disk yet where the next page finds it; for a page that may be closing. */
  board(): void {
    const unsaved = this.#saver?.unsaved;
    if (!unsaved || this.#key === null) return;
    this.#options.mooring.put(this.#key, { ...unsaved, key: this.#key, writer: this.#options.tab });
    this.#boarded = true;
  }

  /** Tells other tabs that the list of kept builds has changed. */
  listed(build: string): void {
    this.#post("listed", build);
  }

  /** For the case that a newer program changes the database under this page. */
  stop(trouble: StoreTrouble): void {
    this.#saver?.stop(trouble);
    this.#options.onSave({ kind: "not-saved", trouble });
  }

  close(): void {
    this.#stopListening();
    this.#lease.close();
  }

  async #open(key: string, mine: boolean): Promise<Taken<State> | null> {
    const { apply, tab, mooring, onSave } = this.#options;
    const { port } = this;
    const found = await this.#load(key);
    if (found === null || port === null) return null;
    const { state, seq } = replay(found, apply);
    const boat = mine ? boarded(found, mooring.get(key)) : found;
    const whole = boat === found ? state : replay(boat, apply).state;
    if (mine) await port.claim(tab, key);
    // Only what a start opens by itself: no reason not to open it now.
    await port.setOpen(key).catch(() => undefined);
    this.#key = key;
    this.#touched = seq > 0;
    this.#passing = false;
    this.#saver = null;
    this.#seen = mine ? null : { state, seq };
    const { changed_ms } = found;
    if (!mine) return { key, state, mine, changed_ms };
    const saver = this.#start(key, seq);
    this.#boarded = boat !== found;
    onSave({ kind: "saved" });
    for (const entry of boat.entries) if (entry.seq > seq) saver?.record(entry.action, this.#whole(whole));
    return { key, state: whole, mine, changed_ms };
  }

  async #load(key: string): Promise<Kept | null> {
    if (this.port === null) throw new StoreError(this.trouble ?? "failed");
    const found = await this.port.load(key);
    if (found !== null && found.snapshot.format > this.#options.format) throw new StoreError("newer");
    return found;
  }

  #start(key: string, seq: number): Saver | null {
    const { tab, format, onSave, now_ms, mooring } = this.#options;
    this.#saver = null;
    const port = this.port;
    if (port === null) {
      onSave({ kind: "not-saved", trouble: this.trouble ?? "failed" });
      return null;
    }
    const saver: Saver = new Saver({
      port,
      key,
      writer: tab,
      format,
      seq,
      keepVersion: (version) => port.keepVersion(version),
      report: (state) => {
        if (state.kind === "saved") this.#post("changed", key);
        if (this.#saver !== saver) return;
        if (state.kind === "saved" && this.#boarded) {
          mooring.put(key, null);
          this.#boarded = false;
        }
        onSave(state);
      },
      now_ms,
    });
    this.#saver = saver;
    return saver;
  }

  /** Another tab has the build now: this one follows, unless it has changes that are nowhere else. */
  #lost(): void {
    this.#saver?.stop("taken");
    if (this.#saver === null) return;
    if (this.#saver.unsaved) this.#options.onSave({ kind: "not-saved", trouble: "taken" });
    else this.#seen = { state: null, seq: -1 };
  }

  #whole(state: State): Whole {
    return { state, name: this.#options.nameOf(state) };
  }

  #post(say: TabMessage["say"], build: string): void {
    this.#options.tabs.post({ version: tabsVersion, say, build, from: this.#options.tab });
  }

  #hear({ version, say, build, from }: TabMessage): void {
    if (version !== tabsVersion || from === this.#options.tab) return;
    if (say === "listed") this.#options.onListed();
    if (say !== "changed" || build !== this.#key || this.#seen === null || this.#behind) return;
    // One look at the disk at a time; what comes meanwhile is seen by the next.
    this.#behind = true;
    this.#following = this.#following.then(() => this.#follow(build)).catch(() => undefined);
  }

  async #follow(key: string): Promise<void> {
    this.#behind = false;
    if (this.#seen === null || this.#key !== key) return;
    const since = await this.port?.since(key, this.#seen.seq);
    const seen = this.#seen;
    if (!since || seen === null || this.#key !== key) return;
    const snapshot = "snapshot" in since ? since.snapshot : { ...blank, key, seq: seen.seq, state: seen.state };
    const now = replay<State>({ snapshot, entries: since.entries }, this.#options.apply);
    if (now.seq === seen.seq) return;
    this.#seen = now;
    this.#options.onFollow(now.state);
  }
}

const blank = { name: "", format: 0, touched_ms: 0 };
