import type { Part } from "../../build";
import { choiceAsk, countAsk, lengthAsk, placeAsks, wordAsk, yesAsk } from "../asks";
import type { Answers, Ask, Given, Kit, Made, Offer } from "../kit";
import { copiesOf, firstOf, Making } from "../making";
import { columnForm } from "./column-form";
import { addBarsDelivery, addLooks } from "./looks";
import { addPour, burns, type Element, layer_mm, pourAsks, pourStep } from "./mix";
import { addPieces, addPlaces, addSteps, barsOf, type Pier, type PierSizes } from "./pier-members";
import { addStuff, lumberOf } from "./stuff";

const asks: readonly Ask[] = [
  countAsk("number", "How many alike", 4, 1, 12),
  choiceAsk("shape", "Shape", { round: "round", square: "square" }),
  lengthAsk("across", "Across", "12 in", "300 mm", 200, 900),
  lengthAsk("deep", "Deep in the ground", "4 ft", "1.2 m", 300, 4000),
  lengthAsk("above", "Above the ground", "8 in", "200 mm", 0, 1200),
  yesAsk("bell", "A wider foot, belled out", false),
  lengthAsk("bellAcross", "The foot across", "24 in", "600 mm", 300, 1800, { when: (answers) => answers.yes("bell") }),
  choiceAsk("digging", "Dug", { hand: "by hand", auger: "with an auger" }),
  choiceAsk("lumber", "Collar above the ground", { bought: "bought stuff", salvaged: "salvaged stuff" }),
  yesAsk("starters", "Starter bars or bolts stand out of the head", true),
  lengthAsk("apart", "From middle to middle", "6 ft", "1.8 m", 300, 30_000, { when: (answers) => answers.number("number") > 1 }),
  ...placeAsks,
  wordAsk("ground", "What the ground carries there, and who says so", {
    help: "A soil report, or the building office's figure for your soil. Empty: it stays on the list of what is not known.",
  }),
  wordAsk("depth", "Who says how deep it must go", { help: "Below frost, by your building office." }),
  ...pourAsks,
];

const sizesOf = (answers: Answers): PierSizes => {
  const across_mm = answers.length_mm("across");
  return {
    number: answers.number("number"),
    round: answers.choice("shape") === "round",
    across_mm,
    deep_mm: answers.length_mm("deep"),
    above_mm: answers.length_mm("above") < leastCollar_mm ? 0 : answers.length_mm("above"),
    bell_mm: answers.yes("bell") ? Math.max(across_mm, answers.length_mm("bellAcross")) : 0,
  };
};

/** Less than this stands out of the ground on its own, without a collar. */
const leastCollar_mm = 60;
/** A bell is so deep, counted as a block of its full width: more concrete than it takes. */
const bellDeep_mm = 300;

const middleOf = (answers: Answers, index: number) => ({
  x: answers.length_mm("right") + index * answers.length_mm("apart"),
  y: answers.length_mm("back"),
});

function elementsOf(making: Making, sizes: PierSizes): readonly Element[] {
  const { name, answers } = making.given;
  const { number, across_mm, deep_mm, above_mm, bell_mm, round } = sizes;
  const shaft_mm = bell_mm > 0 ? Math.max(100, deep_mm - bellDeep_mm) : deep_mm;
  const sides = (against: string) => [{ face: "sides", against }];
  const plan = { long_mm: across_mm, wide_mm: across_mm, round };
  return [
    ...(bell_mm > 0
      ? [
          {
            id: "bell",
            name: `foot of ${name}`,
            number,
            shape: { kind: "footing" as const, long_mm: bell_mm, wide_mm: bell_mm, thick_mm: bellDeep_mm },
            faces: sides("earth"),
            bars: [],
            pieces: [making.id("concrete")],
          },
        ]
      : []),
    {
      id: "shaft",
      name,
      number,
      shape: { kind: "pier", ...plan, high_mm: shaft_mm },
      faces: sides("earth"),
      bars: barsOf(sizes, answers.yes("starters")),
      pieces: [making.id("concrete")],
    },
    ...(above_mm > 0
      ? [
          {
            id: "head",
            name: `head of ${name}`,
            number,
            shape: { kind: "column" as const, ...plan, high_mm: above_mm },
            faces: sides("form"),
            form: columnForm(making, { side_mm: across_mm, high_mm: above_mm, perimeter_mm: 4 * across_mm }, lumberOf(making)),
            bars: [],
            pieces: [making.id("concrete"), making.id("collar")],
          },
        ]
      : []),
  ];
}

