import { compare, plan } from "../../core/plan";
import { comparisonSentences } from "../../words";
import { type Outcome, outcome, type Ports } from "../fault";
import { openBuild } from "../open";

/** What moved from the plan of one file to the plan of another, site days lost, through what, and what did not move. */
export async function compareCommand(before: string, after: string, ports: Ports): Promise<Outcome> {
  const kept = plan((await openBuild(before, ports)).build);
  const { build } = await openBuild(after, ports);
  const now = plan(build);
  const comparison = compare(kept, now, build);
  return outcome(comparisonSentences(comparison, build, now), kept.status === "planned" && now.status === "planned" ? 0 : 1);
}
