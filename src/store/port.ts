/** The database's layout. Raised when stores or keys change; the document and the worker's protocol have versions of their own. */
export const databaseVersion = 2;

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
  /** Milliseconds since 1970 when it was last written whole. */
  readonly touched_ms: number;
}

export interface Kept {
  readonly snapshot: Snapshot;
  /** The tab that may write. */
  readonly writer: string;
  /** As the list shows it. */
  readonly changed_ms: number;
  readonly entries: readonly Entry[];
}

/** What was added since: only the entries, unless these no longer join on. */
type Since = Pick<Kept, "entries"> | Pick<Kept, "snapshot" | "entries">;

/** A build as the list of kept builds shows it. */
export interface Card {
  readonly key: string;
  readonly name: string;
  /** Milliseconds since 1970 when it was last changed; orders the list. */
  readonly changed_ms: number;
  /** Of its build file; null where nobody has counted yet. */
  readonly size_bytes: number | null;
  /** Milliseconds since 1970 when it was thrown away; null while it is not. */
  readonly removed_ms: number | null;
}

export interface KeptName extends Card {
  /** A drawing as SVG text; null where none was made yet. */
  readonly cover: string | null;
}

/** A state of a build that is kept beside it. `day`: the last of that day; the others have the name that the builder gave. */
export interface VersionNote {
  readonly build: string;
  readonly id: string;
  readonly sort: "day" | "named";
  readonly name: string;
  /** Local date of the last change in it, "2027-05-04". */
  readonly day: string;
  /** Milliseconds since 1970 of the last change in it. */
  readonly at_ms: number;
  /** The last change in it. */
  readonly words: string;
}

export interface Version extends VersionNote {
  readonly document: unknown;
}

/** What the list of builds shows of a build, as it is after a write. */
type Named = Pick<Card, "name" | "changed_ms">;

/**
 * What autosave needs of a database. Every promise settles only once the data is on disk or the attempt has failed, and it fails with a
 * StoreError. A writer's token is checked in the same transaction as the write, so a tab that lost the build cannot write over it.
 */
export interface Port {
  /** Adds the entries after those that are there; a build that was thrown away is in use again. */
  append(writer: string, entries: readonly Entry[], named: Named): Promise<void>;
  /** Puts the snapshot, makes `writer` the one who may write, and drops the entries it holds. `open`: it is the build to open next time. */
  snapshot(writer: string, snapshot: Snapshot, open: boolean): Promise<void>;
  /** Makes `writer` the one who may write. */
  claim(writer: string, key: string): Promise<void>;
  load(key: string): Promise<Kept | null>;
  since(key: string, seq: number): Promise<Since | null>;
  /** The build that was open last. */
  open(): Promise<string | null>;
  setOpen(key: string | null): Promise<void>;
  close(): void;
}

/** The list of kept builds, their covers, and the versions kept of each. */
export interface ListPort {
  list(): Promise<readonly KeptName[]>;
  /** Adds to what the list shows of a build; nothing where it is not there. */
  describe(key: string, more: Partial<Pick<KeptName, "cover" | "size_bytes" | "removed_ms">>): Promise<void>;
  /** Throws the build away for good, with its versions. */
  forget(key: string): Promise<void>;
  keepVersion(version: Version): Promise<void>;
  versions(build: string): Promise<readonly VersionNote[]>;
  document(build: string, id: string): Promise<unknown>;
  dropVersion(build: string, id: string): Promise<void>;
  /** Drops for good what was thrown away, and states of days, before that time. */
  prune(before_ms: number): Promise<void>;
}

/**
 * refused: the browser gives no storage here. full: no room left. taken: another tab writes this build now. upgraded: a newer program
 * has changed the database. newer: the kept document is of a newer format. gone: the database does not have this build. failed: anything else.
 */
export type StoreTrouble = "refused" | "full" | "taken" | "upgraded" | "newer" | "gone" | "failed";

export class StoreError extends Error {
  readonly trouble: StoreTrouble;
  constructor(trouble: StoreTrouble, cause?: unknown) {
    super(trouble, { cause });
    this.trouble = trouble;
  }
}
