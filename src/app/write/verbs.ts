/**
 * What steps of a trade verb usually reach and put up, so that a new step can start with it. Common practice, no source: a first guess to be looked at, never a rule.
 */
export interface Usual {
  /** Words that begin such a step, or stand in its name. */
  readonly verbs: readonly string[];
  readonly sort?: "embed" | "check" | "photograph" | "inspection" | "pour" | "office";
  /** What must get to the place; none: it reaches nowhere on site. */
  readonly need?: "person" | "sight" | "hand" | "arm" | "hose" | "machine";
  readonly hands?: number;
  /** The piece it puts up: its sort, what its name ends in, and what it does to the place. */
  readonly puts?: { readonly sort: string; readonly called: string; readonly does: "closes" | "fills" | "nothing" };
  /** Sorts of pieces that it takes down. */
  readonly takes?: readonly string[];
  /** Whoever works there is done before it. */
  readonly holdPoint?: true;
}

export const usuals: readonly Usual[] = [
  { verbs: ["strip", "unform", "dismantle"], need: "person", hands: 2, takes: ["form", "shore", "brace"] },
  { verbs: ["tie", "bind"], need: "arm", hands: 2 },
  { verbs: ["oil", "grease", "release"], need: "arm" },
  { verbs: ["set", "stand", "close", "form"], need: "person", hands: 2, puts: { sort: "form", called: "form", does: "closes" } },
  {
    verbs: ["pour", "cast", "place", "concrete"],
    sort: "pour",
    need: "hose",
    hands: 3,
    puts: { sort: "concrete", called: "concrete", does: "fills" },
  },
  { verbs: ["dig", "excavate", "trench"], need: "person", hands: 2 },
  { verbs: ["backfill", "fill"], need: "person", hands: 2, puts: { sort: "earth", called: "fill", does: "fills" } },
  { verbs: ["seal", "caulk", "waterproof", "damp-proof"], need: "arm" },
  { verbs: ["inspect", "inspector", "inspection"], sort: "inspection", need: "sight", hands: 0, holdPoint: true },
  { verbs: ["check", "measure", "plumb", "level"], sort: "check", need: "arm" },
  { verbs: ["photograph", "photo", "photos"], sort: "photograph", need: "sight" },
  { verbs: ["bolt", "bolts", "sleeve", "sleeves", "conduit", "embed", "anchor", "anchors"], sort: "embed", need: "arm" },
  { verbs: ["brace", "guy"], need: "person", hands: 2, puts: { sort: "brace", called: "brace", does: "nothing" } },
  { verbs: ["shore", "prop"], need: "person", hands: 2, puts: { sort: "shore", called: "shores", does: "nothing" } },
  { verbs: ["scaffold"], need: "person", hands: 2, puts: { sort: "scaffold", called: "scaffold", does: "nothing" } },
  { verbs: ["cover", "sheet"], need: "arm", puts: { sort: "cover", called: "cover", does: "nothing" } },
  { verbs: ["screed", "trowel", "finish"], need: "arm" },
  { verbs: ["wet", "cure"], need: "hand" },
  { verbs: ["clean", "sweep", "vacuum", "rinse"], need: "arm" },
  { verbs: ["paint", "stain", "prime", "brush"], need: "arm" },
  { verbs: ["drill", "cut", "grind", "chip"], need: "arm" },
  { verbs: ["frame", "nail", "sheathe", "side", "roof", "hang"], need: "person", hands: 2 },
  { verbs: ["order", "book", "call", "request", "apply"], sort: "office" },
  { verbs: ["mark", "stake", "survey"], need: "person", hands: 2 },
];

const wordsOf = (text: string): readonly string[] => text.toLowerCase().match(/[\p{L}\p{N}-]+/gu) ?? [];

/** What a step of that name usually is, with the word that says so: its first word before any other. Null where none is known. */
export function usualOf(name: string): { readonly usual: Usual; readonly verb: string } | null {
  for (const word of wordsOf(name)) {
    const usual = usuals.find(({ verbs }) => verbs.includes(word));
    if (usual) return { usual, verb: word };
  }
  return null;
}

const little: ReadonlySet<string> = new Set([
  "the",
  "a",
  "an",
  "and",
  "of",
  "for",
  "in",
  "on",
  "to",
  "at",
  "up",
  "by",
  "with",
  "its",
  "all",
  "last",
  "first",
  "new",
  "second",
]);

/** The words of a name that tell what it is about: without the verb and little words. */
export const aboutOf = (name: string, verb = ""): readonly string[] => wordsOf(name).filter((word) => word !== verb && !little.has(word));

/** How many words two names share; a plural is the same word. */
export function sharedWords(a: readonly string[], b: readonly string[]): number {
  const stem = (word: string): string => (word.length > 3 ? word.replace(/e?s$/, "") : word);
  const other = new Set(b.map(stem));
  return a.filter((word) => other.has(stem(word))).length;
}
