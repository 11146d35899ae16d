import fc from "fast-check";
import { expect, test } from "vitest";
import { Lease, type LeasePort, type LeaseState, type TabMessage, tabsVersion } from "./lease";

/** The browser's locks and channel between tabs, in memory. `deaf` tabs hear nothing, as a hung tab does. */
function browser(wait: () => Promise<unknown>) {
  const ears = new Set<(message: TabMessage) => void>();
  let holder: { lost: () => void } | null = null;
  let line: (() => void)[] = [];
  const grant = (lost: () => void): (() => void) => {
    const mine = { lost };
    holder = mine;
    return () => {
      if (holder !== mine) return;
      holder = null;
      line.shift()?.();
    };
  };
  const tab = (deaf = false): LeasePort => ({
    async hold(_name, wait_ms, force, lost) {
      await wait();
      if (force) {
        holder?.lost();
        return grant(lost);
      }
      if (holder === null) return grant(lost);
      if (wait_ms === 0) return null;
      return new Promise((settle) => {
        const turn = (): void => settle(grant(lost));
        line.push(turn);
        void wait()
          .then(wait)
          .then(wait)
          .then(wait)
          .then(() => {
            if (!line.includes(turn)) return;
            line = line.filter((other) => other !== turn);
            settle(null);
          });
      });
    },
    post: (message) => {
      for (const hear of ears) hear(message);
    },
    listen: (hear) => {
      if (!deaf) ears.add(hear);
      return () => ears.delete(hear);
    },
  });
  return tab;
}

function tabOn(port: LeasePort, name: string, flushed: string[] = []) {
  const states: LeaseState[] = [];
  const lease = new Lease({
    port,
    tab: name,
    beforeRelease: async () => {
      flushed.push(name);
    },
    report: (state) => states.push(state),
  });
  return { lease, states, flushed };
}

test("the first tab may change the build, the second is told, and takes over once the first has finished writing", async () => {
  const tab = browser(async () => undefined);
  const a = tabOn(tab(), "a");
  const b = tabOn(tab(), "b");
  expect(await a.lease.take("wall")).toBe(true);
  expect(await b.lease.take("wall")).toBe(false);
  expect(b.states.at(-1)).toBe("theirs");
  expect(await b.lease.takeOver("wall")).toBe(true);
  expect(a.flushed).toEqual(["a"]);
  expect([a.states.at(-1), b.states.at(-1)]).toEqual(["theirs", "mine"]);
});

test("a tab that does not answer loses the build and is told", async () => {
  const tab = browser(async () => undefined);
  const hung = tabOn(tab(true), "hung");
  const b = tabOn(tab(), "b");
  await hung.lease.take("wall");
  expect(await b.lease.takeOver("wall")).toBe(true);
  expect(hung.flushed).toEqual([]);
  expect(hung.states.at(-1)).toBe("theirs");
});

test("a message of another version is not answered", async () => {
  const tab = browser(async () => undefined);
  const a = tabOn(tab(), "a");
  await a.lease.take("wall");
  tab().post({ version: tabsVersion + 1, say: "hand-over", build: "wall", from: "b" });
  expect(a.states.at(-1)).toBe("mine");
});

test("however the tabs' requests interleave, at the end at most one thinks the build is its own", async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.scheduler(),
      fc.array(fc.record({ who: fc.integer({ min: 0, max: 2 }), over: fc.boolean() }), { minLength: 1, maxLength: 8 }),
      async (scheduler, asks) => {
        const tab = browser(() => scheduler.schedule(Promise.resolve()));
        const tabs = ["a", "b", "c"].map((name) => tabOn(tab(), name));
        for (const { who, over } of asks) void (over ? tabs[who].lease.takeOver("wall") : tabs[who].lease.take("wall"));
        await scheduler.waitIdle();
        expect(tabs.filter(({ states }) => states.at(-1) === "mine").length).toBeLessThanOrEqual(1);
      },
    ),
    { numRuns: 300 },
  );
});
