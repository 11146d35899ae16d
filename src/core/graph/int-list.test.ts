import { expect, test } from "vitest";
import { IntList } from "./int-list";

test("grows, keeps what it holds, and packs to the length it has", () => {
  const list = new IntList(1);
  for (let i = 0; i < 100; i++) list.push(i * i);
  expect(list.length).toBe(100);
  expect([list.at(0), list.at(7), list.at(99)]).toEqual([0, 49, 9801]);
  const packed = list.packed();
  expect(packed).toHaveLength(100);
  packed[0] = 5;
  expect(list.at(0)).toBe(0);
});
