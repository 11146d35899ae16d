import { choiceAsk, countAsk, isWithin_mm, lengthAsk, severalAsk, wordAsk, yesAsk } from "../asks";
import type { Answers, Ask } from "../kit";
import { pourAsks } from "./mix";
import { formAsks } from "./stuff";

export const isOneSided = (answers: Answers): boolean => answers.choice("formed") !== "both";
const hasRecess = (answers: Answers): boolean => answers.yes("recess");

/** What is asked of every wall; `retains`: earth comes behind it. */
export const wallAsks = (retains: boolean): readonly Ask[] => [
  {
    key: "on",
    label: "What it stands on",
    help: "A strip footing or a slab.",
    kind: "joins",
    offers: ["bears"],
    least: 1,
    most: 1,
    // No earth lies behind what stands on a slab up in the air.
    ...(retains ? { usually: isWithin_mm(600) } : {}),
  },
  ...(retains
    ? []
    : [
        countAsk("number", "How many alike, side by side", 1, 1, 4),
        lengthAsk("apart", "From middle to middle", "8 ft", "2.4 m", 500, 15_000, { when: (answers) => answers.number("number") > 1 }),
      ]),
  lengthAsk("long", "Long", "10 ft", "3 m", 600, 20_000),
  lengthAsk("high", "High, from the top of what it stands on", retains ? "4 ft" : "5 ft", retains ? "1.2 m" : "1.5 m", 300, 3000, {
    help: "A footing lies in the ground: what of the wall is below the ground counts too.",
  }),
  lengthAsk("thick", "Thick at its top", "8 in", "200 mm", 150, 600),
  lengthAsk("leanFront", "Front leans in over its height by", "0 in", "0 mm", 0, 300, {
    help: "The wall is so much thicker at its foot in front.",
  }),
  lengthAsk("leanBack", "Back leans in over its height by", "0 in", "0 mm", 0, 300),
  choiceAsk("formed", "Faces that are formed", {
    both: "both faces",
    earth: "the front only, cast against earth behind",
    "old work": "the front only, cast against old work behind",
  }),
  severalAsk("visible", "Faces that stay visible", { front: "front", back: "back" }, { usual: ["front"] }),
  choiceAsk("open", "How one gets to bars and joints at the foot", {
    face: "one face is left off until the bars were seen",
    hatch: "clean-outs along the foot of the last face",
  }),
  yesAsk("recess", "A recess or opening is left out", false),
  lengthAsk("recessWide", "Recess: wide", "30 in", "760 mm", 50, 5000, { when: hasRecess }),
  lengthAsk("recessHigh", "Recess: high", "40 in", "1 m", 50, 2900, { when: hasRecess }),
  lengthAsk("recessDeep", "Recess: deep", "8 in", "200 mm", 10, 600, {
    when: hasRecess,
    help: "As deep as the wall is thick: an opening.",
  }),
  choiceAsk(
    "draft",
    "How what forms the recess comes out of the concrete",
    { draft: "tapered 1 in 12, it comes out whole", apart: "square, it comes apart from inside", foam: "foam, it is broken out" },
    { when: hasRecess },
  ),
  ...formAsks,
  yesAsk("starters", "Bars or bolts stand out of its top", !retains),
  ...pourAsks,
  wordAsk(
    "sized",
    retains ? "Who designed the wall for the earth behind it" : "Who says that a wall of this size carries what comes on it",
  ),
];

export interface WallSizes {
  readonly number: number;
  readonly long_mm: number;
  readonly high_mm: number;
  readonly thick_mm: number;
  /** Run over rise of front (a) and back (b). */
  readonly lean: { readonly a: number; readonly b: number };
  readonly oneSided: boolean;
}

/** @param retains a retaining wall is one */
export function wallSizes(answers: Answers, retains: boolean): WallSizes {
  const high_mm = answers.length_mm("high");
  const oneSided = isOneSided(answers);
  return {
    number: retains ? 1 : answers.number("number"),
    long_mm: answers.length_mm("long"),
    high_mm,
    thick_mm: answers.length_mm("thick"),
    lean: { a: answers.length_mm("leanFront") / high_mm, b: oneSided ? 0 : answers.length_mm("leanBack") / high_mm },
    oneSided,
  };
}
