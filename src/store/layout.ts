import type { DBSchema, IDBPDatabase, IDBPTransaction } from "idb";
import type { Card, Entry, Snapshot, VersionNote } from "./port";

export interface Layout extends DBSchema {
  snapshots: { key: string; value: Snapshot & { readonly writer: string } };
  entries: { key: [string, number]; value: Entry };
  desk: { key: string; value: string };
  /** What the list shows; small, so that it can be written with every change. */
  cards: { key: string; value: Card };
  covers: { key: string; value: string };
  versions: { key: [string, string]; value: VersionNote };
  documents: { key: [string, string]; value: unknown };
}

export type Database = IDBPDatabase<Layout>;
export type Stores = keyof Layout & ("snapshots" | "entries" | "desk" | "cards" | "covers" | "versions" | "documents");

/** Every key of a build in a store whose keys begin with the build's. */
export const ofBuild = (key: string): IDBKeyRange => IDBKeyRange.bound([key], [key, []]);

/** Brings a database of any earlier layout up to this one, with all that is in it. */
export async function upgrade(database: Database, from: number, work: IDBPTransaction<Layout, Stores[], "versionchange">): Promise<void> {
  if (from < 1) {
    database.createObjectStore("snapshots", { keyPath: "key" });
    database.createObjectStore("entries", { keyPath: ["key", "seq"] });
    database.createObjectStore("desk");
  }
  if (from < 2) {
    database.createObjectStore("cards", { keyPath: "key" });
    database.createObjectStore("covers");
    database.createObjectStore("versions", { keyPath: ["build", "id"] });
    database.createObjectStore("documents");
    const cards = work.objectStore("cards");
    for (const { key, name, touched_ms } of await work.objectStore("snapshots").getAll()) {
      await cards.put({ key, name, changed_ms: touched_ms, size_bytes: null, removed_ms: null });
    }
  }
}
