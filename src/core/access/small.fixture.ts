import { documentOf, type PartialDocument, readOf } from "../../../test/fixtures/make";
import { type Access, access } from "./index";
import { type Case, caseOf, orderOf, rowsOf, sayAll } from "./say.fixture";

export const place = (id: string, ...ways: object[]) => ({ id, ways: ways.length > 0 ? ways : [{ id: "door", passes: ["person"] }] });
export const step = (id: string, over: object = {}) => ({ id, work: "1 h", ...over });

export interface Small {
  readonly result: Access;
  readonly order: string;
  readonly rows: readonly string[];
  /** Statements of each block. */
  readonly blocks: readonly (readonly string[])[];
  readonly codes: readonly string[];
}

export function small(partial: PartialDocument): Small {
  const { build, findings } = readOf(partial);
  if (build === null) throw new Error(JSON.stringify(findings));
  const result = access(build);
  return {
    result,
    order: orderOf(build, result).join(" "),
    rows: rowsOf(build, result),
    blocks: result.findings.filter((f) => f.because !== undefined).map(sayAll),
    codes: result.findings.map((f) => f.code),
  };
}

export const smallCase = (partial: PartialDocument): Case => caseOf(documentOf(partial));
