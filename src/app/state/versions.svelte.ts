import { begin, type History } from "../../core/edit";
import { buildFileText, openBuildFile } from "../../files";
import type { ListPort, VersionNote } from "../../store";
import type { BuildDesk } from "./build-desk.svelte";
import { dayWords, localDay } from "./days";
import type { Selection } from "./desk";
import { troubleOf, troubleSentence } from "./trouble";

/** What a version is called in a sentence. */
export const versionName = ({ sort, name, at_ms }: VersionNote): string =>
  sort === "named" ? `the version “${name}”` : `this build as it was at the end of ${dayWords(at_ms)}`;

/** States of the open build that are kept beside it: the last of every day, and those that the builder named. */
export class Versions {
  readonly #desk: BuildDesk;
  readonly #where: () => { readonly port: ListPort | null; readonly key: string | null };
  readonly #changed: () => void;
  /** The build as it is, while a version of it lies on the desk. */
  #aside: { readonly work: History; readonly selected: Selection | null } | null = null;
  /** The version that is looked at. */
  looking = $state.raw<VersionNote | null>(null);
  list = $state.raw<readonly VersionNote[]>([]);

  constructor(desk: BuildDesk, where: () => { readonly port: ListPort | null; readonly key: string | null }, changed: () => void) {
    this.#desk = desk;
    this.#where = where;
    this.#changed = changed;
  }

  /** The build as it is now, whatever lies on the desk. */
  get present(): History {
    return this.#aside?.work ?? this.#desk.work;
  }

  async refresh(): Promise<void> {
    const { port, key } = this.#where();
    this.list = port === null || key === null ? [] : await port.versions(key).catch(() => []);
  }

  /** Keeps the build as it is under a name; a sentence where it could not be. */
  async keep(name: string): Promise<string | null> {
    const { port, key } = this.#where();
    if (port === null || key === null) return "This build is not kept in this browser, so no version of it can be. Save a file instead.";
    const { document, done } = this.present;
    const at_ms = Date.now();
    const words = done.at(-1)?.words ?? "";
    try {
      await port.keepVersion({ build: key, id: `named ${at_ms}`, sort: "named", name, day: localDay(at_ms), at_ms, words, document });
    } catch (error) {
      return troubleSentence(troubleOf(error));
    }
    await this.refresh();
    return null;
  }

  async drop({ build, id }: VersionNote): Promise<void> {
    await this.#where()
      .port?.dropVersion(build, id)
      .catch(() => undefined);
    await this.refresh();
  }

  /** Puts a version on the desk, to be looked at only; a sentence where it cannot be. */
  async look(note: VersionNote): Promise<string | null> {
    const document = await this.#where()
      .port?.document(note.build, note.id)
      .catch(() => null);
    // Another build was opened while it was fetched.
    if (this.#where().key !== note.build) return null;
    if (document === null || document === undefined) return "This version is not kept any more.";
    // As text and back: a version of an older program is brought up to this one.
    const opened = openBuildFile(buildFileText(document), "This version");
    if ("refusal" in opened) return opened.refusal.join(" ");
    this.#aside ??= { work: this.#desk.work, selected: this.#desk.selected };
    this.looking = note;
    this.#desk.load(begin(opened.document));
    this.#changed();
    return null;
  }

  /** The build as it is now comes back on the desk. */
  back(): void {
    const aside = this.#aside;
    if (!aside) return;
    this.forget();
    this.#desk.load(aside.work, aside.selected);
    this.#changed();
  }

  /** The build becomes what the version is, as one change that can be undone. */
  bringBack(): void {
    const note = this.looking;
    const { document } = this.#desk;
    this.back();
    if (note)
      this.#desk.edit(
        [{ path: [], value: document }],
        `bring back ${note.sort === "named" ? `“${note.name}”` : `the end of ${dayWords(note.at_ms)}`}`,
      );
  }

  /** Another tab has changed the build; true where a version lies on the desk and stays there. */
  follow(work: History): boolean {
    if (!this.#aside) return false;
    this.#aside = { ...this.#aside, work };
    return true;
  }

  /** Nothing is looked at any more: another build is put on the desk. */
  forget(): void {
    this.#aside = null;
    this.looking = null;
  }
}
