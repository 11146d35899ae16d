import { formatLength } from "../../base";
import type { Given } from "../kit";
import { type Lists, namer } from "../together";
import type { Base } from "./base";
import { roofSolid } from "./roof";

/** Four walls and a roof for the structure drawing. */
export function buildingSolids(given: Given, base: Base): Lists {
  const { id, called } = namer(given);
  const { answers, units } = given;
  const length = (mm: number): string => formatLength(mm, units);
  const [long_mm, wide_mm, high_mm] = [answers.length_mm("long"), answers.length_mm("wide"), answers.length_mm("high")];
  const thick_mm = answers.choice("studs") === "2x4" ? 110 : 160;
  const { x, y, z } = base.at_mm;
  const wall = (what: string, at: { readonly x: number; readonly y: number }, size: { readonly long: number; readonly wide: number }) => ({
    id: id(`wall-${what}`),
    name: called(`${what} wall`),
    shape: "box",
    at: { x: length(at.x), y: length(at.y), z: length(z) },
    size: { long: length(size.long), wide: length(size.wide), high: length(high_mm) },
    pieces: [id("walls"), id("siding")],
    places: [id("floor"), id("outside")],
  });
  const [side_mm, end_mm] = [(wide_mm - thick_mm) / 2, (long_mm - thick_mm) / 2];
  return {
    solids: [
      wall("front", { x, y: y - side_mm }, { long: long_mm, wide: thick_mm }),
      wall("back", { x, y: y + side_mm }, { long: long_mm, wide: thick_mm }),
      wall("left", { x: x - end_mm, y }, { long: thick_mm, wide: wide_mm - 2 * thick_mm }),
      wall("right", { x: x + end_mm, y }, { long: thick_mm, wide: wide_mm - 2 * thick_mm }),
      roofSolid(given, { x, y, z: z + high_mm }, long_mm, wide_mm),
    ],
  };
}
