import { expect, test } from "vitest";
import { luby, Runs } from "./runs";

test("lengths are those of Luby, Sinclair & Zuckerman", () => {
  expect(Array.from({ length: 15 }, (_, k) => luby(k))).toEqual([1, 1, 2, 1, 1, 2, 4, 1, 1, 2, 1, 1, 2, 4, 8]);
});

test.each([2, 4])("long runs take turns, one of %s around the best, and some short ones try the bound", (perBest) => {
  const runs = new Runs(perBest);
  const long: string[] = [];
  const short: string[] = [];
  for (let k = 0; k < 200; k++) {
    runs.next();
    (runs.left === 200 ? short : long).push(runs.manner);
  }
  expect(short.filter((m) => m === "bound").length).toBeGreaterThan(short.length / 12);
  expect(long.filter((m) => m === "best").length).toBeGreaterThan(long.length / (perBest + 2));
  expect(long.filter((m) => m === "early").length).toBeGreaterThan(long.length * (perBest === 2 ? 1 / 3 : 1 / 2));
});
