import type { KeyedOffer } from "../kit";
import { type Making, once } from "../making";
import type { Bars } from "./mix";
import type { addStuff } from "./stuff";

export interface ArchSizes {
  readonly long_mm: number;
  readonly span_mm: number;
  readonly rise_mm: number;
  readonly thick_mm: number;
  /** Middle between the walls, at the level of their heads. */
  readonly at_mm: { readonly x: number; readonly y: number; readonly z: number };
  readonly way_mm: { readonly wide: number; readonly high: number; readonly longest: number };
}

/** A part of a rib as it is carried. */
export interface RibUnit {
  readonly parts: number;
  readonly long_mm: number;
  readonly wide_mm: number;
}

export interface Arch {
  readonly making: Making;
  readonly sizes: ArchSizes;
  readonly on: readonly KeyedOffer[];
  readonly unit: RibUnit;
  readonly shore_mm: number;
  readonly stuff: ReturnType<typeof addStuff>;
  readonly barsCome: string;
}

/** Lumber left under the curve of a rib at its crown (common practice, no source). */
const web_mm = 140;
const ribThick_mm = 76;

/** A rib in as few parts, of two at least, as get out by the narrowest way: each as long as its share of the span, as deep as the curve drops over it. */
export function unitOf({ span_mm, rise_mm, way_mm }: ArchSizes): RibUnit {
  const fits = Math.max(way_mm.wide, way_mm.high);
  for (let parts = 2; parts < 12; parts += 1) {
    const long_mm = span_mm / parts;
    // The steepest part is the outermost one.
    const outer = 1 - (1 - 2 / parts) ** 2;
    const wide_mm = web_mm + rise_mm * (parts === 2 ? 1 : outer);
    const sorted = [long_mm, wide_mm].sort((a, b) => a - b) as [number, number];
    if (sorted[0] <= fits && sorted[1] <= way_mm.longest) return { parts, long_mm, wide_mm };
  }
  return { parts: 12, long_mm: span_mm / 12, wide_mm: Math.min(fits, web_mm + rise_mm) };
}

/** Curved ones at 8 in, along at 12 in: a guess, until whoever designs it says. */
export function barsOf({ long_mm, span_mm, rise_mm }: ArchSizes): readonly Bars[] {
  const shared = { size: 4, cover_mm: 50.8, exposure: "weather or ground", supported_mm: 350 } as const;
  const curve_mm = Math.hypot(span_mm, 2 * rise_mm);
  return [
    { ...shared, name: "curved", number: Math.max(2, Math.ceil((long_mm - 100) / 203.2) + 1), long_mm: curve_mm + 600, spacing_mm: 203.2 },
    {
      ...shared,
      name: "along",
      number: Math.max(2, Math.ceil(curve_mm / 304.8) + 1),
      long_mm: Math.max(300, long_mm - 100),
      spacing_mm: 304.8,
    },
  ];
}

export function addPlaces({ making, sizes }: Arch): void {
  const { given } = making;
  const { answers, name } = given;
  const ground = given.common("ground");
  const level = Math.round(sizes.at_mm.z / 100);
  making.add("places", "inside", {
    name: `inside under ${name}`,
    level: Math.max(0, Math.round(level / 2)),
    ways: [
      {
        id: "over",
        name: "over the walls, while nothing lies on them",
        passes: ["person", "unit", "hose"],
        through: ground,
      },
      {
        id: "door",
        name: "by the narrowest way",
        passes: ["person", "unit"],
        opening: { wide: answers.written("wayWide"), high: answers.written("wayHigh") },
        longest: answers.written("longest"),
        through: ground,
      },
    ],
  });
  making.add("places", "face", {
    name: `face of the lagging of ${name}`,
    level: level + 1,
    layerOf: making.id("steel"),
    ways: [{ id: "bare", name: "standing on the lagging", passes: ["person"], through: ground }],
  });
  making.add("places", "steel", {
    name: `steel of ${name}`,
    below: [making.id("inside")],
    level: level + 2,
    ways: [{ id: "planks", name: "from the planks over the crown", passes: ["person", "arm", "hose", "sight"], through: ground }],
  });
  making.add("places", "ends", {
    name: `ends of ${name}`,
    level: level + 1,
    layerOf: making.id("steel"),
    ways: [{ id: "outside", name: "from outside", passes: ["person", "arm"], through: ground }],
  });
  making.add("places", "top", {
    name: `back of ${name}`,
    level: level + 3,
    ways: [{ id: "over", name: "over its back", passes: ["person", "unit"], through: ground }],
  });
}

