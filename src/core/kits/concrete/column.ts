import type { Part } from "../../build";
import type { Answers, Given, KeyedOffer, Kit, Made, Offer } from "../kit";
import { copiesOf, firstOf, Making } from "../making";
import { columnAsks, sizesOf } from "./column-asks";
import { columnForm } from "./column-form";
import { addPieces, addPlaces, barsOf, type Context, scaffoldFrom_mm } from "./column-members";
import { addClosedSteps, addOpenSteps } from "./column-steps";
import { addBarsDelivery, addLooks } from "./looks";
import { addPour, burns, layer_mm, pourStep } from "./mix";
import { addStuff, addTrial, lumberOf } from "./stuff";
import { firmUnder } from "./top";

/** Where each stands: the middle of what it is on. */
const feet = (answers: Answers): readonly KeyedOffer["at_mm"][] => {
  const on = answers.joins("on").map(({ at_mm }) => at_mm);
  return on.length > 0 ? on : [{ x: 0, y: 0, z: 0 }];
};

function make(given: Given): Made {
  const making = new Making(given);
  const { answers, name } = given;
  const sizes = sizesOf(answers);
  const { number, long_mm, wide_mm, high_mm } = sizes;
  const on = answers.joins("on");
  const onBench = answers.choice("made") === "bench";
  const side_mm = Math.max(long_mm, wide_mm);
  const mass_kg = ((side_mm * high_mm) / 1e6) * 30 * (onBench ? 3 : 1);
  const context: Context = {
    making,
    sizes,
    on,
    isHatch: answers.choice("open") === "hatch",
    tall: high_mm > scaffoldFrom_mm,
    weight: making.either(`${Math.ceil(mass_kg / 0.4536)} lb`, `${Math.ceil(mass_kg)} kg`),
  };
  const bars = barsOf(sizes, answers.yes("starters"));
  const stuff = addStuff(making, ((2 * (long_mm + wide_mm) * high_mm) / 1e6) * number);
  const barsCome = addBarsDelivery(making);
  making.alike(number, "all", name, () => {
    addPlaces(context);
    addPieces(context);
    addOpenSteps(context, stuff, barsCome);
  });
  addTrial(making, [making.id("coat"), making.id("seal")]);
  const [steel, concrete] = [making.id("steel"), making.id("concrete")];
  addLooks(making, { what: `bars of ${name}`, place: firstOf(steel, number), places: [steel], leansOn: [making.id("cage")] });
  making.alike(number, "all", name, () => addClosedSteps(context));
  const needs = addPour(making, {
    name,
    step: making.id("place"),
    fine: true,
    vibrated_mm: Math.min(high_mm, layer_mm(making, 2)),
    elements: [
      {
        id: "column",
        name,
        number,
        shape: { kind: "column", long_mm, wide_mm, high_mm, round: false },
        faces: [{ face: "sides", against: "form", visible: answers.several("visible").length > 0 }],
        form: columnForm(making, { side_mm, high_mm, perimeter_mm: 2 * (long_mm + wide_mm) }, lumberOf(making)),
        bars,
        pieces: [concrete, making.id("faces"), making.id("last")],
      },
    ],
    cure: { how: "in the form", days: 7, exposed: true },
    removals: copiesOf(making.id("strip"), number).map((step) => ({ sort: "sides", step })),
  });
  making.add("steps", "place", {
    name: `Pour ${name}`,
    ...pourStep(making),
    place: firstOf(steel, number),
    reaches: [{ place: steel, need: "hose" }],
    puts: [concrete],
    leansOn: ["last", "braces", "cage", "plumbed"].map((word) => ({ piece: making.id(word) })),
    needs,
    cautions: [burns, "Somebody does nothing but watch the form, out of its way; nobody stands where a band could fly."],
    notes: "In layers of 16 in (400 mm), each vibrated into the one below.",
  });
  addSolids(context);
  if (answers.text("bars").trim() === "") making.unknown("bars");
  if (answers.text("sized").trim() === "") making.unknown("structure");
  return making.made();
}

function addSolids({ making, sizes }: Context): void {
  const { given } = making;
  const nth = (word: string, index: number) => copiesOf(making.id(word), sizes.number).slice(index, index + 1);
  feet(given.answers).forEach((at, index) => {
    making.add("solids", sizes.number > 1 ? `solid-${index + 1}` : "solid", {
      name: sizes.number > 1 ? `${given.name} ${index + 1}` : given.name,
      shape: "box",
      at: { x: making.mm(at.x), y: making.mm(at.y), z: making.mm(at.z) },
      size: { long: making.mm(sizes.long_mm), wide: making.mm(sizes.wide_mm), high: making.mm(sizes.high_mm) },
      pour: making.id("place"),
      pieces: nth("concrete", index),
      form: [...nth("faces", index), ...nth("last", index)],
      bars: nth("tie", index),
      places: nth("steel", index),
    });
  });
}

function offers(part: Part, answers: Answers): readonly Offer[] {
  const { number, long_mm, wide_mm, high_mm } = sizesOf(answers);
  const around = copiesOf(`${part.id}-around`, number);
  const heads = copiesOf(`${part.id}-head`, number);
  const pieces = copiesOf(`${part.id}-concrete`, number);
  const on = answers.joins("on");
  return feet(answers).map((at, index) => ({
    kind: "top",
    part: part.id,
    name: number > 1 ? `${part.name} ${index + 1}` : part.name,
    place: heads[index] as string,
    clear: around[index] as string,
    ...firmUnder(on[index]),
    piece: pieces[index] as string,
    pourStep: `${part.id}-place`,
    at_mm: { ...at, z: at.z + high_mm },
    size_mm: { long: long_mm, wide: wide_mm },
    starters: answers.yes("starters"),
  }));
}

/** Columns in bands on footings, one on each: bars first, three faces, then the last. */
export const column: Kit = {
  id: "column",
  name: "Column",
  what: "Columns on footings: bars, a form with one side open until they were seen, bands, pour, strip.",
  group: "concrete",
  asks: columnAsks,
  rates: [
    "panel",
    "coat",
    "tie-bars",
    "scaffold",
    "scaffold-down",
    "set-panel",
    "seal",
    "close-panel",
    "check",
    "strip-panel",
    "roughen",
    "photograph",
    "clean",
    "trial",
  ],
  make,
  offers,
};
