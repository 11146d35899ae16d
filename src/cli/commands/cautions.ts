import type { Build } from "../../core/build";
import type { Plan } from "../../core/plan";
import { assumptionSentence, buildCautions, deferral, holdPointSentences, spelled } from "../../words";

const mostNamed = 4;

/** Hold points in date order; none where there is none. */
export function holdPointLines(build: Build, made: Plan): string[] {
  const said = holdPointSentences(made, build);
  return said.length === 0 ? [] : ["Hold points:", ...said.map((line) => `  ${line}`), ""];
}

/** What can hurt someone, each caution once with the steps it is about, and to whom it defers. */
export function cautionLines(build: Build): string[] {
  const all = buildCautions(build);
  if (all.length === 0) return [];
  const about = (steps: readonly string[]): string =>
    [...steps.slice(0, mostNamed), ...(steps.length > mostNamed ? [spelled(steps.length - mostNamed, "more step")] : [])].join(", ");
  return ["Keep in mind:", ...all.map(({ says, steps }) => `  ${says} (${about(steps)})`), `  ${deferral}`, ""];
}

/** What the dates rest on. */
export function assumptionLines(made: Plan): string[] {
  return made.assumes.length === 0 ? [] : ["What the dates rest on:", ...made.assumes.map((code) => `  ${assumptionSentence(code)}`), ""];
}
