import type { Part } from "../../build";
import type { Answers, Given, Offer } from "../kit";
import { copiesOf, firstOf, Making } from "../making";
import { addBarsDelivery, addLooks } from "./looks";
import { addPour, burns, layer_mm, pourStep } from "./mix";
import { addStuff, addTrial, lumberOf } from "./stuff";
import { firmUnder } from "./top";
import { type WallSizes, wallSizes } from "./wall-asks";
import { wallForm } from "./wall-form";
import { addPieces, addPlaces, barsOf, type Wall } from "./wall-members";
import { addClosedSteps, addOpenSteps } from "./wall-steps";

const scaffoldFrom_mm = 1500;

/** Middles of the foot of each: on what it stands, the others behind it. */
function feetOf(answers: Answers, sizes: WallSizes) {
  const first = answers.joins("on")[0]?.at_mm ?? { x: 0, y: 0, z: 0 };
  return Array.from({ length: sizes.number }, (_, index) => ({
    ...first,
    y: first.y + (sizes.number > 1 ? index * answers.length_mm("apart") : 0),
  }));
}

/** Thickness at the foot. */
const footThick_mm = ({ thick_mm, high_mm, lean }: WallSizes): number => thick_mm + (lean.a + lean.b) * high_mm;

export interface WallMade {
  readonly making: Making;
  readonly sizes: WallSizes;
}

/** What a wall has behind it: where one works there, what else waits for its pour, what its form and its bars close there. */
export interface Behind {
  readonly behind: string;
  readonly removals?: readonly object[];
  readonly firstCloses?: readonly string[];
  readonly cageCloses?: readonly string[];
}

/** A wall with its form and pour; `more` adds what is behind it. */
export function makeWall(given: Given, retains: boolean, more: (made: WallMade) => Behind): Making {
  const making = new Making(given);
  const { answers, name } = given;
  const sizes = wallSizes(answers, retains);
  const { number, long_mm, high_mm, thick_mm, lean, oneSided } = sizes;
  const { behind, removals = [], firstCloses = [], cageCloses = [] } = more({ making, sizes });
  const wall: Wall = {
    making,
    sizes,
    on: answers.joins("on"),
    // With one face only nothing is left open but the form itself.
    isHatch: answers.choice("open") === "hatch",
    tall: high_mm > scaffoldFrom_mm,
    recess: answers.yes("recess"),
    behind,
    firstCloses,
    cageCloses,
    stuff: addStuff(making, ((long_mm * high_mm * 2) / 1e6) * number),
    barsCome: addBarsDelivery(making),
  };
  making.alike(number, "all", name, () => {
    addPlaces(wall);
    addPieces(wall);
    addOpenSteps(wall);
  });
  addTrial(making, [making.id("coat"), making.id("seal")]);
  const [steel, concrete] = [making.id("steel"), making.id("concrete")];
  addLooks(making, { what: `bars of ${name}`, place: firstOf(steel, number), places: [steel], leansOn: [making.id("cage")] });
  making.alike(number, "all", name, () => addClosedSteps(wall));
  const visible = answers.several("visible");
  const recess = {
    long: making.mm(Math.min(answers.length_mm("recessWide"), long_mm * 0.8)),
    wide: making.mm(Math.min(answers.length_mm("recessHigh"), high_mm * 0.8)),
    deep: making.mm(Math.min(answers.length_mm("recessDeep"), thick_mm)),
  };
  const needs = addPour(making, {
    name,
    step: making.id("place"),
    fine: true,
    vibrated_mm: Math.min(high_mm, layer_mm(making, 2)),
    elements: [
      {
        id: "wall",
        name,
        number,
        shape: { kind: "wall", long_mm, thick_mm, high_mm, batter: lean },
        faces: [
          { face: "a", against: "form", visible: visible.includes("front") },
          oneSided ? { face: "b", against: answers.choice("formed") } : { face: "b", against: "form", visible: visible.includes("back") },
        ],
        ...(wall.recess ? { rebates: [recess] } : {}),
        form: wallForm(making, { high_mm, lean: lean.a + lean.b, oneSided }, lumberOf(making)),
        bars: barsOf(sizes),
        pieces: [concrete, making.id("last"), ...(oneSided ? [] : [making.id("first")])],
      },
    ],
    cure: { how: "in the form", days: 7, exposed: true },
    removals: [...copiesOf(making.id("strip"), number).map((step) => ({ sort: "sides", step })), ...removals],
  });
  making.add("steps", "place", {
    name: `Pour ${name}`,
    ...pourStep(making),
    place: firstOf(steel, number),
    reaches: [{ place: steel, need: "hose" }],
    puts: [concrete],
    leansOn: ["last", "braces", "cage", "plumbed", ...(wall.recess ? ["block"] : [])].map((word) => ({ piece: making.id(word) })),
    needs,
    cautions: [burns, "Somebody does nothing but watch form, ties and braces, out of their way."],
    notes: "Round and round in layers of 16 in (400 mm), each vibrated into the one below.",
  });
  addSolids(making, sizes);
  if (answers.text("bars").trim() === "") making.unknown("bars");
  if (answers.text("sized").trim() === "") making.unknown(retains ? "earth" : "structure");
  if (oneSided) making.unknown("one-sided");
  return making;
}

function addSolids(making: Making, sizes: WallSizes): void {
  const { number, long_mm, high_mm } = sizes;
  const nth = (word: string, index: number) => copiesOf(making.id(word), number).slice(index, index + 1);
  feetOf(making.given.answers, sizes).forEach((at, index) => {
    making.add("solids", number > 1 ? `solid-${index + 1}` : "solid", {
      name: number > 1 ? `${making.given.name} ${index + 1}` : making.given.name,
      shape: "box",
      at: { x: making.mm(at.x), y: making.mm(at.y), z: making.mm(at.z) },
      size: { long: making.mm(long_mm), wide: making.mm(footThick_mm(sizes)), high: making.mm(high_mm) },
      pour: making.id("place"),
      pieces: nth("concrete", index),
      form: [...(sizes.oneSided ? [] : nth("first", index)), ...nth("last", index)],
      bars: nth("tie", index),
      places: nth("steel", index),
    });
  });
}

/** Tops and front faces of the walls. */
export function wallOffers(part: Part, answers: Answers, retains: boolean): readonly Offer[] {
  const sizes = wallSizes(answers, retains);
  const { number, long_mm, high_mm, thick_mm } = sizes;
  const ids = (word: string) => copiesOf(`${part.id}-${word}`, number);
  return feetOf(answers, sizes).flatMap((at, index) => {
    const shared = {
      part: part.id,
      name: number > 1 ? `${part.name} ${index + 1}` : part.name,
      piece: ids("concrete")[index] as string,
      pourStep: `${part.id}-place`,
      clear: ids("around")[index] as string,
      ...firmUnder(answers.joins("on")[0]),
      starters: answers.yes("starters"),
    };
    const top: Offer = {
      ...shared,
      kind: "top",
      place: ids("head")[index] as string,
      at_mm: { ...at, z: at.z + high_mm },
      size_mm: { long: long_mm, wide: thick_mm },
    };
    const face: Offer = {
      ...shared,
      kind: "face",
      place: "ground",
      at_mm: { ...at, z: at.z + high_mm / 2 },
      size_mm: { long: long_mm, wide: high_mm },
    };
    return [top, face];
  });
}
