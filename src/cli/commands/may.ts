import { plan, planMay } from "../../core/plan";
import { sentence, voice } from "../../words";
import { type Outcome, outcome, type Ports } from "../fault";
import { findStep } from "../find-step";
import { findingLines, withWays } from "../findings";
import { openBuild } from "../open";

/** Whether one step can be done before another begins: yes with the finish that would follow, or no with what forbids it (1). */
export async function mayCommand(file: string, first: string, second: string, ports: Ports): Promise<Outcome> {
  const { build, read } = await openBuild(file, ports);
  const [a, b] = [findStep(build, first), findStep(build, second)];
  const say = voice(build);
  const [one, two] = [say.step(build.steps[a]?.id), say.step(build.steps[b]?.id)];
  if (a === b) return outcome([sentence(`${one} cannot come before itself`)], 1);
  const answer = planMay(build, a, b);
  if (answer.verdict === "no")
    return outcome(
      [
        `No: ${one} cannot come before ${two}.`,
        ...withWays(build, read.document, [answer.finding]).flatMap((finding) => findingLines(finding, build).slice(1)),
      ],
      1,
    );
  if (answer.verdict === "not-found")
    return outcome([`It may be, but no plan was found with ${one} before ${two}; that there is none has not been shown.`], 1);
  const now = plan(build);
  const finish = say.finish(answer.finish);
  const then =
    now.status !== "planned"
      ? `would be ${finish}`
      : now.finish === answer.finish
        ? `stays ${finish}`
        : `would be ${finish}; now it is ${say.finish(now.finish)}`;
  return outcome([`Yes: ${one} can come before ${two}. The finish ${then}.`]);
}
