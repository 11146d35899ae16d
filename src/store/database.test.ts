import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import { openDB } from "idb";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { openDatabase } from "./database";
import { databaseVersion, type Snapshot, StoreError } from "./port";

const snapshot: Snapshot = { key: "wall", name: "Wall", format: 1, seq: 0, state: { steps: [] }, touched_ms: 5 };
const named = { name: "Wall", changed_ms: 7 };
const trouble = async (work: Promise<unknown>): Promise<string | undefined> =>
  work.then(
    () => undefined,
    (error: unknown) => (error instanceof StoreError ? error.trouble : String(error)),
  );

let upgraded = 0;
const open = (format = 1) =>
  openDatabase({
    format,
    onUpgraded: () => {
      upgraded += 1;
    },
  });

beforeEach(() => {
  upgraded = 0;
  globalThis.indexedDB = new IDBFactory();
});
afterEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

describe("database", () => {
  test("gives back snapshot and entries after it is closed and opened again, and which build was open", async () => {
    const first = await open();
    await first.snapshot("me", snapshot, true);
    await first.append(
      "me",
      [
        { key: "wall", seq: 1, action: "a" },
        { key: "wall", seq: 2, action: "b" },
      ],
      named,
    );
    first.close();
    const second = await open();
    expect(await second.open()).toBe("wall");
    const kept = await second.load("wall");
    expect(kept?.snapshot.state).toEqual({ steps: [] });
    expect(kept?.entries.map((entry) => entry.action)).toEqual(["a", "b"]);
    await second.snapshot("me", { ...snapshot, seq: 2, state: "ab" }, true);
    expect((await second.load("wall"))?.entries).toEqual([]);
    second.close();
  });

  test("a writer who lost the build is refused, and the new one is not", async () => {
    const port = await open();
    await port.snapshot("old", snapshot, true);
    await port.claim("new", "wall");
    expect(await trouble(port.append("old", [{ key: "wall", seq: 1, action: "x" }], named))).toBe("taken");
    expect(await trouble(port.snapshot("old", { ...snapshot, state: "x" }, true))).toBe("taken");
    await port.append("new", [{ key: "wall", seq: 1, action: "y" }], named);
    expect((await port.load("wall"))?.entries.map((entry) => entry.action)).toEqual(["y"]);
    port.close();
  });

  test("a document of a newer format is not written over", async () => {
    const newer = await open(2);
    await newer.snapshot("me", { ...snapshot, format: 2 }, true);
    const older = await open(1);
    expect(await trouble(older.claim("me", "wall"))).toBe("newer");
    expect(await trouble(older.append("me", [{ key: "wall", seq: 1, action: "x" }], named))).toBe("newer");
    expect(await trouble(older.snapshot("me", snapshot, true))).toBe("newer");
    expect((await newer.load("wall"))?.entries).toEqual([]);
    newer.close();
    older.close();
  });

  test("an old page lets go of the database when a newer program upgrades it, and then says so", async () => {
    const old = await open();
    await old.snapshot("me", snapshot, true);
    const fresh = await openDB("batterboard", databaseVersion + 1);
    expect(upgraded).toBe(1);
    expect(await trouble(old.append("me", [{ key: "wall", seq: 1, action: "x" }], named))).toBe("upgraded");
    fresh.close();
    expect(await trouble(open())).toBe("upgraded");
  });

  test("lists kept builds, the last touched first, and forgets one whole", async () => {
    const port = await open();
    await port.snapshot("me", snapshot, true);
    await port.snapshot("me", { ...snapshot, key: "cellar", name: "Cellar", touched_ms: 9 }, true);
    await port.append("me", [{ key: "cellar", seq: 1, action: "x" }], { name: "Cellar", changed_ms: 9 });
    expect((await port.list()).map((kept) => kept.name)).toEqual(["Cellar", "Wall"]);
    await port.forget("cellar");
    expect(await port.load("cellar")).toBeNull();
    expect(await port.open()).toBeNull();
    await port.snapshot("me", { ...snapshot, key: "cellar" }, true);
    expect((await port.load("cellar"))?.entries).toEqual([]);
    port.close();
  });

  test("a browser that gives no storage is said plainly", async () => {
    globalThis.indexedDB = {
      open: () => {
        throw new DOMException("no", "SecurityError");
      },
    } as unknown as IDBFactory;
    expect(await trouble(open())).toBe("refused");
  });
});
