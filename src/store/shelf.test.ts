import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import { afterEach, beforeEach, expect, test } from "vitest";
import { openDatabase } from "./database";
import type { LeasePort, LeaseState, TabMessage } from "./lease";
import type { Port, StoreTrouble } from "./port";
import type { SaveState } from "./saver";
import { Shelf } from "./shelf";

type Words = readonly string[];
const closing: (() => void)[] = [];

/** Locks and channel shared by the tabs of one test. */
function tabsOfOneBrowser(): () => LeasePort {
  const ears = new Set<(message: TabMessage) => void>();
  const holders = new Map<string, () => void>();
  const hold = async (name: string, wait_ms: number, force: boolean, lost: () => void): Promise<(() => void) | null> => {
    for (let turn = 0; holders.has(name) && turn < wait_ms; turn += 20) await new Promise((next) => setTimeout(next, 20));
    if (holders.has(name) && !force) return null;
    holders.get(name)?.();
    holders.set(name, lost);
    return () => {
      if (holders.get(name) === lost) holders.delete(name);
    };
  };
  return () => ({
    hold,
    post: (message) => {
      for (const hear of ears) hear(message);
    },
    listen: (hear) => {
      ears.add(hear);
      return () => ears.delete(hear);
    },
  });
}

async function tab(tabs: LeasePort, name: string, trouble: StoreTrouble | null = null) {
  const database = trouble ? null : await openDatabase({ format: 1, onUpgraded: () => undefined });
  if (database) closing.push(() => database.close());
  const seen = { saves: [] as SaveState[], leases: [] as LeaseState[], state: [] as Words };
  let keys = 0;
  const shelf = new Shelf<Words>({
    port: database as Port | null,
    trouble,
    tabs,
    tab: name,
    format: 1,
    apply: (state, action) => [...state, action as string],
    whole: () => ({ state: seen.state, name: seen.state[0] ?? "empty" }),
    onSave: (state) => seen.saves.push(state),
    onLease: (state) => seen.leases.push(state),
    now_ms: () => keys,
    newKey: () => {
      keys += 1;
      return `${name}-${keys}`;
    },
  });
  const write = (word: string): void => {
    seen.state = [...seen.state, word];
    shelf.record(word);
  };
  return { shelf, seen, write };
}

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});
afterEach(() => {
  for (const close of closing.splice(0)) close();
});

test("a second tab looks, then takes over with everything the first had written", async () => {
  const tabs = tabsOfOneBrowser();
  const a = await tab(tabs(), "a");
  a.shelf.begin();
  a.write("dig");
  await a.shelf.flush();
  const b = await tab(tabs(), "b");
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
  const c = await tab(tabs(), "c");
  expect((await c.shelf.restore())?.state).toEqual(["dig", "form", "pour"]);
});

test("a build that was opened and never changed makes room for the next; a changed one stays", async () => {
  const tabs = tabsOfOneBrowser();
  const a = await tab(tabs(), "a");
  a.shelf.begin();
  await a.shelf.flush();
  a.shelf.begin();
  await a.shelf.flush();
  await expect.poll(async () => (await a.shelf.list()).map((kept) => kept.key)).toEqual(["a-2"]);
  a.write("dig");
  await a.shelf.flush();
  a.seen.state = [];
  a.shelf.begin();
  await a.shelf.flush();
  await expect.poll(async () => (await a.shelf.list()).map((kept) => kept.key).sort()).toEqual(["a-2", "a-3"]);
});

test("without storage it says so at every change, and keeps working", async () => {
  const a = await tab(tabsOfOneBrowser()(), "a", "refused");
  expect(await a.shelf.restore()).toBeNull();
  a.shelf.begin();
  a.write("dig");
  expect(a.seen.saves.at(-1)).toEqual({ kind: "not-saved", trouble: "refused" });
  expect(await a.shelf.list()).toEqual([]);
});
