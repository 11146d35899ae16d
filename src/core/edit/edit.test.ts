import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { DocumentEdit } from "../base";
import { addMember, apply, begin, change, idFrom, redo, setField, undo } from ".";

const bytes = (value: unknown): string => JSON.stringify(value) ?? "undefined";

const document = {
  zeta: 1,
  name: "Wall",
  steps: [{ id: "a", after: ["b", "c"], work: "6 h", zz: { "2": 1, x: 2 } }, { id: "b", trial: { rounds: 2 } }, { id: "c" }],
  last: [3, 1, 2],
};

const once = (edit: DocumentEdit, from: unknown = document) => apply(from, [edit]);

describe("one edit", () => {
  test.each<[string, DocumentEdit, (changed: typeof document) => unknown, unknown]>([
    ["sets a key", { path: ["name"], value: "Fence" }, (d) => d.name, "Fence"],
    [
      "sets inside a member",
      { path: ["steps", "id=b", "trial", "rounds"], value: 3 },
      (d) => d.steps[1],
      { id: "b", trial: { rounds: 3 } },
    ],
    [
      "makes what is on the way",
      { path: ["steps", "id=c", "trial", "gap"], value: "2 d" },
      (d) => d.steps[2],
      { id: "c", trial: { gap: "2 d" } },
    ],
    ["makes a list on the way", { path: ["waits", "id=w"], value: { id: "w" } }, (d) => Reflect.get(d, "waits"), [{ id: "w" }]],
    ["appends a member", { path: ["steps", "id=d"], value: { id: "d" } }, (d) => d.steps[3], { id: "d" }],
    [
      "appends a member by one of its fields",
      { path: ["steps", "id=d", "work"], value: "1 h" },
      (d) => d.steps[3],
      { id: "d", work: "1 h" },
    ],
    ["replaces a member", { path: ["steps", "id=b"], value: { id: "b", hands: 2 } }, (d) => d.steps[1], { id: "b", hands: 2 }],
    ["inserts before a position", { path: ["steps", "+1"], value: { id: "d" } }, (d) => d.steps.map((s) => s.id), ["a", "d", "b", "c"]],
    ["sets a position", { path: ["last", "1"], value: 7 }, (d) => d.last, [3, 7, 2]],
    ["adds a text to a list", { path: ["steps", "id=a", "after", "id=d"], value: "d" }, (d) => d.steps[0]?.after, ["b", "c", "d"]],
    ["removes a text from a list", { path: ["steps", "id=a", "after", "id=b"] }, (d) => d.steps[0]?.after, ["c"]],
    ["removes a key", { path: ["zeta"] }, (d) => Object.keys(d), ["name", "steps", "last"]],
    ["removes a member", { path: ["steps", "id=a"] }, (d) => d.steps.map((s) => s.id), ["b", "c"]],
    ["takes undefined for absent", { path: ["zeta"], value: undefined }, (d) => Object.keys(d), ["name", "steps", "last"]],
    ["puts an object where a text was", { path: ["name", "is"], value: "x" }, (d) => d.name, { is: "x" }],
  ])("%s and back", (_, edit, look, expected) => {
    const { document: changed, inverse } = once(edit);
    expect(look(changed as typeof document)).toEqual(expected);
    expect(bytes(apply(changed, inverse).document)).toBe(bytes(document));
  });

  test.each<[string, DocumentEdit]>([
    ["removing what is not there", { path: ["steps", "id=x"] }],
    ["removing below what is not there", { path: ["steps", "id=x", "work"] }],
    ["removing below a text", { path: ["name", "x"] }],
    ["a key where a list stands", { path: ["steps", "name"], value: 1 }],
    ["setting what is so already", { path: ["name"], value: "Wall" }],
    ["removing the whole", { path: [] }],
  ])("%s does nothing", (_, edit) => {
    const { document: same, inverse } = once(edit);
    expect(same).toBe(document);
    expect(inverse).toEqual([]);
  });

  test("what it does not touch stays the same object", () => {
    const { document: changed } = once({ path: ["steps", "id=b", "trial", "rounds"], value: 3 });
    const after = changed as typeof document;
    expect(after.steps[0]).toBe(document.steps[0]);
    expect(after.last).toBe(document.last);
    expect(after.steps[1]).not.toBe(document.steps[1]);
    expect(document.steps[1]).toEqual({ id: "b", trial: { rounds: 2 } });
  });

  test("a key that JavaScript gives a meaning of its own is a key like any other", () => {
    const { document: changed, inverse } = once({ path: ["__proto__"], value: { polluted: true } });
    expect(Object.getPrototypeOf(changed)).toBe(Object.prototype);
    expect(bytes(changed)).toContain('"__proto__":{"polluted":true}');
    expect(bytes(apply(changed, inverse).document)).toBe(bytes(document));
    expect(bytes(once({ path: ["constructor", "name"], value: 1 }).document)).toContain('"constructor":{"name":1}');
  });
});

