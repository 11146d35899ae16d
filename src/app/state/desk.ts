import type { DocumentEdit, Finding } from "../../core/base";
import type { Build } from "../../core/build";
import type { Comparison, Plan } from "../../core/plan";

export type Selection = { readonly list: "steps" | "pieces" | "places" | "deliveries" | "bookings" | "waits"; readonly id: string };

/** What views read and ask. Implemented by a class with runes in this folder and handed down by context; no module singletons. */
export interface Desk {
  /** The document as written, never changed in place. */
  readonly document: unknown;
  readonly build: Build | null;
  /** The last good plan; stays while a new one is being made (`redoing`). */
  readonly plan: Plan | null;
  readonly findings: readonly Finding[];
  readonly redoing: boolean;
  /** What the last change moved, in sentences, until dismissed. */
  readonly moved: { readonly comparison: Comparison; readonly sentences: readonly string[] } | null;
  readonly selected: Selection | null;
  /** A plan that would follow from edits not yet made (while dragging); null when none is shown. */
  readonly trial: { readonly plan: Plan; readonly comparison: Comparison; readonly sentences: readonly string[] } | null;
  readonly saved: "saved" | "saving" | "not-saved";
  select(selection: Selection | null): void;
  /** One undoable change; `words` says it in the undo list ("move pump to Sat 26 Jun"). */
  edit(edits: readonly DocumentEdit[], words: string): void;
  /** Plan the edits without making them; the latest call wins. `null` ends the trial. */
  tryOut(edits: readonly DocumentEdit[] | null): void;
  undo(): void;
  redo(): void;
}
