import { readFileSync } from "node:fs";
import type { Finding, Statement } from "../base";
import { type Build, readDocument } from "../build";
import { apply } from "../edit";
import type { Access, Apply, Why } from "./index";

/** A statement in few letters: "closes(last-face inside.open-face)". */
export const say = (s: Statement): string =>
  `${s.rule}(${[s.step, s.other, s.piece, s.way ?? s.place, s.need, s.rule === "wait" || s.rule === "choice" ? s.id : undefined].filter((x) => x !== undefined).join(" ")})`;

export const sayAll = (finding: Finding | undefined): string[] => (finding?.because ?? []).map(say);

/** Ids in the order found. */
export const orderOf = (build: Build, result: Access): string[] => [...result.order].map((s) => build.steps[s]?.id ?? "");

/** Rows as "tie < last-face: closes(...) must". */
export function rowsOf(build: Build, result: Access): string[] {
  const { arcs } = result;
  const id = (s: number | undefined) => build.steps[s ?? -1]?.id ?? "";
  return [...Array(arcs.count).keys()].map((r) => {
    const amounts = [
      (arcs.least[r] ?? -1) < 0 ? "" : ` + ${result.amounts[arcs.least[r] ?? -1]?.text}`,
      (arcs.most[r] ?? -1) < 0 ? "" : ` within ${result.amounts[arcs.most[r] ?? -1]?.text}`,
    ].join("");
    const marks = `${arcs.forced[r] === 1 ? "must" : "chosen"}${arcs.redundant[r] === 1 ? " redundant" : ""}${arcs.orders[r] === 1 ? "" : " time"}`;
    return `${id(arcs.from[r])}${amounts} < ${id(arcs.to[r])}: ${say(result.statements[arcs.reason[r] ?? -1] as Statement)} ${marks}`;
  });
}

export const linksOf = (why: Why): string[] => (why.verdict === "none" ? [] : why.links.map(({ reason }) => say(reason)));

export interface Case {
  readonly document: unknown;
  readonly build: Build;
  readonly apply: Apply;
  readonly at: (step: string) => number;
}

/** A drawn case, by the name of its file; or any document. */
export function caseOf(name: string | object): Case {
  const document: unknown = typeof name === "string" ? JSON.parse(readFileSync(`test/fixtures/cases/${name}.json`, "utf8")) : name;
  const { build, findings } = readDocument(document);
  if (build === null) throw new Error(JSON.stringify(findings));
  return {
    document,
    build,
    apply: (edits) => readDocument(apply(document, edits).document).build,
    at: (step) => build.at.step.get(step) ?? -1,
  };
}
