import { expect, test } from "vitest";
import { Typing } from "./typing";

test("what is typed in one field without a pause is one change, with what there was before the first of it", () => {
  const typing = new Typing<string>();
  expect(typing.goesOn("name", 0)).toBeNull();
  typing.made("name", 0, "first");
  expect(typing.goesOn("name", 3999)).toMatchObject({ before: "first" });
  typing.made("name", 3999, "first");
  expect(typing.goesOn("name", 7998)).toMatchObject({ before: "first" });
  expect(typing.goesOn("name", 7999)).toBeNull();
});

test("another field, no field, or anything else done in between begins a change of its own", () => {
  const typing = new Typing<number>();
  typing.made("name", 0, 1);
  expect(typing.goesOn("work", 10)).toBeNull();
  expect(typing.goesOn(undefined, 10)).toBeNull();
  typing.made(undefined, 10, 2);
  expect(typing.goesOn("name", 20)).toBeNull();
  expect(typing.goesOn(undefined, 20)).toBeNull();
  typing.made("name", 20, 3);
  typing.end();
  expect(typing.goesOn("name", 30)).toBeNull();
});
