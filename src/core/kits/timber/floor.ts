import type { Given } from "../kit";
import { type Lists, namer, ordered } from "../together";
import type { Base } from "./base";

export const floorRates = ["floor"] as const;

/** Beams, joists and a floor of boards where there is no slab to stand on. */
export function framedFloor(given: Given, base: Base): Lists {
  const { id, called } = namer(given);
  const { answers } = given;
  if (answers.joins("base").length > 0) return {};
  const area_m2 = (answers.length_mm("long") * answers.length_mm("wide")) / 1e6;
  return {
    pieces: [{ id: id("joists"), name: called("beams, joists and floor"), sort: "other", makes: [`${id("floor")}.over`] }],
    steps: [
      {
        id: id("frame-floor"),
        name: called("beams, joists and the floor on them"),
        place: base.place,
        work: given.hours("floor", area_m2, 2),
        hands: 2,
        reaches: [...base.places.map((place) => ({ place })), ...base.holes],
        puts: [id("joists")],
        leansOn: [{ piece: id("sills") }],
        needs: [id("floor-timber")],
        cautions: ["Nobody walks on bare joists; the first sheets are laid from outside inwards."],
        notes: "Sizes and spacing are the drawing's. Insulation under it goes in before the sheets.",
      },
    ],
    deliveries: [ordered(given, "floor-timber", "beams, joists, floor sheets", 10)],
  };
}
