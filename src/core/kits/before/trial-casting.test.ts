import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { oneAtItsEnd, someAnswers } from "../../../../test/fixtures/kits/ends-of-answers";
import { holds, type Put } from "../../../../test/fixtures/kits/kit-check";

const trial = (answers = {}): readonly Put[] => [
  ["footing", "Footing", { number: 1 }],
  ["column", "Column"],
  ["trial-casting", "Trial", answers],
];

describe.each(["us", "metric"] as const)("a trial casting in %s", (units) => {
  test("is cast in rounds with their gap, looked at when dry, and what it decides waits for it", () => {
    const { build, plan } = holds(units, trial({ rounds: 3, gap: "6 d", dry: "5 d" }));
    const at = (id: string) => plan.steps[build.at.step.get(id)!]!;
    const rounds = [1, 2, 3].map((n) => at(`trial-cast#${n}`));
    for (let i = 1; i < 3; i++) expect(rounds[i]!.start - rounds[i - 1]!.finish).toBeGreaterThanOrEqual(6 * 1440);
    expect(at("trial-look").start - rounds[2]!.finish).toBeGreaterThanOrEqual(5 * 1440);
    const look = build.steps[build.at.step.get("trial-look")!]!;
    for (const pour of look.trial!.decides) expect(at(pour).start).toBeGreaterThanOrEqual(at("trial-look").finish);
  });

  test("stands with any answers", () => {
    fc.assert(
      fc.property(someAnswers("trial-casting", units), (answers) => {
        holds(units, trial(answers));
      }),
      { numRuns: 15 },
    );
  });
});

test("every answer at its ends stands, in one system or the other", () => {
  const all = { us: oneAtItsEnd("trial-casting", "us"), metric: oneAtItsEnd("trial-casting", "metric") };
  all.us.forEach((_, i) => {
    const units = i % 2 === 0 ? "us" : "metric";
    holds(units, trial(all[units][i]));
  });
});
