import type { Range } from "../../base";
import { choiceAsk, lengthAsk, severalAsk, wordAsk, yesAsk } from "../asks";
import type { Answers, Ask } from "../kit";
import type { Sizes } from "./column-members";
import { pourAsks } from "./mix";
import { formAsks } from "./stuff";

const least_mm = 400;
const most_mm = 3700;

const fromGround = (answers: Answers): boolean => answers.choice("measured") === "ground";

/** How far below the ground the deepest of what they stand on lies; a floor above the ground is the ground of what stands on it. */
const sunk_mm = (answers: Answers): number => Math.max(0, ...answers.joins("on").map(({ at_mm }) => -at_mm.z));

/** What is left between the least and the most a form is made for, once the part in the ground is counted. */
function headWithin_mm(answers: Answers): Range {
  const sunk = sunk_mm(answers);
  return { least: Math.max(leastHead_mm, least_mm - sunk), most: Math.min(most_mm, most_mm - sunk), unit: "mm" };
}

const leastHead_mm = 300;

export const columnAsks: readonly Ask[] = [
  {
    key: "on",
    label: "What they stand on",
    help: "One column on each.",
    kind: "joins",
    offers: ["bears"],
    least: 1,
    most: 12,
  },
  lengthAsk("long", "Long", "10 in", "250 mm", 150, 750),
  lengthAsk("wide", "Wide", "10 in", "250 mm", 150, 750),
  choiceAsk(
    "measured",
    "Their height is measured",
    { ground: "from the ground, or the floor they stand on", foot: "from what they stand on, though it lies in the ground" },
    { unasked: "foot" },
  ),
  lengthAsk("head", "Their heads above the ground", "7 ft 6 in", "2.3 m", leastHead_mm, most_mm, {
    when: fromGround,
    within_mm: headWithin_mm,
    help: "As much is clear under a slab on them: 7 ft (2.1 m) at least where people walk (common practice, no source). The part in the ground comes on top.",
  }),
  lengthAsk("high", "High above what they stand on", "7 ft 8 in", "2.3 m", least_mm, most_mm, { when: (answers) => !fromGround(answers) }),
  severalAsk("visible", "Faces that stay visible", { front: "front", back: "back", left: "left", right: "right" }),
  choiceAsk("open", "How one gets to bars and joints at the foot", {
    face: "one face is left off until the bars were seen",
    hatch: "a clean-out at the foot",
  }),
  choiceAsk("made", "The form is put together", { bench: "on the bench, three faces as one", place: "where it stands, face by face" }),
  ...formAsks,
  yesAsk("starters", "Starter bars or bolts stand out of the head", true),
  ...pourAsks,
  wordAsk("sized", "Who says that columns of this size carry what comes on them"),
];

/** Columns of one part are alike: as high as the deepest of them has to be. */
export const sizesOf = (answers: Answers): Sizes => ({
  number: Math.max(1, answers.joins("on").length),
  long_mm: answers.length_mm("long"),
  wide_mm: answers.length_mm("wide"),
  high_mm: fromGround(answers)
    ? Math.min(most_mm, Math.max(least_mm, answers.length_mm("head") + sunk_mm(answers)))
    : answers.length_mm("high"),
});
