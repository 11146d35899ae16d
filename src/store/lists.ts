import type { Connection } from "./connection";
import { type Database, ofBuild } from "./layout";
import type { KeptName, ListPort } from "./port";

/** The list of kept builds with their covers and versions, on the database. */
export function listsOn(connection: Connection): ListPort {
  return {
    list: () =>
      connection.attempt(async (database) => {
        const work = database.transaction(["cards", "covers"]);
        const [cards, covers, keys] = await Promise.all([
          work.objectStore("cards").getAll(),
          work.objectStore("covers").getAll(),
          work.objectStore("covers").getAllKeys(),
        ]);
        const coverOf = new Map(keys.map((key, at) => [key, covers[at]]));
        return cards
          .map((card): KeptName => ({ ...card, cover: coverOf.get(card.key) ?? null }))
          .sort((a, b) => b.changed_ms - a.changed_ms || (a.key < b.key ? -1 : 1));
      }),
    describe: (key, { cover, ...more }) =>
      connection.attempt(async (database) => {
        const work = database.transaction(["cards", "covers", "desk"], "readwrite");
        const [card, open] = await Promise.all([work.objectStore("cards").get(key), work.objectStore("desk").get("open")]);
        await Promise.all([
          card && work.objectStore("cards").put({ ...card, ...more }),
          card && cover != null ? work.objectStore("covers").put(cover, key) : null,
          more.removed_ms != null && open === key ? work.objectStore("desk").delete("open") : null,
          work.done,
        ]);
      }),
    forget: (key) => connection.attempt((database) => forget(database, [key])),
    keepVersion: ({ document, ...note }) =>
      connection.attempt(async (database) => {
        const work = database.transaction(["versions", "documents"], "readwrite", { durability: "strict" });
        await Promise.all([
          work.objectStore("versions").put(note),
          work.objectStore("documents").put(document, [note.build, note.id]),
          work.done,
        ]);
      }),
    versions: (build) =>
      connection.attempt(async (database) =>
        (await database.getAll("versions", ofBuild(build))).sort((a, b) => b.at_ms - a.at_ms || (a.id < b.id ? -1 : 1)),
      ),
    document: (build, id) => connection.attempt(async (database) => (await database.get("documents", [build, id])) ?? null),
    dropVersion: (build, id) => connection.attempt((database) => drop(database, [[build, id]])),
    prune: (before_ms) =>
      connection.attempt(async (database) => {
        const [cards, versions] = await Promise.all([database.getAll("cards"), database.getAll("versions")]);
        const old = versions.filter(({ sort, at_ms }) => sort === "day" && at_ms < before_ms);
        const gone = cards.filter(({ removed_ms }) => removed_ms !== null && removed_ms < before_ms);
        if (old.length > 0)
          await drop(
            database,
            old.map(({ build, id }) => [build, id]),
          );
        if (gone.length > 0)
          await forget(
            database,
            gone.map(({ key }) => key),
          );
      }),
  };
}

async function drop(database: Database, keys: readonly [string, string][]): Promise<void> {
  const work = database.transaction(["versions", "documents"], "readwrite");
  await Promise.all([
    ...keys.flatMap((key) => [work.objectStore("versions").delete(key), work.objectStore("documents").delete(key)]),
    work.done,
  ]);
}

async function forget(database: Database, keys: readonly string[]): Promise<void> {
  const work = database.transaction(["snapshots", "entries", "desk", "cards", "covers", "versions", "documents"], "readwrite", {
    durability: "strict",
  });
  const desk = work.objectStore("desk");
  const open = await desk.get("open");
  await Promise.all([
    ...keys.flatMap((key) => [
      work.objectStore("snapshots").delete(key),
      work.objectStore("entries").delete(ofBuild(key)),
      work.objectStore("cards").delete(key),
      work.objectStore("covers").delete(key),
      work.objectStore("versions").delete(ofBuild(key)),
      work.objectStore("documents").delete(ofBuild(key)),
      key === open ? desk.delete("open") : null,
    ]),
    work.done,
  ]);
}
