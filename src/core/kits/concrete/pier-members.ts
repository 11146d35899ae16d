import type { Making } from "../making";
import { type Bars, massOfBars_kg } from "./mix";
import type { addStuff } from "./stuff";

export interface PierSizes {
  readonly number: number;
  readonly round: boolean;
  readonly across_mm: number;
  readonly deep_mm: number;
  /** 0: no collar, its head is level with the ground. */
  readonly above_mm: number;
  /** 0: no bell. */
  readonly bell_mm: number;
}

export interface Pier {
  readonly making: Making;
  readonly sizes: PierSizes;
  readonly stuff: Pick<ReturnType<typeof addStuff>, "needs" | "leansOn">;
  readonly barsCome: string;
}

const cover_mm = 76.2;

/** Four uprights and ties at 12 in: a guess, until whoever designs it says. */
export function barsOf({ across_mm, deep_mm, above_mm }: PierSizes, starters: boolean): readonly Bars[] {
  const high_mm = deep_mm + above_mm;
  const inner_mm = Math.max(60, across_mm - 2 * cover_mm);
  return [
    {
      name: "upright",
      size: 4,
      number: 4,
      long_mm: Math.max(200, high_mm - cover_mm + (starters ? 400 : 0)),
      cover_mm,
      exposure: "against ground",
    },
    {
      name: "ties",
      size: 3,
      number: Math.max(2, Math.ceil(high_mm / 304.8)),
      long_mm: 4 * inner_mm + 200,
      spacing_mm: 200,
      cover_mm,
      exposure: "against ground",
      sort: "tie",
    },
  ];
}

export function addPlaces({ making, sizes }: Pier): void {
  const { given } = making;
  const ground = given.common("ground");
  making.add("places", "steel", {
    name: `hole of ${given.name}`,
    level: -Math.round(sizes.deep_mm / 200),
    ways: [
      {
        id: "mouth",
        name: "from its mouth",
        passes: ["hand", "arm", "hose", "sight", "unit"],
        depth: making.mm(600),
        opening: { wide: making.mm(sizes.across_mm), high: making.mm(sizes.across_mm) },
        through: ground,
      },
    ],
  });
  making.add("places", "head", {
    name: `head of ${given.name}`,
    level: 0,
    layerOf: making.id("steel"),
    ways: [{ id: "ground", name: "from the ground", passes: ["person", "arm", "hose", "sight"], through: ground }],
  });
}

export function addPieces({ making, sizes }: Pier): void {
  const { given } = making;
  const { name } = given;
  const own = (word: string) => making.id(word);
  const ground = given.common("ground");
  const cage_mm = Math.max(60, sizes.across_mm - 2 * cover_mm);
  const mass_kg = massOfBars_kg(barsOf(sizes, given.answers.yes("starters")));
  making.add("pieces", "lines", { name: `lines of ${name}`, sort: "other" });
  making.add("pieces", "hole", { name: `hole for ${name}`, sort: "hole", makes: [`${own("steel")}.mouth`] });
  making.add("pieces", "tied", { name: `tied cage for ${name}`, sort: "other" });
  making.add("pieces", "cleaned", { name: `hole of ${name}, cleaned out`, sort: "other" });
  making.add("pieces", "cage", {
    name: `cage of ${name}`,
    sort: "other",
    size: { long: making.mm(sizes.deep_mm + sizes.above_mm + 300), wide: making.mm(cage_mm), thick: making.mm(cage_mm) },
    weight: { is: making.either(`${Math.ceil(mass_kg / 0.4536)} lb`, `${Math.ceil(mass_kg)} kg`), from: "own guess" },
  });
  if (sizes.above_mm > 0) {
    making.add("pieces", "collar", { name: `collar of ${name}`, sort: "form", closes: [own("head")], off: [{ place: ground }] });
  }
  making.add("pieces", "concrete", { name: `concrete of ${name}`, sort: "concrete", fills: [own("steel")] });
}

export function addSteps({ making, sizes, stuff, barsCome }: Pier): void {
  const { given } = making;
  const { answers, name } = given;
  const own = (word: string) => making.id(word);
  const [ground, dig, steel, store] = [given.common("ground"), given.common("dig"), own("steel"), given.common("store")];
  const auger = answers.choice("digging") === "auger";
  const hole_m3 = (sizes.across_mm ** 2 * sizes.deep_mm + sizes.bell_mm ** 2 * 300) / 1e9;
  const collar_m2 = (4 * sizes.across_mm * sizes.above_mm) / 1e6;
  making.add("steps", "set-out", {
    name: `Lines and levels for ${name}`,
    place: steel,
    work: given.hours("set-out", 0.5, 2),
    hands: 2,
    reaches: [{ place: ground }],
    puts: [own("lines")],
  });
  making.add("steps", "dig", {
    name: `${auger ? "Bore" : "Dig"} ${name}${sizes.bell_mm > 0 ? " and bell it out" : ""}`,
    place: steel,
    work: given.hours(auger ? "dig-machine" : "auger", hole_m3, 2),
    hands: 2,
    reaches: [{ place: dig, need: auger ? "machine" : "person" }],
    puts: [own("hole")],
    leansOn: [{ piece: own("lines") }],
    cautions: [
      "No spade before the utility marks are on the ground.",
      "Nobody climbs into a hole; it is covered with something nailed down whenever nobody stands beside it.",
      ...(sizes.bell_mm > 0 ? ["A bell in loose or wet ground falls in: ask somebody who knows the ground."] : []),
    ],
  });
  making.add("steps", "cage", {
    name: `Tie the cage of ${name} on the bench`,
    place: store,
    work: given.hours("tie-bars", massOfBars_kg(barsOf(sizes, answers.yes("starters"))) / 100),
    reaches: [{ place: store }],
    puts: [own("tied")],
    needs: [barsCome],
  });
  making.add("steps", "clean", {
    name: `Clean out the hole of ${name}`,
    sort: "check",
    place: steel,
    work: given.hours("check", 0.5),
    reaches: [{ place: steel, need: "sight" }],
    puts: [own("cleaned")],
    leansOn: [{ piece: own("hole") }],
    notes: "Loose earth out, depth measured with a tape, no water.",
  });
  making.add("steps", "lower", {
    name: `Lower the cage of ${name}`,
    place: steel,
    work: given.hours("check", 0.5, 2),
    hands: 2,
    reaches: [{ place: steel, need: "unit", piece: own("cage") }],
    puts: [own("cage")],
    leansOn: [{ piece: own("tied") }, { piece: own("cleaned") }],
    notes: "On a block of concrete, with spacers all round.",
    cautions: ["Cap every bar that stands up."],
  });
  if (sizes.above_mm === 0) return;
  making.add("steps", "collar", {
    name: `Collar of ${name}`,
    place: ground,
    work: given.hours("panel", collar_m2),
    reaches: [{ place: ground }],
    puts: [own("collar")],
    leansOn: [{ piece: own("cage") }, ...stuff.leansOn],
    needs: stuff.needs,
    notes: "Level and held to stakes so that it does not swim.",
  });
  making.add("steps", "strip", {
    name: `Strip the collar of ${name}`,
    place: ground,
    work: given.hours("strip-panel", collar_m2),
    reaches: [{ place: ground }],
    takes: [own("collar")],
  });
  making.add("steps", "roughen", {
    name: `Clean the head of ${name}`,
    place: own("head"),
    work: given.hours("roughen", (sizes.across_mm / 1000) ** 2),
    reaches: [{ place: own("head"), need: "arm" }],
    leansOn: [{ piece: own("concrete"), once: { is: "24 h", from: "own guess" } }],
  });
}
