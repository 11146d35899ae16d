import type { Build } from "../build";
import { type ClauseProblem, ClauseSearch, topologicalOrder } from "../graph";
import { findBlocks, findingsOf } from "./blocks/blocks";
import { notesOn } from "./blocks/notes";
import { compile } from "./compile/compile";
import { orderLayer } from "./compile/layers";
import type { Program } from "./compile/program";
import { arcsTable, noArcs } from "./read-out/arcs";
import { openChoices } from "./read-out/choices";
import { forcedRows } from "./read-out/forced";
import { Reasons } from "./read-out/reasons";
import { graphOfAnswer, readRows } from "./read-out/rows";
import { Settled } from "./read-out/settled";
import type { Access, RefusedLink } from "./result";

/** Far above what any build tried so far has needed. */
const mostWork = 20_000_000;

/**
 * Derives the order of a build from what its steps reach and its pieces close.
 * @param refuse sets of links that dates have refuted together; not all of a set are chosen again
 * @param work most work spent on finding an order, in steps of the search
 * @returns an order with the reason of every precedence; or, where there is none, minimal sets of statements that cannot all hold
 */
export function access(build: Build, refuse: readonly (readonly RefusedLink[])[] = [], work = mostWork): Access {
  const program = compile(build, refuse);
  const problem = orderLayer(program);
  const search = new ClauseSearch(problem);
  const answer = search.solve([], work);
  if (answer === "yes") return possible(program, problem, search, work);
  const stops =
    answer === "no"
      ? findingsOf(program, findBlocks(program, problem, search))
      : [{ code: "access.too-hard", severity: "stop", where: {}, detail: { work } } as const];
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

/** What is settled in every order is asked of the build alone: what dates have refuted makes nothing forced. */
function possible(program: Program, problem: ClauseProblem, search: ClauseSearch, work: number): Access {
  const every = program.refusals.length === 0 ? search : unrefused(program, problem, work);
  const settled = new Settled(program, search, every);
  const reasons = new Reasons(program);
  const rows = readRows(program, settled, reasons);
  const forced = forcedRows(program, settled, rows);
  const choices = openChoices(program, settled, rows, reasons, forced);
  const order = topologicalOrder(graphOfAnswer(program, settled, rows)) ?? new Int32Array();
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

function unrefused(program: Program, problem: ClauseProblem, work: number): ClauseSearch {
  const search = new ClauseSearch(
    problem,
    Uint8Array.from(program.facts.statements, ({ rule }) => (rule === "refused" ? 1 : 0)),
  );
  search.solve([], work);
  return search;
}
