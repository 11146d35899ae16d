/** The database's layout. Raised when stores or keys change; the document and the worker's protocol have versions of their own. */
export const databaseVersion = 1;

/** One action on a kept build, in the order it was made. `seq` starts at 1 and has no gaps. */
export interface Entry {
  readonly key: string;
  readonly seq: number;
  readonly action: unknown;
}

/** The whole state of a build after the actions up to `seq`, and who may add more. */
export interface Snapshot {
  readonly key: string;
  readonly name: string;
  /** Version of the document's format, so that an older program leaves a newer document alone. */
  readonly format: number;
  readonly seq: number;
  readonly state: unknown;
  /** Milliseconds since 1970 when it was last opened or written whole; orders the list of kept builds. */
  readonly touched_ms: number;
}

export interface Kept {
  readonly snapshot: Snapshot;
  readonly entries: readonly Entry[];
}

/** A build as the list of kept builds shows it. */
export interface KeptName {
  readonly key: string;
  readonly name: string;
  readonly touched_ms: number;
}

/**
 * What autosave needs of a database. Every promise settles only once the data is on disk or the attempt has failed, and it fails with a
 * StoreError. A writer's token is checked in the same transaction as the write, so a tab that lost the build cannot write over it.
 */
export interface Port {
  /** Adds the entries after those that are there. */
  append(writer: string, entries: readonly Entry[]): Promise<void>;
  /** Puts the snapshot, makes `writer` the one who may write, drops the entries it holds, and makes its build the open one. */
  snapshot(writer: string, snapshot: Snapshot): Promise<void>;
  /** Makes `writer` the one who may write. */
  claim(writer: string, key: string): Promise<void>;
  load(key: string): Promise<Kept | null>;
  /** The build that was open last. */
  open(): Promise<string | null>;
  setOpen(key: string | null): Promise<void>;
  list(): Promise<readonly KeptName[]>;
  forget(key: string): Promise<void>;
}

/**
 * refused: the browser gives no storage here. full: no room left. taken: another tab writes this build now. upgraded: a newer program
 * has changed the database. newer: the kept document is of a newer format. failed: anything else.
 */
export type StoreTrouble = "refused" | "full" | "taken" | "upgraded" | "newer" | "failed";

export class StoreError extends Error {
  readonly trouble: StoreTrouble;
  constructor(trouble: StoreTrouble, cause?: unknown) {
    super(trouble, { cause });
    this.trouble = trouble;
  }
}
