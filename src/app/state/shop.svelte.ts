import { fileOpen, fileSave } from "browser-fs-access";
import { begin, type History } from "../../core/edit";
import type { PlanMay } from "../../core/plan";
import type { Drawing } from "../../draw";
import { examples } from "../../examples";
import { buildFileName, buildFileText, openBuildFile } from "../../files";
import { browserTabs, type KeptName, openDatabase, type Port, Shelf, StoreError, type StoreTrouble, type Taken } from "../../store";
import { Link } from "../../worker";
import { BuildDesk } from "./build-desk.svelte";
import type { Selection } from "./desk";
import { type Action, act } from "./history";
import { Planner } from "./planner";
import { Settings } from "./settings.svelte";
import { remember, remembered } from "./stored";
import { troubleSentence } from "./trouble";

export interface Notice {
  readonly sentences: readonly string[];
  readonly grave: boolean;
  readonly act?: { readonly words: string; do(): void };
}

/** The newest document format that this program writes. */
const format = 1;

/** What stands round the desk: files, builds kept in this browser, settings, and what the builder is told. */
export class Shop {
  readonly settings = new Settings();
  readonly desk: BuildDesk;
  readonly #link = new Link(() => new Worker(new URL("../../worker/entry.ts", import.meta.url), { type: "module" }));
  #shelf: Shelf<History> | null = null;
  #start = $state(true);
  #keys = $state(false);
  #open = $state(false);
  buildShown = $state(false);
  ready = $state(false);
  notice = $state.raw<Notice | null>(null);
  kept = $state.raw<readonly KeptName[]>([]);

