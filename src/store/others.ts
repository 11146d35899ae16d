import { type LeasePort, leaseName } from "./lease";
import { boarded, type Mooring } from "./lifeboat";
import { type Kept, type ListPort, type Port, StoreError } from "./port";
import { replay } from "./restore";
import type { Whole } from "./saver";

export interface OthersOptions<State> {
  readonly port: Port & ListPort;
  readonly tabs: LeasePort;
  readonly tab: string;
  readonly format: number;
  readonly mooring: Mooring;
  apply(state: State, action: unknown): State;
  nameOf(state: State): string;
  now_ms(): number;
  newKey(): string;
}

/** Kept builds that are not the open one: looked into, changed and copied where they lie. */
export class Others<State> {
  readonly #options: OthersOptions<State>;

  constructor(options: OthersOptions<State>) {
    this.#options = options;
  }

  /** As it is now, whoever changes it. Throws StoreError: gone, newer. */
  async look(key: string): Promise<State> {
    const { apply, mooring } = this.#options;
    return replay(boarded(await this.#load(key), mooring.get(key)), apply).state;
  }

  /** Does one action on it that is no work on the build: a new name. It keeps its place in the list. Throws StoreError: taken where a tab has it open, gone, newer. */
  async change(key: string, action: unknown): Promise<void> {
    const { port, tabs, tab, mooring, apply, nameOf } = this.#options;
    const release = await tabs.hold(leaseName(key), 0, false, () => undefined);
    if (release === null) throw new StoreError("taken");
    try {
      const { writer } = await this.#load(key);
      await port.claim(tab, key);
      const kept = await this.#load(key);
      const disk = replay(kept, apply);
      // From now on this tab was the last to write: what lies in the lifeboat goes to the disk now, or never.
      const whole = boarded({ ...kept, writer }, mooring.get(key));
      const { state, seq } = replay(whole, apply);
      const name = nameOf(apply(state, action));
      const left = whole.entries.filter((entry) => entry.seq > disk.seq && entry.seq <= seq);
      await port.append(tab, [...left, { key, seq: seq + 1, action }], { name, changed_ms: kept.changed_ms });
      mooring.put(key, null);
    } finally {
      release();
    }
  }

  /** Puts a build on the shelf without opening it, and gives its key. */
  async add({ state, name }: Whole): Promise<string> {
    const { port, tab, format, newKey, now_ms } = this.#options;
    const key = newKey();
    await port.snapshot(tab, { key, name, format, seq: 0, state, touched_ms: now_ms() }, false);
    return key;
  }

  async #load(key: string): Promise<Kept> {
    const kept = await this.#options.port.load(key);
    if (kept === null) throw new StoreError("gone");
    if (kept.snapshot.format > this.#options.format) throw new StoreError("newer");
    return kept;
  }
}
