import { describe, expect, it } from "vitest";
import { constant, problemOf } from "../../../test/schedule/problem-of";
import { type Problem, solve, verify } from ".";

/**
 * One form, wanted by jobs 0 and 2 and back with 1 and 3; 3 comes after 1, so whoever begins with 2 never gets the form for 0. The most urgent is 2, for 4 is long.
 * Jobs 5 and 6 want the same man, so that a search meets somebody busy before the form is found wanting.
 */
function oneForm(inHand: number, backAgain: boolean): Problem {
  return problemOf({
    jobs: [10, 10, 10, 10, 100, 10, 10].map((amount) => ({ amount })),
    links: [
      { from: 0, to: 1, least: 0 },
      { from: 1, to: 3, least: 0 },
      { from: 2, to: 3, least: 0 },
      { from: 2, to: 4, least: 0 },
    ],
    capacities: [constant("man", "people", 1)],
    demands: [
      [5, 0, 1],
      [6, 0, 1],
    ],
    stocks: [{ id: "form", inHand, arrivals: [] }],
    spans: [
      { stock: 0, number: 1, loss: 0, out: 0, back: backAgain ? 1 : -1 },
      { stock: 0, number: 1, loss: 0, out: 2, back: 3 },
    ],
  });
}

describe("stock that cannot come back", () => {
  it("is what the pass lacked, though people were busy before: then the order as it is written is tried", () => {
    const problem = oneForm(1, true);
    const { status, solution } = solve(problem);
    expect(status).toBe("planned");
    expect(verify(problem, solution!)).toEqual([]);
    expect(solution!.start[2]).toBe(solution!.finish[1]);
  });

  it("is told where no order helps, not the people", () => {
    const { status, stuck } = solve(oneForm(1, false));
    expect(status).toBe("not-found");
    expect(stuck).toEqual({ job: 0, of: { kind: "stock", index: 0 } });
  });

  it("is not lacked where there is enough", () => {
    expect(solve(oneForm(2, true)).status).toBe("proved");
  });
});