  constructor() {
    this.desk = new BuildDesk({
      planner: new Planner(this.#link, () => performance.now()),
      record: (action) => this.#shelf?.record(action),
      units: (build) => (this.settings.units === "build" ? (build?.site.units ?? "us") : this.settings.units),
      today: (zone) => dateAt(zone),
      now_ms: () => performance.now(),
      remember: (selected) => remember("selected", selected),
    });
  }

  get isOpen(): boolean {
    return this.#open;
  }
  get name(): string {
    return this.#open ? nameOf(this.desk.document) : "";
  }
  /** Key of the open build in the list of those kept; null where nothing is kept. */
  get openKey(): string | null {
    return this.#open ? (this.#shelf?.key ?? null) : null;
  }
  get startShown(): boolean {
    return this.#start;
  }
  get keysShown(): boolean {
    return this.#keys;
  }

  /** Fetches what was open last; without any, the start page teaches. */
  async wake(): Promise<void> {
    const { port, trouble } = await this.#database();
    this.#shelf = new Shelf<History>({
      port,
      trouble,
      tabs: browserTabs({ locks: navigator.locks, Channel: globalThis.BroadcastChannel }),
      tab: crypto.randomUUID?.() ?? String(Math.random()),
      format,
      apply: (work, action) => act(work, action as Action),
      whole: () => ({ state: this.desk.work, name: this.name }),
      onSave: (state) => {
        this.desk.saved = state.kind;
        if (state.kind === "not-saved") this.#tell(troubleSentence(state.trouble), true);
        else if (this.notice?.grave) this.notice = null;
      },
      onLease: (state) => {
        this.desk.readOnly = state === "theirs" || state === "handing";
        if (this.desk.readOnly) this.#sayTaken();
      },
      now_ms: () => Date.now(),
      newKey: () => crypto.randomUUID?.() ?? `${Date.now()}-${Math.random()}`,
    });
    if (trouble !== null) this.#tell(troubleSentence(trouble), true);
    await this.#fetch(() => this.#shelf?.restore() ?? Promise.resolve(null), remembered("selected") as Selection | null);
    await this.#list();
    this.ready = true;
  }

  showStart(): void {
    void this.#list();
    this.#start = true;
  }
  hideStart(): void {
    if (this.#open) this.#start = false;
  }
  showKeys(): void {
    this.#keys = true;
  }
  hideKeys(): void {
    this.#keys = false;
  }
  showBuild(): void {
    this.buildShown = true;
  }
  hideBuild(): void {
    this.buildShown = false;
  }
  /** One step back: the trial, the sheet, the start page. */
  escape(): void {
    if (this.desk.trial) this.desk.tryOut(null);
    else if (this.#start) this.hideStart();
    else if (this.desk.selected) this.desk.select(null);
    else this.desk.dismissMoved();
  }

  async openExample(id: string): Promise<void> {
    const example = examples.find((candidate) => candidate.id === id);
    if (example) this.#openText(buildFileText(await example.load()));
  }

  async openFile(): Promise<void> {
    try {
      const file = await fileOpen({
        description: "Build files",
        mimeTypes: ["application/json"],
        extensions: [".json"],
        id: "batterboard",
      });
      this.#openText(await file.text(), file.name);
    } catch (error) {
      if (!isCancel(error)) this.#tell("The file could not be read from this machine. Try again, or copy it somewhere else first.", true);
    }
  }

  async openKept(key: string): Promise<void> {
    await this.#shelf?.flush();
    await this.#fetch(() => this.#shelf?.take(key) ?? Promise.resolve(null), null);
  }

  async forget(build: KeptName): Promise<void> {
    await this.#shelf?.forget(build.key);
    await this.#list();
  }

  /** A new document; sentences when it cannot be begun. */
  begin(document: unknown): readonly string[] {
    return this.#openText(buildFileText(document), undefined, false);
  }

  async saveFile(): Promise<void> {
    if (!this.#open) return;
    const blob = new Blob([buildFileText(this.desk.document)], { type: "application/json" });
    try {
      await fileSave(blob, { fileName: buildFileName(this.name), extensions: [".json"], description: "Build file", id: "batterboard" });
      this.desk.say("The file is saved.");
    } catch (error) {
      if (!isCancel(error)) this.#tell("The file could not be written there. Choose another folder.", true);
    }
  }

  /** The steps as a layered drawing with text that many px high, from the worker; null when it was overtaken or cannot be made. */
  async layout(document: unknown, text: number): Promise<Drawing | null> {
    return (await this.#link.ask("layout", { document }, { text }))?.drawing ?? null;
  }

  /** May one step be done before another, dates and people included? From the worker; null when it was overtaken. */
  async may(before: string, after: string): Promise<PlanMay | null> {
    return (await this.#link.ask("may", { document: this.desk.document }, { before, after }))?.may ?? null;
  }

  dismissNotice(): void {
    this.notice = null;
  }

  /** Opens what the text holds; a text that is no build leaves everything as it is and says why. */
  #openText(text: string, fileName?: string, tell = true): readonly string[] {
    const opened = openBuildFile(text, fileName);
    if ("refusal" in opened) {
      if (tell) this.notice = { sentences: opened.refusal, grave: true };
      return opened.refusal;
    }
    this.notice = opened.remarks.length > 0 ? { sentences: opened.remarks, grave: false } : null;
    this.desk.load(begin(opened.document));
    this.desk.readOnly = opened.newer;
    this.#opened();
    if (!opened.newer) this.#shelf?.begin();
    return [];
  }

  async #fetch(take: () => Promise<Taken<History> | null>, selected: Selection | null): Promise<void> {
    try {
      const taken = await take();
      if (taken === null) return;
      this.desk.load(taken.state, selected);
      this.desk.readOnly = !taken.mine;
      this.#opened();
      if (!taken.mine) this.#sayTaken();
      else if (this.notice?.act) this.notice = null;
    } catch (error) {
      this.#tell(troubleSentence(error instanceof StoreError ? error.trouble : "failed"), true);
    }
  }

  #opened(): void {
    this.#open = true;
    this.#start = false;
  }

  #sayTaken(): void {
    const work = (): void => void this.#fetch(() => this.#shelf?.takeOver() ?? Promise.resolve(null), this.desk.selected);
    this.notice = {
      sentences: ["This build is being changed in another tab. Here it can be looked at."],
      grave: false,
      act: { words: "change it here instead", do: work },
    };
  }

  #tell(sentence: string, grave: boolean): void {
    this.notice = { sentences: [sentence], grave };
  }

  async #list(): Promise<void> {
    this.kept = (await this.#shelf?.list()) ?? [];
  }

  async #database(): Promise<{ readonly port: Port | null; readonly trouble: StoreTrouble | null }> {
    try {
      return { port: await openDatabase({ format, onUpgraded: () => this.#shelf?.stop("upgraded") }), trouble: null };
    } catch (error) {
      return { port: null, trouble: error instanceof StoreError ? error.trouble : "failed" };
    }
  }
}

function nameOf(document: unknown): string {
  const name = typeof document === "object" && document !== null && "name" in document ? document.name : "";
  return typeof name === "string" && name !== "" ? name : "Build without a name";
}

const isCancel = (error: unknown): boolean => error instanceof DOMException && error.name === "AbortError";

/** Today's date on the wall at a zone: "2027-06-26". */
function dateAt(zone: string | null): string {
  return new Intl.DateTimeFormat("en-CA", { timeZone: zone ?? undefined, year: "numeric", month: "2-digit", day: "2-digit" }).format(
    new Date(),
  );
}
