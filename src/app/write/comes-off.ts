import { type DocumentEdit, writtenId } from "../../core/base";
import { idsOf, listOf, memberOf, putKey, textOf } from "./written";

export interface ComesOff {
  readonly how: "stays" | "taken" | "by-itself";
  /** The step that takes it down; empty where none does. */
  readonly step: string;
}

/** How a piece leaves, as the document has it: said in the step's `takes`, or in the piece's own `goesAfter`. */
export function comesOff(document: unknown, piece: string): ComesOff {
  const step = listOf(document, "steps").find((candidate) => idsOf(candidate.takes).map(writtenId).includes(writtenId(piece)));
  if (step) return { how: "taken", step: textOf(step.id) };
  return { how: memberOf(document, "pieces", piece)?.goesAfter === undefined ? "stays" : "by-itself", step: "" };
}

/** The edits after which no step takes it down but the one named; empty: none does. */
function takenBy(document: unknown, piece: string, step: string): DocumentEdit[] {
  const id = writtenId(piece);
  return listOf(document, "steps").flatMap((candidate): DocumentEdit[] => {
    const takes = idsOf(candidate.takes);
    const has = takes.map(writtenId).includes(id);
    const wanted = candidate.id === step;
    if (has === wanted) return [];
    return [putKey("steps", textOf(candidate.id), "takes", wanted ? [...takes, id] : takes.filter((taken) => writtenId(taken) !== id))];
  });
}

/** The edits that make it stay for good, or let a step take it down. */
export function leaveBy(document: unknown, piece: string, how: "stays" | "taken", step: string): readonly DocumentEdit[] {
  const edits = takenBy(document, piece, how === "taken" ? step : "");
  const goes = memberOf(document, "pieces", piece)?.goesAfter !== undefined;
  return goes ? [...edits, putKey("pieces", piece, "goesAfter", undefined)] : edits;
}

/** The edits that let it go by itself after an amount; without one it stays. */
export const goBy = (document: unknown, piece: string, amount: unknown): readonly DocumentEdit[] => [
  ...takenBy(document, piece, ""),
  putKey("pieces", piece, "goesAfter", amount),
];
