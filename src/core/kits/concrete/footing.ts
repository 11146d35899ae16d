import type { Part } from "../../build";
import { choiceAsk, countAsk, lengthAsk, placeAsks, wordAsk, yesAsk } from "../asks";
import type { Answers, Ask, Given, Kit, Made, Offer } from "../kit";
import { copiesOf, firstOf, Making } from "../making";
import { edgeForm } from "./edge";
import { addFillIn, addOpenHole, isSunk, openWord } from "./footing-hole";
import { addHole, barsOf, isBoarded, type Sizes, sizesOf } from "./footing-members";
import { addBarsDelivery, addLooks } from "./looks";
import { addPour, burns, layer_mm, massOfBars_kg, pourAsks, pourStep } from "./mix";

const asks: readonly Ask[] = [
  choiceAsk("sort", "What kind of footing", { pad: "a pad under a column or post", strip: "a strip under a wall" }),
  countAsk("number", "How many alike", 2, 1, 12),
  lengthAsk("long", "Long", "30 in", "750 mm", 300, 30_000),
  lengthAsk("wide", "Wide", "30 in", "750 mm", 200, 3000),
  lengthAsk("thick", "Thick", "12 in", "300 mm", 150, 900),
  lengthAsk("deep", "From the ground down to its underside", "30 in", "800 mm", 150, 1500),
  choiceAsk("sides", "What its sides are cast against", { earth: "the earth as dug", boards: "boards on stakes" }),
  choiceAsk("lumber", "Boards", { bought: "bought", salvaged: "salvaged" }, { when: isBoarded }),
  choiceAsk("digging", "Dug", { hand: "by hand", machine: "with a small machine" }),
  yesAsk("starters", "Starter bars or bolts for what stands on it", true),
  lengthAsk("apart", "From middle to middle", "8 ft", "2.4 m", 300, 30_000, { when: (answers) => answers.number("number") > 1 }),
  ...placeAsks,
  wordAsk("ground", "What the ground carries there, and who says so", {
    help: "A soil report, or the building office's figure for your soil. Empty: it stays on the list of what is not known.",
  }),
  wordAsk("depth", "Who says how deep it must go", { help: "Below frost, by your building office." }),
  ...pourAsks,
];

const middleOf = (answers: Answers, index: number) => ({
  x: answers.length_mm("right") + index * answers.length_mm("apart"),
  y: answers.length_mm("back"),
});

function make(given: Given): Made {
  const making = new Making(given);
  const { answers, name } = given;
  const sizes = sizesOf(answers);
  const { number, long_mm, wide_mm, thick_mm, deep_mm, boarded } = sizes;
  const salvaged = boarded && answers.choice("lumber") === "salvaged";
  const bars = barsOf(sizes);
  const [steel, beside, concrete] = [making.id("steel"), making.id("beside"), making.id("concrete")];
  const ground = given.common("ground");
  const barsCome = addBarsDelivery(making);
  const lumber =
    boarded && !salvaged
      ? making.add("deliveries", "lumber-comes", {
          name: `Boards and stakes for ${name}`,
          calendar: given.common("lumber-yard"),
          lead: { is: `3 days of ${given.common("lumber-yard")}`, from: "own guess" },
          ordered: false,
        })
      : undefined;
  making.alike(number, "all", name, () => {
    making.add("places", "steel", {
      name: `steel of ${name}`,
      level: -Math.round(deep_mm / 100),
      ways: [{ id: "above", name: "from above", passes: ["person", "arm", "hose", "unit"], through: ground }],
    });
    making.add("pieces", "lines", { name: `lines of ${name}`, sort: "other" });
    const open = addOpenHole(making, sizes);
    making.add("pieces", "hole", { name: `hole for ${name}`, sort: "hole", makes: [`${steel}.above`, ...open] });
    if (boarded) making.add("pieces", "boards", { name: `boards of ${name}`, sort: "form", off: [{ place: beside }] });
    making.add("pieces", "cage", { name: `bars of ${name}`, sort: "other" });
    making.add("pieces", "concrete", { name: `concrete of ${name}`, sort: "concrete", fills: [steel] });
    addHole(making, sizes, lumber);
    making.add("steps", "tie", {
      name: `Tie bars of ${name}`,
      place: steel,
      work: given.hours("tie-bars", massOfBars_kg(bars) / 100),
      reaches: [{ place: steel }],
      puts: [making.id("cage")],
      leansOn: boarded ? [{ piece: making.id("boards") }] : [{ piece: making.id("hole") }],
      needs: [barsCome],
      materials: ["chairs, 3 in (75 mm) off the ground"],
    });
    if (answers.yes("starters")) {
      making.add("steps", "starters", {
        name: `Starters in ${name}`,
        sort: "embed",
        place: steel,
        work: given.hours("starters", 4),
        reaches: [{ place: steel, need: "arm", depth: making.mm(thick_mm) }],
        leansOn: [{ piece: making.id("cage") }],
        cautions: ["Cap every bar that stands up: a fall on one kills."],
        notes: "Set to the lines of what stands on it, not to the sides of the hole.",
      });
    }
  });
  addLooks(making, { what: `bars of ${name}`, place: firstOf(steel, number), places: [steel], leansOn: [making.id("cage")] });
  const needs = addPour(making, {
    name,
    step: making.id("place"),
    vibrated_mm: Math.min(thick_mm, layer_mm(making, 1)),
    elements: [
      {
        id: "footing",
        name,
        number,
        shape: { kind: "footing", long_mm, wide_mm, thick_mm },
        faces: boarded ? [{ face: "sides", against: "form" }] : [{ face: "sides", against: "earth" }],
        form: boarded ? edgeForm(making, thick_mm, salvaged) : undefined,
        bars,
        pieces: boarded ? [concrete, making.id("boards")] : [concrete],
      },
    ],
    cure: { how: "covered", days: 7, exposed: true },
    removals: boarded ? copiesOf(making.id("strip"), number).map((step) => ({ sort: "sides", step })) : [],
  });
  making.add("steps", "place", {
    name: `Pour ${name}`,
    ...pourStep(making),
    place: firstOf(steel, number),
    reaches: [{ place: steel, need: "hose" }],
    puts: [concrete],
    leansOn: [{ piece: making.id("cage") }, ...(boarded ? [{ piece: making.id("boards") }] : [])],
    needs,
    cautions: [burns],
    notes: "No water in the hole; the top rough where something is cast on it.",
  });
  if (boarded) {
    making.alike(number, "all", name, () => {
      making.add("steps", "strip", {
        name: `Strip boards of ${name}`,
        place: beside,
        work: given.hours("strip-boards", (2 * (long_mm + wide_mm)) / 1000),
        reaches: [{ place: beside }],
        takes: [making.id("boards")],
      });
    });
  }
  return finish(making, sizes);
}

