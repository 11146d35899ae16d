import type { DocumentEdit, Finding, WayOut, WayOutKind } from "../../base";
import type { Build } from "../../build";
import { bench } from "./bench";
import type { Candidate, Maker } from "./candidate";
import { cleanOut } from "./clean-out";
import { downBetween } from "./down-between";
import { later, leaveFaceOff } from "./face-off";
import { leftOver } from "./left-over";
import { dropWait, secondInspection, tick, untick } from "./others";
import { split } from "./split";

/** The document with the edits made, read again; null when it then is no build. */
export type Apply = (edits: readonly DocumentEdit[]) => Build | null;

/** Practical ones first. Dates are moved by whoever knows calendars. */
const makers: readonly (readonly [WayOutKind, Maker])[] = [
  ["bench", bench],
  ["leave-face-off", leaveFaceOff],
  ["clean-out", cleanOut],
  ["split", split],
  ["later", later],
  ["down-between", downBetween],
  ["second-inspection", secondInspection],
  ["tick", tick],
  ["untick", untick],
  ["drop-wait", dropWait],
];

/** Most changes of one kind that are tried, and most of a kind to begin a pair with. */
const mostOfAKind = 12;
const mostFirst = 3;

/**
 * Ways out of a block that were each tried on the whole build: one of each kind that works, one change each; a pair only when no single one works.
 * @param apply makes edits in the document the build was read from
 * @param left what is left of the block in a changed build; by default order alone is asked, with other blocks set aside
 */
export function waysOut(
  build: Build,
  finding: Finding,
  apply: Apply,
  left: (next: Build) => Finding | null = leftOver(build, finding),
): WayOut[] {
  const candidates = candidatesFor(build, finding);
  const works = ({ edits }: Candidate): boolean => {
    const next = apply(edits);
    return next !== null && left(next) === null;
  };
  const single = candidates.flatMap((list) => list.find(works) ?? []);
  if (single.length > 0) return single;
  for (const first of candidates.flatMap((list) => list.slice(0, mostFirst))) {
    const next = apply(first.edits);
    const rest = next === null ? null : left(next);
    if (next === null || rest === null) continue;
    const seconds = candidatesFor(next, rest).flatMap((list) => list.slice(0, mostFirst));
    const pair = seconds.map((second) => pairOf(first, second)).find(works);
    if (pair !== undefined) return [pair];
  }
  return [];
}

function candidatesFor(build: Build, finding: Finding): Candidate[][] {
  const blocked = { build, because: finding.because ?? [] };
  return makers.map(([, make]) => make(blocked).slice(0, mostOfAKind));
}

/** Two changes, told as the first with the kind of the second. */
function pairOf(first: Candidate, second: Candidate): Candidate {
  return { kind: first.kind, detail: { ...first.detail, with: second.kind }, edits: [...first.edits, ...second.edits] };
}

/** The findings, each block of order with its ways out. */
export const withWaysOut = (build: Build, findings: readonly Finding[], apply: Apply): Finding[] =>
  findings.map((finding) =>
    finding.because === undefined || !finding.code.startsWith("access.") || finding.severity !== "stop"
      ? finding
      : { ...finding, waysOut: waysOut(build, finding, apply) },
  );
