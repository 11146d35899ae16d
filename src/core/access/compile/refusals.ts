import type { DetailValue } from "../../base";
import type { RefusedLink } from "../result";
import type { Program } from "./program";

/**
 * What dates have refuted, set by set: of bare precedences one is the other way round, or of links with amounts one is not taken. Such a link becomes a variable of
 * its own in the order layer, apart from its bare precedence.
 */
export function compileRefusals(program: Program, refuse: readonly (readonly RefusedLink[])[]): void {
  const compiled = program.atoms;
  refuse.forEach((set, i) => {
    if (set.length === 0) return;
    const id = (s: number): string => program.build.steps[s]?.id ?? "";
    const texts = set.map(([, , link]) => amountsOf(program, link, compiled));
    const detail: Record<string, DetailValue> = { before: set.map(([s]) => id(s)), after: set.map(([, t]) => id(t)) };
    if (texts.some((text) => text !== "")) detail.amounts = texts;
    const fact = program.facts.add({ rule: "refused", id: String(i + 1), detail }, "choices", 1e6 + i);
    const literals = set.flatMap(([s, t, link]) => (bindsMore(program, link, compiled) ? [2 * link + 1] : reversed(program, s, t)));
    for (const literal of literals) if ((literal & 1) === 1) program.live.add(literal >> 1);
    program.refusals.push({ fact, literals });
  });
}

/** A link of the build that has an amount or binds time only. */
const bindsMore = (program: Program, link: number | undefined, compiled: number): link is number =>
  link !== undefined && link >= 0 && link < compiled && !program.isSelector(link) && program.bare.at(link) !== link;

function reversed(program: Program, s: number, t: number): number[] {
  const atom = program.before(t, s);
  return atom < 0 ? [] : [2 * atom];
}

function amountsOf(program: Program, link: number | undefined, compiled: number): string {
  if (!bindsMore(program, link, compiled)) return "";
  const text = (index: number): string[] => (index < 0 ? [] : [program.amounts[index]?.text ?? ""]);
  return [...text(program.least.at(link)), ...text(program.most.at(link))].join(" to ");
}
