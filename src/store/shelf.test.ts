import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { TestBrowser } from "../../test/fixtures/tabs";

let browser: TestBrowser;
beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
  browser = new TestBrowser();
});
afterEach(() => browser.close());

describe("several tabs", () => {
  test("a second tab looks, then takes over with everything the first had written", async () => {
    const a = await browser.tab("a");
    a.begin();
    a.write("dig");
    await a.shelf.flush();
    const b = await browser.tab("b");
    expect(await b.shelf.restore()).toMatchObject({ state: ["dig"], mine: false });
    a.write("form");
    const taken = await b.shelf.takeOver();
    expect(taken).toMatchObject({ state: ["dig", "form"], mine: true });
    b.seen.state = taken?.state ?? [];
    a.write("lost");
    await a.shelf.flush();
    expect(a.seen.leases.at(-1)).toBe("theirs");
    expect(a.seen.saves.at(-1)).toEqual({ kind: "not-saved", trouble: "taken" });
    b.write("pour");
    await b.shelf.flush();
    const c = await browser.tab("c");
    expect((await c.shelf.restore())?.state).toEqual(["dig", "form", "pour"]);
  });

  test("a tab that has handed its build over follows; one that still had changes in line keeps them on its screen and says so", async () => {
    const a = await browser.tab("a");
    a.begin(["wall"]);
    await a.shelf.flush();
    const b = await browser.tab("b");
    await b.shelf.restore();
    b.seen.state = (await b.shelf.takeOver())?.state ?? [];
    b.write("dig");
    await expect.poll(() => a.seen.state).toEqual(["wall", "dig"]);
    const c = await browser.tab("c");
    b.write("form");
    b.shelf.stop("failed");
    await c.shelf.restore();
    c.seen.state = (await c.shelf.takeOver())?.state ?? [];
    expect(b.seen.saves.at(-1)).toEqual({ kind: "not-saved", trouble: "taken" });
    c.write("pour");
    await expect.poll(() => a.seen.state).toEqual(["wall", "dig", "pour"]);
    expect(b.seen.state).toEqual(["wall", "dig", "form"]);
  });

  test("a tab that only looks follows what the other writes, over snapshots too", async () => {
    const a = await browser.tab("a");
    a.begin();
    const b = await browser.tab("b");
    await a.shelf.flush();
    await b.shelf.restore();
    for (let count = 1; count <= 150; count += 1) {
      a.write(`step ${count}`);
      if (count % 7 === 0) await a.shelf.flush();
    }
    await a.shelf.flush();
    await expect.poll(() => b.seen.state).toEqual(a.seen.state);
    expect(b.seen.state.length).toBe(150);
  });

  test("each tab gets back the build it had open, whichever was open last in another", async () => {
    const a = await browser.tab("a");
    a.begin(["wall"]);
    await a.shelf.flush();
    const b = await browser.tab("b");
    b.begin(["cellar"]);
    await b.shelf.flush();
    a.shelf.close();
    const again = await browser.tab("c");
    expect(await again.shelf.restore(a.shelf.key)).toMatchObject({ state: ["wall"], mine: true });
    expect((await again.shelf.restore("no such key"))?.state).toEqual(["wall"]);
  });

  test("a build that is begun while the one before is being handed over is this tab's own", async () => {
    const a = await browser.tab("a");
    a.begin(["wall"]);
    await a.shelf.flush();
    const b = await browser.tab("b");
    await b.shelf.restore();
    a.write("dig");
    const over = b.shelf.takeOver();
    a.begin(["cellar"]);
    expect(await over).toMatchObject({ state: ["wall", "dig"], mine: true });
    a.write("form");
    await a.shelf.flush();
    expect(a.seen.saves.at(-1)).toEqual({ kind: "saved" });
    expect(a.seen.leases.at(-1)).toBe("mine");
    expect(await a.others?.look("a-2")).toEqual(["cellar", "form"]);
  });

  test("tabs are told when the list of builds changes", async () => {
    const [a, b] = [await browser.tab("a"), await browser.tab("b")];
    a.begin();
    await a.shelf.flush();
    await expect.poll(() => b.seen.listed).toBe(1);
    expect(a.seen.listed).toBe(0);
  });
});

