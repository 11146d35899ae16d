import { begin, type History } from "../../core/edit";
import type { KeptName, StoreTrouble, Taken, Version } from "../../store";
import type { BuildDesk } from "./build-desk.svelte";
import { day_ms, keptDays, localDay } from "./days";
import type { Selection } from "./desk";
import { Durability } from "./durable.svelte";
import type { Action } from "./history";
import { copyOf, type Keeping, openKeeping } from "./keeping";
import { Looks } from "./looks";
import { nameOf } from "./names";
import { remembered, rememberedHere, rememberHere } from "./stored";
import { mayPass, troubleOf, troubleSentence } from "./trouble";
import { Versions } from "./versions.svelte";

/** After a failure saving is tried again by itself. */
const retry_ms = 15_000;

export interface KeeperOptions {
  readonly desk: BuildDesk;
  /** A build was put on the desk. */
  opened(): void;
  /** The desk is empty: what was on it is thrown away. */
  cleared(): void;
  /** Something that was asked for cannot be. */
  tell(sentence: string): void;
}

/** What this browser keeps: the open build as it changes, the list of builds, their versions; and what stands in the way of keeping. */
export class Keeper {
  readonly #options: KeeperOptions;
  readonly durable = new Durability();
  readonly versions: Versions;
  #keeping: Keeping | null = null;
  /** When the open build was last changed, before or in this page. */
  #changed_ms = 0;
  readonly #looks: Looks;
  #retry: ReturnType<typeof setTimeout> | undefined;
  /** Another tab changes the open build. */
  theirs = $state(false);
  /** The open document is of a newer program. */
  newer = $state(false);
  /** Key of the open build in the list; null where it is not kept. */
  key = $state<string | null>(null);
  /** Why what is open is not kept; null while all is well. */
  trouble = $state<StoreTrouble | null>(null);
  /** Every kept build, those thrown away too; the last changed first. */
  list = $state.raw<readonly KeptName[]>([]);

  constructor(options: KeeperOptions) {
    this.#options = options;
    this.versions = new Versions(
      options.desk,
      () => ({ port: this.#keeping?.shelf.port ?? null, key: this.key }),
      () => this.#lock(),
    );
    this.#looks = new Looks(
      () => {
        const { key, theirs, versions } = this;
        const { build } = options.desk;
        const port = this.#keeping?.shelf.port;
        if (key === null || !port || build === null || theirs || versions.looking) return null;
        return { port, key, build, document: versions.present.document };
      },
      () => this.refresh(),
    );
  }

  /** Opens the storage and fetches what was open last. */
  async wake(): Promise<void> {
    const { desk } = this.#options;
    this.#keeping = await openKeeping({
      onSave: (state) => {
        desk.saved = state.kind;
        clearTimeout(this.#retry);
        this.trouble = state.kind === "not-saved" ? state.trouble : state.kind === "saved" ? null : this.trouble;
        if (state.kind === "not-saved" && mayPass(state.trouble)) this.#retry = setTimeout(() => void this.again(), retry_ms);
      },
      onLease: (state) => {
        // Only what was fetched anew can be changed again: until then the page shows what another tab may have changed.
        if (state !== "theirs" && state !== "handing") return;
        this.theirs = true;
        this.#lock();
      },
      onFollow: (work) => {
        if (!this.versions.follow(work)) desk.follow(work);
      },
      onListed: () => void this.refresh(),
    });
    const { shelf } = this.#keeping;
    this.trouble = shelf.trouble;
    addEventListener("pagehide", () => shelf.board());
    document.addEventListener("visibilitychange", () => document.visibilityState === "hidden" && shelf.board());
    await this.#fetch(() => shelf.restore(rememberedHere("open") as string | null), remembered("selected") as Selection | null);
  }

  /** What can wait until what was open is shown: lets go of what was thrown away long ago. */
  async tidy(): Promise<void> {
    await this.#keeping?.shelf.port?.prune(Date.now() - keptDays * day_ms).catch(() => undefined);
    await this.refresh();
    await this.durable.look();
  }

  /** A document that is not kept yet. `passing`: an example, which makes room for the next build if it was never changed. */
  begin(document: unknown, newer: boolean, passing = false): void {
    const { desk } = this.#options;
    this.#putDown();
    const work = begin(document);
    desk.load(work);
    this.newer = newer;
    this.theirs = false;
    this.#changed_ms = Date.now();
    this.#lock();
    if (newer) void this.#keeping?.shelf.leave();
    else this.#keeping?.shelf.begin(work, passing);
    this.#keyed();
    this.#looks.soon();
    this.#options.opened();
  }

