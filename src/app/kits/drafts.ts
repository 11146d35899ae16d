import { rememberedHere, rememberHere } from "../state/stored";
import type { Entered } from "./filled";

interface Draft {
  readonly entered: Entered;
  readonly name: string;
}

const name = "drafts";

/** What was entered in forms that are closed, by build, kit and part; for as long as the tab is open. Nothing of it is in the build. */
const kept = new Map(Object.entries((rememberedHere(name) ?? {}) as Readonly<Record<string, Draft>>));

export const draftOf = (key: string): Draft | undefined => kept.get(key);

/** Null forgets it. */
export function keepDraft(key: string, draft: Draft | null): void {
  if (draft === null) kept.delete(key);
  else kept.set(key, draft);
  rememberHere(name, kept.size === 0 ? null : Object.fromEntries(kept));
}
