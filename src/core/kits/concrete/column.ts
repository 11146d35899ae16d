import type { Part } from "../../build";
import { choiceAsk, lengthAsk, severalAsk, wordAsk, yesAsk } from "../asks";
import type { Answers, Ask, Given, Kit, KeyedOffer, Made, Offer } from "../kit";
import { copiesOf, firstOf, Making, once } from "../making";
import { columnForm } from "./column-form";
import type { Lumber } from "./lay";
import { addBarsDelivery, addLooks } from "./looks";
import { addPour, type Bars, burns, massOfBars_kg, pourAsks, pourStep } from "./mix";
import { addTrial, formAsks } from "./stuff";

const asks: readonly Ask[] = [
  {
    key: "on",
    label: "What they stand on",
    help: "One column on each.",
    kind: "joins",
    offers: ["bears", "top"],
    least: 1,
    most: 12,
  },
  lengthAsk("long", "Long", "10 in", "250 mm", 150, 750),
  lengthAsk("wide", "Wide", "10 in", "250 mm", 150, 750),
  lengthAsk("high", "High above what it stands on", "7 ft 8 in", "2.3 m", 400, 3700),
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

interface Sizes {
  readonly number: number;
  readonly long_mm: number;
  readonly wide_mm: number;
  readonly high_mm: number;
}

const sizesOf = (answers: Answers): Sizes => ({
  number: Math.max(1, answers.joins("on").length),
  long_mm: answers.length_mm("long"),
  wide_mm: answers.length_mm("wide"),
  high_mm: answers.length_mm("high"),
});

/** From here up one stands on something to fill it and to work on its head (common practice, no source). */
const scaffoldFrom_mm = 1500;
/** As deep as an arm gets from the top (26 in, measured on people by nobody here: common practice). */
const armDepth_mm = 650;

/** Four uprights lapped to the starters and ties at 10 in: a guess, until whoever designs it says. */
function barsOf({ long_mm, wide_mm, high_mm }: Sizes, starters: boolean): readonly Bars[] {
  const cover_mm = 38.1;
  const tie_mm = 2 * (long_mm + wide_mm - 4 * cover_mm) + 150;
  return [
    { name: "upright", size: 5, number: 4, long_mm: high_mm + (starters ? 600 : -60), cover_mm, exposure: "weather or ground" },
    {
      name: "ties",
      size: 3,
      number: Math.max(2, Math.ceil(high_mm / 250) + 1),
      long_mm: Math.max(300, tie_mm),
      spacing_mm: Math.min(250, high_mm / 2),
      cover_mm,
      exposure: "weather or ground",
      sort: "tie",
    },
  ];
}

/** Where each stands: the middle of what it is on. */
const feet = (answers: Answers): readonly KeyedOffer["at_mm"][] => {
  const on = answers.joins("on").map(({ at_mm }) => at_mm);
  return on.length > 0 ? on : [{ x: 0, y: 0, z: 0 }];
};

interface Context {
  readonly making: Making;
  readonly sizes: Sizes;
  readonly on: readonly KeyedOffer[];
  readonly isHatch: boolean;
  readonly tall: boolean;
  readonly from: Lumber;
  readonly weight: string;
}

function addPlaces({ making, sizes, isHatch, tall, on }: Context): void {
  const { given } = making;
  const ground = given.common("ground");
  const level = Math.round(((on[0]?.at_mm.z ?? 0) + sizes.high_mm / 2) / 100);
  const sides = isHatch
    ? [
        { id: "sides", name: "its sides", passes: ["person", "arm", "sight"], through: ground },
        { id: "hatch", name: "the clean-out at the foot", passes: ["hand", "arm", "sight"], depth: making.mm(400), through: ground },
      ]
    : [
        { id: "last-side", name: "the side left open", passes: ["person", "arm", "sight"], through: ground },
        { id: "sides", name: "the three other sides", passes: ["person", "arm", "sight"], through: ground },
      ];
  making.add("places", "steel", {
    name: `steel of ${given.name}`,
    level,
    ways: [
      ...sides,
      { id: "top", name: "from the top", passes: ["hand", "arm", "hose", "sight"], depth: making.mm(armDepth_mm), through: ground },
    ],
  });
  making.add("places", "head", {
    name: `head of ${given.name}`,
    level: level + Math.ceil(sizes.high_mm / 200),
    layerOf: making.id("steel"),
    ways: [{ id: "around", name: "from around it", passes: ["person", "arm", "hose", "sight"], through: ground }],
  });
  if (tall) return;
}

function addPieces({ making, sizes, isHatch, tall, on, weight }: Context): void {
  const { given } = making;
  const { name } = given;
  const ground = given.common("ground");
  const steel = making.id("steel");
  const own = (word: string) => making.id(word);
  const face = { long: making.mm(sizes.high_mm), wide: making.mm(Math.max(sizes.long_mm, sizes.wide_mm) + 80), thick: making.mm(60) };
  making.add("pieces", "coated", { name: `coated form of ${name}`, sort: "form" });
  making.add("pieces", "cage", { name: `bars of ${name}`, sort: "other" });
  making.add("pieces", "faces", {
    name: isHatch ? `form of ${name}` : `three faces of the form of ${name}`,
    sort: "form",
    closes: [`${steel}.sides`],
    heldBy: [[own("braces")]],
    off: [{ place: ground }, { place: ground, need: "unit" }],
    size: face,
    weight: { is: weight, from: "own guess" },
  });
  making.add("pieces", "braces", { name: `braces of ${name}`, sort: "brace", off: [{ place: ground }] });
  making.add("pieces", "last", {
    name: isHatch ? `hatch over the clean-out of ${name}` : `last face of the form of ${name}`,
    sort: "form",
    closes: [isHatch ? `${steel}.hatch` : `${steel}.last-side`],
    heldBy: [[own("faces")]],
    off: [{ place: ground }],
  });
  if (tall) {
    making.add("pieces", "scaffold", {
      name: `scaffold at ${name}`,
      sort: "scaffold",
      makes: [`${steel}.top`, `${own("head")}.around`],
      off: [{ place: ground }],
    });
  }
  making.add("pieces", "concrete", {
    name: `concrete of ${name}`,
    sort: "concrete",
    fills: [steel],
    heldBy: [[own("faces"), own("last"), ...once(on.map(({ piece }) => piece))]],
    holdsItself: { is: `500 psi of ${own("place")}`, from: "own guess" },
  });
}
