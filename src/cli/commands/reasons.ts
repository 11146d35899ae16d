import { access } from "../../core/access";
import { linkSentence, voice } from "../../words";
import { type Outcome, outcome, type Ports } from "../fault";
import { findingLines } from "../findings";
import { openBuild } from "../open";

/** The steps in an order that works, each with the reasons that put it behind others. What follows from the rest is left out. */
export async function reasonsCommand(file: string, ports: Ports): Promise<Outcome> {
  const { build } = await openBuild(file, ports);
  const order = access(build);
  if (!order.possible) return outcome([...order.findings.flatMap((finding) => findingLines(finding, build)), "No order works."], 1);
  const say = voice(build);
  const { arcs, statements } = order;
  const into = new Map<number, number[]>();
  for (let row = 0; row < arcs.count; row += 1) {
    if (arcs.orders[row] === 0 || arcs.redundant[row] === 1) continue;
    const to = arcs.to[row] as number;
    into.set(to, [...(into.get(to) ?? []), row]);
  }
  const lines = [...order.order].flatMap((step, i) => {
    const reasons = (into.get(step) ?? []).map((row) => {
      const reason = statements[arcs.reason[row] as number];
      const said = reason === undefined ? "" : linkSentence({ from: arcs.from[row] as number, to: step, reason }, build);
      return `     ${said}${arcs.forced[row] === 1 ? "" : " This was chosen; it could also come after."}`;
    });
    const unique = [...new Set(reasons)];
    return [
      `${String(i + 1).padStart(3)}. ${say.step(build.steps[step]?.id)}`,
      ...(unique.length === 0 ? ["     Nothing has to come before it."] : unique),
    ];
  });
  return outcome(lines);
}
