import type { Finding } from "../../base";
import { type ClauseProblem, ClauseSearch, minimalSet, type WorkLeft } from "../../graph";
import type { Program } from "../compile/program";
import { findingOf } from "./finding";

/** Most blocks told of one build. */
export const mostBlocks = 20;

/** Most work on telling the blocks of one build, in steps of the search. Far above what any build tried so far has needed. */
const mostWork = 20_000_000;

/** Statements that cannot hold together, by number. */
export interface Block {
  readonly facts: readonly number[];
  /** False when the work allowed was spent before it was shown that none can be left out. */
  readonly minimal: boolean;
}

export interface Blocks {
  readonly blocks: readonly Block[];
  /** False when the work allowed was spent before it was known whether there are more. */
  readonly all: boolean;
}

/**
 * Minimal sets one after the other: after each, what it asks of steps is taken out and the rest looked at again, so that blocks that have nothing to do with each
 * other are all found in one go.
 * @param search one that has answered "no" for the whole problem
 */
export function findBlocks(
  program: Program,
  problem: ClauseProblem,
  search: ClauseSearch,
  most = mostBlocks,
  work: WorkLeft = { left: mostWork },
): Blocks {
  const blocks: Block[] = [];
  const without = new Uint8Array(program.facts.count);
  for (let next: ClauseSearch = search; ; next = new ClauseSearch(problem, without)) {
    if (next !== search) {
      const answer = work.left > 0 ? next.solve([], work.left) : "budget";
      work.left -= next.spent + problem.statement.length;
      if (answer !== "no") return { blocks, all: answer === "yes" };
    }
    const block = oneBlock(program, problem, next.refutation.statements, work);
    blocks.push(block);
    if (blocks.length === most) return { blocks, all: true };
    for (const fact of relaxed(program, block)) without[fact] = 1;
  }
}

/** A minimal set within a refutation; all that is left of it where the work is spent before. */
export function oneBlock(program: Program, problem: ClauseProblem, core: readonly number[], work: WorkLeft = { left: mostWork }): Block {
  const facts = program.facts.inOrder(minimalSet(problem, core, program.facts.tryOut(core), work));
  return { facts, minimal: work.left > 0 };
}

/** What is taken out of a build so that a block is gone: what it asks of steps; failing that dates and links; failing that all of it. */
export function relaxed(program: Program, block: Block): readonly number[] {
  const of = (...kinds: string[]) => block.facts.filter((fact) => kinds.includes(program.facts.kind(fact)));
  const asks = of("reach");
  if (asks.length > 0) return asks;
  const links = of("date", "link");
  return links.length > 0 ? links : block.facts;
}

/** The blocks as findings. `detail.spent` tells what the work allowed did not reach: "set", its statements may be more than are needed; "rest", there may be more. */
export function findingsOf(program: Program, { blocks, all }: Blocks): Finding[] {
  return blocks.map(({ facts, minimal }, i) => {
    const finding = findingOf(
      program.build,
      facts.map((fact) => program.facts.statement(fact)),
    );
    const spent = [...(minimal ? [] : ["set"]), ...(all || i + 1 < blocks.length ? [] : ["rest"])];
    return spent.length === 0 ? finding : { ...finding, detail: { ...finding.detail, spent } };
  });
}

export const findingOfOne = (program: Program, block: Block): Finding | undefined => findingsOf(program, { blocks: [block], all: true })[0];
