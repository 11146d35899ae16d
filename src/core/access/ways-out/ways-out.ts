import type { DocumentEdit, Finding, WayOut, WayOutKind } from "../../base";
import type { Build } from "../../build";
import { bench } from "./bench";
import type { Candidate, Maker } from "./candidate";
import { cleanOut } from "./clean-out";
import { downBetween } from "./down-between";
import { later, leaveFaceOff } from "./face-off";
import { goneCheck } from "./gone";
import { dropWait, secondInspection } from "./others";
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
  ["drop-wait", dropWait],
];

/** Most changes of one kind that are tried, and most pairs. */
const mostOfAKind = 12;
const mostPairs = 60;

/**
 * Ways out of a block that were each tried on the whole build: one of each kind that works, one change each; pairs only when no single one works.
 * @param apply makes edits in the document the build was read from
 * @param gone whether the block is gone from a changed build; by default that order allows it, other blocks set aside
 */
export function waysOut(
  build: Build,
  finding: Finding,
  apply: Apply,
  gone: (next: Build) => boolean = goneCheck(build, finding),
): WayOut[] {
  const blocked = { build, because: finding.because ?? [] };
  const works = ({ edits }: Candidate): boolean => {
    const next = apply(edits);
    return next !== null && gone(next);
  };
  const candidates = makers.map(([, make]) => make(blocked).slice(0, mostOfAKind));
  const single = candidates.flatMap((list) => list.find(works) ?? []);
  if (single.length > 0) return single;
  const all = candidates.flatMap((list) => list.slice(0, 3));
  const pairs = all.flatMap((first, i) => all.slice(i + 1).map((second) => pairOf(first, second)));
  const pair = pairs.slice(0, mostPairs).find(works);
  return pair === undefined ? [] : [pair];
}

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
