import { access, why } from "../../core/access";
import { plan } from "../../core/plan";
import { holderSentence, whySentences } from "../../words";
import { type Outcome, outcome, type Ports } from "../fault";
import { findStep } from "../find-step";
import { findingLines } from "../findings";
import { openBuild } from "../open";

/** Why one step comes before another: whichever of the two comes first. 1 when nothing orders them. */
export async function whyCommand(file: string, first: string, second: string, ports: Ports): Promise<Outcome> {
  const { build } = await openBuild(file, ports);
  const [a, b] = [findStep(build, first), findStep(build, second)];
  if (a === b) return outcome([`${first} and ${second} are the same step.`], 1);
  const order = access(build);
  if (!order.possible)
    return outcome(
      [...order.findings.flatMap((finding) => findingLines(finding, build)), "No order works, so nothing is before anything."],
      1,
    );
  const forth = why(build, order, a, b);
  const back = forth.verdict === "none" ? why(build, order, b, a) : forth;
  const lines = forth.verdict === "none" && back.verdict !== "none" ? whySentences(back, b, a, build) : whySentences(forth, a, b, build);
  const made = plan(build);
  const later = forth.verdict === "none" && back.verdict !== "none" ? a : b;
  if (made.status === "planned") lines.push(holderSentence(later, made, build));
  const [head = "", ...rest] = lines;
  return outcome([head, ...rest.map((line) => `  ${line}`)], forth.verdict === "none" && back.verdict === "none" ? 1 : 0);
}
