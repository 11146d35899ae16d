import type { Part } from "../../build";
import { lengthAsk, wordAsk, yesAsk } from "../asks";
import type { Answers, Ask, Given, KeyedOffer, Kit, Made, Offer } from "../kit";
import { Making } from "../making";
import { coverAsk } from "./after";
import { type Arch, type ArchSizes, addPieces, addPlaces, barsOf, unitOf } from "./arch-members";
import { addSteps } from "./arch-steps";
import { deckForm } from "./deck-form";
import { addBarsDelivery, addLooks } from "./looks";
import { addPour, burns, pourAsks, pourStep } from "./mix";
import { addStuff, addTrial, formAsks, lumberOf } from "./stuff";
import { topOffers } from "./top";

const asks: readonly Ask[] = [
  { key: "on", label: "The two walls it springs from", kind: "joins", offers: ["top"], least: 2, most: 2 },
  lengthAsk("long", "Long", "10 ft", "3 m", 600, 12_000),
  lengthAsk("rise", "Rise at the crown", "18 in", "450 mm", 100, 1500, {
    help: "Steeper than about 45 degrees where it springs it needs an outer form too.",
  }),
  lengthAsk("thick", "Thick", "7 in", "180 mm", 100, 300),
  yesAsk("visible", "Its soffit stays visible", true),
  lengthAsk("wayWide", "Narrowest way by which the centering leaves, wide", "30 in", "760 mm", 350, 10_000),
  lengthAsk("wayHigh", "Narrowest way by which it leaves, high", "6 ft 4 in", "1.9 m", 350, 10_000),
  lengthAsk("longest", "Longest piece that leaves there", "10 ft", "3 m", 900, 12_000),
  lengthAsk("drop", "The wedges let it drop by", "2 in", "50 mm", 25, 150),
  yesAsk("covered", "Earth comes over it later", false),
  ...formAsks,
  coverAsk,
  ...pourAsks,
  wordAsk("sized", "Who designed the arch, its walls and its centering"),
];

/** Clear between the two walls, and the level of their heads. */
function between(on: readonly KeyedOffer[]) {
  const [a, b] = [on[0], on[1]];
  if (a === undefined || b === undefined) return { span_mm: 2000, at_mm: { x: 0, y: 0, z: 0 } };
  const apart_mm = Math.hypot(a.at_mm.x - b.at_mm.x, a.at_mm.y - b.at_mm.y);
  const thick_mm = (Math.min(a.size_mm.long, a.size_mm.wide) + Math.min(b.size_mm.long, b.size_mm.wide)) / 2;
  return {
    span_mm: Math.min(6000, Math.max(600, apart_mm - thick_mm)),
    at_mm: { x: (a.at_mm.x + b.at_mm.x) / 2, y: (a.at_mm.y + b.at_mm.y) / 2, z: Math.max(a.at_mm.z, b.at_mm.z) },
  };
}

/** Of its span: a quarter is about 53 degrees where it springs, and as steep as a barrel goes here. */
const steepest = 0.25;

function sizesOf(answers: Answers): ArchSizes {
  const { span_mm, at_mm } = between(answers.joins("on"));
  return {
    long_mm: answers.length_mm("long"),
    span_mm,
    rise_mm: Math.min(answers.length_mm("rise"), Math.floor(span_mm * steepest)),
    thick_mm: answers.length_mm("thick"),
    at_mm,
    way_mm: { wide: answers.length_mm("wayWide"), high: answers.length_mm("wayHigh"), longest: answers.length_mm("longest") },
  };
}

/** Depth measured plumb where it springs, between two circles of one centre. */
function plumbAtSpring_mm({ span_mm, rise_mm, thick_mm }: ArchSizes): number {
  const radius_mm = (span_mm ** 2 / 4 + rise_mm ** 2) / (2 * rise_mm);
  return Math.sqrt((radius_mm + thick_mm) ** 2 - span_mm ** 2 / 4) - (radius_mm - rise_mm);
}

