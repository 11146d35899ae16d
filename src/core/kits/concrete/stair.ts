import type { Part } from "../../build";
import { choiceAsk, countAsk, isWithin_mm, lengthAsk, placeAsks, wordAsk, yesAsk } from "../asks";
import type { Answers, Ask, Given, Kit, Made, Offer } from "../kit";
import { Making } from "../making";
import { coverAsk } from "./after";
import { deckForm } from "./deck-form";
import { addBarsDelivery, addLooks } from "./looks";
import { addPour, burns, layer_mm, pourAsks, pourStep } from "./mix";
import { addPieces, addPlaces, addSteps, barsOf, type Stair, type StairSizes } from "./stair-members";
import { addStuff, formAsks, lumberOf } from "./stuff";

const asks: readonly Ask[] = [
  choiceAsk("sort", "What carries it", { earth: "the ground under it", deck: "itself: its soffit is formed" }),
  {
    key: "to",
    label: "What its head leans on",
    kind: "joins",
    offers: ["bears", "top"],
    least: 0,
    most: 1,
    // As high as a few risers from the ground get.
    usually: isWithin_mm(1600),
  },
  countAsk("steps", "Risers", 5, 2, 16),
  lengthAsk("riser", "Riser", "7 in", "175 mm", 100, 200),
  lengthAsk("tread", "Tread", "11 in", "280 mm", 250, 400),
  lengthAsk("wide", "Wide", "3 ft", "900 mm", 600, 2400),
  lengthAsk("thick", "Waist, square to its slope", "6 in", "150 mm", 100, 250),
  yesAsk("guard", "A guard along it", true),
  ...formAsks,
  ...placeAsks,
  coverAsk,
  ...pourAsks,
  wordAsk("sized", "Who says that it carries, and its guard with it"),
];

function sizesOf(answers: Answers): StairSizes {
  const [riser_mm, tread_mm, steps] = [answers.length_mm("riser"), answers.length_mm("tread"), answers.number("steps")];
  return {
    steps,
    riser_mm,
    tread_mm,
    wide_mm: answers.length_mm("wide"),
    thick_mm: answers.length_mm("thick"),
    formed: answers.choice("sort") === "deck",
    slope_mm: steps * Math.hypot(riser_mm, tread_mm),
    high_mm: steps * riser_mm,
    long_mm: steps * tread_mm,
  };
}

const placeOf = (answers: Answers, { long_mm, high_mm }: StairSizes) => {
  const head = answers.joins("to")[0];
  return head === undefined
    ? { x: answers.length_mm("right"), y: answers.length_mm("back"), z: 0 }
    : { x: head.at_mm.x - head.size_mm.long / 2 - long_mm / 2, y: head.at_mm.y, z: Math.max(0, head.at_mm.z - high_mm) };
};

function make(given: Given): Made {
  const making = new Making(given);
  const { answers, name } = given;
  const sizes = sizesOf(answers);
  const { steps, riser_mm, tread_mm, wide_mm, thick_mm, formed, high_mm, long_mm } = sizes;
  const own = (word: string) => making.id(word);
  const from = lumberOf(making);
  const plumb_mm = (thick_mm * Math.hypot(riser_mm, tread_mm)) / tread_mm + riser_mm / 2;
  const design = formed ? deckForm(making, { deep_mm: plumb_mm, under_mm: Math.max(700, high_mm / 2) }, from) : null;
  const stair: Stair = {
    making,
    sizes,
    on: answers.joins("to"),
    stuff: addStuff(making, (sizes.slope_mm * wide_mm) / 1e6),
    barsCome: addBarsDelivery(making),
    shore_mm: design?.shore_mm ?? 0,
  };
  addPlaces(stair);
  addPieces(stair);
  const covers = addSteps(stair);
  addLooks(making, { what: `bars of ${name}`, place: own("steel"), places: [own("steel")], leansOn: [own("cage")] });
  const needs = addPour(making, {
    name,
    step: own("place"),
    fine: true,
    vibrated_mm: Math.min(layer_mm(making, 1), thick_mm + riser_mm),
    elements: [
      {
        id: "stair",
        name,
        number: 1,
        shape: { kind: "stair", wide_mm, steps, riser_mm, tread_mm, thick_mm },
        faces: [{ face: "soffit", against: formed ? "form" : "earth", visible: formed }],
        form: design?.form,
        bars: barsOf(sizes),
        pieces: [own("concrete"), own("boards"), ...(formed ? [own("soffit"), own("shores")] : [])],
      },
    ],
    cure: { how: "wet", days: 7, exposed: true },
    removals: [
      { sort: "sides", step: own("strip-boards") },
      ...(formed ? [{ sort: "soffit", step: own("strip"), soffit: "slab", span: making.mm(long_mm) }] : []),
      ...(answers.yes("guard") ? [{ sort: "anchors", step: own("guard") }] : []),
    ],
  });
  making.add("steps", "place", {
    name: `Pour ${name}`,
    ...pourStep(making),
    place: own("steel"),
    reaches: [{ place: own("steel"), need: "hose" }],
    puts: [own("concrete"), own("green"), ...covers],
    leansOn: ["boards", "cage", ...(formed ? ["soffit", "shores"] : [])].map((word) => ({ piece: own(word) })),
    alone: formed ? [own("below")] : [],
    needs,
    cautions: [burns, ...(formed ? ["Nobody under it while it is filled."] : [])],
    notes: "From the lowest step up, stiff enough to stay in the steps.",
  });
  const at = placeOf(answers, sizes);
  making.add("solids", "solid", {
    name,
    shape: "stairs",
    at: { x: making.mm(at.x), y: making.mm(at.y), z: making.mm(at.z) },
    size: { long: making.mm(long_mm), wide: making.mm(wide_mm), high: making.mm(high_mm) },
    steps,
    pour: own("place"),
    pieces: [own("concrete")],
    form: formed ? [own("soffit"), own("shores")] : [own("boards")],
    bars: [own("tie")],
    places: [own("steel"), own("top")],
  });
  if (answers.text("bars").trim() === "") making.unknown("bars");
  if (answers.text("sized").trim() === "") making.unknown("structure");
  if (answers.yes("guard") && answers.text("sized").trim() === "") making.unknown("guard");
  if (formed) {
    making.unknown("shore-ground");
    making.unknown("soffit");
  }
  return making.made();
}

function offers(part: Part, answers: Answers): readonly Offer[] {
  const sizes = sizesOf(answers);
  const at = placeOf(answers, sizes);
  return [
    {
      kind: "walks",
      part: part.id,
      name: part.name,
      place: `${part.id}-top`,
      piece: `${part.id}-concrete`,
      pourStep: `${part.id}-place`,
      at_mm: { ...at, z: at.z + sizes.high_mm },
      size_mm: { long: sizes.long_mm, wide: sizes.wide_mm },
      starters: false,
    },
  ];
}

/** A concrete stair on the ground or with a formed soffit, and its guard. */
export const stair: Kit = {
  id: "stair",
  name: "Stair and guard",
  what: "Steps on the ground or on a formed soffit: boards at sides and risers, bars, pour, the guard once its anchors hold.",
  group: "concrete",
  asks,
  rates: [
    "dig",
    "gravel",
    "shore",
    "deck",
    "strip-deck",
    "boards",
    "strip-boards",
    "coat",
    "tie-bars",
    "cover",
    "check",
    "guard",
    "photograph",
    "clean",
    "trial",
  ],
  make,
  offers,
};
