import type { Answers } from "../kit";
import type { Making } from "../making";
import { addWetCure } from "./after";
import { addBarsDelivery } from "./looks";
import { type Bars, massOfBars_kg } from "./mix";
import { addStuff } from "./stuff";

export const sizesOf = (answers: Answers) => {
  const [thick_mm, base_mm, above_mm] = [answers.length_mm("thick"), answers.length_mm("base"), answers.length_mm("above")];
  return {
    long_mm: answers.length_mm("long"),
    wide_mm: answers.length_mm("wide"),
    thick_mm,
    base_mm,
    above_mm,
    /** At least the topsoil comes off. */
    dug_mm: Math.max(100, thick_mm + base_mm - above_mm),
    at: { x: answers.length_mm("right"), y: answers.length_mm("back") },
  };
};

/** Bars both ways at 18 in, in the middle: a guess, until whoever designs it says. */
export function barsOf(long_mm: number, wide_mm: number, thick_mm: number): readonly Bars[] {
  const way = (name: string, long: number, across: number): Bars => ({
    name,
    size: 4,
    number: Math.max(2, Math.ceil((across - 150) / 457.2) + 1),
    long_mm: Math.max(300, long - 150),
    spacing_mm: 457.2,
    cover_mm: Math.max(20, Math.min(50, thick_mm / 2 - 10)),
    exposure: "weather or ground",
    sort: "mat",
    supported_mm: 400,
  });
  return [way("along", long_mm, wide_mm), way("across", wide_mm, long_mm)];
}

export function addPlaces(making: Making): void {
  const { given } = making;
  const { name } = given;
  const ground = given.common("ground");
  const way = (id: string, called: string, passes: readonly string[]) => ({ id, name: called, passes, through: ground });
  making.add("places", "bed", { name: `bed of ${name}`, level: -1, ways: [way("open", "on the bed", ["person", "unit", "machine"])] });
  making.add("places", "steel", {
    name: `steel of ${name}`,
    level: 0,
    ways: [way("over", "on the stone", ["person", "arm", "hose", "sight", "unit"])],
  });
  making.add("places", "rim", {
    name: `edges of ${name}`,
    level: 0,
    layerOf: making.id("steel"),
    ways: [way("outside", "from outside", ["person"])],
  });
  making.add("places", "top", { name: `top of ${name}`, level: 1, ways: [way("over", "over its edge", ["person", "unit"])] });
}

export function addPieces(making: Making): void {
  const { given } = making;
  const { name } = given;
  const own = (word: string) => making.id(word);
  making.add("pieces", "lines", { name: `lines of ${name}`, sort: "other" });
  making.add("pieces", "hole", { name: `ground dug off for ${name}`, sort: "hole", makes: [`${own("bed")}.open`] });
  making.add("pieces", "stone", { name: `stone under ${name}`, sort: "earth", makes: [`${own("steel")}.over`] });
  if (given.answers.yes("barrier")) making.add("pieces", "barrier", { name: `sheet under ${name}`, sort: "cover", closes: [own("bed")] });
  making.add("pieces", "edges", { name: `edge boards of ${name}`, sort: "form", off: [{ place: own("rim") }] });
  making.add("pieces", "cage", { name: `bars of ${name}`, sort: "other" });
  making.add("pieces", "concrete", {
    name: `concrete of ${name}`,
    sort: "concrete",
    fills: [own("steel"), own("bed")],
    makes: [`${own("top")}.over`],
  });
  making.add("pieces", "green", {
    name: `${name} too green to walk on`,
    sort: "other",
    goesAfter: { is: `500 psi of ${own("place")}`, from: "own guess" },
    closes: [`${own("top")}.over`],
  });
}

