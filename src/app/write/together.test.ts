import { expect, test } from "vitest";
import { linesOf, typedOf, withKey, writtenTogether } from "./together";

const keys = ["wide", "high"];

test("figures that belong together are written once all are there, and go once none is", () => {
  const before = { wide: { is: "3 ft", from: "drawing" }, high: "7 ft", zz: 1 };
  expect(typedOf(before, keys)).toEqual({ wide: "3 ft", high: "7 ft" });
  expect(typedOf(undefined, keys)).toEqual({ wide: "", high: "" });
  expect(writtenTogether(before, { wide: "4 ft", high: "7 ft" }, keys)).toEqual({
    value: { wide: { is: "4 ft", from: "drawing" }, high: "7 ft", zz: 1 },
  });
  expect(writtenTogether(before, { wide: "4 ft", high: " " }, keys)).toBeNull();
  expect(writtenTogether(before, { wide: "", high: "" }, keys)).toEqual({ value: undefined });
  expect(writtenTogether(undefined, { wide: "1 m", high: "nonsense" }, keys)).toEqual({ value: { wide: "1 m", high: "nonsense" } });
});

test("one key of an object, which goes with its last", () => {
  expect(withKey(undefined, "dry", true)).toEqual({ dry: true });
  expect(withKey({ dry: true, zz: 1 }, "dry", false)).toEqual({ zz: 1 });
  expect(withKey({ dry: true }, "dry", false)).toBeUndefined();
  expect(withKey({ decides: ["a"] }, "decides", [])).toBeUndefined();
});

test("lines", () => {
  expect(linesOf(" hammer \n\n level\n")).toEqual(["hammer", "level"]);
  expect(linesOf(" \n ")).toEqual([]);
});