function make(given: Given): Made {
  const making = new Making(given);
  const { answers, name } = given;
  const sizes = sizesOf(answers);
  const { number, above_mm } = sizes;
  const [steel, concrete] = [making.id("steel"), making.id("concrete")];
  const pier: Pier = {
    making,
    sizes,
    stuff: above_mm > 0 ? addStuff(making, (4 * sizes.across_mm * above_mm * number) / 1e6) : { needs: [], leansOn: [] },
    barsCome: addBarsDelivery(making),
  };
  making.alike(number, "all", name, () => {
    addPlaces(pier);
    addPieces(pier);
    addSteps(pier);
  });
  addLooks(making, { what: `holes and bars of ${name}`, place: firstOf(steel, number), places: [steel], leansOn: [making.id("cage")] });
  const needs = addPour(making, {
    name,
    step: making.id("place"),
    fine: true,
    vibrated_mm: layer_mm(making, 2),
    elements: elementsOf(making, sizes),
    cure: { how: "covered", days: 7, exposed: true },
    removals: above_mm > 0 ? copiesOf(making.id("strip"), number).map((step) => ({ sort: "sides", step })) : [],
  });
  making.add("steps", "place", {
    name: `Pour ${name}`,
    ...pourStep(making),
    place: firstOf(steel, number),
    reaches: [{ place: steel, need: "hose" }],
    puts: [concrete],
    leansOn: ["cage", ...(above_mm > 0 ? ["collar"] : [])].map((word) => ({ piece: making.id(word) })),
    needs,
    cautions: [burns, "No water in the hole; concrete falls down its middle, not through the bars."],
  });
  for (let index = 0; index < number; index += 1) addSolid(making, sizes, index);
  if (answers.text("ground").trim() === "") making.unknown("ground");
  if (answers.text("depth").trim() === "") making.unknown("frost");
  if (answers.text("bars").trim() === "") making.unknown("bars");
  return making.made();
}

function addSolid(making: Making, sizes: PierSizes, index: number): void {
  const { number, across_mm, deep_mm, above_mm, round } = sizes;
  const nth = (word: string) => copiesOf(making.id(word), number).slice(index, index + 1);
  const at = middleOf(making.given.answers, index);
  making.add("solids", number > 1 ? `solid-${index + 1}` : "solid", {
    name: number > 1 ? `${making.given.name} ${index + 1}` : making.given.name,
    shape: round ? "cylinder" : "box",
    at: { x: making.mm(at.x), y: making.mm(at.y), z: making.mm(-deep_mm) },
    size: { long: making.mm(across_mm), wide: making.mm(across_mm), high: making.mm(deep_mm + above_mm) },
    pour: making.id("place"),
    pieces: nth("concrete"),
    form: above_mm > 0 ? nth("collar") : [],
    bars: nth("lower"),
    places: nth("steel"),
  });
}

function offers(part: Part, answers: Answers): readonly Offer[] {
  const sizes = sizesOf(answers);
  const ids = (word: string) => copiesOf(`${part.id}-${word}`, sizes.number);
  return ids("concrete").flatMap((piece, index) => {
    const shared = {
      part: part.id,
      name: sizes.number > 1 ? `${part.name} ${index + 1}` : part.name,
      place: ids("head")[index] as string,
      piece,
      pourStep: `${part.id}-place`,
      at_mm: { ...middleOf(answers, index), z: sizes.above_mm },
      size_mm: { long: sizes.across_mm, wide: sizes.across_mm },
      starters: answers.yes("starters"),
    };
    return [
      { ...shared, kind: "bears" as const },
      { ...shared, kind: "top" as const },
    ];
  });
}

/** Piers in the ground, round or square, with or without a bell, with a collar above the ground. */
export const pier: Kit = {
  id: "pier",
  name: "Pier in the ground",
  what: "Holes bored or dug, belled out or not, a cage lowered in, a collar above the ground, pour.",
  group: "concrete",
  asks,
  rates: ["set-out", "auger", "dig-machine", "tie-bars", "check", "panel", "strip-panel", "roughen", "photograph", "clean"],
  make,
  offers,
};
