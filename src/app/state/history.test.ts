import fc from "fast-check";
import { expect, test } from "vitest";
import { begin } from "../../core/edit";
import { type Action, act } from "./history";

const document = { steps: [{ id: "dig", name: "Dig" }] };
const name = (value: string, joins: boolean): Action => ({
  do: "edit",
  edits: [{ path: ["steps", "id=dig", "name"], value }],
  words: "rename",
  joins,
});

test("what is typed in one go is undone in one", () => {
  const typed = ["Dig a", "Dig a t", "Dig a trench"].reduce((history, text, index) => act(history, name(text, index > 0)), begin(document));
  expect(typed.done.length).toBe(1);
  const undone = act(typed, { do: "undo" });
  expect(undone.document).toEqual(document);
  expect(act(undone, { do: "redo" }).document).toEqual({ steps: [{ id: "dig", name: "Dig a trench" }] });
});

test("an action that changes nothing gives the same history", () => {
  const history = begin(document);
  expect(act(history, { do: "undo" })).toBe(history);
  expect(act(history, name("Dig", false))).toBe(history);
});

test("undoing everything gives the first document back, byte for byte, whatever was joined", () => {
  const action = fc.oneof(
    fc.record({
      do: fc.constant("edit" as const),
      words: fc.constant("x"),
      joins: fc.boolean(),
      edits: fc.array(edit(), { minLength: 1, maxLength: 3 }),
    }),
    fc.constant({ do: "undo" } as const),
    fc.constant({ do: "redo" } as const),
  );
  fc.assert(
    fc.property(fc.array(action, { maxLength: 12 }), (actions) => {
      let history = actions.reduce<ReturnType<typeof begin>>(act, begin(document));
      const last = JSON.stringify(history.document);
      const count = history.done.length;
      for (let index = 0; index < count; index += 1) history = act(history, { do: "undo" });
      expect(JSON.stringify(history.document)).toBe(JSON.stringify(document));
      for (let index = 0; index < count; index += 1) history = act(history, { do: "redo" });
      expect(JSON.stringify(history.document)).toBe(last);
    }),
  );
});

function edit() {
  const path = fc.constantFrom(["steps", "id=dig", "name"], ["steps", "id=pour"], ["steps", "id=pour", "work"], ["pieces"], ["name"]);
  const value = fc.constantFrom<unknown>("a", 3, ["b"], { id: "pour", work: "2 h" });
  return fc.oneof(fc.record({ path, value }), fc.record({ path }));
}
