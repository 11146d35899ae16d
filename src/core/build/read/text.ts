import { type Finding, limits } from "../../base";
import { found } from "../codes";
import { shown } from "./notes";
import { lineAndColumn, scan } from "./scan";

/** The text at a place, as far as the next space, short enough for a sentence. */
const textAt = (text: string, at: number): string => shown(/^\s*\S{0,12}/.exec(text.slice(at, at + 40))?.[0].trim() ?? "");

/** Parses a file's text; never throws. */
export function parseText(text: string): { value: unknown; finding: Finding | null } {
  const refuse = (finding: Finding) => ({ value: null, finding });
  const most = limits.fileCharacters.most;
  if (text.length > most) return refuse(found("build.too-long", {}, { characters: text.length, most }));
  const body = text.startsWith("\uFEFF") ? text.slice(1) : text;
  const fault = scan(body);
  if (fault) {
    const spot = lineAndColumn(body, fault.at);
    if (fault.kind === "nested") return refuse(found("build.nested", {}, { ...spot, most: limits.nesting.most }));
    if (fault.kind === "twice") return refuse(found("build.key-twice", {}, { ...spot, name: shown(fault.name) }));
    return refuse(found("build.json", {}, { ...spot, found: textAt(body, fault.at), wanted: fault.wanted }));
  }
  return { value: JSON.parse(body), finding: null };
}
