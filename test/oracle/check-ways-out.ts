import { access, withWaysOut } from "../../src/core/access";
import type { DocumentEdit, Finding, WayOut } from "../../src/core/base";
import { type Build, readDocument } from "../../src/core/build";
import { apply } from "../../src/core/edit";
import { brute } from "./brute";
import type { Faults } from "./check-access";
import type { Loose } from "./random-builds";
import { rulesOfStatements } from "./statements";

export interface WaysOut {
  readonly blocks: number;
  readonly without: number;
  readonly offered: readonly WayOut[];
  readonly faults: Faults;
}

/**
 * Makes every way out offered in the document. Then the block must be gone: access does not report it, and what it blamed can hold together in the build
 * that follows; where it was the only block, an order exists.
 */
export function checkWaysOut(document: Loose, build: Build, findings: readonly Finding[]): WaysOut {
  const edited = (edits: readonly DocumentEdit[]) => readDocument(apply(document, edits).document).build;
  const blocks = withWaysOut(build, findings, edited).filter((f) => f.severity === "stop" && f.because !== undefined);
  const offered = blocks.flatMap((f) => f.waysOut ?? []);
  const faults = blocks.flatMap((f) => (f.waysOut ?? []).flatMap((way) => faultsOfWay(f, way, edited(way.edits), blocks.length === 1)));
  return { blocks: blocks.length, without: blocks.filter((f) => !f.waysOut?.length).length, offered, faults };
}

function faultsOfWay(block: Finding, { kind, edits }: WayOut, next: Build | null, only: boolean): Faults {
  const text = `${kind} ${JSON.stringify(edits)}`;
  if (next === null) return [`ways out: cannot be read after ${text}`];
  const now = access(next);
  const known = brute(next);
  if (now.possible !== known.possible) return [`ways out: possible is ${now.possible} after ${text}`];
  if (only && !known.possible) return [`ways out: the only block is gone, but no order is possible, after ${text}`];
  const same = now.findings.some((f) => f.code === block.code && JSON.stringify(f.because) === JSON.stringify(block.because));
  if (same) return [`ways out: still reported after ${text}`];
  const together = brute(next, rulesOfStatements(next, block.because ?? [])).possible;
  return together ? [] : [`ways out: still cannot hold together after ${text}`];
}
