import { countAsk, yesAsk } from "../asks";
import { inspected } from "../inspected";
import type { Given, Kit, Made } from "../kit";
import { unsaid } from "../said";
import { type Lists, levelAt, namer, together } from "../together";
import { type Base, baseAsks, baseOf, baseRates, bolted, middleOf, sizeAsks, standsOn, timberUnknown } from "./base";
import { buildingSolids } from "./building-solids";
import { floorRates, framedFloor } from "./floor";
import { inside, insideAsks, insideRates } from "./inside";
import { roofAsks, roofed, roofRates } from "./roof";
import { shell, shellAsks, shellRates } from "./shell";
import { dryWays, skin, skinAsks, skinRates } from "./skin";

/** Higher than this nobody gets at the walls from the ground (common practice, no source). */
const isHigh = (base: Base): boolean => base.at_mm.z > 1500;

/** Places that frame, skin and inside share. */
function places(given: Given, base: Base): Lists {
  const { id, called } = namer(given);
  const { units, answers } = given;
  const level = levelAt(base.at_mm.z);
  const opening = units === "us" ? { wide: "12 ft", high: "12 ft" } : { wide: "4 m", high: "4 m" };
  const doors = answers.number("doors");
  const through = {
    passes: ["person", "unit"],
    opening: units === "us" ? { wide: "32 in", high: "80 in" } : { wide: "800 mm", high: "2 m" },
    through: base.place,
  };
  const scaffold = answers.joins("scaffold")[0];
  const outside = isHigh(base) && scaffold ? scaffold.place : given.common("ground");
  return {
    places: [
      {
        id: id("seat"),
        name: called("under the sills"),
        level,
        layerOf: base.place,
        ways: [{ id: "open", name: "before the sills lie", passes: ["person"], through: base.place }],
      },
      {
        id: id("floor"),
        name: called("the floor"),
        room: 8,
        level: level + 1,
        ways: [{ id: "over", name: "over the sills or by the door", passes: ["person", "unit"], opening, through: base.place }],
      },
      {
        id: id("outside"),
        name: called("outside of the walls"),
        room: 4,
        level: level + 2,
        ways: [{ id: "around", name: isHigh(base) ? "from the scaffold" : "from the ground", passes: ["person"], through: outside }],
      },
      {
        id: id("nailing"),
        name: called("nailing of the sheathing"),
        level: level + 2,
        layerOf: id("outside"),
        ways: [{ id: "bare", name: "before the wrap", passes: ["person"], through: id("outside") }],
      },
      {
        id: id("flashings"),
        name: called("wrap and flashings"),
        level: level + 2,
        layerOf: id("outside"),
        ways: [{ id: "bare", name: "before the siding", passes: ["person"], through: id("outside") }],
      },
      {
        id: id("room"),
        name: called("the room, closed to rain"),
        room: 6,
        level: level + 1,
        layerOf: id("floor"),
        ways: [{ id: "door", name: doors > 0 ? "by the door" : "by the opening", ...through }],
      },
    ],
  };
}

/** A shed or a workroom of studs. */
export const smallBuilding: Kit = {
  id: "small-building",
  name: "Small timber building",
  what: "Sills bolted down, walls built flat and tipped up, a roof, windows and doors, siding, wiring seen before it is closed in, insulation, lining and paint.",
  group: "timber",
  rates: [...new Set([...baseRates, ...shellRates, ...floorRates, ...roofRates, ...skinRates, ...insideRates, "inspection" as const])],
  asks: [
    ...baseAsks,
    ...shellAsks,
    ...sizeAsks,
    ...roofAsks("walls"),
    ...skinAsks,
    ...insideAsks,
    yesAsk("inspected", "Inspector sees the frame before it is covered", true),
    countAsk("visit", "Inspector's days from request to visit", 1, 1, 20),
  ],

  make(given): Made {
    const { id } = namer(given);
    const { answers } = given;
    const base = baseOf(given);
    const [long_mm, wide_mm, high_mm] = [answers.length_mm("long"), answers.length_mm("wide"), answers.length_mm("high")];
    const bolts = Math.max(8, Math.ceil((2 * (long_mm + wide_mm)) / 1200));
    const on = [id("walls"), id("sheathing")];
    const roof = roofed(given, {
      long_mm,
      wide_mm,
      eaves_mm: base.at_mm.z + high_mm,
      high_mm,
      inside: id("floor"),
      outside: isHigh(base) ? given.common("ground") : id("outside"),
      on,
      scaffold: {
        after: isHigh(base) ? [] : on,
        makes: isHigh(base) && answers.joins("scaffold").length === 0 ? [`${id("outside")}.around`] : [],
        high_mm: high_mm + (isHigh(base) ? base.at_mm.z : 0),
      },
      makes: dryWays(given),
    });
    const frameSeen = answers.yes("inspected")
      ? inspected(given, {
          id: "inspect-frame",
          name: "frame and nailing inspection",
          places: [id("nailing"), id("decking")],
          pieces: [id("sheathing"), id("roof-boards")],
          notice_days: answers.number("visit"),
        })
      : {};
    const lists = together(
      places(given, base),
      bolted(given, base, bolts, id("seat")),
      framedFloor(given, base),
      shell(given, base),
      roof,
      frameSeen,
      skin(given),
      inside(given),
      buildingSolids(given, base),
    );
    const circuits = answers.yes("wiring") ? unsaid(given, "says-circuits", "circuits") : [];
    return { lists, unknown: [...timberUnknown(given, base), ...circuits] };
  },

  offers(part, answers) {
    return [
      {
        kind: "dry",
        part: part.id,
        name: part.name,
        place: `${part.id}-room`,
        piece: `${part.id}-siding`,
        pourStep: "",
        at_mm: middleOf(answers, standsOn(answers)),
        size_mm: { long: answers.length_mm("long"), wide: answers.length_mm("wide") },
        starters: false,
      },
    ];
  },
};
