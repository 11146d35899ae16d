import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import { openDB } from "idb";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { TestBrowser } from "../../test/fixtures/tabs";
import { openDatabase } from "./database";
import { StoreError, type Version } from "./port";

let browser: TestBrowser;
beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
  browser = new TestBrowser();
});
afterEach(() => browser.close());

async function kept() {
  const tab = await browser.tab("a");
  const { port, others } = tab;
  if (!port || !others) throw new Error("no storage");
  tab.begin(["wall"]);
  tab.write("dig");
  await tab.shelf.flush();
  return { ...tab, port, others };
}
const trouble = (work: Promise<unknown>): Promise<unknown> => work.catch((error) => (error instanceof StoreError ? error.trouble : error));

describe("other builds", () => {
  test("one is changed and copied where it lies; what is open is not touched", async () => {
    const { shelf, others, port } = await kept();
    const copy = await others.add({ state: ["copy"], name: "copy" });
    await others.change(copy, "form");
    expect(await others.look(copy)).toEqual(["copy", "form"]);
    expect(await others.look(shelf.key ?? "")).toEqual(["wall", "dig"]);
    expect(await port.open()).toBe(shelf.key);
    expect(await trouble(others.change(shelf.key ?? "", "no"))).toBe("taken");
    expect(await trouble(others.look("nothing"))).toBe("gone");
  });

  test("what its last page had not got to the disk comes before the change, and is in a copy", async () => {
    const a = await kept();
    const key = a.shelf.key ?? "";
    a.write("form");
    a.shelf.board();
    a.shelf.stop("failed");
    const { shelf } = a;
    shelf.close();
    const b = await browser.tab("b");
    if (!b.others) throw new Error("no storage");
    expect(await b.others.look(key)).toEqual(["wall", "dig", "form"]);
    await b.others.change(key, "new name");
    expect(await b.others.look(key)).toEqual(["wall", "dig", "form", "new name"]);
    expect(browser.boat).toBeNull();
    expect((await b.shelf.take(key))?.state).toEqual(["wall", "dig", "form", "new name"]);
  });

  test("one that is thrown away keeps all it had until it is brought back, and is not opened by itself", async () => {
    const { shelf, port, others } = await kept();
    const key = shelf.key ?? "";
    await port.describe(key, { cover: "<svg/>", size_bytes: 900 });
    await shelf.leave();
    await port.describe(key, { removed_ms: 5000 });
    expect(await port.list()).toMatchObject([{ key, name: "wall", removed_ms: 5000, cover: "<svg/>", size_bytes: 900 }]);
    expect(await port.open()).toBeNull();
    await port.prune(5000);
    expect(await others.look(key)).toEqual(["wall", "dig"]);
    await port.describe(key, { removed_ms: null });
    expect((await shelf.take(key))?.state).toEqual(["wall", "dig"]);
    await port.describe(key, { removed_ms: 5000 });
    await port.prune(5001);
    expect(await port.list()).toEqual([]);
    expect(await port.load(key)).toBeNull();
  });

  test("a change brings back what another tab has thrown away meanwhile", async () => {
    const { shelf, port, write } = await kept();
    await port.describe(shelf.key ?? "", { removed_ms: 5000 });
    write("form");
    await shelf.flush();
    expect((await port.list())[0]?.removed_ms).toBeNull();
  });
});

describe("versions", () => {
  const version = (id: string, at_ms: number, sort: Version["sort"], build = "wall"): Version => ({
    build,
    id,
    sort,
    name: sort === "named" ? id : "",
    day: "2027-05-04",
    at_ms,
    words: "add a step",
    document: { id },
  });

  test("are listed, the latest first, without those of other builds; the old ones of days go, named ones stay", async () => {
    const { port } = await kept();
    for (const [id, at_ms, sort] of [
      ["monday", 10, "day"],
      ["before the pour", 5, "named"],
      ["tuesday", 20, "day"],
    ] as const)
      await port.keepVersion(version(id, at_ms, sort));
    await port.keepVersion(version("monday", 10, "day", "wall-2"));
    expect((await port.versions("wall")).map(({ id }) => id)).toEqual(["tuesday", "monday", "before the pour"]);
    expect(await port.document("wall", "monday")).toEqual({ id: "monday" });
    await port.prune(15);
    expect((await port.versions("wall")).map(({ id }) => id)).toEqual(["tuesday", "before the pour"]);
    expect(await port.document("wall", "monday")).toBeNull();
    await port.dropVersion("wall", "before the pour");
    expect((await port.versions("wall")).map(({ id }) => id)).toEqual(["tuesday"]);
    await port.forget("wall");
    expect(await port.versions("wall")).toEqual([]);
  });
});

test("a database of the first layout is brought up with all that is in it", async () => {
  const old = await openDB("batterboard", 1, {
    upgrade(fresh) {
      fresh.createObjectStore("snapshots", { keyPath: "key" });
      fresh.createObjectStore("entries", { keyPath: ["key", "seq"] });
      fresh.createObjectStore("desk");
    },
  });
  await old.put("snapshots", { key: "wall", name: "Wall", format: 1, seq: 0, state: ["wall"], touched_ms: 5, writer: "me" });
  await old.put("entries", { key: "wall", seq: 1, action: "dig" });
  await old.put("desk", "wall", "open");
  old.close();
  const port = await openDatabase({ format: 1, onUpgraded: () => undefined });
  expect(await port.list()).toEqual([{ key: "wall", name: "Wall", changed_ms: 5, size_bytes: null, removed_ms: null, cover: null }]);
  expect((await port.load("wall"))?.entries).toEqual([{ key: "wall", seq: 1, action: "dig" }]);
  port.close();
});
