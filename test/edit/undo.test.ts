import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { begin, change, type History, redo, undo } from "../../src/core/edit";
import gardenWall from "../../src/examples/garden-wall.json";
import { emptyBuild } from "../fixtures/kits/start";
import { whole } from "../fixtures/whole";
import { commands, readOf } from "./commands";

const bytes = (value: unknown): string => JSON.stringify(value);
const names = Object.keys(commands);
/** A command with as many numbers as it may pick by. */
const acts = fc.array(fc.tuple(fc.constantFrom(...names), fc.array(fc.nat(), { minLength: 12, maxLength: 12 })), {
  minLength: 1,
  maxLength: 12,
});

/** How often each command changed something, over all runs. */
const counted = new Map<string, number>();

function run(document: unknown, list: readonly (readonly [string, readonly number[]])[]): void {
  const first = bytes(document);
  let history: History = begin(document);
  const states = [first];
  for (const [name, numbers] of list) {
    let at = 0;
    const pick = (count: number): number => numbers[at++ % numbers.length]! % Math.max(1, count);
    const now = history.document;
    const edits = commands[name]!(now, pick, readOf(now));
    const next = change(history, edits, name);
    // What was there before is never changed in place, whatever the command.
    expect(bytes(now), name).toBe(states.at(-1));
    if (next === history) continue;
    counted.set(name, (counted.get(name) ?? 0) + 1);
    history = next;
    states.push(bytes(history.document));
  }
  const last = history.document;
  for (const state of states.toReversed()) {
    expect(bytes(history.document)).toBe(state);
    history = undo(history);
  }
  expect(bytes(history.document)).toBe(first);
  for (const state of states) {
    expect(bytes(history.document)).toBe(state);
    history = redo(history);
  }
  expect(bytes(history.document)).toBe(bytes(last));
}

describe("any sequence of commands, undone, gives the first document byte for byte, and redone the last", () => {
  test.each([
    ["a build with every kind of member and key", whole, 200],
    ["the garden wall", gardenWall, 150],
    ["an empty build that kits are put into", emptyBuild("us"), 300],
  ] as const)("%s", (_, document, numRuns) => {
    fc.assert(
      fc.property(acts, (list) => run(document, list)),
      { numRuns },
    );
  });

  test("each command was tried and changed something", () => {
    expect(names.filter((name) => (counted.get(name) ?? 0) === 0)).toEqual([]);
  });
});
