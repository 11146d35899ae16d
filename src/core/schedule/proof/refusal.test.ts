import { describe, expect, test } from "vitest";
import { constant, type JobSpec, problemOf } from "../../../../test/schedule/problem-of";
import { randomFrom } from "../../base";
import type { Problem } from "../problem";
import { proofOf, refusalOf } from "./index";

function refused(p: Problem, most?: number) {
  expect(proofOf(p, null).result().solution).toBeNull();
  const search = refusalOf(p, most);
  while (!search.done) search.step(7);
  return search.result();
}

/** Three hours of work for one man in two hours, among jobs, waits and things that have nothing to do with it. */
function tooFewHands(others: number): Problem {
  const random = randomFrom(3);
  const work = [1, 2, 3].map((): JobSpec => ({ amount: 60, due: 120 }));
  const beside = Array.from({ length: others }, (): JobSpec => ({ amount: random.int(10, 60), release: random.int(0, 50) }));
  return problemOf({
    jobs: [...work, ...beside],
    links: Array.from({ length: others }, (_, k) => ({ from: 2 + Math.max(1, k - 2), to: 3 + k, least: random.int(0, 30) })).filter(
      (l) => l.from !== l.to,
    ),
    capacities: [constant("mixer", "equipment", 5), constant("man", "people", 1), constant("pit", "room", 3)],
    demands: [...work.map((_, j) => [j, 1, 1] as const), ...beside.flatMap((_, k) => [[3 + k, 0, 1] as const, [3 + k, 2, 1] as const])],
    stocks: [{ id: "sheets", inHand: 9, arrivals: [] }],
    spans: [{ stock: 0, number: 2, loss: 0, out: 3, back: 4 }],
    horizon: 100_000,
  });
}

describe("why nothing can be, where it takes people or stock", () => {
  test("the man, three lengths and three dates, out of a hundred other things", () => {
    const { parts, minimal } = refused(tooFewHands(40));
    expect(minimal).toBe(true);
    expect(parts).toEqual([
      ...[0, 1, 2].map((job) => ({ kind: "due", job })),
      ...[0, 1, 2].map((job) => ({ kind: "job", job })),
      { kind: "capacity", index: 1 },
    ]);
  });

  test("more work for one man than there are hours before a date, without trying one order of it after the other", () => {
    const jobs = Array.from({ length: 25 }, (): JobSpec => ({ amount: 60, due: 25 * 60 - 1 }));
    const p = problemOf({
      jobs,
      capacities: [constant("man", "people", 1)],
      demands: jobs.map((_, j) => [j, 0, 1] as const),
      horizon: 100_000,
    });
    const proof = proofOf(p, null);
    expect([proof.done, proof.result().status, proof.clashes]).toEqual([true, "infeasible", 0]);
    const { parts, minimal } = refused(p);
    expect([parts.length, minimal]).toEqual([51, true]);
  });

  test("a stock from which more goes for good than ever comes", () => {
    const p = problemOf({
      jobs: [{ amount: 5 }, { amount: 5 }, { amount: 5 }],
      stocks: [{ id: "bags", inHand: 4, arrivals: [{ job: 2, number: 3 }] }],
      spans: [0, 1].map((out) => ({ stock: 0, number: 4, loss: 0, out, back: -1 })),
      horizon: 1000,
    });
    expect(refused(p)).toEqual({ parts: [{ kind: "stock", index: 0 }], minimal: true });
  });

  test("where no proof may take any work, all parts stay and nothing is claimed of them", () => {
    const { parts, minimal } = refused(tooFewHands(4), 0);
    expect(minimal).toBe(false);
    expect(parts).toContainEqual({ kind: "capacity", index: 1 });
  });

  test("before it is done it says what is sure by then, and does no more than it is asked for", () => {
    const search = refusalOf(tooFewHands(40));
    const all = search.result().parts.length;
    search.step(0);
    expect(search.work).toBe(0);
    search.step(40);
    expect(search.done).toBe(false);
    expect(search.result().minimal).toBe(false);
    expect(search.result().parts.length).toBeLessThan(all);
  });
});
