import { expect, test } from "vitest";
import { parseSigned } from "../../core/base";
import type { Part } from "../../core/build";
import type { Kit } from "../../core/kits";
import { answersFrom, besides, inUnitsShown } from "./filled";

const length = { kind: "length", usual: { us: "0 in", metric: "0 mm" }, range_mm: { least: -9e4, most: 9e4, unit: "mm" } } as const;
const kit: Kit = {
  id: "pad",
  name: "Pad",
  what: "",
  group: "ground",
  rates: [],
  asks: [
    { key: "long", label: "Long", ...length, usual: { us: "30 in", metric: "750 mm" } },
    { key: "number", label: "How many", kind: "number", usual: 2, range: { least: 1, most: 9, unit: "" } },
    { key: "says", label: "Who says", kind: "text", usual: "" },
    { key: "right", label: "Right", ...length },
    { key: "back", label: "Back", ...length },
  ],
  make: () => ({ lists: {}, unknown: [] }),
  offers: () => [],
};
const part = (answers: Part["answers"], of = "pad"): Part => ({ id: "a", name: "A", kit: of, answers, made: {} });

test("what nobody entered is put in as it is shown, in the units shown", () => {
  expect(answersFrom(kit, {}, "us")).toEqual({ long: "30 in", right: "0 in", back: "0 in" });
  expect(answersFrom(kit, { long: "2 ft" }, "metric")).toMatchObject({ long: "2 ft", right: "0 mm" });
});

test("a number is read where it is one, and else kept as typed; a text keeps its spaces, a length does not", () => {
  expect(answersFrom(kit, { number: " 3 " }, "us").number).toBe(3);
  expect(answersFrom(kit, { number: "three" }, "us").number).toBe("three");
  expect(answersFrom(kit, { says: "the office, ", long: " 2 ft " }, "us")).toMatchObject({ says: "the office, ", long: "2 ft" });
});

test("a refusal gives its example in the units shown, and leaves what is no length alone", () => {
  const finding = (key: string) => ({ code: "kit.quantity", severity: "stop", where: { key }, detail: { like: "30 in" } }) as const;
  expect(inUnitsShown(kit, finding("long"), "metric").detail.like).toBe("750 mm");
  expect(inUnitsShown(kit, finding("number"), "metric")).toEqual(finding("number"));
});

test("rates of one's own go along, and nothing else that is not asked", () => {
  expect(answersFrom(kit, { "rate.dig": "2 h", colour: "red" }, "us")).toMatchObject({ "rate.dig": "2 h" });
  expect(answersFrom(kit, { colour: "red" }, "us").colour).toBeUndefined();
});

test("another one of the kit comes beside those there are", () => {
  expect(besides(kit, {}, [], "us")).toEqual({});
  expect(besides(kit, {}, [part({ right: "0 in", back: "0 in" }, "wall")], "us")).toEqual({});
  expect(besides(kit, {}, [part({ right: "0 in", back: "0 in" })], "us")).toEqual({ right: "8 ft" });
  expect(besides(kit, {}, [part({}), part({ right: "8 ft" })], "us")).toEqual({ right: "16 ft" });
  expect(besides(kit, {}, [part({})], "metric")).toEqual({ right: "2.4 m" });
  // In another row there is room.
  expect(besides(kit, {}, [part({ back: "10 ft" })], "us")).toEqual({});
});

test("a copy of one that stands elsewhere counts on from there", () => {
  const there = part({ right: "-3 ft", back: "10 ft" });
  const to = besides(kit, there.answers, [there], "us").right;
  expect(parseSigned("length", String(to))).toBeCloseTo(5 * 304.8, 1);
  const metric = besides(kit, { right: "-5 m" }, [part({ right: "-5 m" })], "metric").right;
  expect(parseSigned("length", String(metric))).toBe(-2600);
});
