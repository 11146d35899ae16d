import type { Finding, Statement } from "../../base";
import type { Build } from "../../build";
import { ClauseSearch } from "../../graph";
import { findBlocks, findingOfOne, oneBlock, relaxed } from "../blocks/blocks";
import { ask, compile } from "../compile/compile";
import { orderLayer } from "../compile/layers";

/** Most blocks of one build that are set aside while a way out of another is tried. */
const mostOthers = 100;

/** Most work on one check, in steps of the search. */
const mostWork = 2_000_000;

/** What a statement speaks of, apart from its number in a list: the same before and after an edit. */
export function keyOf({ rule, id, detail, ...about }: Statement): string {
  const counted = rule === "reach" || rule === "off" ? {} : { id };
  return JSON.stringify([rule, counted, about, rule === "reach" || rule === "off" ? detail : {}]);
}

/**
 * Says of a changed build what is left of the block: null when it is gone, whatever else still stands in the way. What other blocks of the old build ask of
 * steps is set aside, and the rest must be possible.
 */
export function leftOver(build: Build, finding: Finding): (next: Build) => Finding | null {
  const because = finding.because ?? [];
  const asked = because.find((s) => s.rule === "asked");
  const own = new Set(because.map(keyOf));
  const others = new Set(setAside(build).filter((key) => !own.has(key)));
  return (next) => {
    const program = compile(next);
    if (asked !== undefined) {
      const before = next.at.step.get(asked.step ?? "");
      const after = next.at.step.get(asked.other ?? "");
      if (before === undefined || after === undefined) return finding;
      ask(program, before, after);
    }
    const without = Uint8Array.from(program.facts.statements, (s) => (others.has(keyOf(s)) ? 1 : 0));
    const problem = orderLayer(program);
    const search = new ClauseSearch(problem, without);
    const answer = search.solve([], mostWork);
    if (answer !== "no") return answer === "yes" ? null : finding;
    return findingOfOne(program, oneBlock(program, problem, search.refutation.statements, { left: mostWork })) ?? finding;
  };
}

function setAside(build: Build): string[] {
  const program = compile(build);
  const problem = orderLayer(program);
  const search = new ClauseSearch(problem);
  if (search.solve([], mostWork) !== "no") return [];
  const { blocks } = findBlocks(program, problem, search, mostOthers);
  return blocks.flatMap((block) => relaxed(program, block).map((fact) => program.facts.statement(fact))).map(keyOf);
}
