import type { KeyedOffer } from "../kit";
import type { Making } from "../making";
import { addLook, addWetCure } from "./after";
import { type Bars, massOfBars_kg } from "./mix";
import { type addStuff, addTrial, coatLasts } from "./stuff";

export interface StairSizes {
  readonly steps: number;
  readonly riser_mm: number;
  readonly tread_mm: number;
  readonly wide_mm: number;
  readonly thick_mm: number;
  /** Its soffit is formed; else it lies on the ground. */
  readonly formed: boolean;
  readonly slope_mm: number;
  readonly high_mm: number;
  readonly long_mm: number;
}

export interface Stair {
  readonly making: Making;
  readonly sizes: StairSizes;
  readonly on: readonly KeyedOffer[];
  readonly stuff: ReturnType<typeof addStuff>;
  readonly barsCome: string;
  readonly shore_mm: number;
}

/** Along the waist at 8 in, across at 12 in: a guess, until whoever designs it says. */
export function barsOf({ slope_mm, wide_mm }: StairSizes): readonly Bars[] {
  const shared = { size: 4, cover_mm: 38.1, exposure: "weather or ground", supported_mm: 350 } as const;
  return [
    {
      ...shared,
      name: "along the waist",
      number: Math.max(2, Math.ceil((wide_mm - 80) / 203.2) + 1),
      long_mm: slope_mm + 300,
      spacing_mm: 203.2,
    },
    {
      ...shared,
      name: "across",
      number: Math.max(2, Math.ceil(slope_mm / 304.8) + 1),
      long_mm: Math.max(300, wide_mm - 80),
      spacing_mm: 304.8,
    },
  ];
}

export function addPlaces({ making, sizes }: Stair): void {
  const { given } = making;
  const ground = given.common("ground");
  const way = (id: string, name: string, passes: readonly string[]) => ({ id, name, passes, through: ground });
  making.add("places", "below", { name: `under ${given.name}`, level: 0, ways: [way("side", "from the side", ["person", "unit"])] });
  making.add("places", "steel", {
    name: `steel of ${given.name}`,
    below: sizes.formed ? [making.id("below")] : [],
    level: 1,
    ways: [way("over", "from its slope", ["person", "arm", "hose", "sight"])],
  });
  making.add("places", "top", { name: `steps of ${given.name}`, level: 2, ways: [way("up", "from below", ["person", "unit"])] });
}

export function addPieces({ making, sizes, on, shore_mm }: Stair): void {
  const { given } = making;
  const { name } = given;
  const own = (word: string) => making.id(word);
  const [ground, below] = [given.common("ground"), own("below")];
  const inUnder = (piece: string) => [{ place: below }, { place: below, need: "unit", piece }];
  if (sizes.formed) {
    making.add("pieces", "shores", {
      name: `shores of ${name}`,
      sort: "shore",
      off: inUnder(own("shores")),
      size: { long: making.mm(Math.max(300, shore_mm)), wide: making.mm(89), thick: making.mm(89) },
    });
    making.add("pieces", "soffit", {
      name: `soffit form of ${name}`,
      sort: "form",
      heldBy: [[own("shores")]],
      makes: [`${own("steel")}.over`],
      off: inUnder(own("soffit")),
      size: { long: making.mm(Math.min(2440, sizes.slope_mm)), wide: making.mm(Math.min(1220, sizes.wide_mm)), thick: making.mm(19) },
    });
  } else {
    making.add("pieces", "hole", { name: `ground shaped for ${name}`, sort: "hole", makes: [`${below}.side`] });
    making.add("pieces", "bed", { name: `stone under ${name}`, sort: "earth", makes: [`${own("steel")}.over`] });
  }
  making.add("pieces", "boards", { name: `side and riser boards of ${name}`, sort: "form", off: [{ place: ground }] });
  making.add("pieces", "cage", { name: `bars of ${name}`, sort: "other" });
  making.add("pieces", "checked", { name: `shores of ${name}, looked over`, sort: "other" });
  making.add("pieces", "concrete", {
    name: `concrete of ${name}`,
    sort: "concrete",
    fills: [own("steel"), ...(sizes.formed ? [] : [below])],
    makes: [`${own("top")}.up`],
    ...(sizes.formed
      ? { heldBy: [[own("soffit"), ...on.map(({ piece }) => piece)]], holdsItself: { is: `75 % of ${own("place")}`, from: "own guess" } }
      : {}),
  });
  making.add("pieces", "green", {
    name: `${name} too green to walk on`,
    sort: "other",
    goesAfter: { is: `500 psi of ${own("place")}`, from: "own guess" },
    closes: [`${own("top")}.up`],
  });
  if (given.answers.yes("guard")) making.add("pieces", "guard", { name: `guard of ${name}`, sort: "other" });
}

