import type { Finding, Where } from "../../base";
import { type BuildCode, type DetailOf, found } from "../codes";

/** Collects what is found in one member of a list. */
export class Notes {
  readonly findings: Finding[] = [];
  readonly where: Where;

  constructor(where: Where) {
    this.where = where;
  }

  say<C extends BuildCode>(code: C, key: string | undefined, detail: DetailOf<C>): void {
    this.findings.push(found(code, key === undefined ? this.where : { ...this.where, key }, detail));
  }
}

/** What was written, as text short enough for a sentence. */
export function shown(value: unknown): string {
  const text =
    typeof value === "string" ? value : Array.isArray(value) ? "[…]" : typeof value === "object" && value !== null ? "{…}" : String(value);
  return text.length > 60 ? `${text.slice(0, 59)}…` : text;
}
