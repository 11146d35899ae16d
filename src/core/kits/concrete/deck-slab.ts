import type { Part } from "../../build";
import { choiceAsk, countAsk, lengthAsk, wordAsk, yesAsk } from "../asks";
import type { Answers, Ask, Given, KeyedOffer, Kit, Made, Offer } from "../kit";
import { Making } from "../making";
import { coverAsk } from "./after";
import { deckForm } from "./deck-form";
import { addPieces, addPlaces, barsOf, type Deck, type Sizes } from "./deck-members";
import { addSteps } from "./deck-steps";
import { addBarsDelivery, addLooks } from "./looks";
import { addPour, burns, pourAsks, pourStep } from "./mix";
import { addStuff, addTrial, formAsks, lumberOf } from "./stuff";
import { topOffers } from "./top";

const asks: readonly Ask[] = [
  { key: "on", label: "What it stands on", help: "Columns, piers or walls.", kind: "joins", offers: ["top"], least: 1, most: 40 },
  lengthAsk("long", "Long, from left to right", "10 ft", "3 m", 600, 15_000),
  lengthAsk("wide", "Wide, from front to back", "8 ft", "2.4 m", 600, 10_000),
  lengthAsk("thick", "Thick", "6 in", "150 mm", 100, 300),
  yesAsk("visible", "Its soffit stays visible", true),
  countAsk("sleeves", "Sleeves and boxes cast in", 2, 0, 40),
  countAsk("bolts", "Anchor bolts cast in", 0, 0, 80, { help: "A building that is put on it sets its own." }),
  lengthAsk("wayWide", "Narrowest way in under it, wide", "4 ft", "1.2 m", 400, 10_000),
  lengthAsk("wayHigh", "Narrowest way in under it, high", "6 ft", "1.8 m", 400, 10_000),
  lengthAsk("longest", "Longest piece that gets in there", "12 ft", "3.6 m", 1000, 12_000),
  ...formAsks,
  choiceAsk("guard", "Guard along its edges", {
    scaffold: "by the scaffold around it",
    none: "none needed: it is low, or stands between walls",
  }),
  yesAsk("buggies", "Concrete comes by buggies or barrows over the deck", false),
  coverAsk,
  ...pourAsks,
  wordAsk("sized", "Who says that a slab of this thickness and what it stands on carry it"),
];

const far = (a: KeyedOffer, b: KeyedOffer): number => Math.hypot(a.at_mm.x - b.at_mm.x, a.at_mm.y - b.at_mm.y);

/** The widest gap from one support to its nearest neighbour, clear; a slab on one support hangs over on both sides. */
function clearSpan_mm(on: readonly KeyedOffer[], long_mm: number, wide_mm: number): number {
  if (on.length < 2) return Math.max(long_mm, wide_mm) / 2;
  const nearest = on.map((one) => Math.min(...on.filter((other) => other !== one).map((other) => far(one, other))));
  const least = Math.min(...on.map(({ size_mm }) => Math.min(size_mm.long, size_mm.wide)));
  return Math.max(300, Math.max(...nearest) - least);
}

const mean = (values: readonly number[]): number => (values.length === 0 ? 0 : values.reduce((a, b) => a + b, 0) / values.length);

function sizesOf(answers: Answers): Sizes {
  const on = answers.joins("on");
  const [long_mm, wide_mm] = [answers.length_mm("long"), answers.length_mm("wide")];
  const at = on.map(({ at_mm }) => at_mm);
  return {
    long_mm,
    wide_mm,
    thick_mm: answers.length_mm("thick"),
    span_mm: clearSpan_mm(on, long_mm, wide_mm),
    at_mm: { x: mean(at.map(({ x }) => x)), y: mean(at.map(({ y }) => y)), z: Math.max(0, ...at.map(({ z }) => z)) },
  };
}

/** Clear height that people walk under at ease, 7 ft (common practice, no source); what is lower than 4 ft nobody means to walk under. */
const headroom_mm = 2133.6;
const walksFrom_mm = 1219.2;
/** Guards are usual, and often law, from this drop up (30 in, IRC R312.1, from memory). */
const guardFrom_mm = 760;

