import type { Answers } from "../kit";
import type { Making } from "../making";
import type { Bars } from "./mix";

export const isBoarded = (answers: Answers): boolean => answers.choice("sides") === "boards";

export interface Sizes {
  readonly number: number;
  readonly long_mm: number;
  readonly wide_mm: number;
  readonly thick_mm: number;
  readonly deep_mm: number;
  readonly boarded: boolean;
}

export const sizesOf = (answers: Answers): Sizes => ({
  number: answers.number("number"),
  long_mm: answers.length_mm("long"),
  wide_mm: answers.length_mm("wide"),
  thick_mm: Math.min(answers.length_mm("thick"), answers.length_mm("deep")),
  deep_mm: answers.length_mm("deep"),
  boarded: isBoarded(answers),
});

/** Room to work beside the boards (common practice, no source). */
export const besides_mm = 450;
const cover_mm = 76.2;

/** A light mat both ways at 12 in; a strip has two or more bars along and short ones across. A guess, until whoever designs it says. */
export function barsOf({ long_mm, wide_mm }: Sizes): readonly Bars[] {
  const way = (name: string, long: number, across: number): Bars => ({
    name,
    size: 4,
    number: Math.max(2, Math.ceil((across - 2 * cover_mm) / 304.8) + 1),
    long_mm: Math.max(100, long - 2 * cover_mm),
    spacing_mm: 304.8,
    cover_mm,
    exposure: "against ground",
    sort: "mat",
    supported_mm: 400,
  });
  return [way("along", long_mm, wide_mm), way("across", wide_mm, long_mm)];
}

/** Steps before anything is in the hole: lines, digging, boards. */
export function addHole(making: Making, sizes: Sizes, lumber: string | undefined): void {
  const { given } = making;
  const { name } = given;
  const room_mm = sizes.boarded ? 2 * besides_mm : 0;
  const hole_m3 = ((sizes.long_mm + room_mm) * (sizes.wide_mm + room_mm) * sizes.deep_mm) / 1e9;
  const machine = given.answers.choice("digging") === "machine";
  const ground = given.common("ground");
  making.add("steps", "set-out", {
    name: `Lines and levels for ${name}`,
    place: making.id("steel"),
    work: given.hours("set-out", 1, 2),
    hands: 2,
    reaches: [{ place: ground }],
    puts: [making.id("lines")],
    tools: ["string", "laser or water level", "tape"],
  });
  making.add("steps", "dig", {
    name: `Dig ${name}`,
    place: making.id("steel"),
    work: given.hours(machine ? "dig-machine" : "dig", hole_m3, 2),
    hands: 2,
    reaches: [{ place: given.common("dig"), need: machine ? "machine" : "person" }],
    puts: [making.id("hole")],
    leansOn: [{ piece: making.id("lines") }],
    cautions: [
      "No spade before the utility marks are on the ground.",
      ...(sizes.deep_mm > 1200 ? ["Deeper than 4 ft (1.2 m): sides cut back or held, a ladder, nobody alone. Ask your local rules."] : []),
    ],
    notes: "The bottom level and undisturbed; loose earth comes out, it is not filled back.",
  });
  if (!sizes.boarded) return;
  making.add("steps", "set-boards", {
    name: `Boards of ${name}`,
    place: making.id("beside"),
    work: given.hours("boards", (2 * (sizes.long_mm + sizes.wide_mm)) / 1000, 2),
    hands: 2,
    reaches: [{ place: making.id("beside") }],
    puts: [making.id("boards")],
    leansOn: [{ piece: making.id("lines") }],
    needs: lumber === undefined ? [] : [lumber],
  });
}
