import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Entry, type Kept, type Port, type Snapshot, StoreError, type Version } from "./port";
import { replay } from "./restore";
import { Saver, type SaverOptions, type SaveState, type Whole } from "./saver";

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
  return { port, disk, kept: (): Kept => ({ snapshot: disk.snapshot, writer: disk.writer, changed_ms: 0, entries: disk.entries }) };
}

const first: Snapshot = { key: "wall", name: "Wall", format: 1, seq: 0, state: [], touched_ms: 0 };
const apply = (state: readonly number[], action: unknown): readonly number[] => [...state, action as number];

function saverOn(port: Port, report: (state: SaveState) => void, keepVersion: SaverOptions["keepVersion"] = async () => undefined): Saver {
  return new Saver({ port, key: "wall", writer: "me", format: 1, seq: 0, every: 4, keepVersion, report, now_ms: () => 0 });
}
const whole = (state: readonly number[]): Whole => ({ state, name: "Wall" });

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
          const saver = saverOn(port, (shown) => {
            if (shown.kind === "saved") confirmed = state.length;
          });
          const crashHere = (): void => {
            const after = replay(kept(), apply).state;
            expect(after.length).toBeGreaterThanOrEqual(confirmed);
            expect(after).toEqual(state.slice(0, after.length));
          };
          for (const hurry of actions) {
            state = [...state, state.length];
            saver.record(state.length - 1, whole(state));
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
    const saver = saverOn(port, (now) => shown.push(now));
    saver.record(7, whole([7]));
    await saver.flush();
    expect(shown.at(-1)).toEqual({ kind: "not-saved", trouble: "full" });
    expect(saver.unsaved).toEqual({ first: 1, actions: [7] });
    full = false;
    saver.record(8, whole([7, 8]));
    await saver.flush();
    expect(shown.at(-1)).toEqual({ kind: "saved" });
    expect(replay(kept(), apply)).toEqual({ state: [7, 8], seq: 2 });
    expect(saver.unsaved).toBeNull();
  });

  test("a tab whose build another tab has taken writes nothing more", async () => {
    const { port, disk, kept } = memory(
      async () => undefined,
      () => false,
    );
    const shown: SaveState[] = [];
    const saver = saverOn(port, (now) => shown.push(now));
    disk.writer = "other";
    saver.record(1, whole([1]));
    await saver.flush();
    expect(shown.at(-1)).toEqual({ kind: "not-saved", trouble: "taken" });
    disk.writer = "me";
    saver.record(2, whole([1, 2]));
    await saver.flush();
    expect(shown.at(-1)).toEqual({ kind: "not-saved", trouble: "taken" });
    expect(kept().entries).toEqual([]);
  });

  test("a build that somebody has cleared from the disk is written whole again", async () => {
    const { port, disk, kept } = memory(
      async () => undefined,
      () => false,
    );
    let there = false;
    const saver = saverOn(
      {
        ...port,
        append: (...args) => (there ? port.append(...args) : Promise.reject(new StoreError("gone"))),
        snapshot: (...args) => {
          there = true;
          return port.snapshot(...args);
        },
      },
      () => undefined,
    );
    disk.entries = [];
    saver.record(1, whole([0, 1]));
    await saver.flush();
    saver.record(2, whole([0, 1, 2]));
    await saver.flush();
    expect(replay(kept(), apply)).toEqual({ state: [0, 1, 2], seq: 2 });
  });

  test("a state to keep is written before the action that follows it; where it cannot be, no action waits for it, and it is tried again", async () => {
    const { port, kept } = memory(
      async () => undefined,
      () => false,
    );
    let room = false;
    const written: string[] = [];
    const saver = saverOn(
      { ...port, append: (...args) => port.append(...args).then(() => void written.push("action")) },
      () => undefined,
      async ({ id }) => {
        if (!room) throw new StoreError("full");
        written.push(id);
      },
    );
    saver.record(1, whole([1]), { id: "monday" } as Version);
    await saver.flush();
    expect(replay(kept(), apply).state).toEqual([1]);
    room = true;
    saver.record(2, whole([1, 2]));
    await saver.flush();
    expect(written).toEqual(["action", "monday", "action"]);
  });
});

describe("replay", () => {
  test("skips what the snapshot holds and stops at a gap", () => {
    const entry = (seq: number): Entry => ({ key: "wall", seq, action: seq });
    const kept: Kept = {
      snapshot: { ...first, seq: 2, state: [1, 2] },
      writer: "me",
      changed_ms: 0,
      entries: [entry(5), entry(3), entry(2), entry(7)],
    };
    expect(replay(kept, apply)).toEqual({ state: [1, 2, 3], seq: 3 });
  });
});
