import { Connection, type ConnectionOptions } from "./connection";
import { ofBuild } from "./layout";
import { listsOn } from "./lists";
import { type Kept, type ListPort, type Port, type Snapshot, StoreError } from "./port";

/** Strict: a write counts only once the browser has told the disk, so a crash after "saved" loses nothing. */
const strict = { durability: "strict" } as const;

export interface OpenOptions extends ConnectionOptions {
  /** The newest document format this program can write. */
  readonly format: number;
}

/** Opens the database, making it where there is none. Throws StoreError: refused, or upgraded where the layout is newer than this program. */
export async function openDatabase(options: OpenOptions): Promise<Port & ListPort> {
  const connection = new Connection(options);
  await connection.open();
  return { ...portOn(connection, options.format), ...listsOn(connection) };
}

function portOn(connection: Connection, format: number): Port {
  const troubleOf = (kept: (Snapshot & { writer: string }) | undefined, writer: string): StoreError | null => {
    if (kept === undefined) return null;
    if (kept.writer !== writer) return new StoreError("taken");
    return kept.format > format ? new StoreError("newer") : null;
  };
  return {
    append: (writer, entries, named) =>
      connection.attempt(async (database) => {
        const { key } = entries[0];
        const work = database.transaction(["snapshots", "entries", "cards"], "readwrite", strict);
        const [kept, card] = await Promise.all([work.objectStore("snapshots").get(key), work.objectStore("cards").get(key)]);
        const trouble = kept === undefined ? new StoreError("gone") : troubleOf(kept, writer);
        if (trouble) return abort(work, trouble);
        const store = work.objectStore("entries");
        await Promise.all([
          ...entries.map((entry) => store.put(entry)),
          work.objectStore("cards").put({ size_bytes: null, ...card, key, ...named, removed_ms: null }),
          work.done,
        ]);
      }),
    snapshot: (writer, snapshot, open) =>
      connection.attempt(async (database) => {
        const { key, name, touched_ms } = snapshot;
        const work = database.transaction(["snapshots", "entries", "cards", "desk"], "readwrite", strict);
        const store = work.objectStore("snapshots");
        const [kept, card] = await Promise.all([store.get(key), work.objectStore("cards").get(key)]);
        const trouble = troubleOf(kept, writer);
        if (trouble) return abort(work, trouble);
        await Promise.all([
          store.put({ ...snapshot, writer }),
          work.objectStore("entries").delete(IDBKeyRange.bound([key, 0], [key, snapshot.seq])),
          work.objectStore("cards").put({ size_bytes: null, ...card, key, name, changed_ms: touched_ms, removed_ms: null }),
          open ? work.objectStore("desk").put(key, "open") : null,
          work.done,
        ]);
      }),
    claim: (writer, key) =>
      connection.attempt(async (database) => {
        const work = database.transaction("snapshots", "readwrite", strict);
        const kept = await work.store.get(key);
        if (kept !== undefined && kept.format > format) throw new StoreError("newer");
        await Promise.all([kept && work.store.put({ ...kept, writer }), work.done]);
      }),
    load: (key) =>
      connection.attempt(async (database) => {
        const work = database.transaction(["snapshots", "entries", "cards"]);
        const [found, entries, card] = await Promise.all([
          work.objectStore("snapshots").get(key),
          work.objectStore("entries").getAll(ofBuild(key)),
          work.objectStore("cards").get(key),
        ]);
        if (found === undefined) return null;
        const { writer, ...snapshot } = found;
        return { snapshot, writer, changed_ms: card?.changed_ms ?? snapshot.touched_ms, entries } satisfies Kept;
      }),
    since: (key, seq) =>
      connection.attempt(async (database) => {
        const work = database.transaction(["snapshots", "entries"]);
        const entries = await work.objectStore("entries").getAll(IDBKeyRange.bound([key, seq + 1], [key, []]));
        if (entries[0]?.seq === seq + 1) return { entries };
        const found = await work.objectStore("snapshots").get(key);
        if (found === undefined) return null;
        if (found.seq <= seq) return { entries: [] };
        return { snapshot: found, entries };
      }),
    open: () => connection.attempt(async (database) => (await database.get("desk", "open")) ?? null),
    setOpen: (key) =>
      connection.attempt(async (database) => {
        if (key === null) await database.delete("desk", "open");
        else await database.put("desk", key, "open");
      }),
    close: () => connection.close(),
  };
}

/** Ends the transaction without a trace of it, then throws. */
async function abort(work: { abort(): void; readonly done: Promise<void> }, error: StoreError): Promise<never> {
  work.abort();
  await work.done.catch(() => undefined);
  throw error;
}
