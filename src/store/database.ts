import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import { databaseVersion, type Entry, type Kept, type KeptName, type Port, type Snapshot, StoreError } from "./port";

interface Layout extends DBSchema {
  snapshots: { key: string; value: Snapshot & { readonly writer: string } };
  entries: { key: [string, number]; value: Entry };
  desk: { key: string; value: string };
}

type Database = IDBPDatabase<Layout>;

/** Strict: a write counts only once the browser has told the disk, so a crash after "saved" loses nothing. */
const strict = { durability: "strict" } as const;

export interface OpenOptions {
  readonly name?: string;
  /** Called once when another page wants to change the layout; the connection is closed by then. */
  onUpgraded(): void;
  /** The newest document format this program can write. */
  readonly format: number;
}

/** Opens the database, making it where there is none. Throws StoreError: refused, or upgraded where the layout is newer than this program. */
export async function openDatabase(options: OpenOptions): Promise<Port & { close(): void }> {
  let database: Database;
  try {
    database = await openDB<Layout>(options.name ?? "batterboard", databaseVersion, {
      upgrade(fresh) {
        fresh.createObjectStore("snapshots", { keyPath: "key" });
        fresh.createObjectStore("entries", { keyPath: ["key", "seq"] });
        fresh.createObjectStore("desk");
      },
      blocking() {
        database?.close();
        options.onUpgraded();
      },
    });
  } catch (error) {
    throw new StoreError(isNamed(error, "VersionError") ? "upgraded" : "refused", error);
  }
  return { ...portOn(database, options.format), close: () => database.close() };
}

function portOn(database: Database, format: number): Port {
  const checkFormat = (kept: Snapshot | undefined): void => {
    if (kept !== undefined && kept.format > format) throw new StoreError("newer");
  };
  return {
    append: (writer, entries) =>
      attempt(async () => {
        const work = database.transaction(["snapshots", "entries"], "readwrite", strict);
        const kept = await work.objectStore("snapshots").get(entries[0].key);
        if (kept === undefined || kept.writer !== writer) return abort(work, new StoreError("taken"));
        if (kept.format > format) return abort(work, new StoreError("newer"));
        const store = work.objectStore("entries");
        await Promise.all([...entries.map((entry) => store.put(entry)), work.done]);
      }),
    snapshot: (writer, snapshot) =>
      attempt(async () => {
        const work = database.transaction(["snapshots", "entries", "desk"], "readwrite", strict);
        const store = work.objectStore("snapshots");
        const kept = await store.get(snapshot.key);
        if (kept !== undefined && kept.writer !== writer) return abort(work, new StoreError("taken"));
        if (kept !== undefined && kept.format > format) return abort(work, new StoreError("newer"));
        await Promise.all([
          store.put({ ...snapshot, writer }),
          work.objectStore("entries").delete(IDBKeyRange.bound([snapshot.key, 0], [snapshot.key, snapshot.seq])),
          work.objectStore("desk").put(snapshot.key, "open"),
          work.done,
        ]);
      }),
    claim: (writer, key) =>
      attempt(async () => {
        const work = database.transaction(["snapshots", "desk"], "readwrite", strict);
        const store = work.objectStore("snapshots");
        const kept = await store.get(key);
        checkFormat(kept);
        await Promise.all([kept && store.put({ ...kept, writer }), work.objectStore("desk").put(key, "open"), work.done]);
      }),
    load: (key) =>
      attempt(async () => {
        const work = database.transaction(["snapshots", "entries"]);
        const [snapshot, entries] = await Promise.all([
          work.objectStore("snapshots").get(key),
          work.objectStore("entries").getAll(IDBKeyRange.bound([key, 0], [key, Number.MAX_SAFE_INTEGER])),
        ]);
        return snapshot === undefined ? null : ({ snapshot, entries } satisfies Kept);
      }),
    open: () => attempt(async () => (await database.get("desk", "open")) ?? null),
    setOpen: (key) =>
      attempt(async () => {
        if (key === null) await database.delete("desk", "open");
        else await database.put("desk", key, "open");
      }),
    list: () =>
      attempt(async () => {
        const all = await database.getAll("snapshots");
        return all
          .map(({ key, name, touched_ms }): KeptName => ({ key, name, touched_ms }))
          .sort((a, b) => b.touched_ms - a.touched_ms || (a.key < b.key ? -1 : 1));
      }),
    forget: (key) =>
      attempt(async () => {
        const work = database.transaction(["snapshots", "entries", "desk"], "readwrite", strict);
        const desk = work.objectStore("desk");
        if ((await desk.get("open")) === key) await desk.delete("open");
        await Promise.all([
          work.objectStore("snapshots").delete(key),
          work.objectStore("entries").delete(IDBKeyRange.bound([key, 0], [key, Number.MAX_SAFE_INTEGER])),
          work.done,
        ]);
      }),
  };
}

/** Ends the transaction without a trace of it, then throws. */
async function abort(work: { abort(): void; readonly done: Promise<void> }, error: StoreError): Promise<never> {
  work.abort();
  await work.done.catch(() => undefined);
  throw error;
}

async function attempt<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (error instanceof StoreError) throw error;
    if (isNamed(error, "QuotaExceededError")) throw new StoreError("full", error);
    // A connection closed for an upgrade answers with InvalidStateError.
    if (isNamed(error, "InvalidStateError")) throw new StoreError("upgraded", error);
    throw new StoreError("failed", error);
  }
}

function isNamed(error: unknown, name: string): boolean {
  return typeof error === "object" && error !== null && "name" in error && error.name === name;
}
