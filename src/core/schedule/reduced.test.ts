import { expect, test } from "vitest";
import { problemOf } from "../../../test/schedule/problem-of";
import { cannotHold, solve } from ".";
import { problemOfParts } from "./reduced";

test("without its length a job may take any time, not none", () => {
  // Ends 5 after the first at the earliest, and is begun before 2: ten minutes do.
  const p = problemOf({
    jobs: [{ amount: 0 }, { amount: 10 }, { amount: 0, due: 2 }],
    links: [
      { from: 0, to: 1, ends: "FF", least: 5 },
      { from: 1, to: 2, ends: "SS", least: 0 },
    ],
    horizon: 100,
  });
  const links = [0, 1].map((link) => ({ kind: "link", link, side: "least" }) as const);
  expect(solve(p).solution).not.toBeNull();
  expect(cannotHold(p, [...links, { kind: "due", job: 2 }])).toBe(false);
  expect(cannotHold(p, [...links, { kind: "due", job: 2 }, { kind: "job", job: 1 }])).toBe(false);
});

test("what is left holds only what was kept", () => {
  const p = problemOf({
    jobs: [{ amount: 3, release: 4 }, { amount: 5, fixed: 7 }, { amount: 1 }],
    links: [{ from: 0, to: 1, least: 2, most: 9 }],
    stocks: [{ id: "sheets", inHand: 1, arrivals: [{ job: 2, number: 1 }] }],
    spans: [{ stock: 0, number: 1, loss: 0, out: 0, back: 1 }],
    horizon: 50,
  });
  const q = problemOfParts(p, [
    { kind: "link", link: 0, side: "most" },
    { kind: "job", job: 0 },
    { kind: "release", job: 0 },
    { kind: "stock", index: 0 },
  ]);
  // Job 0 whole, the start (by the link) and the finish (by the stock) of job 1, the finish of job 2.
  expect([...q.amount]).toEqual([3, 0, 0, 0]);
  expect([...q.release]).toEqual([4, 0, 0, 0]);
  expect([...q.fixed]).toEqual([-1, -1, -1, -1]);
  expect([...q.links.least]).toEqual([-1, 0]);
  expect([...q.links.most]).toEqual([9, -1]);
  expect(q.spans).toEqual([{ stock: 0, number: 1, loss: 0, out: 0, back: 3 }]);
  expect(q.stocks[0]!.arrivals).toEqual([{ job: 2, number: 1 }]);
});
