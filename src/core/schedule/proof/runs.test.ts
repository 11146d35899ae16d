import { expect, test } from "vitest";
import { luby, Runs } from "./runs";

test("lengths are those of Luby, Sinclair & Zuckerman", () => {
  expect(Array.from({ length: 15 }, (_, k) => luby(k))).toEqual([1, 1, 2, 1, 1, 2, 4, 1, 1, 2, 1, 1, 2, 4, 8]);
});

test.each(["best", "wanted"] as const)(
  "of runs of one length three of four are guided by %s, and some short ones try the bound",
  (most) => {
    const runs = new Runs();
    const long: string[] = [];
    const short: string[] = [];
    for (let k = 0; k < 400; k++) {
      runs.next(most);
      (runs.left === 200 ? short : long).push(runs.manner);
    }
    expect(short.filter((m) => m === "bound").length).toBeGreaterThan(short.length / 12);
    expect(new Set(long)).toEqual(new Set(["best", "wanted"]));
    expect(long.filter((m) => m === most).length / long.length).toBeGreaterThan(0.7);
    expect(long.filter((m) => m === most).length / long.length).toBeLessThan(0.85);
  },
);
