import { expect, test } from "vitest";
import { keepSame } from "./same";

interface Row {
  readonly id: string;
  readonly says: string;
  readonly days?: readonly number[];
}
const keep = () => keepSame<Row>(({ id }) => id);

test("what came out as before is the very same object; the rest is new", () => {
  const same = keep();
  const [a, b] = same([
    { id: "a", says: "one", days: [1, 2] },
    { id: "b", says: "two" },
  ]);
  const after = same([
    { id: "b", says: "two" },
    { id: "a", says: "one", days: [1, 3] },
  ]);
  expect(after[0]).toBe(b);
  expect(after[1]).not.toBe(a);
  expect(after[1]?.days).toEqual([1, 3]);
});

test("a list that came out as before is the very same list", () => {
  const same = keep();
  const first = same([{ id: "a", says: "one", days: [1, 2] }]);
  expect(same([{ id: "a", says: "one", days: [1, 2] }])).toBe(first);
});

test("a field more or less is a difference, and so is another order", () => {
  const same = keep();
  const rows: Row[] = [
    { id: "a", says: "one" },
    { id: "b", says: "two" },
  ];
  const first = same(rows);
  expect(same([{ id: "a", says: "one", days: [] }, rows[1]!])[0]).not.toBe(first[0]);
  expect(same([rows[1]!, rows[0]!]).map(({ id }) => id)).toEqual(["b", "a"]);
});
