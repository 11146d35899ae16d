import type { KeyedOffer } from "../kit";
import { type Making, once } from "../making";
import type { Bars } from "./mix";
import { addHead } from "./top";

export interface Sizes {
  readonly number: number;
  readonly long_mm: number;
  readonly wide_mm: number;
  readonly high_mm: number;
}

/** From here up one stands on something to fill it and to work on its head (common practice, no source). */
export const scaffoldFrom_mm = 1500;
/** As deep as an arm gets from the top (26 in, measured on people by nobody here: common practice). */
const armDepth_mm = 650;

/** The same as the build writes it. */
export const armDepth = (making: Making): string => making.either("26 in", "650 mm");

/**
 * What gets in from the top. Whoever looks at bars sees their foot, cover and spacers too: from the top of what is higher than an arm reaches, with its last side on, nobody does.
 */
export const topPasses = (isHatch: boolean, high_mm: number): readonly string[] => [
  "hand",
  "arm",
  "hose",
  ...(isHatch || high_mm <= armDepth_mm ? ["sight"] : []),
];

/** Four uprights lapped to the starters and ties at 10 in: a guess, until whoever designs it says. */
export function barsOf({ long_mm, wide_mm, high_mm }: Sizes, starters: boolean): readonly Bars[] {
  const cover_mm = 38.1;
  const tie_mm = 2 * (long_mm + wide_mm - 4 * cover_mm) + 150;
  return [
    { name: "upright", size: 5, number: 4, long_mm: high_mm + (starters ? 600 : -60), cover_mm, exposure: "weather or ground" },
    {
      name: "ties",
      size: 3,
      number: Math.max(2, Math.ceil(high_mm / 250) + 1),
      long_mm: Math.max(300, tie_mm),
      spacing_mm: Math.min(250, high_mm / 2),
      cover_mm,
      exposure: "weather or ground",
      sort: "tie",
    },
  ];
}

export interface Context {
  readonly making: Making;
  readonly sizes: Sizes;
  readonly on: readonly KeyedOffer[];
  readonly isHatch: boolean;
  readonly tall: boolean;
  readonly weight: string;
}

export function addPlaces({ making, sizes, isHatch, on }: Context): void {
  const { given } = making;
  const ground = given.common("ground");
  const level = Math.round(((on[0]?.at_mm.z ?? 0) + sizes.high_mm / 2) / 100);
  const sides = isHatch
    ? [
        { id: "sides", name: "its sides", passes: ["person", "arm", "sight"], through: ground },
        {
          id: "hatch",
          name: "the clean-out at the foot",
          passes: ["hand", "arm", "sight"],
          depth: making.laid(400, "down"),
          through: ground,
        },
      ]
    : [
        { id: "last-side", name: "the side left open", passes: ["person", "arm", "sight"], through: ground },
        { id: "sides", name: "the three other sides", passes: ["person", "arm", "sight"], through: ground },
      ];
  making.add("places", "steel", {
    name: `steel of ${given.name}`,
    level,
    ways: [
      ...sides,
      { id: "top", name: "from the top", passes: topPasses(isHatch, sizes.high_mm), depth: armDepth(making), through: ground },
    ],
  });
  addHead(making, { around: "ground around" }, sizes.high_mm, level, ground);
}

export function addPieces({ making, sizes, isHatch, tall, on, weight }: Context): void {
  const { given } = making;
  const { name } = given;
  const ground = given.common("ground");
  const steel = making.id("steel");
  const own = (word: string) => making.id(word);
  const face = { long: making.mm(sizes.high_mm), wide: making.mm(Math.max(sizes.long_mm, sizes.wide_mm) + 80), thick: making.mm(60) };
  making.add("pieces", "panels", { name: `panels for ${name}`, sort: "form" });
  making.add("pieces", "coated", { name: `coated form of ${name}`, sort: "form" });
  making.add("pieces", "cage", { name: `bars of ${name}`, sort: "other" });
  making.add("pieces", "faces", {
    name: isHatch ? `form of ${name}` : `three faces of the form of ${name}`,
    sort: "form",
    closes: [`${steel}.sides`, `${own("head")}.ladder`],
    heldBy: [[own("braces")]],
    off: [{ place: ground }, { place: ground, need: "unit" }],
    size: face,
    weight: { is: weight, from: "own guess" },
  });
  making.add("pieces", "braces", { name: `braces of ${name}`, sort: "brace", closes: [own("around")], off: [{ place: ground }] });
  making.add("pieces", "last", {
    name: isHatch ? `hatch over the clean-out of ${name}` : `last face of the form of ${name}`,
    sort: "form",
    closes: [isHatch ? `${steel}.hatch` : `${steel}.last-side`],
    heldBy: [[own("faces")]],
    off: [{ place: ground }],
  });
  if (tall) {
    making.add("pieces", "scaffold", {
      name: `scaffold at ${name}`,
      sort: "scaffold",
      closes: [own("around")],
      makes: [`${steel}.top`],
      off: [{ place: ground }],
    });
  }
  making.add("pieces", "plumbed", { name: `${name}, plumb and wedged`, sort: "other" });
  making.add("pieces", "concrete", {
    name: `concrete of ${name}`,
    sort: "concrete",
    fills: [steel],
    heldBy: [[own("faces"), own("last"), ...once(on.map(({ piece }) => piece))]],
    holdsItself: { is: `500 psi of ${own("place")}`, from: "own guess" },
  });
}
