import { describe, expect, test } from "vitest";
import { randomDocument } from "../../../test/oracle/random-builds";
import type { Statement } from "../base";
import { readDocument } from "../build";
import { access, may, ruleOf, rules } from "./index";

/** A statement as a list of what is wrong with it. */
function faults(statement: Statement, inArc: boolean): string[] {
  const rule = ruleOf(statement);
  if (rule === null) return [`no such rule: ${statement.rule}`];
  const { rule: _, detail = {}, ...fields } = statement;
  const may = new Set<string>([
    ...rule.fields,
    ...(inArc ? rule.inArc : []),
    ...(["reach", "off"].includes(statement.rule) ? ["place", "need"] : []),
  ]);
  const lacking = rule.fields.filter((f) => statement[f] === undefined).map((f) => `${statement.rule} lacks ${f}`);
  const extra = Object.entries(fields)
    .filter(([f, value]) => value !== undefined && !may.has(f))
    .map(([f]) => `${statement.rule} has ${f}`);
  const details = Object.keys(rule.detail);
  const unknown = Object.keys(detail)
    .filter((k) => !details.includes(k) && !details.includes(`${k}?`))
    .map((k) => `${statement.rule} has detail ${k}`);
  const missing = details.filter((k) => !k.endsWith("?") && detail[k] === undefined).map((k) => `${statement.rule} lacks detail ${k}`);
  return [...lacking, ...extra, ...unknown, ...(inArc && statement.rule === "choice" ? [] : missing)];
}

describe("the table of rules", () => {
  test("every statement of a hundred builds has the fields its rule says, and every rule comes up", () => {
    const seen = new Set<string>();
    const wrong = new Set<string>();
    const look = (list: readonly Statement[], inArc: boolean): void => {
      for (const s of list) {
        seen.add(s.rule);
        for (const fault of faults(s, inArc)) wrong.add(fault);
      }
    };
    for (let start = 0; start < 120; start++) {
      const { build } = readDocument(randomDocument(start));
      if (build === null) continue;
      const result = access(build);
      look(result.statements, true);
      for (const f of result.findings) look(f.because ?? [], false);
      const answer = may(build, 1, 0);
      if (answer.verdict === "no") look(answer.finding.because ?? [], false);
    }
    expect([...wrong]).toEqual([]);
    const timed = ["work", "not-before", "deadline", "fixed", "refused", "done"];
    expect(Object.keys(rules).filter((rule) => !seen.has(rule) && !timed.includes(rule))).toEqual([]);
  });

  test("kinds, in the order in which minimal sets try to do without them", () => {
    const of = (kind: string) =>
      Object.entries(rules)
        .filter(([, rule]) => rule.kind === kind)
        .map(([name]) => name);
    expect(of("fact")).toEqual(["ways", "through", "closes", "makes", "fills", "up-down", "work", "done"]);
    expect(of("reach")).toEqual(["reach", "off", "leans", "held", "hold-point"]);
    expect(of("date")).toEqual(["not-before", "deadline", "fixed"]);
    expect(of("link")).toEqual(["wait", "choice", "refused", "asked"]);
  });

  test("what is no rule of access has none", () => {
    expect(ruleOf({ rule: "toString" })).toBeNull();
    expect(ruleOf({ rule: "window.least" })).toBeNull();
    expect(ruleOf({ rule: "wait" })).toBe(rules.wait);
  });
});
