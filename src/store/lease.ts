/** What passes between tabs; a tab that speaks another version is not answered. */
export const tabsVersion = 2;

/** hand-over: give me this build. changed: more of this build is on disk. listed: the list of kept builds is another. */
export type TabMessage = {
  readonly version: number;
  readonly say: "hand-over" | "changed" | "listed";
  readonly build: string;
  readonly from: string;
};

export interface LeasePort {
  /** Waits at most `wait_ms` for the lock; then null, or takes it by force. `lost` is called once if it is taken away later. */
  hold(name: string, wait_ms: number, force: boolean, lost: () => void): Promise<(() => void) | null>;
  post(message: TabMessage): void;
  listen(hear: (message: TabMessage) => void): () => void;
}

/** handing: another tab has asked; what is in line is still written, nothing new may be added. */
export type LeaseState = "none" | "mine" | "handing" | "theirs";

export interface LeaseOptions {
  readonly port: LeasePort;
  readonly tab: string;
  /** Before the build is handed to another tab: finish writing. */
  beforeRelease(): Promise<void>;
  /** `build`: the one it is about, which the page may have left by then; null where none is held any more. */
  report(state: LeaseState, build: string | null): void;
  readonly patience_ms?: number;
}

/** A page that is being loaded again may still hold what it held for so long. */
const goingTab_ms = 300;

/** Which of several tabs may change a build: one at a time, handed over when another asks, taken by force when the holder does not answer. */
export class Lease {
  readonly #options: LeaseOptions;
  readonly #stopListening: () => void;
  #build: string | null = null;
  #release: (() => void) | null = null;

  constructor(options: LeaseOptions) {
    this.#options = options;
    this.#stopListening = options.port.listen((message) => this.#hear(message));
  }

  /** Lets go of the build held so far and takes this one if nobody has it. */
  async take(build: string): Promise<boolean> {
    const { port } = this.#options;
    this.letGo();
    this.#build = build;
    const atOnce = await port.hold(leaseName(build), 0, false, () => this.#lost(build));
    return this.#got(atOnce ?? (await port.hold(leaseName(build), goingTab_ms, false, () => this.#lost(build))), build);
  }

  /** Asks the tab that has the build for it; without an answer in time it is taken by force. */
  async takeOver(build: string): Promise<boolean> {
    const { port, tab, patience_ms = 2000 } = this.#options;
    this.letGo();
    this.#build = build;
    port.post({ version: tabsVersion, say: "hand-over", build, from: tab });
    const asked = await port.hold(leaseName(build), patience_ms, false, () => this.#lost(build));
    return this.#got(asked ?? (await port.hold(leaseName(build), 0, true, () => this.#lost(build))), build);
  }

  close(): void {
    this.#stopListening();
    this.letGo();
  }

  #got(release: (() => void) | null, build: string): boolean {
    // Another build was asked for while this one was awaited.
    if (this.#build !== build) {
      release?.();
      return false;
    }
    this.#release = release;
    this.#options.report(release === null ? "theirs" : "mine", build);
    return release !== null;
  }

  /** Whatever is held may be taken by others. */
  letGo(): void {
    this.#release?.();
    this.#release = null;
    this.#build = null;
    this.#options.report("none", null);
  }

  #lost(build: string): void {
    if (this.#build === build) this.#release = null;
    this.#options.report("theirs", build);
  }

  async #hear(message: TabMessage): Promise<void> {
    if (message.version !== tabsVersion || message.from === this.#options.tab || message.say !== "hand-over") return;
    if (message.build !== this.#build || this.#release === null) return;
    const release = this.#release;
    this.#release = null;
    this.#options.report("handing", message.build);
    await this.#options.beforeRelease();
    this.#options.report("theirs", message.build);
    release();
  }
}

export function leaseName(build: string): string {
  return `batterboard:${build}`;
}
