import type { SolidState } from "../core/plan";
import { listed } from "./text";

const states: Readonly<Record<SolidState, string>> = {
  "not yet": "not yet",
  formed: "formed",
  "bars in": "bars in",
  poured: "poured",
  curing: "curing",
  stripped: "stripped",
  carrying: "carrying",
  "under way": "under way",
  stands: "stands",
  gone: "gone",
};

const holes: Partial<Readonly<Record<SolidState, string>>> = {
  "not yet": "not dug yet",
  "under way": "being dug",
  stands: "dug",
  gone: "filled",
};

/** How far a body has got, in a word or two; of a hole what has become of the earth. */
export const stateWords = (state: SolidState, hole: boolean): string => (hole && holes[state]) || states[state];

/** A body that is something else than it was. */
export interface BodyChange {
  readonly name: string;
  readonly hole: boolean;
  readonly state: SolidState;
  /** Its form came or went. */
  readonly form: "up" | "off" | null;
  /** Whether its state changed too. */
  readonly isState: boolean;
}

/** "Sat 12 Jun: bars in: back wall. Poured: vault, footing." What changes on a day, by what becomes of it; bodies of one name once. */
export function structureSentence(day: string, changes: readonly BodyChange[]): string {
  const groups = new Map<string, string[]>();
  const add = (what: string, name: string) => {
    const names = groups.get(what) ?? [];
    groups.set(what, names.includes(name) ? names : [...names, name]);
  };
  for (const { name, hole, state, form, isState } of changes) {
    if (isState) add(stateWords(state, hole), name);
    else if (form !== null) add(form === "up" ? "form up" : "form off", name);
  }
  if (groups.size === 0) return `As it stands on ${day}.`;
  const said = [...groups].map(([what, names]) => `${what[0]?.toUpperCase()}${what.slice(1)}: ${listed(names)}.`);
  return `${day}. ${said.join(" ")}`;
}

/** Stands beside a drawing on which something is told as carrying. */
export const carryingCaution =
  "Carrying is what the plan expects. It is no release to strip or to load: Cure says what has been shown, and the engineer or the code what is needed.";

/** What a drawing of bodies rests on, where they are not written. */
export const bodiesSentence = {
  written: "",
  pours: "No bodies are written: the elements of the pours stand side by side, not where they belong.",
  outlines: "No bodies are written: these are the outlines of the places, with a depth that is made up.",
  nothing: "There is nothing to draw yet: no bodies, pours or outlines of places are written.",
} as const;