  /** One change of the open build. */
  record(action: Action, before: History, after: History): void {
    const now_ms = Date.now();
    const [day, today] = [localDay(this.#changed_ms), localDay(now_ms)];
    const build = this.key;
    const version: Version | undefined =
      day === today || build === null
        ? undefined
        : {
            build,
            id: `day ${day}`,
            sort: "day",
            name: "",
            day,
            at_ms: this.#changed_ms,
            words: before.done.at(-1)?.words ?? "",
            document: before.document,
          };
    this.#changed_ms = now_ms;
    this.#keeping?.shelf.record(action, after, version);
    this.durable.askOnce();
    this.#looks.soon();
  }

  async open(key: string): Promise<void> {
    // A version that is looked at stays until there is something else to show: what lies aside for it is the build.
    this.#looks.now();
    if (await this.#fetch(() => this.#keeping?.shelf.take(key) ?? Promise.resolve(null), null)) return;
    this.#options.tell(troubleSentence("gone"));
  }

  async takeOver(): Promise<void> {
    await this.#fetch(() => this.#keeping?.shelf.takeOver() ?? Promise.resolve(null), this.#options.desk.selected);
  }

  /** Tries again to keep what is not kept. */
  async again(): Promise<void> {
    const { desk } = this.#options;
    const shelf = this.#keeping?.shelf;
    if (shelf?.port === null) await this.#keeping?.again(desk.document === null || this.newer ? null : this.versions.present);
    if (shelf?.port && shelf.key === null) this.trouble = null;
    await shelf?.flush();
    this.#keyed();
    await this.refresh();
  }

  async refresh(): Promise<void> {
    this.list = (await this.#keeping?.shelf.port?.list().catch(() => null)) ?? [];
  }

  /** Throws a build away; it can be brought back. The one that is open leaves the desk. */
  remove(key: string): Promise<boolean> {
    return this.#manage(key, async (port) => {
      if (key === this.key) {
        this.#putDown();
        await this.#keeping?.shelf.leave();
        this.#keyed();
        this.#options.cleared();
      }
      await port.describe(key, { removed_ms: Date.now() });
    });
  }

  bringBack(key: string): Promise<boolean> {
    return this.#manage(key, (port) => port.describe(key, { removed_ms: null }));
  }

  /** For good, with its versions. */
  forget(key: string): Promise<boolean> {
    return this.#manage(key, (port) => port.forget(key));
  }

  /** Gives a build another name, wherever it lies. */
  async rename(key: string, name: string): Promise<boolean> {
    const words = "rename the build";
    const edits = [{ path: ["name"], value: name }];
    if (key === this.key) {
      this.versions.back();
      this.#options.desk.edit(edits, words);
      await this.#keeping?.shelf.flush();
      await this.refresh();
      return !this.theirs;
    }
    const action: Action = { do: "edit", edits, words, joins: false };
    return this.#manage(key, async () => this.#keeping?.others?.change(key, action));
  }

  /** Puts a copy with an id of its own beside a build. */
  copy(key: string): Promise<boolean> {
    return this.#manage(key, async (port) => {
      const { others } = this.#keeping ?? {};
      if (!others) return;
      if (key === this.key) await this.#keeping?.shelf.flush();
      const state = copyOf(await others.look(key));
      const made = await others.add({ state, name: nameOf(state.document) });
      const like = this.list.find((card) => card.key === key);
      await port.describe(made, { cover: like?.cover ?? null, size_bytes: like?.size_bytes ?? null });
    });
  }

  /** The open build, or the version that is looked at, goes on as a build of its own. */
  beginCopy(): void {
    this.begin(copyOf(begin(this.#options.desk.document)).document, false);
  }

  async #manage(key: string, work: (port: NonNullable<Keeping["shelf"]["port"]>) => Promise<unknown>): Promise<boolean> {
    const shelf = this.#keeping?.shelf;
    if (!shelf?.port) return false;
    try {
      await work(shelf.port);
      shelf.listed(key);
      return true;
    } catch (error) {
      const trouble = troubleOf(error);
      this.#options.tell(
        trouble === "taken" ? "Another tab has this build open. Do it there, or close that tab first." : troubleSentence(trouble),
      );
      return false;
    } finally {
      await this.refresh();
    }
  }

  /** False where there is nothing of that key; what goes wrong is told. */
  async #fetch(take: () => Promise<Taken<History> | null>, selected: Selection | null): Promise<boolean> {
    const { desk, opened } = this.#options;
    try {
      const taken = await take();
      if (taken === null) {
        await this.refresh();
        return false;
      }
      // In the same turn: from now on what is recorded goes to this build.
      this.versions.forget();
      desk.load(taken.state, selected);
      this.newer = false;
      this.theirs = !taken.mine;
      this.#changed_ms = taken.changed_ms;
      this.#lock();
      this.#keyed();
      opened();
      void this.refresh();
    } catch (error) {
      this.#options.tell(troubleSentence(troubleOf(error)));
    }
    return true;
  }

  #keyed(): void {
    this.key = this.newer ? null : (this.#keeping?.shelf.key ?? null);
    rememberHere("open", this.key);
  }

  #lock(): void {
    this.#options.desk.readOnly = this.theirs || this.newer || this.versions.looking !== null;
  }

  /** Cover and size of the build that is open, before another is. */
  #putDown(): void {
    this.#looks.now();
    this.versions.forget();
  }
}
