import type { Kit } from "../kit";
import { wallAsks } from "./wall-asks";
import { makeWall, wallOffers } from "./wall-make";
import { wallRates } from "./wall-rates";

/** A wall with two formed faces or one, tied or braced. */
export const wall: Kit = {
  id: "wall",
  name: "Wall",
  what: "A wall on a footing, both faces formed or one against earth or old work: bars, panels, ties, pour, strip.",
  group: "concrete",
  asks: wallAsks(false),
  rates: wallRates,
  make: (given) => makeWall(given, false, () => ({ behind: given.common("ground") })).made(),
  offers: (part, answers) => wallOffers(part, answers, false),
};