describe("what is open", () => {
  test("an example that was never changed makes room for the next build; a changed one stays", async () => {
    const a = await browser.tab("a");
    a.begin([], "passing");
    await a.shelf.flush();
    a.begin([], "passing");
    await a.shelf.flush();
    await expect.poll(() => a.listed()).toEqual(["a-2"]);
    a.write("dig");
    await a.shelf.flush();
    a.begin();
    await a.shelf.flush();
    await expect.poll(() => a.listed()).toEqual(["a-2", "a-3"]);
  });

  test("what was opened from a file, or taken up again, stays though it was never changed", async () => {
    const a = await browser.tab("a");
    a.begin(["wall"]);
    await a.shelf.flush();
    a.begin(["vault"], "passing");
    await a.shelf.flush();
    await expect.poll(() => a.listed()).toEqual(["a-1", "a-2"]);
    await a.shelf.take("a-2");
    a.begin(["cellar"]);
    await a.shelf.flush();
    await expect.poll(() => a.listed()).toEqual(["a-1", "a-2", "a-3"]);
  });

  test("another build that is begun while changes are in line gets none of them, and they go where they belong", async () => {
    const a = await browser.tab("a");
    a.begin(["wall"]);
    for (let count = 0; count < 70; count += 1) a.write(`step ${count}`);
    const wall = a.seen.state;
    a.begin(["cellar"]);
    a.write("dig");
    await a.shelf.flush();
    await expect.poll(async () => (await a.others?.look("a-1"))?.length).toBe(71);
    expect(await a.others?.look("a-1")).toEqual(wall);
    expect(await a.others?.look("a-2")).toEqual(["cellar", "dig"]);
  });

  test("without storage it says so at every change, and keeps working; once there is some, all of it is kept", async () => {
    const a = await browser.tab("a", "refused");
    expect(await a.shelf.restore()).toBeNull();
    a.begin();
    a.write("dig");
    expect(a.seen.saves.at(-1)).toEqual({ kind: "not-saved", trouble: "refused" });
    const b = await browser.tab("b");
    if (b.port) a.shelf.found({ port: b.port }, a.seen.state);
    await a.shelf.flush();
    expect(a.seen.saves.at(-1)).toEqual({ kind: "saved" });
    expect((await b.shelf.restore())?.state).toEqual(["dig"]);
  });
});

describe("a page that closes before its last changes are on disk", () => {
  async function closing() {
    const a = await browser.tab("a");
    a.begin();
    a.write("dig");
    await a.shelf.flush();
    a.write("form");
    a.write("pour");
    a.shelf.board();
    a.shelf.stop("failed");
    a.shelf.close();
    return a;
  }

  test("leaves them in the lifeboat, and the next page has them and writes them", async () => {
    await closing();
    const b = await browser.tab("b");
    expect(await b.shelf.restore()).toMatchObject({ state: ["dig", "form", "pour"], mine: true });
    await b.shelf.flush();
    expect(browser.boat).toBeNull();
    b.shelf.close();
    const c = await browser.tab("c");
    expect((await c.shelf.restore())?.state).toEqual(["dig", "form", "pour"]);
  });

  test("but where another tab has written meanwhile, they are not mixed into its work", async () => {
    await closing();
    const boat = browser.boat;
    browser.boat = null;
    const b = await browser.tab("b");
    b.seen.state = (await b.shelf.restore())?.state ?? [];
    b.write("backfill");
    await b.shelf.flush();
    b.shelf.close();
    browser.boat = boat;
    const c = await browser.tab("c");
    expect((await c.shelf.restore())?.state).toEqual(["dig", "backfill"]);
  });
});
