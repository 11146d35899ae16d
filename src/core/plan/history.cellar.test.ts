import { describe, expect, test } from "vitest";
import { examples } from "../../examples";
import { readDocument } from "../build";
import { clocksOf } from "../clock";
import { plan, verifyPlan } from ".";

const document = (await examples.find(({ id }) => id === "bank-cellar")!.load()) as Record<string, unknown>;
const build = readDocument(document).build!;
const first = plan(build);
const { momentOf } = clocksOf(build).time;

/** The document with every step that the plan finishes by a minute ticked as it was planned. */
function ticked(cut: number): Record<string, unknown> {
  const groups = structuredClone((document.groups ?? []) as { differences?: Record<string, Record<string, object>> }[]);
  const steps = structuredClone(document.steps as { id: string; done?: object }[]);
  first.steps.forEach(({ start, finish }, s) => {
    if (finish > cut) return;
    const done = { start: momentOf(start), finish: momentOf(finish) };
    const { id, group, trial } = build.steps[s]!;
    if (trial !== null && trial.rounds > 1) return;
    if (group === null) steps.find((step) => step.id === id)!.done = done;
    else {
      const written = groups.find((g) => (g as { id?: string }).id === group.group)!;
      written.differences ??= {};
      written.differences[group.copy] ??= {};
      const copy = written.differences[group.copy]!;
      copy[group.written] = { ...copy[group.written], done };
    }
  });
  return { ...document, groups, steps, resumes: momentOf(cut as never) };
}

describe("the cellar under way", () => {
  test.each([0.1, 0.3, 0.5, 0.7, 0.9, 1])(
    "ticked as planned up to %f of its time, the rest is planned soundly and done work does not move",
    (share) => {
      const cut = Math.floor(first.finish * share);
      const read = readDocument(ticked(cut));
      expect(read.findings.filter(({ severity }) => severity === "stop")).toEqual([]);
      const made = plan(read.build!);
      expect(made.findings.filter(({ severity }) => severity === "stop")).toEqual([]);
      expect(made.status).toBe("planned");
      expect(verifyPlan(read.build!, made)).toEqual([]);
      let done = 0;
      read.build!.steps.forEach((step, s) => {
        if (step.done === null) return;
        done++;
        expect([made.steps[s]!.start, made.steps[s]!.finish]).toEqual([first.steps[s]!.start, first.steps[s]!.finish]);
      });
      expect(done).toBeGreaterThan(0);
      expect(made.finish).toBeLessThanOrEqual(first.finish + 28 * 1440);
    },
  );
});