/** What carries the fresh stair: shores and a soffit, or ground shaped and stone. */
function addUnder({ making, sizes, on, stuff }: Stair): void {
  const { given } = making;
  const { name } = given;
  const own = (word: string) => making.id(word);
  const below = own("below");
  const m2 = (sizes.slope_mm * sizes.wide_mm) / 1e6;
  if (!sizes.formed) {
    making.add("steps", "dig", {
      name: `Shape the ground for ${name}`,
      place: below,
      work: given.hours("dig", m2 * 0.25, 2),
      hands: 2,
      reaches: [{ place: given.common("dig") }],
      puts: [own("hole")],
      cautions: ["No spade before the utility marks are on the ground."],
    });
    making.add("steps", "bed", {
      name: `Stone under ${name}`,
      place: below,
      work: given.hours("gravel", m2 * 0.1, 2),
      hands: 2,
      reaches: [{ place: below }],
      puts: [own("bed")],
    });
    return;
  }
  const carried = on.map(({ piece }) => ({ piece, once: { is: "24 h", from: "own guess" } }));
  making.add("steps", "shore", {
    name: `Sills and shores of ${name}`,
    place: below,
    work: given.hours("shore", m2, 2),
    hands: 2,
    reaches: [{ place: below }, { place: below, need: "unit", piece: own("shores") }],
    puts: [own("shores")],
    leansOn: [...stuff.leansOn, ...carried],
    needs: stuff.needs,
    cautions: [
      "They stand plumb under a sloping form and want to slide: cleats, wedges, braces both ways. Have them checked by someone qualified.",
    ],
  });
  making.add("steps", "soffit", {
    name: `Soffit form of ${name}`,
    place: below,
    work: given.hours("deck", m2, 2),
    hands: 2,
    reaches: [{ place: below }, { place: below, need: "unit", piece: own("soffit") }],
    puts: [own("soffit")],
    leansOn: [{ piece: own("shores") }],
  });
  addLook(making, { what: "shores and wedges", called: "Shores", place: below, holder: "shores" });
  making.add("steps", "strip", {
    name: `Lower the soffit form of ${name}`,
    place: below,
    work: given.hours("strip-deck", m2, 2),
    hands: 2,
    reaches: [{ place: below }],
    takes: [own("soffit"), own("shores")],
    cautions: ["Not before the strength is shown, or the days of the table are over: ask whoever designed it."],
  });
}

/** Gives the pieces that the pour puts up beside the concrete. */
export function addSteps(stair: Stair): readonly string[] {
  const { making, sizes, stuff, barsCome } = stair;
  const { given } = making;
  const { answers, name } = given;
  const own = (word: string) => making.id(word);
  const [ground, store, steel] = [given.common("ground"), given.common("store"), own("steel")];
  addUnder(stair);
  const boards_m = (2 * sizes.slope_mm + sizes.steps * sizes.wide_mm) / 1000;
  making.add("pieces", "coated", { name: `coated boards for ${name}`, sort: "form" });
  making.add("steps", "coat", {
    name: `Coat boards of ${name}`,
    place: store,
    work: given.hours("coat", boards_m * 0.2),
    reaches: [{ place: store }],
    puts: [own("coated")],
    needs: stuff.needs,
    leansOn: stuff.leansOn,
  });
  making.add("waits", "coat-lasts", {
    name: `Coat of ${name} is good for`,
    from: own("coat"),
    to: own("place"),
    most: coatLasts,
    why: "A release agent is good for some weeks out of the rain.",
  });
  making.add("steps", "tie", {
    name: `Tie bars of ${name}`,
    place: steel,
    work: given.hours("tie-bars", massOfBars_kg(barsOf(sizes)) / 100, 2),
    hands: 2,
    reaches: [{ place: steel }],
    puts: [own("cage")],
    leansOn: [{ piece: own(sizes.formed ? "soffit" : "bed") }],
    needs: [barsCome],
  });
  making.add("steps", "boards", {
    name: `Side and riser boards of ${name}`,
    place: steel,
    work: given.hours("boards", boards_m, 2),
    hands: 2,
    reaches: [{ place: steel, need: "arm" }, { place: ground }],
    puts: [own("boards")],
    leansOn: [{ piece: own("coated") }, { piece: own("cage") }],
    notes: "Risers bevelled at their foot so that the trowel gets under; braced from one to the next.",
  });
  addTrial(making, [own("coat")]);
  making.add("steps", "strip-boards", {
    name: `Strip boards of ${name}`,
    place: ground,
    work: given.hours("strip-boards", boards_m),
    reaches: [{ place: ground }],
    takes: [own("boards")],
  });
  const covers = addWetCure(making, { way: `${own("top")}.up`, from: ground });
  if (!answers.yes("guard")) return covers;
  making.add("steps", "guard", {
    name: `Guard of ${name}`,
    place: own("top"),
    work: given.hours("guard", sizes.slope_mm / 1000, 2),
    hands: 2,
    reaches: [{ place: own("top") }],
    puts: [own("guard")],
    leansOn: [{ piece: own("concrete") }],
    cautions: [
      "How strong and how high a guard must be is law: usually 36 to 42 in (0.9 to 1.1 m), no gap a ball of 4 in (100 mm) goes through. Ask your building office.",
    ],
  });
  return covers;
}
