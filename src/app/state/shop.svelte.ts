import type { Snippet } from "svelte";
import { writtenId } from "../../core/base";
import { duplicate } from "../../core/edit";
import type { Aimed, OneMoreTable, PlanMay } from "../../core/plan";
import type { OrderDrawing } from "../../draw";
import { Link } from "../../worker";
import { Offline } from "../offline/offline.svelte";
import type { LookAnswer, Looking } from "../search/looking.svelte";
import type { Adding } from "./adding";
import { BuildDesk } from "./build-desk.svelte";
import { dateAt } from "./device";
import type { Found } from "./find";
import { Keeper } from "./keeper.svelte";
import { nameOf } from "./names";
import { Papers } from "./papers.svelte";
import { type PutIn, putIn } from "./part-clip";
import { Picked } from "./picked.svelte";
import { Planner } from "./planner";
import { selectionOf } from "./selection";
import { Settings, type ViewName } from "./settings.svelte";
import { remember } from "./stored";

/** What stands round the desk: where one is, builds kept in this browser, settings; and, from `Papers`, what comes and goes. */
export class Shop extends Papers {
  readonly settings = new Settings();
  readonly desk: BuildDesk;
  readonly #link = new Link(() => new Worker(new URL("../../worker/entry.ts", import.meta.url), { type: "module" }));
  readonly keeper: Keeper;
  readonly offline = new Offline();
  readonly picked = new Picked();
  #start = $state(true);
  #keys = $state(false);
  #look = $state(false);
  #open = $state(false);
  #viewKey: ((key: string) => boolean) | null = null;
  #adding = $state.raw<Adding | null>(null);
  buildShown = $state(false);
  /** The field that finds anything by its name. */
  findShown = $state(false);
  /** What Site is asked to show. */
  siteAt = $state.raw<{ readonly section: "people"; readonly id: string } | { readonly section: "temperatures" } | null>(null);
  versionsShown = $state(false);
  /** The search for an earlier finish, once the strip that shows it has come. */
  looking: Looking | null = null;
  ready = $state(false);

