import { plan } from "../../core/plan";
import { closingSentences, type LastChances } from "../../words";
import { type Outcome, outcome, type Ports } from "../fault";
import { findingLines } from "../findings";
import { openBuild } from "../open";

/** Every closing in date order, and what has to be done, in place, checked and photographed before it. */
export async function closingsCommand(file: string, ports: Ports): Promise<Outcome> {
  const { build } = await openBuild(file, ports);
  const made = plan(build);
  if (made.status !== "planned")
    return outcome([...made.findings.flatMap((finding) => findingLines(finding, build)), "There is no plan, so no closing has a date."], 1);
  return outcome(closingSentences(made, build).flatMap(closingLines));
}

function closingLines({ closing, groups }: LastChances): string[] {
  const before =
    groups.length === 0
      ? ["  Nothing needs to get in before."]
      : groups.flatMap(({ head, steps }) => [`  ${head}:`, ...steps.map((step) => `    [ ] ${step}`)]);
  return [closing, ...before, ""];
}