/** Earth back, the drawing, and what nobody has said. */
function finish(making: Making, sizes: Sizes): Made {
  const { given } = making;
  const { answers, name } = given;
  const { number, long_mm, wide_mm, thick_mm, deep_mm, boarded } = sizes;
  making.alike(number, "all", name, () => addFillIn(making, sizes));
  copiesOf(making.id("concrete"), number).forEach((piece, index) => {
    const at = middleOf(answers, index);
    making.add("solids", number > 1 ? `solid-${index + 1}` : "solid", {
      name: number > 1 ? `${name} ${index + 1}` : name,
      shape: "box",
      at: { x: making.mm(at.x), y: making.mm(at.y), z: making.mm(-deep_mm) },
      size: { long: making.mm(long_mm), wide: making.mm(wide_mm), high: making.mm(thick_mm) },
      pour: making.id("place"),
      pieces: [piece],
      form: boarded ? copiesOf(making.id("boards"), number).slice(index, index + 1) : [],
      bars: copiesOf(making.id("tie"), number).slice(index, index + 1),
      places: copiesOf(making.id("steel"), number).slice(index, index + 1),
    });
  });
  if (answers.text("ground").trim() === "") making.unknown("ground");
  if (answers.text("depth").trim() === "") making.unknown("frost");
  if (answers.text("bars").trim() === "") making.unknown("bars");
  return making.made();
}

function offers(part: Part, answers: Answers): readonly Offer[] {
  const sizes = sizesOf(answers);
  const { number, long_mm, wide_mm, thick_mm, deep_mm } = sizes;
  const nth = (word: string, index: number) => copiesOf(`${part.id}-${word}`, number)[index] as string;
  const word = openWord(sizes);
  const places = copiesOf(`${part.id}-steel`, number);
  return copiesOf(`${part.id}-concrete`, number).map((piece, index) => ({
    kind: "bears",
    part: part.id,
    name: number > 1 ? `${part.name} ${index + 1}` : part.name,
    place: places[index] as string,
    ...(word !== null && isSunk(sizes) ? { hole: nth(word, index) } : {}),
    ...(word !== null ? { firm: nth("whole", index) } : {}),
    piece,
    pourStep: `${part.id}-place`,
    at_mm: { ...middleOf(answers, index), z: thick_mm - deep_mm },
    size_mm: { long: long_mm, wide: wide_mm },
    starters: answers.yes("starters"),
  }));
}

/** A pad under a column or a strip under a wall, cast in the earth or between boards. */
export const footing: Kit = {
  id: "footing",
  name: "Footing",
  what: "Pads or a strip in the ground on which columns, posts or a wall stand: dug, bars tied, poured.",
  group: "concrete",
  asks,
  rates: ["set-out", "dig", "dig-machine", "boards", "strip-boards", "tie-bars", "starters", "fill", "photograph"],
  make,
  offers,
};