/** Gives the pieces that the pour puts up beside the concrete. */
export function addSteps(making: Making): readonly string[] {
  const { given } = making;
  const { answers, name } = given;
  const { long_mm, wide_mm, thick_mm, base_mm, dug_mm } = sizesOf(answers);
  const own = (word: string) => making.id(word);
  const [ground, bed, steel, rim] = [given.common("ground"), own("bed"), own("steel"), own("rim")];
  const m2 = (long_mm * wide_mm) / 1e6;
  const round_m = (2 * (long_mm + wide_mm)) / 1000;
  const machine = answers.choice("digging") === "machine";
  const stuff = addStuff(making, round_m * 0.15);
  const barsCome = addBarsDelivery(making);
  const stoneComes = making.add("deliveries", "stone-comes", {
    name: `Stone for ${name}`,
    calendar: given.common("lumber-yard"),
    lead: { is: `3 days of ${given.common("lumber-yard")}`, from: "own guess" },
    ordered: false,
  });
  const pair = { hands: 2 };
  making.add("steps", "set-out", {
    name: `Lines and levels for ${name}`,
    place: bed,
    work: given.hours("set-out", 1, 2),
    ...pair,
    reaches: [{ place: ground }],
    puts: [own("lines")],
  });
  making.add("steps", "dig", {
    name: `Dig off the ground for ${name}`,
    place: bed,
    work: given.hours(machine ? "dig-machine" : "dig", (m2 * dug_mm) / 1000, 2),
    ...pair,
    reaches: [{ place: given.common("dig"), need: machine ? "machine" : "person" }],
    puts: [own("hole")],
    leansOn: [{ piece: own("lines") }],
    cautions: ["No spade before the utility marks are on the ground."],
    notes: "Topsoil and roots off; what is loose comes out.",
  });
  making.add("steps", "stone", {
    name: `Stone under ${name}, compacted`,
    place: bed,
    work: given.hours("gravel", (m2 * base_mm) / 1000, 2),
    ...pair,
    reaches: [{ place: bed }],
    puts: [own("stone")],
    needs: [stoneComes],
    notes: "In layers of 4 in (100 mm).",
  });
  if (answers.number("sleeves") > 0) {
    making.add("steps", "sleeves", {
      name: `Pipes and sleeves under ${name}`,
      sort: "embed",
      place: bed,
      work: given.hours("embed", answers.number("sleeves")),
      reaches: [{ place: bed }],
      leansOn: [{ piece: own("stone") }],
    });
  }
  if (answers.yes("barrier")) {
    making.add("steps", "barrier", {
      name: `Sheet against damp under ${name}`,
      place: bed,
      work: given.hours("membrane", m2),
      reaches: [{ place: bed }],
      puts: [own("barrier")],
      leansOn: [{ piece: own("stone") }],
      notes: "Laps of 6 in (150 mm), taped, and tight around every pipe.",
    });
  }
  making.add("steps", "edge", {
    name: `Edge boards of ${name}`,
    place: rim,
    work: given.hours("boards", round_m, 2),
    ...pair,
    reaches: [{ place: rim }],
    puts: [own("edges")],
    leansOn: [{ piece: own("lines") }, { piece: own("stone") }, ...stuff.leansOn],
    needs: stuff.needs,
  });
  making.add("steps", "tie", {
    name: `Tie bars of ${name}`,
    place: steel,
    work: given.hours("tie-bars", massOfBars_kg(barsOf(long_mm, wide_mm, thick_mm)) / 100, 2),
    ...pair,
    reaches: [{ place: steel }],
    puts: [own("cage")],
    leansOn: [{ piece: own("edges") }, ...(answers.yes("barrier") ? [{ piece: own("barrier") }] : [])],
    needs: [barsCome],
  });
  if (answers.number("bolts") > 0) {
    making.add("steps", "bolts", {
      name: `Anchor bolts in ${name}`,
      sort: "embed",
      place: steel,
      work: given.hours("embed", answers.number("bolts")),
      reaches: [{ place: steel, need: "arm" }],
      leansOn: [{ piece: own("edges") }],
    });
  }
  making.add("steps", "strip", {
    name: `Strip edge boards of ${name}`,
    place: rim,
    work: given.hours("strip-boards", round_m),
    reaches: [{ place: rim }],
    takes: [own("edges")],
  });
  return addWetCure(making, { way: `${own("top")}.over`, from: rim });
}
