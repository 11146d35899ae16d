import type { Making } from "../making";
import { besides_mm, type Sizes } from "./footing-members";

/** Less earth than this over a footing is raked in, not filled. */
const leastCover_mm = 50;

const cover_mm = ({ deep_mm, thick_mm }: Sizes): number => (deep_mm - thick_mm >= leastCover_mm ? deep_mm - thick_mm : 0);

/** The word of the place that stays open after the pour: beside boards, else over the concrete; null where the concrete fills the hole. */
export const openWord = (sizes: Sizes): "beside" | "over" | null => (sizes.boarded ? "beside" : cover_mm(sizes) > 0 ? "over" : null);

/** Whether something that stands on it is worked on in its hole: it lies below the ground. */
export const isSunk = (sizes: Sizes): boolean => cover_mm(sizes) > 0;

/** What is left of a hole once it is poured: a place, the earth that closes it for good, and the ground that is whole again over it. Gives the ways that the hole makes. */
export function addOpenHole(making: Making, sizes: Sizes): readonly string[] {
  const word = openWord(sizes);
  if (word === null) return [];
  const { given } = making;
  const ground = given.common("ground");
  const open = making.add("places", word, {
    name: `hole ${word} ${given.name}`,
    level: -Math.round(sizes.deep_mm / 100),
    layerOf: making.id("steel"),
    ways: [{ id: "above", name: "from above", passes: ["person", "unit"], through: ground }],
  });
  const whole = making.add("places", "whole", {
    name: `ground over ${given.name}, filled`,
    level: 0,
    ways: [{ id: "filled", name: "over the compacted earth", passes: ["person", "unit", "machine"], through: ground }],
  });
  making.add("pieces", "fill", {
    name: `earth ${word === "beside" && isSunk(sizes) ? "beside and over" : word} ${given.name}`,
    sort: "earth",
    fills: [open],
    makes: [`${whole}.filled`],
  });
  return [`${open}.above`];
}

/** Earth back into what is left of the hole: after all that is done in it, which follows from what it fills. */
export function addFillIn(making: Making, sizes: Sizes): void {
  const word = openWord(sizes);
  if (word === null) return;
  const { given } = making;
  const room_mm = sizes.boarded ? 2 * besides_mm : 0;
  const hole_m3 = ((sizes.long_mm + room_mm) * (sizes.wide_mm + room_mm) * sizes.deep_mm) / 1e9;
  const concrete_m3 = (sizes.long_mm * sizes.wide_mm * sizes.thick_mm) / 1e9;
  const where = word === "over" ? "over" : isSunk(sizes) ? "beside and over" : "beside";
  making.add("steps", "fill-in", {
    name: `Earth back ${where} ${given.name}, compacted`,
    place: making.id(word),
    work: given.hours("fill", Math.max(0.05, hole_m3 - concrete_m3), 2),
    hands: 2,
    reaches: [{ place: given.common("ground") }],
    puts: [making.id("fill")],
    leansOn: [{ piece: making.id("concrete"), once: { is: "24 h", from: "own guess" } }],
    tools: ["tamper or plate compactor"],
    notes: "In layers of 8 in (200 mm), each tamped, alike on all sides of what stands in it; no frozen or soaked earth.",
  });
}
