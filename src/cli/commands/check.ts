import { plan } from "../../core/plan";
import { counted, spelled, voice } from "../../words";
import { type Outcome, outcome, type Ports } from "../fault";
import { findingLines, inGravity, withWays } from "../findings";
import { readFile } from "../open";

/** Everything found in a file and in its plan. 1 when it cannot be built as written. */
export async function check(file: string, ports: Ports): Promise<Outcome> {
  const { build, document, findings } = await readFile(file, ports);
  const planned = build === null || findings.some(({ severity }) => severity === "stop") ? null : plan(build);
  const found = [...findings, ...(planned?.findings ?? [])];
  const all = build === null ? inGravity(found) : withWays(build, document, found);
  const stops = all.filter(({ severity }) => severity === "stop").length;
  const lines = all.flatMap((finding) => [...findingLines(finding, build), ""]);
  if (build === null || stops > 0 || planned === null || planned.status !== "planned") {
    lines.push(stops === 0 ? "No plan was found." : `It cannot be built as written: ${spelled(stops, "fault")}.`);
    return outcome(lines, 1);
  }
  lines.push(`It can be built: ${counted(build.steps.length, "step")}, done by ${voice(build).finish(planned.finish)}.`);
  return outcome(lines);
}