const keys = fc.constantFrom("id=a", "id=b", "0", "1", "+0", "+2", "x", "y", "list", "7", "__proto__", "constructor", "length");
const values = fc.oneof(
  fc.constantFrom<unknown>(undefined, null, 1, "a", [], ["a", "b"]),
  fc.dictionary(fc.constantFrom("x", "y", "id", "7", "__proto__"), fc.constantFrom<unknown>(1, "a", ["b"], { z: 1 })),
  fc.jsonValue({ maxDepth: 3 }),
);
const edits = fc.array(fc.record({ path: fc.array(keys, { maxLength: 4 }), value: values }, { requiredKeys: ["path"] }), { maxLength: 8 });
const documents = fc.oneof(
  fc.jsonValue({ maxDepth: 4 }),
  fc.record({
    x: fc.jsonValue({ maxDepth: 2 }),
    list: fc.array(
      fc.oneof(
        fc.constantFrom("a", "b"),
        fc.record({ id: fc.constantFrom("a", "b"), x: fc.anything({ maxDepth: 0, values: [fc.nat()] }), y: fc.nat() }),
      ),
      { maxLength: 4 },
    ),
    y: fc.constant({ "7": 1, x: { y: 2 } }),
  }),
);
const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

describe("any edits", () => {
  test("undone they give the first bytes, done again the last", () => {
    fc.assert(
      fc.property(documents, edits, (anything, list) => {
        const first = plain(anything);
        const before = bytes(first);
        const { document: last, inverse } = apply(first, list);
        expect(bytes(first)).toBe(before);
        const back = apply(last, inverse);
        expect(bytes(back.document)).toBe(before);
        expect(bytes(apply(back.document, list).document)).toBe(bytes(last));
        expect(bytes(apply(back.document, back.inverse).document)).toBe(bytes(last));
      }),
      { numRuns: 3000 },
    );
  });

  test("a history goes back and forth over every state, byte for byte", () => {
    fc.assert(
      fc.property(documents, fc.array(edits, { maxLength: 6 }), (anything, changes) => {
        let history = begin(plain(anything));
        const states = [bytes(history.document)];
        changes.forEach((list, i) => {
          const next = change(history, list, `change ${i}`);
          if (next === history) return;
          history = next;
          states.push(bytes(history.document));
        });
        for (const state of states.toReversed()) {
          expect(bytes(history.document)).toBe(state);
          history = undo(history);
        }
        expect(undo(history)).toBe(history);
        for (const state of states) {
          expect(bytes(history.document)).toBe(state);
          history = redo(history);
        }
        expect(redo(history)).toBe(history);
      }),
      { numRuns: 500 },
    );
  });

  test("a new change drops what was undone, and the words stay with their change", () => {
    const one = change(begin(document), [setField("steps", "a", "work", "7 h")], "work of a");
    const two = change(one, [setField("steps", "b", "work", "1 h")], "work of b");
    const back = undo(two);
    expect(back.undone.map((item) => item.words)).toEqual(["work of b"]);
    const other = change(back, [setField("steps", "c", "work", "2 h")], "work of c");
    expect(other.done.map((item) => item.words)).toEqual(["work of a", "work of c"]);
    expect(other.undone).toEqual([]);
    expect(change(other, [], "nothing")).toBe(other);
  });
});

describe("commands", () => {
  test("add, set and take out", () => {
    const list = [addMember("steps", { id: "d" }), setField("steps", "a#2", "work", "1 h"), setField("steps", "b", "trial", undefined)];
    const { steps } = apply(document, list).document as typeof document;
    expect(steps.map((step) => step.id)).toEqual(["a", "b", "c", "d"]);
    expect(steps[0]).toMatchObject({ work: "1 h" });
    expect(steps[1]).toEqual({ id: "b" });
  });

  test.each([
    ["Tie the bars", [], "tie-the-bars"],
    ["Tie the bars", ["tie-the-bars", "tie-the-bars-2"], "tie-the-bars-3"],
    ["2nd lift: Größe!", [], "nd-lift-gro-e"],
    ["Änderung", [], "anderung"],
    ["…", [], "item"],
    ["", ["item"], "item-2"],
    ["x".repeat(60), [], "x".repeat(40)],
  ])("%j becomes an id", (name, taken, id) => {
    expect(idFrom(name, taken)).toBe(id);
  });
});
