import type { KeyedOffer } from "../kit";
import type { Making } from "../making";
import { armDepth, topPasses } from "./column-members";
import type { Bars } from "./mix";
import type { addStuff } from "./stuff";
import { addHead } from "./top";
import type { WallSizes } from "./wall-asks";

export interface Wall {
  readonly making: Making;
  readonly sizes: WallSizes;
  readonly on: readonly KeyedOffer[];
  /** A hatch at the foot of the last face, instead of leaving it off. */
  readonly isHatch: boolean;
  readonly tall: boolean;
  readonly recess: boolean;
  /** Where one works behind it: the ground, or a space that earth fills later. */
  readonly behind: string;
  /** What the first face closes beside the bars, and what the bars close. */
  readonly firstCloses: readonly string[];
  readonly cageCloses: readonly string[];
  readonly stuff: ReturnType<typeof addStuff>;
  readonly barsCome: string;
}

const practice = "own guess";

/** Both ways at 12 in, one layer, two from 10 in (250 mm) up: a guess, until whoever designs it says. */
export function barsOf({ long_mm, high_mm, thick_mm }: WallSizes): readonly Bars[] {
  const layers = thick_mm >= 250 ? 2 : 1;
  const count = (length_mm: number) => layers * Math.max(2, Math.ceil((length_mm - 100) / 304.8) + 1);
  const shared = { size: 4, spacing_mm: 304.8, cover_mm: 50.8, exposure: "weather or ground" } as const;
  return [
    { ...shared, name: "upright", number: count(long_mm), long_mm: Math.max(300, high_mm + 300) },
    { ...shared, name: "along", number: count(high_mm), long_mm: Math.max(300, long_mm - 100) },
  ];
}

export function addPlaces({ making, sizes, on, isHatch, behind }: Wall): void {
  const { given } = making;
  const ground = given.common("ground");
  const level = Math.round(((on[0]?.at_mm.z ?? 0) + sizes.high_mm / 2) / 100);
  const side = (id: string, name: string, through: string) => ({ id, name, passes: ["person", "arm", "sight"], through });
  making.add("places", "steel", {
    name: `steel of ${given.name}`,
    level,
    ways: [
      side("front", "from the front", ground),
      ...(sizes.oneSided ? [] : [side("back", "from behind", behind)]),
      ...(isHatch
        ? [
            {
              id: "hatch",
              name: "clean-outs at the foot",
              passes: ["hand", "arm", "sight"],
              depth: making.laid(450, "down"),
              through: ground,
            },
          ]
        : []),
      { id: "top", name: "from the top", passes: topPasses(isHatch, sizes.high_mm), depth: armDepth(making), through: ground },
    ],
  });
  addHead(making, { around: "ground before" }, sizes.high_mm, level, ground);
}

/** The first face stands before the bars (where there are two), the last one closes; one-sided only the last. */
export function addPieces({ making, sizes, on, isHatch, tall, recess, behind, firstCloses, cageCloses }: Wall): void {
  const { given } = making;
  const { name } = given;
  const own = (word: string) => making.id(word);
  const ground = given.common("ground");
  const steel = own("steel");
  const unit = { long: making.mm(Math.min(2440, sizes.long_mm)), wide: making.mm(Math.min(1220, sizes.high_mm)), thick: making.mm(110) };
  const weight = { is: making.either("95 lb", "43 kg"), from: practice };
  making.add("pieces", "panels", { name: `panels for ${name}`, sort: "form" });
  making.add("pieces", "coated", { name: `coated panels for ${name}`, sort: "form" });
  making.add("pieces", "cage", { name: `bars of ${name}`, sort: "other", closes: cageCloses });
  if (!sizes.oneSided) {
    making.add("pieces", "first", {
      name: `first face of the form of ${name}`,
      sort: "form",
      closes: [`${steel}.back`, ...firstCloses],
      heldBy: [[own("braces")]],
      off: [{ place: behind }, { place: behind, need: "unit", piece: own("first") }],
      size: unit,
      weight,
    });
  }
  making.add("pieces", "braces", { name: `braces of ${name}`, sort: "brace", closes: [own("around")], off: [{ place: ground }] });
  making.add("pieces", "last", {
    name: sizes.oneSided ? `form of ${name}` : `last face of the form of ${name}`,
    sort: "form",
    closes: [`${steel}.front`, `${own("head")}.ladder`],
    heldBy: [[sizes.oneSided ? own("braces") : own("first")]],
    off: [{ place: ground }, { place: ground, need: "unit", piece: own("last") }],
    size: unit,
    weight,
  });
  if (isHatch)
    making.add("pieces", "hatch", {
      name: `hatches of ${name}`,
      sort: "form",
      closes: [`${steel}.hatch`],
      heldBy: [[own("last")]],
      off: [{ place: ground }],
    });
  if (recess) {
    const foam = given.answers.choice("draft") === "foam";
    making.add("pieces", "block", {
      name: `${foam ? "foam" : "box"} in the recess of ${name}`,
      sort: "form",
      off: [{ place: ground, need: "person" }],
    });
  }
  if (tall)
    making.add("pieces", "scaffold", {
      name: `scaffold at ${name}`,
      sort: "scaffold",
      closes: [own("around")],
      makes: [`${steel}.top`],
      off: [{ place: ground }],
    });
  making.add("pieces", "plumbed", { name: `${name}, plumb and tight`, sort: "other" });
  making.add("pieces", "concrete", {
    name: `concrete of ${name}`,
    sort: "concrete",
    fills: [steel],
    heldBy: [[...(sizes.oneSided ? [] : [own("first")]), own("last"), ...on.map(({ piece }) => piece)]],
    holdsItself: { is: `500 psi of ${own("place")}`, from: practice },
  });
}
