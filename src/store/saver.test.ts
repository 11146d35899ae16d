import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Entry, type Kept, type Port, type Snapshot, StoreError } from "./port";
import { replay } from "./restore";
import { Saver, type SaveState } from "./saver";

/** A database in memory whose writes reach the disk only when `wait` lets them, and which may fail. */
function memory(wait: (name: string) => Promise<unknown>, fails: () => boolean) {
  const disk = { snapshot: first, writer: "me", entries: [] as Entry[] };
  const write = async (name: string, writer: string, change: () => void): Promise<void> => {
    await wait(name);
    if (disk.writer !== writer) throw new StoreError("taken");
    if (fails()) throw new StoreError("full");
    change();
  };
  const port = {
    append: (writer: string, entries: readonly Entry[]) => write("append", writer, () => disk.entries.push(...entries)),
    snapshot: (writer: string, snapshot: Snapshot) =>
      write("snapshot", writer, () => {
        disk.snapshot = snapshot;
        disk.entries = disk.entries.filter((entry) => entry.seq > snapshot.seq);
      }),
  } as unknown as Port;
  return { port, disk, kept: (): Kept => ({ snapshot: disk.snapshot, entries: disk.entries }) };
}

const first: Snapshot = { key: "wall", name: "Wall", format: 1, seq: 0, state: [], touched_ms: 0 };
const apply = (state: readonly number[], action: unknown): readonly number[] => [...state, action as number];

function saverOn(port: Port, whole: () => readonly number[], report: (state: SaveState) => void, every = 4): Saver {
  return new Saver({
    port,
    key: "wall",
    writer: "me",
    seq: 0,
    every,
    whole: () => ({ state: whole(), name: "Wall", format: 1 }),
    report,
    now_ms: () => 0,
  });
}

describe("saver", () => {
  test("whatever was shown as saved is there after a crash at any moment, and nothing is out of order", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.scheduler(),
        fc.array(fc.boolean(), { minLength: 1, maxLength: 14 }),
        fc.array(fc.boolean(), { maxLength: 6 }),
        async (scheduler, actions, failures) => {
          const failing = [...failures];
          const { port, kept } = memory(
            async (name) => {
              await scheduler.schedule(Promise.resolve(), name);
              crashHere();
            },
            () => failing.shift() ?? false,
          );
          let state: readonly number[] = [];
          let confirmed = 0;
          const saver = saverOn(
            port,
            () => state,
            (shown) => {
              if (shown.kind === "saved") confirmed = state.length;
            },
          );
          const crashHere = (): void => {
            const after = replay(kept(), apply).state;
            expect(after.length).toBeGreaterThanOrEqual(confirmed);
            expect(after).toEqual(state.slice(0, after.length));
          };
          for (const hurry of actions) {
            state = [...state, state.length];
            saver.record(state.length - 1);
            crashHere();
            if (!hurry && scheduler.count() > 0) await scheduler.waitOne();
            crashHere();
          }
          for (let round = 0; round < 8 && !saver.allSaved; round += 1) {
            await scheduler.waitFor(saver.flush());
            crashHere();
          }
          expect(replay(kept(), apply).state).toEqual(state);
          expect(confirmed).toBe(state.length);
        },
      ),
      { numRuns: 500 },
    );
  });

  test("a full disk is reported, keeps what is in line, and the next attempt writes all of it", async () => {
    let full = true;
    const { port, kept } = memory(
      async () => undefined,
      () => full,
    );
    const shown: SaveState[] = [];
    let state: readonly number[] = [];
    const saver = saverOn(
      port,
      () => state,
      (now) => shown.push(now),
    );
    state = [7];
    saver.record(7);
    await saver.flush();
    expect(shown.at(-1)).toEqual({ kind: "not-saved", trouble: "full" });
    full = false;
    state = [7, 8];
    saver.record(8);
    await saver.flush();
    expect(shown.at(-1)).toEqual({ kind: "saved" });
    expect(replay(kept(), apply)).toEqual({ state: [7, 8], seq: 2 });
  });

  test("a tab whose build another tab has taken writes nothing more", async () => {
    const { port, disk, kept } = memory(
      async () => undefined,
      () => false,
    );
    const shown: SaveState[] = [];
    const saver = saverOn(
      port,
      () => [1],
      (now) => shown.push(now),
    );
    disk.writer = "other";
    saver.record(1);
    await saver.flush();
    expect(shown.at(-1)).toEqual({ kind: "not-saved", trouble: "taken" });
    disk.writer = "me";
    saver.record(2);
    await saver.flush();
    expect(shown.at(-1)).toEqual({ kind: "not-saved", trouble: "taken" });
    expect(kept().entries).toEqual([]);
  });
});

describe("replay", () => {
  test("skips what the snapshot holds and stops at a gap", () => {
    const entry = (seq: number): Entry => ({ key: "wall", seq, action: seq });
    const kept: Kept = { snapshot: { ...first, seq: 2, state: [1, 2] }, entries: [entry(5), entry(3), entry(2), entry(7)] };
    expect(replay(kept, apply)).toEqual({ state: [1, 2, 3], seq: 3 });
  });
});
