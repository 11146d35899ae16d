import { plan } from "../../core/plan";
import { dark, sheet, svgText } from "../../draw";
import { Fault, type Outcome, outcome, type Ports } from "../fault";
import { findingLines } from "../findings";
import { openBuild } from "../open";

export interface DrawAsked {
  readonly out?: string;
  readonly whole?: boolean;
  readonly slack?: boolean;
  readonly dark?: boolean;
}

/** The Dates sheet as SVG, to a file or to the standard output. */
export async function drawCommand(file: string, asked: DrawAsked, ports: Ports): Promise<Outcome> {
  const { build } = await openBuild(file, ports);
  const made = plan(build);
  if (made.status !== "planned")
    return outcome([...made.findings.flatMap((finding) => findingLines(finding, build)), "There is no plan to draw."], 1);
  const drawing = sheet({ build, plan: made, scale: asked.whole ? "whole" : "weekends", slack: asked.slack ?? false });
  const svg = svgText(drawing, asked.dark ? { palette: dark } : {});
  if (asked.out === undefined) return { text: svg, code: 0 };
  try {
    ports.writeText(asked.out, svg);
  } catch {
    throw new Fault(`The drawing cannot be written to “${asked.out}”; name a file in a folder that exists and may be written to.`);
  }
  return outcome([`Drawn to ${asked.out}: ${Math.ceil(drawing.width)} by ${Math.ceil(drawing.height)} px.`]);
}
