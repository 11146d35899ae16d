import { read, write } from "../core/build";
import { findingSentence } from "../words";
import { namesOnly } from "./names";

export interface Opened {
  readonly document: unknown;
  /** What was found that does not keep it from being opened. */
  readonly remarks: readonly string[];
  /** Written by a newer program: to be looked at only. */
  readonly newer: boolean;
}

/** What stands in the way, in sentences; nothing is opened. */
export interface Refused {
  readonly refusal: readonly string[];
}

/** So many reasons are enough to start mending a file. */
const mostReasons = 5;

/** Reads the text of a build file. `fileName` is named in the refusal. Never throws. */
export function openBuildFile(text: string, fileName = "This file"): Opened | Refused {
  const { document, build, findings, readOnly } = read(text.replace(/^\uFEFF/, ""));
  if (build === null) {
    const stops = findings.filter((finding) => finding.severity === "stop");
    const names = namesOnly(document);
    const reasons = stops.slice(0, mostReasons).map((finding) => findingSentence(finding, names));
    const left = stops.length - reasons.length;
    const rest = left > 0 ? [`${left} more like these.`] : [];
    const newer = readOnly ? ["A newer version of this program wrote it, and only that can open it. This one finds:"] : [];
    return { refusal: [`${fileName} was not opened; what was open stays as it is.`, ...newer, ...reasons, ...rest] };
  }
  const remarks = findings.filter((finding) => finding.code === "build.newer" || finding.code === "build.brought-up");
  return { document, remarks: remarks.map((finding) => findingSentence(finding, build)), newer: readOnly };
}

/** The one text of a document. */
export const buildFileText = (document: unknown): string => write(document);

/** "bank-cellar.json" of a build's name. */
export function buildFileName(name: string): string {
  const plain = name
    .normalize("NFKD")
    .replace(/\p{Mn}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "")
    .slice(0, 60);
  return `${plain || "build"}.json`;
}
