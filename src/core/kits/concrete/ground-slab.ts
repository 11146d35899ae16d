import type { Part } from "../../build";
import { choiceAsk, countAsk, lengthAsk, placeAsks, wordAsk, yesAsk } from "../asks";
import type { Answers, Ask, Given, Kit, Made, Offer } from "../kit";
import { Making } from "../making";
import { coverAsk } from "./after";
import { edgeForm } from "./edge";
import { addPieces, addPlaces, addSteps, barsOf, sizesOf } from "./ground-slab-members";
import { addLooks } from "./looks";
import { addPour, burns, pourAsks, pourStep } from "./mix";
import { lumberOf } from "./stuff";
import { topOffers } from "./top";

const asks: readonly Ask[] = [
  lengthAsk("long", "Long, from left to right", "12 ft", "3.6 m", 600, 20_000),
  lengthAsk("wide", "Wide, from front to back", "10 ft", "3 m", 600, 15_000),
  lengthAsk("thick", "Thick", "4 in", "100 mm", 75, 300),
  lengthAsk("above", "Its top above the ground", "4 in", "100 mm", 0, 600),
  lengthAsk("base", "Stone under it", "4 in", "100 mm", 50, 400),
  yesAsk("barrier", "A sheet against damp under it", true),
  choiceAsk("lumber", "Boards", { bought: "bought", salvaged: "salvaged" }),
  choiceAsk("digging", "Dug", { hand: "by hand", machine: "with a small machine" }),
  countAsk("sleeves", "Sleeves and pipes under or through it", 2, 0, 40),
  countAsk("bolts", "Anchor bolts cast in", 0, 0, 80, { help: "A building that is put on it sets its own." }),
  ...placeAsks,
  wordAsk("ground", "What the ground carries there, and who says so", {
    help: "A soil report, or the building office's figure. Empty: it stays on the list of what is not known.",
  }),
  coverAsk,
  ...pourAsks,
];

function make(given: Given): Made {
  const making = new Making(given);
  const { answers, name } = given;
  const { long_mm, wide_mm, thick_mm, above_mm, at } = sizesOf(answers);
  const own = (word: string) => making.id(word);
  addPlaces(making);
  addPieces(making);
  const covers = addSteps(making);
  addLooks(making, { what: `bars of ${name}`, place: own("steel"), places: [own("steel")], leansOn: [own("cage")] });
  const needs = addPour(making, {
    name,
    step: own("place"),
    vibrated_mm: thick_mm,
    elements: [
      {
        id: "slab",
        name,
        number: 1,
        shape: { kind: "slab", long_mm, wide_mm, thick_mm },
        form: edgeForm(making, thick_mm, lumberOf(making) === "salvaged"),
        bars: barsOf(long_mm, wide_mm, thick_mm),
        pieces: [own("concrete"), own("edges")],
      },
    ],
    cure: { how: "wet", days: 7, exposed: true },
    removals: [{ sort: "sides", step: own("strip") }],
  });
  making.add("steps", "place", {
    name: `Pour ${name}`,
    ...pourStep(making),
    place: own("steel"),
    reaches: [{ place: own("steel"), need: "hose" }],
    puts: [own("concrete"), own("green"), ...covers],
    leansOn: ["edges", "cage"].map((word) => ({ piece: own(word) })),
    needs,
    cautions: [burns],
    notes: "Struck off, floated when it carries a foot with a print of 1/4 in (6 mm), joints at 24 to 30 times its thickness.",
  });
  making.add("solids", "solid", {
    name,
    shape: "box",
    at: { x: making.mm(at.x), y: making.mm(at.y), z: making.mm(above_mm - thick_mm) },
    size: { long: making.mm(long_mm), wide: making.mm(wide_mm), high: making.mm(thick_mm) },
    pour: own("place"),
    pieces: [own("concrete")],
    form: [own("edges")],
    bars: [own("tie")],
    places: [own("steel"), own("top")],
  });
  if (answers.text("ground").trim() === "") making.unknown("ground");
  if (answers.text("bars").trim() === "") making.unknown("bars");
  return making.made();
}

function offers(part: Part, answers: Answers): readonly Offer[] {
  const { long_mm, wide_mm, above_mm, at } = sizesOf(answers);
  return topOffers(part, ["bears", "walks", "cast"], {
    at_mm: { ...at, z: above_mm },
    size_mm: { long: long_mm, wide: wide_mm },
    starters: answers.number("bolts") > 0,
  });
}

/** A slab on stone on the ground, between edge boards. */
export const groundSlab: Kit = {
  id: "ground-slab",
  name: "Slab on the ground",
  what: "A floor on stone: ground dug off, pipes under it, sheet, edge boards, bars, pour, wet cure.",
  group: "concrete",
  asks,
  rates: [
    "set-out",
    "dig",
    "dig-machine",
    "gravel",
    "embed",
    "membrane",
    "boards",
    "strip-boards",
    "tie-bars",
    "cover",
    "photograph",
    "clean",
  ],
  make,
  offers,
};
