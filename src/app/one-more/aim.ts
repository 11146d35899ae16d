import { type Aim, readDocument } from "../../core/build";
import { apply } from "../../core/edit";
import { findingSentence } from "../../words";

/** An aim as it is chosen, and written into the document. */
export interface AimChosen {
  readonly for: Aim["for"] | "";
  /** "4", "5" */
  readonly months: readonly string[];
  readonly coldest: string;
  readonly weeksLater: string;
}

export const noAim: AimChosen = { for: "", months: [], coldest: "", weeksLater: "0" };

/** What stands in a document, as chosen. */
export function chosenOf(document: unknown): AimChosen {
  const aim = (document as { readonly aim?: Readonly<Record<string, unknown>> } | null)?.aim;
  const kind = aim?.for;
  if (kind !== "site-days" && kind !== "visits" && kind !== "pours" && kind !== "weekends") return noAim;
  return {
    for: kind,
    months: Array.isArray(aim?.months) ? aim.months.map(String) : [],
    coldest: typeof aim?.coldest === "string" ? aim.coldest : "",
    weeksLater: String(aim?.weeksLater ?? 0),
  };
}

/** As the document writes it. */
export function writtenAim({ for: kind, months, coldest, weeksLater }: AimChosen): Readonly<Record<string, unknown>> {
  return {
    for: kind,
    ...(kind === "pours" && months.length > 0 ? { months: months.map(Number).sort((a, b) => a - b) } : {}),
    ...(kind === "pours" && coldest.trim() !== "" ? { coldest: coldest.trim() } : {}),
    ...(weeksLater === "0" ? {} : { weeksLater: Number(weeksLater) }),
  };
}

/** The document with an aim, and the aim as it is read; a sentence where it cannot be. */
export function withAim(document: unknown, chosen: AimChosen): { readonly document: unknown; readonly aim: Aim } | string {
  const changed = apply(document, [{ path: ["aim"], value: writtenAim(chosen) }]).document;
  const { build, findings } = readDocument(changed);
  if (build?.aim) return { document: changed, aim: build.aim };
  const stop = findings.find(({ severity }) => severity === "stop");
  return stop === undefined ? "Choose what to aim at." : findingSentence(stop, null);
}