function make(given: Given): Made {
  const making = new Making(given);
  const { answers, name } = given;
  const sizes = sizesOf(answers);
  const { long_mm, wide_mm, thick_mm, span_mm, at_mm } = sizes;
  const on = answers.joins("on");
  const design = deckForm(making, { deep_mm: thick_mm, under_mm: at_mm.z, buggies: answers.yes("buggies") }, lumberOf(making));
  const deck: Deck = {
    making,
    sizes,
    on,
    design,
    guarded: answers.choice("guard") === "scaffold" && at_mm.z + thick_mm > guardFrom_mm,
    stuff: addStuff(making, (long_mm * wide_mm) / 1e6),
    barsCome: addBarsDelivery(making),
  };
  addPlaces(deck);
  addPieces(deck);
  const covers = addSteps(deck);
  addTrial(making, [making.id("coat"), making.id("seal")]);
  const [steel, concrete] = [making.id("steel"), making.id("concrete")];
  addLooks(making, { what: `bars of ${name}`, place: steel, places: [steel], leansOn: [making.id("cage")] });
  const needs = addPour(making, {
    name,
    step: making.id("place"),
    vibrated_mm: thick_mm,
    elements: [
      {
        id: "slab",
        name,
        number: 1,
        shape: { kind: "deck slab", long_mm, wide_mm, thick_mm },
        faces: [{ face: "soffit", against: "form", visible: answers.yes("visible") }],
        form: design.form,
        bars: barsOf(sizes),
        pieces: [concrete, making.id("sheathing"), making.id("shores"), making.id("edges")],
      },
    ],
    cure: { how: "wet", days: 7, exposed: true },
    removals: [
      { sort: "sides", step: making.id("strip-edges") },
      { sort: "soffit", step: making.id("strip"), soffit: "slab", span: making.mm(span_mm) },
    ],
  });
  making.add("steps", "place", {
    name: `Pour ${name}`,
    ...pourStep(making),
    place: steel,
    reaches: [{ place: steel, need: "hose" }],
    puts: [concrete, making.id("green"), ...covers],
    leansOn: ["sheathing", "shores", "edges", "cage"].map((word) => ({ piece: making.id(word) })),
    alone: [making.id("below")],
    needs,
    cautions: [
      burns,
      "Nobody under the deck while it is filled; somebody looks at shores and wedges from outside.",
      "Not in one heap: spread it as it comes.",
    ],
  });
  making.add("solids", "solid", {
    name,
    shape: "box",
    at: { x: making.mm(at_mm.x), y: making.mm(at_mm.y), z: making.mm(at_mm.z) },
    size: { long: making.mm(long_mm), wide: making.mm(wide_mm), high: making.mm(thick_mm) },
    pour: making.id("place"),
    pieces: [concrete],
    form: [making.id("sheathing"), making.id("shores")],
    bars: [making.id("tie")],
    places: [steel, making.id("top")],
  });
  if (answers.text("bars").trim() === "") making.unknown("bars");
  if (answers.text("sized").trim() === "") {
    making.unknown("structure");
    if (standsInLine(on, long_mm, wide_mm)) making.unknown("tipping");
  }
  if (at_mm.z > walksFrom_mm && at_mm.z < headroom_mm - 1) making.unknown("headroom");
  making.unknown("shore-ground");
  making.unknown("soffit");
  return making.made();
}

/** Whether what bears it reaches over less than a third of it, in one direction: then it balances (common practice, no source). */
function standsInLine(on: readonly Offer[], long_mm: number, wide_mm: number): boolean {
  if (on.length === 0) return false;
  const over = (middle: (one: Offer) => number, size: (one: Offer) => number): number =>
    Math.max(...on.map((one) => middle(one) + size(one) / 2)) - Math.min(...on.map((one) => middle(one) - size(one) / 2));
  const along_mm = over(
    ({ at_mm }) => at_mm.x,
    ({ size_mm }) => size_mm.long,
  );
  const across_mm = over(
    ({ at_mm }) => at_mm.y,
    ({ size_mm }) => size_mm.wide,
  );
  return along_mm < long_mm / 3 || across_mm < wide_mm / 3;
}

function offers(part: Part, answers: Answers): readonly Offer[] {
  const { long_mm, wide_mm, thick_mm, at_mm } = sizesOf(answers);
  return topOffers(part, ["bears", "walks", "cast"], {
    at_mm: { ...at_mm, z: at_mm.z + thick_mm },
    size_mm: { long: long_mm, wide: wide_mm },
    starters: answers.number("bolts") > 0,
  });
}

/** A slab on columns, piers or walls, cast on a timber deck on shores. */
export const deckSlab: Kit = {
  id: "deck-slab",
  name: "Slab on a timber deck",
  what: "A slab on columns, piers or walls: shores, stringers, joists, sheathing, edges, bars, pour, and the deck out again.",
  group: "concrete",
  asks,
  rates: [
    "shore",
    "deck",
    "scaffold",
    "scaffold-down",
    "coat",
    "boards",
    "strip-boards",
    "seal",
    "tie-bars",
    "embed",
    "check",
    "cover",
    "strip-deck",
    "photograph",
    "clean",
    "trial",
  ],
  make,
  offers,
};
