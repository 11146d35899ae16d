import { lastChances } from "../../core/access";
import { plan } from "../../core/plan";
import { closingSentences, type LastChances, undatedClosings } from "../../words";
import { type Outcome, outcome, type Ports } from "../fault";
import { findingLines, inGravity } from "../findings";
import { openBuild } from "../open";
import { assumptionLines, cautionLines, holdPointLines } from "./cautions";

/**
 * Every closing in date order, and what has to be done, in place, checked and photographed before it. Without dates, in the order in which they go up, after
 * what stands in the way (1).
 */
export async function closingsCommand(file: string, ports: Ports): Promise<Outcome> {
  const { build } = await openBuild(file, ports);
  const made = plan(build);
  if (made.status === "planned")
    return outcome([
      ...closingSentences(made, build).flatMap(closingLines),
      ...holdPointLines(build, made),
      ...cautionLines(build),
      ...assumptionLines(made),
    ]);
  const stops = inGravity(made.findings).flatMap((finding) => [...findingLines(finding, build), ""]);
  if (!made.access.possible) return outcome([...stops, "No order works, so nothing can be said of what closes when."], 1);
  return outcome(
    [
      ...stops,
      "There are no dates; in an order that works:",
      "",
      ...undatedClosings(lastChances(build, made.access), build).flatMap(closingLines),
      ...cautionLines(build),
    ],
    1,
  );
}

function closingLines({ closing, groups }: LastChances): string[] {
  const before =
    groups.length === 0
      ? ["  Nothing needs to get in before."]
      : groups.flatMap(({ head, steps }) => [`  ${head}:`, ...steps.map((step) => `    [ ] ${step}`)]);
  return [closing, ...before, ""];
}
