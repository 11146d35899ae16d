import type { DocumentEdit, Finding } from "../../core/base";
import type { Build } from "../../core/build";
import type { Comparison, Plan } from "../../core/plan";
import type { Kept } from "./kept";

export type Selection = {
  readonly list: "steps" | "pieces" | "places" | "deliveries" | "bookings" | "waits";
  readonly id: string;
  /** It was just added: there is nothing to explain yet, and all to write. */
  readonly fresh?: true;
};

/** What views read and ask. Implemented by a class with runes in this folder and handed down by context; no module singletons. */
export interface Desk {
  /** The document as written, never changed in place. */
  readonly document: unknown;
  /** The document as read; null when it cannot be read (then `findings` say why). */
  readonly build: Build | null;
  /** The last good plan; stays while a new one is being made (`redoing`). */
  readonly plan: Plan | null;
  /** The build that `plan` was made from: positions in `plan` are positions in this one, which lags behind `build` while `redoing`. */
  readonly planOf: Build | null;
  readonly findings: readonly Finding[];
  readonly redoing: boolean;
  /** What the last change moved, in sentences, until dismissed. */
  readonly moved: { readonly comparison: Comparison; readonly sentences: readonly string[] } | null;
  /** How the plan shown (a trial's, while one is shown) stands against the one that was kept on purpose; null where none was kept. */
  readonly kept: Kept | null;
  readonly selected: Selection | null;
  /** A plan that would follow from edits not yet made (while dragging); null when none is shown. Positions are those of its own build. */
  readonly trial: {
    readonly build: Build;
    readonly plan: Plan;
    readonly comparison: Comparison;
    readonly sentences: readonly string[];
  } | null;
  readonly saved: "saved" | "saving" | "not-saved";
  /** Lengths, weights and temperatures are shown in these; no switch of it changes the document. */
  readonly units: "us" | "metric";
  /** Today's date at the site, "2027-06-26". */
  readonly today: string;
  /** The document is newer than this program, or another tab holds it: it can be looked at, not changed. */
  readonly readOnly: boolean;
  select(selection: Selection | null): void;
  /** One undoable change; `words` says it in the undo list ("move pump to Sat 26 Jun"). */
  edit(edits: readonly DocumentEdit[], words: string): void;
  /**
   * As `edit`, but nothing is changed where the document could no longer be read: then the sentences say why. `typing` names the field:
   * what is typed there in one go is one change.
   */
  attempt(edits: readonly DocumentEdit[], words: string, typing?: string): readonly string[];
  /** Plan the edits without making them; the latest call wins. `null` ends the trial. */
  tryOut(edits: readonly DocumentEdit[] | null): void;
  dismissMoved(): void;
  /** Writes the plan shown into the build as the one that others are compared with; undo brings back the one before. */
  keepPlan(): void;
  undo(): void;
  redo(): void;
  /** Says a sentence to screen readers, politely, without moving the focus. */
  say(sentence: string): void;
}
