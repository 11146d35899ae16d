import type { LeasePort, LeaseState } from "./lease";
import type { Mooring } from "./lifeboat";
import type { ListPort, Port, StoreTrouble } from "./port";
import type { SaveState } from "./saver";

/** A build taken from the shelf. `mine` is false when another tab changes it. */
export interface Taken<State> {
  readonly key: string;
  readonly state: State;
  readonly mine: boolean;
  /** Milliseconds since 1970 of its last change. */
  readonly changed_ms: number;
}

/** What came of opening the database. */
export type Storage = { readonly port: Port & ListPort } | { readonly trouble: StoreTrouble };

export interface ShelfOptions<State> {
  readonly storage: Storage;
  readonly tabs: LeasePort;
  /** Tells this tab from others. */
  readonly tab: string;
  readonly format: number;
  readonly mooring: Mooring;
  apply(state: State, action: unknown): State;
  nameOf(state: State): string;
  onSave(state: SaveState): void;
  onLease(state: LeaseState): void;
  /** The tab that has the open build has changed it. */
  onFollow(state: State): void;
  /** Another tab has changed the list of kept builds. */
  onListed(): void;
  now_ms(): number;
  newKey(): string;
}
