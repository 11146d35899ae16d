import { type Apply, withWaysOut } from "../core/access";
import type { Finding } from "../core/base";
import { type Build, readDocument } from "../core/build";
import { apply } from "../core/edit";
import { asDone, asDoneAfter, type Plan, withEffects } from "../core/plan";
import { effectSentence, findingSentence, gathered, statementSentence, wayOutSentence } from "../words";

/** A finding with its reasons and its ways out, indented below it. */
export function findingLines(finding: Finding, build: Build | null): string[] {
  const lines = [findingSentence(finding, build)];
  if (build === null) return lines;
  const { because = [], waysOut = [] } = finding;
  if (because.length === 1) lines.push(...because.map((one) => `  ${statementSentence(one, build)}`));
  else if (because.length > 1)
    lines.push(
      finding.detail.minimal === false
        ? "  Among these lies what cannot be kept; some may have no part in it:"
        : "  These cannot all hold; without any one of them the rest can:",
      ...because.map((one) => `  - ${statementSentence(one, build)}`),
    );
  if (waysOut.length > 0)
    lines.push(
      "  Ways out, each tried on the whole build:",
      ...waysOut.map((one) => `  > ${[wayOutSentence(one, build), effectSentence(one, build)].join(" ").trimEnd()}`),
    );
  return lines;
}

const weight = { stop: 0, look: 1, note: 2 } as const;

/** The gravest first; otherwise as they were found, with one for one cause. */
export function inGravity(findings: readonly Finding[]): Finding[] {
  return gathered(findings).sort((a, b) => weight[a.severity] - weight[b.severity]);
}

/** The findings in that order, blocks of order with the ways out that were tried and work, and what each does to the finish. */
export function withWays(build: Build, document: unknown, findings: readonly Finding[], now?: () => Plan): Finding[] {
  const edited: Apply = (edits) => readDocument(apply(document, edits).document).build;
  return withEffects(build, withWaysOut(asDone(build), inGravity(findings), asDoneAfter(edited)), edited, now);
}
