import type { Build } from "../build";
import { ClauseSearch, topologicalOrder } from "../graph";
import { findBlocks, findingsOf } from "./blocks/blocks";
import { notesOn } from "./blocks/notes";
import { compile, type RefusedSet } from "./compile/compile";
import { orderLayer } from "./compile/layers";
import type { Program } from "./compile/program";
import { arcsTable, noArcs } from "./read-out/arcs";
import { openChoices } from "./read-out/choices";
import { forcedRows } from "./read-out/forced";
import { Reasons } from "./read-out/reasons";
import { graphOfRows, readRows } from "./read-out/rows";
import { Settled } from "./read-out/settled";
import type { Access } from "./result";

/** Most work spent on finding an order, in steps of the search. Far above what any build tried so far has needed. */
const mostWork = 20_000_000;

/**
 * Derives the order of a build from what its steps reach and its pieces close.
 * @param refuse sets of precedences (positions of steps) that dates have refuted together; not all of a set are chosen again
 * @returns an order with the reason of every precedence; or, where there is none, minimal sets of statements that cannot all hold
 */
export function access(build: Build, refuse: readonly RefusedSet[] = []): Access {
  const program = compile(build, refuse);
  const problem = orderLayer(program);
  const search = new ClauseSearch(problem);
  const answer = search.solve([], mostWork);
  if (answer === "yes") return possible(program, search);
  const stops =
    answer === "no"
      ? findingsOf(program, findBlocks(program, problem, search))
      : [{ code: "access.too-hard", severity: "stop", where: {}, detail: { work: mostWork } } as const];
  return {
    possible: false,
    findings: [...stops, ...notesOn(build)],
    statements: [],
    amounts: program.amounts,
    arcs: noArcs,
    choices: [],
    order: new Int32Array(),
  };
}

function possible(program: Program, search: ClauseSearch): Access {
  const settled = new Settled(program, search);
  const reasons = new Reasons(program);
  const rows = readRows(program, settled, reasons);
  const forced = forcedRows(program, search, settled, rows);
  const choices = openChoices(program, settled, rows, reasons, forced);
  const order = topologicalOrder(graphOfRows(program, rows).graph) ?? new Int32Array();
  return {
    possible: true,
    findings: notesOn(program.build),
    statements: reasons.statements,
    amounts: program.amounts,
    arcs: arcsTable(program, rows, forced, order),
    choices,
    order,
  };
}
