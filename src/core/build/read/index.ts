import type { Finding } from "../../base";
import { assemble } from "../assemble";
import { found } from "../codes";
import { migrate } from "../migrate";
import type { Build } from "../model";
import { version } from "../schema/document";
import { isObject } from "../schema/shape";
import { shown } from "./notes";
import { parseText } from "./text";

export interface ReadResult {
  /** The document in the present version, or what was handed in where it is none; null for a text that is no JSON. */
  readonly document: unknown;
  /** Null while a finding stands in the way of reading it as a build. */
  readonly build: Build | null;
  readonly findings: readonly Finding[];
  /** A newer program wrote it: it may be looked at, never written over. */
  readonly readOnly: boolean;
}

const mostFindings = 200;

/** So many findings say no more than the first ones do. */
function few(findings: readonly Finding[]): readonly Finding[] {
  if (findings.length <= mostFindings) return findings;
  return [...findings.slice(0, mostFindings), found("build.more", {}, { count: findings.length - mostFindings })];
}

/**
 * Reads a document that is already parsed. Never throws for anything that JSON can say. Members that are the very objects of an earlier
 * call are not read again, so nothing in a document may be changed in place: make a changed copy (see the edit room).
 */
export function readDocument(document: unknown): ReadResult {
  const own = isObject(document) && Object.hasOwn(document, "batterboard") ? document.batterboard : undefined;
  if (!isObject(document) || typeof own !== "number" || !Number.isInteger(own) || own < 0) {
    const what = isObject(document) ? own : document;
    return {
      document,
      build: null,
      findings: [found("build.not-a-build", { key: "batterboard" }, { found: what === undefined ? "" : shown(what) })],
      readOnly: false,
    };
  }
  const detail = { version: own, known: version };
  const where = { key: "batterboard" };
  const current = own < version ? migrate(document, own) : document;
  const { build, findings } = assemble(current);
  const about = own > version ? [found("build.newer", where, detail)] : own < version ? [found("build.brought-up", where, detail)] : [];
  return { document: current, build, findings: few([...about, ...findings]), readOnly: own > version };
}

/** Reads a file's text. Never throws. */
export function read(text: string): ReadResult {
  const { value, finding } = parseText(text);
  return finding ? { document: null, build: null, findings: [finding], readOnly: false } : readDocument(value);
}
