import type * as v from "valibot";
import { type Kind, type LimitName, limits, modelUnit, nearest, parseSigned } from "../../base";
import { codes } from "../codes";
import { type Notes, shown } from "./notes";

type Issue = v.BaseIssue<unknown>;
type Path = readonly (string | number)[];

const plainNames: Readonly<Record<string, string>> = {
  string: "text",
  number: "number",
  boolean: "yes-or-no",
  Array: "list",
  Object: "object",
  undefined: "nothing",
};

const quoted = (expected: string | null): string[] => [...(expected ?? "").matchAll(/"([^"]*)"/g)].map(([, word]) => word as string);

function wanted(expected: string | null): string[] {
  const words = (expected ?? "").replace(/[()]/g, "").split(/ [|&] /);
  return [...new Set(words.map((word) => plainNames[word] ?? "text"))];
}

/** Key of the member and the rest of the path with positions counted from 1. */
export function split(path: Path): { key: string | undefined; part: string } {
  const [key, ...rest] = path;
  return {
    key: key === undefined ? undefined : String(key),
    part: rest.map((step) => (typeof step === "number" ? step + 1 : step)).join("."),
  };
}

const pathOf = (issue: Issue): Path => (issue.path ?? []).map((item) => item.key as string | number);

/** An amount below zero is told from a text that is no amount at all. */
function sayQuantity(notes: Notes, kind: string, value: unknown, key: string | undefined, part: string): void {
  const asKind = (kind === "amount" ? "time" : kind) as Kind;
  const size = typeof value === "string" && kind !== "ratio" ? parseSigned(asKind, value) : null;
  if (size !== null && size < 0) {
    notes.say("build.range", key, { part, value: shown(value), least: 0, most: Number.MAX_SAFE_INTEGER, unit: modelUnit[asKind] });
  } else notes.say("build.quantity", key, { part, value: shown(value), kind });
}

function sayCoded(notes: Notes, issue: Issue, key: string | undefined, part: string): boolean {
  const [head = "", tail = ""] = issue.message.split(":");
  const value = shown(issue.input);
  if (head === "kind") sayQuantity(notes, tail, issue.input, key, part);
  else if (head === "range") {
    const { least, most, unit } = limits[tail as LimitName];
    notes.say("build.range", key, { part, value, least, most, unit });
  } else if (head === "build.twelve-months") notes.say(head, key, { part, count: Array.isArray(issue.input) ? issue.input.length : 0 });
  else if (Object.hasOwn(codes, head)) notes.say(head as "build.id", key, { part, value } satisfies Record<string, string>);
  else return false;
  return true;
}

/** Of what each alternative refused, the part that went furthest in: there the value was meant for that alternative. */
function innermost(issues: readonly Issue[]): Issue | null {
  const depth = (issue: Issue): number => issue.path?.length ?? 0;
  return issues.reduce<Issue | null>((best, issue) => (depth(issue) > (best ? depth(best) : 0) ? issue : best), null);
}

/** Turns what the schema refused into findings of this room, the innermost cause of each. */
export function sayIssues(notes: Notes, issues: readonly Issue[], before: Path = []): void {
  for (const issue of issues) {
    const path = [...before, ...pathOf(issue)];
    const inner = typeof issue.input === "object" ? innermost(issue.issues ?? []) : null;
    if (issue.type === "union" && inner) {
      sayIssues(notes, [inner], path);
      continue;
    }
    const { key, part } = split(path);
    if (issue.kind === "schema" && issue.received === "undefined") notes.say("build.missing", key, { part });
    else if (sayCoded(notes, issue, key, part)) continue;
    else if ((issue.type === "picklist" || issue.type === "variant") && typeof issue.input === "string") {
      const choices = quoted(issue.expected);
      notes.say("build.not-one-of", key, { part, value: shown(issue.input), choices, nearest: nearest(issue.input, choices) ?? "" });
    } else notes.say("build.type", key, { part, value: shown(issue.input), wanted: wanted(issue.expected) });
  }
}
