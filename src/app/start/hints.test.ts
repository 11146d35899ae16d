import { expect, test } from "vitest";
import { hints, type Stand } from "./hints";

const empty: Stand = { view: "order", planned: false, looked: false, changed: false };
const shown = (stand: Stand, gone: readonly string[] = []): string | undefined =>
  hints.find((one) => !gone.includes(one.id) && one.when(stand))?.id;

test("nothing is said of an empty build; then one looks, then one changes, then no more", () => {
  expect(shown(empty)).toBeUndefined();
  expect(shown({ ...empty, planned: true })).toBe("look");
  expect(shown({ ...empty, planned: true, looked: true })).toBe("change");
  expect(shown({ ...empty, planned: true, looked: true, changed: true })).toBeUndefined();
  expect(shown({ ...empty, planned: true, view: "forms" })).toBeUndefined();
});

test("a hint is done with what it asks for, and not before", () => {
  const done = (stand: Stand): readonly string[] => hints.filter((one) => one.done(stand)).map(({ id }) => id);
  expect(done({ ...empty, planned: true })).toEqual([]);
  expect(done({ ...empty, planned: true, looked: true })).toEqual(["look"]);
  expect(done({ ...empty, planned: true, looked: true, changed: true })).toEqual(["look", "change"]);
  expect(done({ ...empty, changed: true })).toEqual([]);
});
