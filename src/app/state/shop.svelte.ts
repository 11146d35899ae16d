import { begin, type History } from "../../core/edit";
import type { PlanMay } from "../../core/plan";
import type { OrderDrawing } from "../../draw";
import { examples } from "../../examples";
import { buildFileName, buildFileText, openBuildFile } from "../../files";
import { type KeptName, type Shelf, StoreError, type Taken } from "../../store";
import { Link } from "../../worker";
import { BuildDesk } from "./build-desk.svelte";
import type { Selection } from "./desk";
import { dateAt, type Picked, pickFile, saveFile, textOfFile } from "./device";
import { openShelf } from "./keeping";
import { nameOf } from "./names";
import { Planner } from "./planner";
import { selectionOf } from "./selection";
import { Settings } from "./settings.svelte";
import { remember, remembered } from "./stored";
import { troubleSentence } from "./trouble";

export interface Notice {
  readonly sentences: readonly string[];
  readonly grave: boolean;
  /** What is open is not kept here: a file is the way to keep it. */
  readonly save?: boolean;
  readonly act?: { readonly words: string; do(): void };
}

/** What stands round the desk: files, builds kept in this browser, settings, and what the builder is told. */
export class Shop {
  readonly settings = new Settings();
  readonly desk: BuildDesk;
  readonly #link = new Link(() => new Worker(new URL("../../worker/entry.ts", import.meta.url), { type: "module" }));
  #shelf: Shelf<History> | null = null;
  #start = $state(true);
  #keys = $state(false);
  #open = $state(false);
  #viewKey: ((key: string) => boolean) | null = null;
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
    const { shelf, trouble } = await openShelf({
      whole: () => ({ state: this.desk.work, name: this.name }),
      onSave: (state) => {
        this.desk.saved = state.kind;
        if (state.kind === "not-saved") this.#tell(troubleSentence(state.trouble), "save");
        else if (this.notice?.save) this.notice = null;
      },
      onLease: (state) => {
        this.desk.readOnly = state === "theirs" || state === "handing";
        if (this.desk.readOnly) this.#sayTaken();
      },
    });
    this.#shelf = shelf;
    if (trouble !== null) this.#tell(troubleSentence(trouble), "save");
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
    this.#openPicked(await pickFile());
  }

  /** Files dropped on the page: one build at a time. */
  async openDropped(files: readonly File[]): Promise<void> {
    const [file, ...more] = files;
    if (file === undefined) return;
    if (more.length > 0) this.#tell("Several files were dropped. Drop one build file at a time; what was open stays as it is.");
    else this.#openPicked(await textOfFile(file));
  }

  #openPicked(picked: Picked): void {
    if (picked === "unreadable") this.#tell("The file could not be read from this machine. Try again, or copy it somewhere else first.");
    else if (picked !== "left") this.#openText(picked.text, picked.name);
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
    const done = await saveFile(buildFileText(this.desk.document), buildFileName(this.name));
    if (done === "saved") this.desk.say("The file is saved.");
    else if (done === "failed") this.#tell("The file could not be written there. Choose another folder.", "save");
  }

  /** The steps as a layered drawing with text that many px high, from the worker; null when it was overtaken or cannot be made. */
  async layout(document: unknown, text: number): Promise<OrderDrawing | null> {
    return (await this.#link.ask("layout", { document }, { text }))?.drawing ?? null;
  }

  /** May one step be done before another, dates and people included? From the worker; null when it was overtaken. */
  async may(before: string, after: string): Promise<PlanMay | null> {
    return (await this.#link.ask("may", { document: this.desk.document }, { before, after }))?.may ?? null;
  }

  /** Order, with the first thing that is wrong opened where it can be put right. */
  showWrong(): void {
    const { build, findings } = this.desk;
    const wrong = findings.find((finding) => finding.severity === "stop");
    this.settings.view = "order";
    const selection = build && wrong ? selectionOf(build, wrong.where) : null;
    if (selection) this.desk.select(selection);
  }

  /** The view that is shown takes single keys while no field has the focus; what is answered takes them no more. */
  takeKeys(take: (key: string) => boolean): () => void {
    this.#viewKey = take;
    return () => {
      if (this.#viewKey === take) this.#viewKey = null;
    };
  }
  /** True where the view that is shown did something with the key. */
  viewKey(key: string): boolean {
    return this.#open && !this.#start && (this.#viewKey?.(key) ?? false);
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
      this.#tell(troubleSentence(error instanceof StoreError ? error.trouble : "failed"), "save");
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

  #tell(sentence: string, save?: "save"): void {
    this.notice = { sentences: [sentence], grave: true, save: save !== undefined };
  }

  async #list(): Promise<void> {
    this.kept = (await this.#shelf?.list()) ?? [];
  }
}
