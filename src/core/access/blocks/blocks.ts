import type { Finding } from "../../base";
import { type ClauseProblem, ClauseSearch, minimalSet } from "../../graph";
import type { Program } from "../compile/program";
import { findingOf } from "./finding";

/** Most blocks told of one build. */
export const mostBlocks = 20;

/** Statements, by number, of which none can be left out. */
export type Block = readonly number[];

/**
 * Minimal sets one after the other: after each, what it asks of steps is taken out and the rest looked at again, so that blocks that have nothing to do with each
 * other are all found in one go.
 * @param search one that has answered "no" for the whole problem
 */
export function findBlocks(program: Program, problem: ClauseProblem, search: ClauseSearch, most = mostBlocks): Block[] {
  const blocks: Block[] = [];
  const without = new Uint8Array(program.facts.statements.length);
  for (let next: ClauseSearch = search; ; next = new ClauseSearch(problem, without)) {
    if (next !== search && next.solve() !== "no") return blocks;
    const block = oneBlock(program, problem, next.refutation.statements);
    blocks.push(block);
    if (blocks.length === most) return blocks;
    for (const fact of relaxed(program, block)) without[fact] = 1;
  }
}

export function oneBlock(program: Program, problem: ClauseProblem, core: readonly number[]): Block {
  return program.facts.inOrder(minimalSet(problem, core, program.facts.tryOut(core)));
}

/** What is taken out of a build so that a block is gone: what it asks of steps; failing that dates and links; failing that all of it. */
export function relaxed(program: Program, block: Block): readonly number[] {
  const of = (...kinds: string[]) => block.filter((fact) => kinds.includes(program.facts.kind(fact)));
  const asks = of("reach");
  if (asks.length > 0) return asks;
  const links = of("date", "link");
  return links.length > 0 ? links : block;
}

export const findingsOf = (program: Program, blocks: readonly Block[]): Finding[] =>
  blocks.map((block) =>
    findingOf(
      program.build,
      block.map((fact) => program.facts.statements[fact]).filter((s) => s !== undefined),
    ),
  );
