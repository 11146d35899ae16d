/** What a kit cannot know, as one sentence: what is open, and whom to ask. */
const said: Readonly<Record<string, string>> = {
  ground: "What the ground under it carries. Ask for a soil report or the building office's figure for your soil, before you dig.",
  frost: "How deep it must go. Frost depth is the building office's to say.",
  bars: "Which bars it must have. Those written are a guess: ask whoever designs it, a licensed engineer where people stand under or on it.",
  structure: "Whether its size carries what stands on it. Ask a licensed engineer; the building office may want the calculation.",
  headroom:
    "Whether its headroom will do: under 7 ft (2.1 m) is left below it, and so much is usual where people walk (common practice, no source). Ask the building office, or make what carries it higher.",
  tipping:
    "Whether it stays level: what it stands on is in one line, and a load at its edge may tip it. Ask a licensed engineer, or stand it on more.",
  soffit: "What shows that it carries itself, before shores or props go: a test of its strength, or the word of whoever answers for it.",
  "shore-ground":
    "What the ground under the shores and their mudsills carries. Ask whoever knows the soil; filled or frozen ground does not count.",
  "scaffold-ground": "What the ground under the scaffold carries. Ask whoever knows the soil.",
  "scaffold-competent": "Who may put the scaffold up and look it over each day. Ask your local rules for a person qualified to do it.",
  "who-looks": "Who looks after the site while nobody is there. Ask a neighbour, and leave a number.",
  slope: "Whether the slope above or below stands while it is cut and loaded. Ask a licensed engineer before you dig.",
  "one-sided": "What holds a form that has one side only, where no tie can go through. Ask someone qualified for its braces and anchors.",
  earth: "What the earth behind it presses with, dry and wet. Ask a licensed engineer, with the soil report.",
  arch: "Whether the arch, the walls that take its thrust, and its centering carry it. Ask a licensed engineer; a wall that leans lets an arch down.",
  guard: "What the guard and its anchors must stand. Ask the building office; a guard that gives way is worse than none.",
  outfall: "Where the water may go. Ask the building office; onto a neighbour's ground it may not.",
  "trench-soil": "Whether the sides of the trench stand. Ask someone qualified before anybody goes in.",
  conductors: "Which cable, and how deep. Ask a licensed electrician and the inspector.",
  circuits: "Which circuits and boxes. Ask a licensed electrician and the inspector.",
  "timber-sizes": "Which sizes and grades its timber must have. Ask whoever designs it, or the tables of your code.",
  "roof-load": "What snow and wind it must stand. The building office has the figures for your place.",
  "stands-on": "What it stands on. Put that in, and let it join.",
  "which-inspections": "Which inspections your building office wants, and when. Ask with the permit.",
  "final-visit": "Who looks at the finished work, and what that visit wants to see. Ask the building office.",
  permit: "Whether a permit is needed. Ask the building office before anything is bought.",
  "salvaged-grade": "What the salvaged wood may carry. Someone who can grade it has to look; until then it is counted as less.",
  "utility-marks": "Where pipes and cables lie. Ask for utility marks before anybody digs; it is the law in most places.",
};

/** Codes that have a sentence of their own. */
export const unknownCodes: readonly string[] = Object.keys(said);

/** What nobody has said yet, with whom to ask; for a code that is not known here, whom to ask at least. */
export const unknownSentence = (code: string): string =>
  said[code] ?? `Something about it (${code.replaceAll("-", " ")}). Ask whoever designs it, or the building office.`;
