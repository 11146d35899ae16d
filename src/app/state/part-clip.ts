import { type Clip, clip, clipText, type Pasted, paste, readClip } from "../../core/edit";
import { pastedSentences, stepsWords } from "../../words";
import type { Desk } from "./desk";

// A page that may not read the clipboard still pastes what was copied in it.
let last = "";

/** What was last copied in this page; empty before. */
export const lastCopied = (): string => last;

/** The text of steps for the clipboard; empty where none of them is there. */
export function copied(document: unknown, steps: Iterable<string>): string {
  const part: Clip | null = clip(
    document,
    [...steps].map((id) => ({ list: "steps", id })),
  );
  if (part === null) return "";
  last = clipText(part);
  return last;
}

export interface PutIn {
  /** What came of it, or why nothing did. */
  readonly sentences: readonly string[];
  /** Ids of the new steps; empty where nothing was put in. */
  readonly steps: readonly string[];
}

/** Puts what the text holds into the build, as one change. Null where the text is no part of a build. */
export function putInText(desk: Desk, text: string): PutIn | null {
  const part = readClip(text);
  return part === null ? null : putIn(desk, paste(desk.document, part), "paste");
}

/** Makes the change that puts steps in. @param doing as the undo list says it: "duplicate" */
export function putIn(desk: Desk, pasted: Pasted, doing: string): PutIn {
  const steps = pasted.made.filter(({ list }) => list === "steps");
  const [only] = steps;
  const words = `${doing} ${steps.length === 1 && only ? only.name : steps.length > 0 ? stepsWords(steps.length) : "a part"}`;
  const faults = desk.attempt(pasted.edits, words);
  return faults.length > 0
    ? { sentences: [`It could not be put in. ${faults.join(" ")}`], steps: [] }
    : { sentences: pastedSentences(pasted), steps: steps.map(({ id }) => id) };
}
