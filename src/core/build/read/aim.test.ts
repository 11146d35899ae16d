import { expect, test } from "vitest";
import { documentOf } from "../../../../test/fixtures/make";
import { readDocument, write } from "..";

const read = (more: object) => readDocument({ ...documentOf({ steps: [{ id: "a", work: "1 h" }] }), ...more });

test("what the build aims at is read once, its temperature converted; without one there is none", () => {
  const aim = { for: "pours", months: [5, 4, 5], coldest: "41 °F", weeksLater: 2 };
  const { build, document } = read({ aim });
  expect(build!.aim).toEqual({ for: "pours", months: [4, 5], coldest_C: 5, weeksLater: 2 });
  expect(JSON.parse(write(document as never)).aim).toEqual(aim);
  expect(read({ aim: { for: "visits" } }).build!.aim).toEqual({ for: "visits", months: [], coldest_C: null, weeksLater: 0 });
  expect(read({}).build!.aim).toBeNull();
});

test("an aim that is none, a thirteenth month and more than a year later are refused", () => {
  for (const aim of [
    { for: "speed" },
    {},
    { for: "pours", months: [13] },
    { for: "pours", weeksLater: 53 },
    { for: "pours", coldest: "warm" },
  ])
    expect(read({ aim }).build, JSON.stringify(aim)).toBeNull();
});

test("what waits on purpose is kept with the order of serving, its moments as the document writes them", () => {
  const served = { engine: "x", rung: 10, steps: ["a"], from: { a: "2027-04-03T00:00" } };
  expect(read({ served }).build!.served).toEqual(served);
  expect(read({ served: { ...served, from: { a: "soon" } } }).build).toBeNull();
});
