import type { KeyedOffer } from "../kit";
import { type Making, once } from "../making";
import { type Bars, massOfBars_kg } from "./mix";
import { type addStuff, coatLasts } from "./stuff";
import { addHead, holesOf } from "./top";

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

/** Up to the form with its last side open: panels, coat, bars, three faces, seal. */
export function addOpenSteps(context: Context, stuff: ReturnType<typeof addStuff>, barsCome: string): void {
  const { making, sizes, on, isHatch, tall, weight } = context;
  const { given } = making;
  const { name } = given;
  const [ground, store] = [given.common("ground"), given.common("store")];
  const steel = making.id("steel");
  const area_m2 = (2 * (sizes.long_mm + sizes.wide_mm) * sizes.high_mm) / 1e6;
  const stood = once(on.map(({ piece }) => piece)).map((piece) => ({ piece, once: { is: "24 h", from: "own guess" } }));
  const holes = holesOf(on);
  const onBench = given.answers.choice("made") === "bench";
  making.add("steps", "panels", {
    name: `Make form panels of ${name}`,
    place: store,
    work: given.hours("panel", area_m2),
    reaches: [{ place: store }],
    puts: [making.id("panels")],
    leansOn: stuff.leansOn,
    needs: stuff.needs,
  });
  making.add("steps", "coat", {
    name: `Coat form faces of ${name}`,
    place: store,
    work: given.hours("coat", area_m2),
    reaches: [{ place: store }],
    puts: [making.id("coated")],
    leansOn: [{ piece: making.id("panels") }],
    notes: "Thin and wiped; never on the bars.",
  });
  making.add("waits", "coat-lasts", {
    name: `Coat of ${name} is good for`,
    from: making.id("coat"),
    to: making.id("place"),
    most: coatLasts,
    why: "A release agent is good for some weeks out of the rain.",
  });
  making.add("steps", "tie", {
    name: `Tie bars of ${name}`,
    place: steel,
    work: given.hours("tie-bars", massOfBars_kg(barsOf(sizes, given.answers.yes("starters"))) / 100),
    reaches: [{ place: steel }, ...holes],
    puts: [making.id("cage")],
    leansOn: stood,
    needs: [barsCome],
    cautions: ["Cap every bar that stands up. A standing cage is tied off until the form holds it."],
  });
  if (tall) {
    making.add("steps", "scaffold-up", {
      name: `Scaffold at ${name}`,
      place: ground,
      work: given.hours("scaffold", 4 * (sizes.high_mm / 1000), 2),
      hands: 2,
      reaches: [{ place: ground }],
      puts: [making.id("scaffold")],
      leansOn: stood,
      cautions: ["Guards and a ladder from 6 ft (1.8 m) up, on firm level ground. Ask your local rules."],
    });
  }
  making.add("steps", "set-faces", {
    name: isHatch ? `Stand the form of ${name}` : `Stand three faces of ${name}`,
    place: steel,
    work: given.hours("set-panel", area_m2 * (isHatch ? 1 : 0.75), 2),
    hands: 2,
    reaches: [{ place: ground }, ...holes, ...(onBench ? [{ place: ground, need: "unit", piece: making.id("faces") }] : [])],
    puts: [making.id("faces"), making.id("braces")],
    leansOn: [{ piece: making.id("coated") }, ...stood],
    cautions: onBench ? [`The faces joined on the bench weigh about ${weight}: two people, and a strap until it is braced.`] : [],
  });
  making.add("steps", "seal", {
    name: `Seal corners and foot of ${name}`,
    place: steel,
    work: given.hours("seal", (4 * sizes.high_mm + 2 * (sizes.long_mm + sizes.wide_mm)) / 1000),
    reaches: [{ place: steel, need: "arm", depth: isHatch ? making.laid(400, "down") : making.laid(sizes.high_mm - 50, "up") }],
    leansOn: [{ piece: making.id("faces") }],
    notes: isHatch ? "The foot by the clean-out; the corners as the faces are joined." : "Down to the foot by the side left open.",
  });
}

/** Last side, plumb, strip, scaffold down: each column by itself. */
export function addClosedSteps({ making, sizes, isHatch, tall, on }: Context): void {
  const { given } = making;
  const { name } = given;
  const ground = given.common("ground");
  const area_m2 = (2 * (sizes.long_mm + sizes.wide_mm) * sizes.high_mm) / 1e6;
  making.add("steps", "close", {
    name: isHatch ? `Flush and close the clean-out of ${name}` : `Set last face and bands of ${name}`,
    place: making.id("steel"),
    work: isHatch ? given.hours("check", 0.5) : given.hours("close-panel", area_m2 * 0.5, 2),
    hands: isHatch ? 1 : 2,
    reaches: [{ place: ground }, ...holesOf(on)],
    puts: [making.id("last")],
    leansOn: [{ piece: making.id("cage") }],
  });
  making.add("steps", "plumb", {
    name: `Plumb ${name}, wedges and bolts`,
    sort: "check",
    place: ground,
    work: given.hours("check", 0.5, 1),
    reaches: [{ place: ground }],
    puts: [making.id("plumbed")],
    leansOn: [{ piece: making.id("last") }],
  });
  making.add("steps", "strip", {
    name: `Strip ${name}`,
    place: ground,
    work: given.hours("strip-panel", area_m2, 2),
    hands: 2,
    reaches: [{ place: ground }, ...holesOf(on)],
    takes: [making.id("last"), making.id("faces"), making.id("braces")],
    notes: "Plastic wedges, no bar against the edges. Wrapped in plastic until the seventh day.",
  });
  making.add("waits", "in-form", {
    name: `${name} stays in the form`,
    from: making.id("place"),
    to: making.id("strip"),
    least: { is: "6 d", from: "own guess" },
    why: "The form keeps the faces wet through the week.",
  });
  making.add("steps", "roughen", {
    name: `Clean and roughen the head of ${name}`,
    place: making.id("head"),
    work: given.hours("roughen", (sizes.long_mm * sizes.wide_mm) / 1e6),
    reaches: [{ place: making.id("head"), need: "arm" }],
    leansOn: [{ piece: making.id("concrete"), once: { is: "24 h", from: "own guess" } }],
    cautions: ["Concrete dust is silica: wet work and a proper mask."],
  });
  if (!tall) return;
  making.add("steps", "scaffold-down", {
    name: `Scaffold at ${name} down`,
    place: ground,
    work: given.hours("scaffold-down", 4 * (sizes.high_mm / 1000), 2),
    hands: 2,
    reaches: [{ place: ground }],
    takes: [making.id("scaffold")],
  });
}
