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

/** The edits that make it leave like that: no other step takes it down, and it goes by itself only where that is asked for. */
export function leaveBy(document: unknown, piece: string, how: ComesOff["how"], step: string): readonly DocumentEdit[] {
  const id = writtenId(piece);
  const edits = listOf(document, "steps").flatMap((candidate): DocumentEdit[] => {
    const takes = idsOf(candidate.takes);
    const has = takes.map(writtenId).includes(id);
    const wanted = how === "taken" && candidate.id === step;
    if (has === wanted) return [];
    return [putKey("steps", textOf(candidate.id), "takes", wanted ? [...takes, id] : takes.filter((taken) => writtenId(taken) !== id))];
  });
  const goesAfter = memberOf(document, "pieces", piece)?.goesAfter;
  if (how === "by-itself" && goesAfter === undefined) edits.push(putKey("pieces", piece, "goesAfter", "24 h"));
  if (how !== "by-itself" && goesAfter !== undefined) edits.push(putKey("pieces", piece, "goesAfter", undefined));
  return edits;
}