  constructor() {
    super();
    this.desk = new BuildDesk({
      planner: new Planner(this.#link, () => performance.now()),
      record: (action, before, after) => this.keeper.record(action, before, after),
      units: (build) => (this.settings.units === "build" ? (build?.site.units ?? "us") : this.settings.units),
      today: (zone) => dateAt(zone),
      now_ms: () => performance.now(),
      remember: (selected) => remember("selected", selected),
    });
    this.keeper = new Keeper({
      desk: this.desk,
      opened: () => this.#opened(),
      cleared: () => {
        this.#open = false;
        this.#adding = null;
        this.#start = true;
      },
      tell: (sentence) => this.tell(sentence),
    });
  }

  get isOpen(): boolean {
    return this.#open;
  }
  get name(): string {
    return this.#open ? nameOf(this.desk.document) : "";
  }
  get startShown(): boolean {
    return this.#start;
  }
  get keysShown(): boolean {
    return this.#keys;
  }

  /** Fetches what was open last; without any, the start page teaches. */
  async wake(): Promise<void> {
    // It makes the first plan, and is fetched while what was open is.
    this.#link.begin();
    await this.keeper.wake();
    this.ready = true;
    await this.keeper.tidy();
    await this.offline.begin();
  }

  /** Where one is in adding to the build; null in a view. */
  get adding(): Adding | null {
    return this.#adding;
  }
  /** Kits, parts and what is not known yet, over whatever view is shown; null goes back to the view. */
  add(at: Adding | null = { at: "kits" }): void {
    if (!this.#open) return;
    this.desk.tryOut(null);
    this.#adding = at;
    this.#start = false;
  }
  /** A view, whatever stood over it. */
  look(view: ViewName): void {
    this.add(null);
    this.settings.view = view;
  }

  showStart(): void {
    void this.keeper.refresh();
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
  get lookShown(): boolean {
    return this.#look;
  }
  showLook(): void {
    this.#look = true;
  }
  hideLook(): void {
    this.#look = false;
  }
  showBuild(): void {
    this.buildShown = true;
  }
  hideBuild(): void {
    this.buildShown = false;
  }
  showVersions(): void {
    this.buildShown = false;
    this.versionsShown = true;
  }
  hideVersions(): void {
    this.versionsShown = false;
  }
  /** One step back: the trial, the sheet, the start page. */
  escape(): void {
    if (this.#start) this.hideStart();
    else if (this.#adding) this.add(this.#adding.at === "kits" ? null : { at: "kits" });
    else if (this.desk.trial) this.desk.tryOut(null);
    else if (this.picked.size > 0 || this.picked.choosing) this.picked.clear();
    else if (this.desk.selected) this.desk.select(null);
    else if (this.keeper.versions.looking) this.keeper.versions.back();
    else this.desk.dismissMoved();
  }

  /** The newer program, once everything is on disk. */
  async startNewer(): Promise<void> {
    await this.keeper.again();
    if (this.desk.saved === "saved" || this.desk.readOnly || !this.#open) await this.offline.startNewer();
  }

  /** The steps as a layered drawing with text that many px high, from the worker; null when it was overtaken or cannot be made. */
  async layout(document: unknown, text: number): Promise<OrderDrawing | null> {
    return (await this.#link.ask("layout", { document }, { text }))?.drawing ?? null;
  }

  /** May one step be done before another, dates and people included? From the worker; null when it was overtaken. */
  async may(before: string, after: string): Promise<PlanMay | null> {
    return (await this.#link.ask("may", { document: this.desk.document }, { before, after }))?.may ?? null;
  }

  /** A portion of what one more of everything would buy; the same run goes on where it stopped. Null when it was overtaken or the worker is lost. */
  async oneMore(document: unknown, run: number): Promise<OneMoreTable | null> {
    return (await this.#link.ask("oneMore", { document }, { run, from: this.desk.today }))?.table ?? null;
  }

  /** A portion of the search for a plan that is better by the document's aim; as above. */
  async aim(document: unknown, run: number): Promise<Aimed | null> {
    return (await this.#link.ask("aim", { document }, { run, schedules: 60 }))?.aimed ?? null;
  }

  /** A portion of the search for an earlier finish. Null when it was overtaken or the worker is lost. */
  earlier(document: unknown, upTo: number): Promise<LookAnswer | null> {
    return this.#link.ask("search", { document }, { upTo });
  }

  copiedSteps(count: number): void {
    this.desk.say(`${count === 1 ? "One step is" : `${count} steps are`} copied. Ctrl V puts them in, in this build or in another.`);
  }
  /** Tells what came of pasted text, and shows the new steps chosen. */
  put(result: PutIn | null): void {
    const sentences = result?.sentences ?? ["What was copied is no part of a build. Choose steps and copy them first."];
    this.notice = { sentences, grave: result === null || result.steps.length === 0 };
    if (result === null || result.steps.length === 0) return;
    this.desk.say(sentences.join(" "));
    this.showSteps();
    this.desk.select(null);
    const made = new Set(result.steps);
    this.picked.take((this.desk.build?.steps ?? []).map(({ id }) => id).filter((id) => made.has(writtenId(id))));
  }
  duplicate(steps: readonly string[]): void {
    if (steps.length === 0 || this.desk.readOnly) return;
    this.put(
      putIn(
        this.desk,
        duplicate(
          this.desk.document,
          steps.map((id) => ({ list: "steps", id })),
        ),
        "duplicate",
      ),
    );
  }
  /** A person is looked at in Site; all else is chosen, and shown in the view one is in. */
  show({ list, id }: Found): void {
    if (list === "people") {
      this.siteAt = { section: "people", id };
      this.look("site");
      return;
    }
    this.add(null);
    this.hideStart();
    const { settings } = this;
    // Order has a list for each of the two; its drawing shows steps.
    if (settings.view === "order" && !(settings.order === "drawing" && list === "steps"))
      settings.order = list === "pieces" || list === "places" ? "things" : "steps";
    this.desk.select({ list, id });
    if (settings.view === "order")
      setTimeout(() => document.querySelector(`[data-row="${CSS.escape(id)}"]`)?.scrollIntoView({ block: "center" }));
  }
  /** Site, where the usual temperatures are written. */
  showTemperatures(): void {
    this.add(null);
    this.siteAt = { section: "temperatures" };
    this.look("site");
  }
  /** Order, with its list of steps. */
  showSteps(): void {
    this.settings.order = "steps";
    this.look("order");
  }

  /** Order, with the first thing that is wrong opened beside the list; where there is no room for both, the list alone: the sheet would cover it. */
  showWrong(): void {
    const { build, findings } = this.desk;
    const wrong = findings.find((finding) => finding.severity === "stop");
    this.look("order");
    const selection = build && wrong ? selectionOf(build, wrong.where) : null;
    this.desk.select(globalThis.matchMedia?.("(max-width: 64rem)").matches ? null : selection);
  }

  /** The view that is shown takes single keys while no field has the focus; what is answered takes them no more. */
  takeKeys(take: (key: string) => boolean): () => void {
    this.#viewKey = take;
    return () => {
      if (this.#viewKey === take) this.#viewKey = null;
    };
  }
  /** The view that is shown may have something over the side sheet, where there is room beside it. */
  beside = $state.raw<Snippet | null>(null);
  takeBeside(what: Snippet): () => void {
    this.beside = what;
    return () => {
      if (this.beside === what) this.beside = null;
    };
  }

  /** True where the view that is shown did something with the key. */
  viewKey(key: string): boolean {
    return this.#open && !this.#start && (this.#viewKey?.(key) ?? false);
  }

  #opened(): void {
    this.picked.clear();
    this.#open = true;
    this.#start = false;
    this.#adding = null;
  }
}