export function addPieces({ making, sizes, on, unit, shore_mm }: Arch): void {
  const { given } = making;
  const { name } = given;
  const own = (word: string) => making.id(word);
  const [inside, ground] = [own("inside"), given.common("ground")];
  const out = (piece: string) => [{ place: inside }, { place: inside, need: "unit", piece: own(piece) }];
  const fits_mm = Math.max(sizes.way_mm.wide, sizes.way_mm.high);
  const size = (long_mm: number, wide_mm: number, thick_mm: number) => ({
    long: making.mm(Math.min(long_mm, sizes.way_mm.longest)),
    wide: making.mm(Math.min(wide_mm, fits_mm)),
    thick: making.mm(thick_mm),
  });
  making.add("pieces", "cut", { name: `cut ribs of ${name}`, sort: "form" });
  making.add("pieces", "posts", {
    name: `posts and beams of ${name}`,
    sort: "shore",
    off: out("posts"),
    size: size(Math.max(shore_mm, sizes.long_mm), 89, 89),
  });
  making.add("pieces", "wedges", { name: `striking wedges of ${name}`, sort: "shore", heldBy: [[own("posts")]], off: [{ place: inside }] });
  making.add("pieces", "ribs", {
    name: `ribs of ${name}, in ${unit.parts} parts each`,
    sort: "form",
    heldBy: [[own("wedges")]],
    off: out("ribs"),
    size: size(Math.max(unit.long_mm, unit.wide_mm), Math.min(unit.long_mm, unit.wide_mm), ribThick_mm),
  });
  making.add("pieces", "lagging", {
    name: `lagging of ${name}`,
    sort: "form",
    heldBy: [[own("ribs")]],
    closes: [`${inside}.over`, ...on.map(({ place }) => place)],
    makes: [`${own("face")}.bare`],
    off: out("lagging"),
    size: size(sizes.long_mm, 140, 19),
  });
  making.add("pieces", "ends", { name: `end boards of ${name}`, sort: "form", heldBy: [[own("lagging")]], off: [{ place: own("ends") }] });
  making.add("pieces", "planks", {
    name: `scaffold and planks over ${name}`,
    sort: "scaffold",
    makes: [`${own("steel")}.planks`],
    off: [{ place: ground }],
  });
  making.add("pieces", "cage", { name: `bars of ${name}`, sort: "other", closes: [`${own("face")}.bare`] });
  making.add("pieces", "checked", { name: `centering of ${name}, looked over`, sort: "other" });
  making.add("pieces", "concrete", {
    name: `concrete of ${name}`,
    sort: "concrete",
    fills: [own("steel"), ...on.map(({ place }) => place)],
    makes: [`${own("top")}.over`],
    heldBy: [[own("lagging"), ...once(on.map(({ piece }) => piece))]],
    holdsItself: { is: `75 % of ${own("place")}`, from: "own guess" },
  });
  making.add("pieces", "green", {
    name: `${name} too green to walk on`,
    sort: "other",
    goesAfter: { is: `500 psi of ${own("place")}`, from: "own guess" },
    closes: [`${own("top")}.over`],
  });
  if (given.answers.yes("covered")) making.add("pieces", "earth", { name: `earth over ${name}`, sort: "earth", fills: [own("top")] });
}
