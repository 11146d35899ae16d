import type { DocumentEdit } from "../base";
import { apply } from "./apply";

/** One undoable change: what the builder would call it, its edits, and the edits back. */
export interface Change {
  readonly words: string;
  readonly edits: readonly DocumentEdit[];
  readonly inverse: readonly DocumentEdit[];
}

/** A document with everything done to it, as plain data and without limit. The last of each list is the next to undo or redo. */
export interface History {
  readonly document: unknown;
  readonly done: readonly Change[];
  readonly undone: readonly Change[];
}

export const begin = (document: unknown): History => ({ document, done: [], undone: [] });

/** Makes a change; what was undone before is gone. A change that changes nothing leaves the history as it is. */
export function change(history: History, edits: readonly DocumentEdit[], words: string): History {
  const { document, inverse } = apply(history.document, edits);
  if (inverse.length === 0) return history;
  return { document, done: [...history.done, { words, edits, inverse }], undone: [] };
}

/** Takes the last change back; the same history when there is none. */
export function undo(history: History): History {
  const last = history.done.at(-1);
  if (!last) return history;
  const { document } = apply(history.document, last.inverse);
  return { document, done: history.done.slice(0, -1), undone: [...history.undone, last] };
}

/** Makes the change last undone again; the same history when there is none. */
export function redo(history: History): History {
  const next = history.undone.at(-1);
  if (!next) return history;
  const { document } = apply(history.document, next.edits);
  return { document, done: [...history.done, next], undone: history.undone.slice(0, -1) };
}
