import { examples } from "../../examples";
import { buildFileName, buildFileText, openBuildFile } from "../../files";
import type { KeptName } from "../../store";
import type { BuildDesk } from "./build-desk.svelte";
import { dayWords, goneAfter_ms } from "./days";
import { type Picked, pickFile, saveFile, textOfFile } from "./device";
import type { Keeper } from "./keeper.svelte";
import { shareFile } from "./share";

export interface Notice {
  readonly sentences: readonly string[];
  readonly grave: boolean;
  /** A file is the way to keep what is open. */
  readonly save?: boolean;
  readonly act?: { readonly words: string; do(): void };
}

/** What comes onto the desk and leaves it: examples, files, text, kept builds; and what the builder is told about it. */
export abstract class Papers {
  abstract readonly desk: BuildDesk;
  abstract readonly keeper: Keeper;
  abstract get isOpen(): boolean;
  abstract get name(): string;
  notice = $state.raw<Notice | null>(null);

  async openExample(id: string): Promise<void> {
    const example = examples.find((candidate) => candidate.id === id);
    if (!example) return;
    const text = buildFileText(await example.load());
    this.#leaving(() => this.#openText(text, undefined, true, true));
  }

  async openFile(): Promise<void> {
    this.#openPicked(await pickFile());
  }

  /** Files dropped on the page: one build at a time. */
  async openDropped(files: readonly File[]): Promise<void> {
    const [file, ...more] = files;
    if (file === undefined) return;
    if (more.length > 0) this.tell("Several files were dropped. Drop one build file at a time; what was open stays as it is.");
    else this.#openPicked(await textOfFile(file));
  }

  #openPicked(picked: Picked): void {
    if (picked === "unreadable") this.tell("The file could not be read from this machine. Try again, or copy it somewhere else first.");
    else if (picked !== "left") this.#leaving(() => this.#openText(picked.text, picked.name));
  }

  /** A build file's text from somewhere else: pasted, or dropped as text. `opened`: done when it has become a build. */
  openPasted(text: string, opened?: () => void): void {
    this.#leaving(() => {
      if (this.#openText(text, "What you pasted").length === 0) opened?.();
    });
  }

  openKept(key: string): void {
    this.#leaving(() => void this.keeper.open(key));
  }

  /** What is on the desk goes on as a build of its own. */
  beginCopy(): void {
    this.#leaving(() => this.keeper.beginCopy());
  }

  /** Throws a kept build away, and says how it comes back. */
  async remove(build: KeptName): Promise<void> {
    const { key, name } = build;
    if (!(await this.keeper.remove(key))) return;
    this.notice = {
      sentences: [`“${name}” is thrown away. Until ${dayWords(goneAfter_ms(Date.now()))} it can be brought back from the list below.`],
      grave: false,
      act: {
        words: "undo",
        do: () => {
          this.notice = null;
          void this.keeper.bringBack(key);
        },
      },
    };
  }

  /** A new document; sentences when it cannot be begun. */
  begin(document: unknown): readonly string[] {
    if (this.#unkept) return [this.#unkeptSentence];
    return this.#openText(buildFileText(document), undefined, false);
  }

  async saveFile(): Promise<void> {
    if (!this.isOpen) return;
    const done = await saveFile(buildFileText(this.desk.document), buildFileName(this.name));
    if (done === "saved") this.desk.say("The file is saved.");
    else if (done === "failed") this.tell("The file could not be written there. Choose another folder.", "save");
  }

  /** Hands the build to another program as a file; where this browser cannot, the file is saved. */
  async share(): Promise<void> {
    if (!this.isOpen) return;
    const done = await shareFile(buildFileText(this.desk.document), buildFileName(this.name), this.name);
    if (done === "none") await this.saveFile();
    else if (done === "failed") this.tell("The file could not be handed over. Save it instead.", "save");
  }

  dismissNotice(): void {
    this.notice = null;
  }

  /** Opens what the text holds; a text that is no build leaves everything as it is and says why. */
  #openText(text: string, fileName?: string, tell = true, passing = false): readonly string[] {
    const opened = openBuildFile(text, fileName);
    if ("refusal" in opened) {
      if (tell) this.notice = { sentences: opened.refusal, grave: true };
      return opened.refusal;
    }
    // Of a newer build a bar says so for as long as it lies there.
    this.notice = opened.remarks.length > 0 && !opened.newer ? { sentences: opened.remarks, grave: false } : null;
    this.keeper.begin(opened.document, opened.newer, passing);
    return [];
  }

  /** What is open has changes that are nowhere but in this page. */
  get #unkept(): boolean {
    const { work, readOnly, saved } = this.desk;
    return this.isOpen && !readOnly && saved === "not-saved" && work.done.length + work.undone.length > 0;
  }

  get #unkeptSentence(): string {
    return `The last changes of “${this.name}” are only in this page. Save a file of it before you open another build.`;
  }

  /** Puts another build on the desk, once the one that lies there is kept or the builder has given it up. */
  #leaving(work: () => void): void {
    if (!this.#unkept) {
      this.notice = null;
      work();
      return;
    }
    this.notice = {
      sentences: [this.#unkeptSentence],
      grave: true,
      save: true,
      act: {
        words: "open it anyway",
        do: () => {
          this.notice = null;
          work();
        },
      },
    };
  }

  tell(sentence: string, save?: "save"): void {
    this.notice = { sentences: [sentence], grave: true, save: save !== undefined };
  }
}
