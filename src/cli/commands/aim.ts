import { type Aim, readDocument, write } from "../../core/build";
import { apply } from "../../core/edit";
import { AimSearch } from "../../core/plan";
import { aimSentences, findingSentence, listed } from "../../words";
import { Fault, type Outcome, outcome, type Ports } from "../fault";
import { openBuild } from "../open";

export interface AimAsked {
  readonly for?: string;
  readonly months?: string;
  readonly coldest?: string;
  readonly weeksLater?: string;
  readonly out?: string;
}

/**
 * A plan that is better by the build's aim, or by the one asked for: what is gained and what waits for it; with `--out` the build that is planned so. 1 where
 * nothing better was found.
 */
export async function aimCommand(file: string, asked: AimAsked, ports: Ports): Promise<Outcome> {
  const { read } = await openBuild(file, ports);
  const raw = rawOf(asked);
  const document = raw === null ? read.document : apply(read.document, [{ path: ["aim"], value: raw }]).document;
  const { build, findings } = readDocument(document);
  const stop = findings.find((f) => f.severity === "stop");
  if (build === null) throw new Fault(stop === undefined ? "That aim cannot be read." : findingSentence(stop, null));
  const aim: Aim | null = build.aim ?? null;
  if (aim === null) throw new Fault(`Say what to aim at: --for ${listed(kinds, "or")}.`);
  const search = new AimSearch(build, aim);
  while (!search.done) search.step(500);
  const aimed = search.aimed();
  const lines = aimSentences(aimed, aim, build);
  if (aimed.served !== null && asked.out !== undefined) {
    const { document: planned } = apply(document, [{ path: ["served"], value: aimed.served }]);
    try {
      ports.writeText(asked.out, write(planned as Parameters<typeof write>[0]));
    } catch {
      throw new Fault(`The build cannot be written to “${asked.out}”; name a file in a folder that exists and may be written to.`);
    }
    lines.push(`Written to ${asked.out}.`);
  }
  return outcome(lines, aimed.served === null ? 1 : 0);
}

const kinds = ["site-days", "visits", "pours", "weekends"];

function rawOf({ for: kind, months, coldest, weeksLater }: AimAsked): Record<string, unknown> | null {
  if (kind === undefined) {
    if (months !== undefined || coldest !== undefined || weeksLater !== undefined)
      throw new Fault(`Say what to aim at: --for ${listed(kinds, "or")}.`);
    return null;
  }
  if (!kinds.includes(kind)) throw new Fault(`“${kind}” is nothing to aim at; write --for ${listed(kinds, "or")}.`);
  return {
    for: kind,
    ...(months === undefined ? {} : { months: months.split(",").map(Number) }),
    ...(coldest === undefined ? {} : { coldest }),
    ...(weeksLater === undefined ? {} : { weeksLater: Number(weeksLater) }),
  };
}
