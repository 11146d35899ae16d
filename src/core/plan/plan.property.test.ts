import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { randomDocument } from "../../../test/oracle/random-builds";
import { bandedDocument } from "../../../test/schedule/random-document";
import { readDocument } from "../build";
import { plan, verifyPlan } from ".";

/** Small builds with dates, waits and choices (one crew, always there), and small ones with calendars, people, places and stock. */
const sorts = {
  order: (n: number) => {
    const document = randomDocument(n) as { steps: Record<string, unknown>[] };
    const [first, last] = [document.steps[0]!, document.steps[document.steps.length - 1]!];
    if (n % 3 === 0) first.notBefore = `2027-03-06T${10 + (n % 9)}:00`;
    if (n % 2 === 0) last.deadline = `2027-03-0${6 + (n % 3)}T20:00`;
    return document;
  },
  site: (n: number) => bandedDocument(n),
} as const;

describe.each(Object.entries(sorts))("plans of random builds: %s", (_, draw) => {
  it("stand up to the second look, never start before the build, and come out the same twice", () => {
    const met: Record<string, number> = {};
    fc.assert(
      fc.property(fc.nat(1_000_000), (n) => {
        const { build, findings } = readDocument(draw(n));
        if (build === null || findings.some((f) => f.severity === "stop")) return;
        const made = plan(build);
        met[made.status] = (met[made.status] ?? 0) + 1;
        expect(verifyPlan(build, made)).toEqual([]);
        expect(JSON.stringify(plan(build))).toBe(JSON.stringify(made));
        for (const s of made.steps) {
          expect(s.start).toBeGreaterThanOrEqual(0);
          expect(s.slack).toBeGreaterThanOrEqual(0);
          expect(s.latestFinish).toBeGreaterThanOrEqual(s.finish);
          expect(s.earliestStart).toBeLessThanOrEqual(s.start);
        }
        if (made.status !== "planned") expect(made.findings.some((f) => f.severity === "stop")).toBe(true);
      }),
      { numRuns: 300, seed: 11 },
    );
    expect(met.planned, JSON.stringify(met)).toBeGreaterThan(80);
  });
});
