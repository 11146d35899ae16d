import type { KeyedOffer } from "../kit";
import { type Making, once } from "../making";
import type { DeckDesign } from "./deck-form";
import type { Bars } from "./mix";
import type { addStuff } from "./stuff";

export interface Sizes {
  readonly long_mm: number;
  readonly wide_mm: number;
  readonly thick_mm: number;
  readonly span_mm: number;
  /** Middle of the soffit. */
  readonly at_mm: { readonly x: number; readonly y: number; readonly z: number };
}

export interface Deck {
  readonly making: Making;
  readonly sizes: Sizes;
  readonly on: readonly KeyedOffer[];
  readonly design: DeckDesign;
  /** A scaffold with guards stands around it from before the sheathing until after everything on it. */
  readonly guarded: boolean;
  readonly stuff: ReturnType<typeof addStuff>;
  readonly barsCome: string;
}

/** Both ways at 12 in: a guess, until whoever designs it says. */
export function barsOf({ long_mm, wide_mm }: Sizes): readonly Bars[] {
  const way = (name: string, size: number, long: number, across: number): Bars => ({
    name,
    size,
    number: Math.max(2, Math.ceil((across - 80) / 304.8) + 1),
    long_mm: Math.max(300, long - 80),
    spacing_mm: 304.8,
    cover_mm: 38.1,
    exposure: "weather or ground",
    supported_mm: 350,
  });
  return [way("along, bottom", 5, long_mm, wide_mm), way("across", 4, wide_mm, long_mm)];
}

export function addPlaces({ making, sizes, guarded }: Deck): void {
  const { given } = making;
  const { answers, name } = given;
  const ground = given.common("ground");
  const level = Math.round(sizes.at_mm.z / 100);
  making.add("places", "below", {
    name: `room under ${name}`,
    level: Math.max(0, Math.round(level / 2)),
    ways: [
      {
        id: "side",
        name: "from the side",
        passes: ["person", "unit"],
        opening: { wide: answers.written("wayWide"), high: answers.written("wayHigh") },
        longest: answers.written("longest"),
        through: ground,
      },
    ],
  });
  making.add("places", "face", {
    name: `face of the deck of ${name}`,
    level: level + 1,
    layerOf: making.id("steel"),
    ways: [{ id: "bare", name: "standing on the bare sheathing", passes: ["person"], through: ground }],
  });
  making.add("places", "steel", {
    name: `steel of ${name}`,
    below: [making.id("below")],
    level: level + 1,
    ways: [{ id: "deck", name: "on the deck", passes: ["person", "arm", "hose", "sight", "unit"], through: ground }],
  });
  making.add("places", "rim", {
    name: `edges of ${name}`,
    level: level + 1,
    layerOf: making.id("steel"),
    ways: [{ id: "outside", name: guarded ? "from the scaffold" : "from the ground", passes: ["person", "arm"], through: ground }],
  });
  making.add("places", "top", {
    name: `top of ${name}`,
    level: level + 2 + Math.ceil(sizes.thick_mm / 100),
    ways: [{ id: "over", name: "over its edge", passes: ["person", "unit"], through: ground }],
  });
}

/** Ways that a guard or scaffold makes beside what makes them anyway. */
export function addPieces({ making, sizes, on, design, guarded }: Deck): void {
  const { given } = making;
  const { answers, name } = given;
  const own = (word: string) => making.id(word);
  const [below, ground] = [own("below"), given.common("ground")];
  const inUnder = (piece: string) => [{ place: below }, { place: below, need: "unit", piece }];
  const longest_mm = answers.length_mm("longest");
  const sheet_mm = Math.min(1220, longest_mm, Math.max(answers.length_mm("wayWide"), answers.length_mm("wayHigh")) - 50);
  const size = (long_mm: number, wide_mm: number, thick_mm: number) => ({
    long: making.mm(Math.min(long_mm, longest_mm)),
    wide: making.mm(wide_mm),
    thick: making.mm(thick_mm),
  });
  making.add("pieces", "shores", {
    name: `shores of ${name}`,
    sort: "shore",
    off: inUnder(own("shores")),
    size: size(design.shore_mm, 89, 89),
  });
  making.add("pieces", "joists", {
    name: `stringers and joists of ${name}`,
    sort: "form",
    heldBy: [[own("shores")]],
    off: inUnder(own("joists")),
    size: size(Math.max(sizes.long_mm, sizes.wide_mm), 140, 38),
  });
  making.add("pieces", "sheathing", {
    name: `sheathing of ${name}`,
    sort: "form",
    heldBy: [[own("joists")]],
    makes: [`${own("steel")}.deck`, `${own("face")}.bare`],
    // Once the sheathing is around a head, nobody gets at it from the side.
    closes: on.map(({ place }) => place),
    off: inUnder(own("sheathing")),
    size: size(2440, sheet_mm, 19),
  });
  if (guarded) {
    making.add("pieces", "scaffold", {
      name: `scaffold with guards around ${name}`,
      sort: "scaffold",
      makes: [`${own("steel")}.deck`, `${own("face")}.bare`, `${own("rim")}.outside`, `${own("top")}.over`],
      off: [{ place: ground }],
    });
  }
  making.add("pieces", "edges", {
    name: `edge forms of ${name}`,
    sort: "form",
    heldBy: [[own("sheathing")]],
    off: [{ place: own("rim") }],
  });
  making.add("pieces", "cage", { name: `bars of ${name}`, sort: "other", closes: [`${own("face")}.bare`] });
  making.add("pieces", "checked", { name: `shores of ${name}, looked over`, sort: "other" });
  making.add("pieces", "concrete", {
    name: `concrete of ${name}`,
    sort: "concrete",
    fills: [own("steel"), ...on.map(({ place }) => place)],
    makes: [`${own("top")}.over`],
    heldBy: [[own("sheathing"), ...once(on.map(({ piece }) => piece))]],
    holdsItself: { is: `75 % of ${own("place")}`, from: "own guess" },
  });
  making.add("pieces", "green", {
    name: `${name} too green to walk on`,
    sort: "other",
    goesAfter: { is: `500 psi of ${own("place")}`, from: "own guess" },
    closes: [`${own("top")}.over`],
  });
}