function make(given: Given): Made {
  const making = new Making(given);
  const { answers, name } = given;
  const sizes = sizesOf(answers);
  const { long_mm, span_mm, rise_mm, thick_mm, at_mm } = sizes;
  const own = (word: string) => making.id(word);
  const from = lumberOf(making);
  const boards = from === "salvaged" ? { size: "1x6", flat: true, salvaged: true } : { size: "1x6", flat: true, grade: "SPF No 2" };
  const design = deckForm(
    making,
    { deep_mm: plumbAtSpring_mm(sizes), under_mm: Math.max(700, at_mm.z), sheathing: { kind: "boards", boards } },
    from,
  );
  const arch: Arch = {
    making,
    sizes,
    on: answers.joins("on"),
    unit: unitOf(sizes),
    shore_mm: design.shore_mm,
    stuff: addStuff(making, (long_mm * span_mm) / 1e6),
    barsCome: addBarsDelivery(making),
  };
  addPlaces(arch);
  addPieces(arch);
  const covers = addSteps(arch);
  addTrial(making, [own("coat")]);
  addLooks(making, { what: `bars of ${name}`, place: own("steel"), places: [own("steel")], leansOn: [own("cage")] });
  const needs = addPour(making, {
    name,
    step: own("place"),
    fine: true,
    vibrated_mm: thick_mm,
    elements: [
      {
        id: "barrel",
        name,
        number: 1,
        shape: { kind: "barrel", long_mm, span_mm, rise_mm, thick_mm },
        faces: [{ face: "soffit", against: "form", visible: answers.yes("visible") }],
        form: design.form,
        bars: barsOf(sizes),
        pieces: [own("concrete"), own("lagging"), own("ribs"), own("posts")],
      },
    ],
    cure: { how: "wet", days: 7, exposed: true },
    removals: [
      { sort: "sides", step: own("strip-ends") },
      { sort: "soffit", step: own("strike"), soffit: "arch", span: making.mm(span_mm) },
      ...(answers.yes("covered") ? [{ sort: "load", step: own("cover-over") }] : []),
    ],
  });
  making.add("steps", "place", {
    name: `Pour ${name}`,
    ...pourStep(making),
    place: own("steel"),
    reaches: [{ place: own("steel"), need: "hose" }],
    puts: [own("concrete"), own("green"), ...covers],
    leansOn: ["lagging", "ends", "cage", "wedges"].map((word) => ({ piece: own(word) })),
    alone: [own("inside")],
    needs,
    cautions: [burns, "Nobody under the centering while it is filled.", "Both sides up alike, no side more than 12 in (300 mm) ahead."],
  });
  making.add("solids", "solid", {
    name,
    shape: "vault",
    at: { x: making.mm(at_mm.x), y: making.mm(at_mm.y), z: making.mm(at_mm.z) },
    size: { long: making.mm(long_mm), wide: making.mm(span_mm), high: making.mm(rise_mm) },
    thick: making.mm(thick_mm),
    pour: own("place"),
    pieces: [own("concrete")],
    form: [own("lagging"), own("ribs"), own("posts")],
    bars: [own("tie")],
    places: [own("steel"), own("top")],
  });
  if (answers.text("bars").trim() === "") making.unknown("bars");
  if (answers.text("sized").trim() === "") making.unknown("arch");
  making.unknown("shore-ground");
  making.unknown("soffit");
  return making.made();
}

function offers(part: Part, answers: Answers): readonly Offer[] {
  const { long_mm, span_mm, rise_mm, thick_mm, at_mm } = sizesOf(answers);
  return topOffers(part, ["walks", "cast"], {
    at_mm: { ...at_mm, z: at_mm.z + rise_mm + thick_mm },
    size_mm: { long: long_mm, wide: span_mm },
    starters: false,
  });
}

/** A barrel or arch over two walls, on centering that can leave through the narrowest way. */
export const arch: Kit = {
  id: "arch",
  name: "Barrel or arch",
  what: "A barrel over two walls: posts, wedges, ribs in parts that get out again, lagging, bars, pour, and the centering lowered and carried out.",
  group: "concrete",
  asks,
  rates: [
    "shore",
    "rib",
    "lagging",
    "coat",
    "boards",
    "strip-boards",
    "tie-bars",
    "cover",
    "check",
    "fill",
    "strip-deck",
    "photograph",
    "clean",
    "trial",
  ],
  make,
  offers,
};
