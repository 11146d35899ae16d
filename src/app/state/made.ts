import type { DocumentEdit, Finding } from "../../core/base";
import { type Build, readDocument } from "../../core/build";
import { compare, type Plan } from "../../core/plan";
import { comparisonSentences, findingSentence, gathered } from "../../words";
import type { Desk } from "./desk";

/** A plan with the build it was made from. */
export interface Made {
  readonly plan: Plan;
  readonly of: Build;
}

/** A document as read. */
export interface Reading {
  readonly build: Build | null;
  readonly findings: readonly Finding[];
}

export const reading = (document: unknown): Reading => readDocument(document);

/** The finding that speaks of what was edited: others may only follow from it. */
export function nearest(findings: readonly Finding[], edits: readonly DocumentEdit[]): Finding | undefined {
  const stops = findings.filter((finding) => finding.severity === "stop");
  const about = (finding: Finding, parts: number): boolean =>
    edits.some(({ path }) =>
      [finding.where.list, `id=${finding.where.id}`, finding.where.key].slice(0, parts).every((part, at) => part === path[at]),
    );
  return stops.find((finding) => about(finding, 3)) ?? stops.find((finding) => about(finding, 2)) ?? stops[0];
}

/** A block of order whose ways out have not been tried yet. */
export const isBlock = (finding: Finding): boolean =>
  finding.severity === "stop" && finding.because !== undefined && finding.waysOut === undefined;

/**
 * Null where the first has no dates or no steps, or no date moved. Where the second has no dates, that, and the first thing that is wrong. `undone`: the second is one that was there before,
 * brought back.
 */
export function movedBetween(before: Made, now: Made, units: "us" | "metric", undone = false): Desk["moved"] {
  if (before.plan.status !== "planned" || before.plan.steps.length === 0) return null;
  const comparison = compare(before.plan, now.plan, now.of);
  if (now.plan.status !== "planned") {
    const wrong = gathered(now.plan.findings).find(({ severity }) => severity === "stop");
    if (wrong === undefined) return null;
    return {
      comparison,
      sentences: undone ? ["Back as it was."] : [`There are no dates any more. ${findingSentence(wrong, now.of, units)}`],
    };
  }
  if (comparison.moved.length === 0 && comparison.finishBefore === comparison.finishAfter) return null;
  return { comparison, sentences: comparisonSentences(comparison, now.of, now.plan, units, undone) };
}
