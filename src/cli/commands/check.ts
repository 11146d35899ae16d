import type { Build } from "../../core/build";
import { plan } from "../../core/plan";
import { pourSheets } from "../../core/pour";
import { counted, quoted, spelled, voice } from "../../words";
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
  lines.push(...unready(build));
  lines.push(`It can be built: ${counted(build.steps.length, "step")}, done by ${voice(build).finish(planned.finish)}.`);
  return outcome(lines);
}

/** Order and dates say nothing of whether a form holds: which pours are not ready, whatever the plan says. */
function unready(build: Build): string[] {
  return pourSheets(build).flatMap(({ pour, ready, findings }) => {
    if (ready) return [];
    const stops = findings.filter(({ severity }) => severity === "stop").length;
    return [`Not ready to pour: ${quoted(build.pours[pour]!.name)}, ${spelled(stops, "fault")}; the command pour tells which.`, ""];
  });
}
