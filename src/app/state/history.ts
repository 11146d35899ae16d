import type { DocumentEdit } from "../../core/base";
import { apply, change, type History, redo, undo } from "../../core/edit";

/** What was done to the open build, as plain data: kept in the browser and replayed after a reload. */
export type Action =
  /** `joins`: part of the change before it (typed in the same field in one go). */
  | { readonly do: "edit"; readonly edits: readonly DocumentEdit[]; readonly words: string; readonly joins: boolean }
  | { readonly do: "undo" }
  | { readonly do: "redo" };

/** The history after the action; the very same one when it changes nothing. */
export function act(history: History, action: Action): History {
  if (action.do === "undo") return undo(history);
  if (action.do === "redo") return redo(history);
  const after = change(history, action.edits, action.words);
  const [before, last] = [history.done.at(-1), after.done.at(-1)];
  if (!action.joins || after === history || !before || !last) return after;
  const joined = { words: last.words, edits: [...before.edits, ...last.edits], inverse: [...last.inverse, ...before.inverse] };
  return { ...after, done: [...history.done.slice(0, -1), joined] };
}

/** The document as it would be, without a change being made. */
export const edited = (document: unknown, edits: readonly DocumentEdit[]): unknown => apply(document, edits).document;
