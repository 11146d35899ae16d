import { formatLength, formatVolume } from "../../base";
import { countAsk, yesAsk } from "../asks";
import { inspected } from "../inspected";
import type { Given, Kit, Made } from "../kit";
import { saidAsk, unsaid } from "../said";
import { type Lists, namer, ordered, together } from "../together";
import { dug, filled, siteAsks, soilUnknown, trenchAsks, trenchOffer, trenchRates, trenchSizes, trenchSolid } from "./digging";

/** Stone around and over the pipe, of the trench's depth: the rest is earth. */
const stoneShare = 0.6;

function piped(given: Given): Lists {
  const { id, called } = namer(given);
  const { answers, units } = given;
  const sizes = trenchSizes(given);
  const long_m = sizes.long_mm / 1000;
  const stone_m3 = long_m * (sizes.wide_mm / 1000) * (sizes.deep_mm / 1000) * stoneShare;
  const drop = formatLength((sizes.long_mm * answers.number("fall")) / 100, units);
  return {
    places: [
      {
        id: id("run"),
        name: called("pipe as laid"),
        layerOf: id("trench"),
        ways: [{ id: "bare", name: "from the trench", passes: ["person"], through: id("trench") }],
      },
    ],
    pieces: [
      { id: id("fleece"), name: called("fleece"), sort: "cover" },
      { id: id("pipe"), name: called("drain pipe"), sort: "other" },
      { id: id("stone"), name: called("stone, fleece folded over"), sort: "earth", fills: [id("run")] },
    ],
    steps: [
      {
        id: id("lay-fleece"),
        name: called("grade the bottom, line it with fleece"),
        place: id("trench"),
        work: given.hours("membrane", long_m * ((sizes.wide_mm + 2 * sizes.deep_mm) / 1000), 2),
        hands: 2,
        reaches: [{ place: id("trench") }],
        puts: [id("fleece")],
        leansOn: [{ piece: id("hole") }],
        needs: [id("goods")],
        tools: ["laser or water level"],
        notes: `Fall ${answers.number("fall")} in 100, ${drop} over its length, no dips: read it every ${units === "us" ? "6 ft" : "2 m"}.`,
      },
      {
        id: id("lay-pipe"),
        name: called("lay the pipe to its outfall"),
        place: id("run"),
        work: given.hours("drain", long_m, 2),
        hands: 2,
        reaches: [{ place: id("run") }],
        puts: [id("pipe")],
        leansOn: [{ piece: id("fleece") }],
        notes: "Holes down; a cleanout at each bend and at the head; a grate at the outfall against animals.",
      },
      {
        id: id("water-test"),
        name: called("run water through it"),
        sort: "check",
        place: id("run"),
        work: given.hours("check", 1),
        reaches: [{ place: id("run") }],
        leansOn: [{ piece: id("pipe") }],
        notes: "What stands in it now stands in it for good.",
      },
      {
        id: id("photo-pipe"),
        name: called("photograph the pipe with a tape"),
        sort: "photograph",
        place: id("run"),
        work: given.hours("photograph", 1),
        reaches: [{ place: id("run"), need: "sight" }],
        leansOn: [{ piece: id("pipe") }],
      },
      {
        id: id("place-stone"),
        name: called("stone over the pipe, fold the fleece"),
        place: id("trench"),
        work: given.hours("gravel", stone_m3, 2),
        hands: 2,
        reaches: [{ place: id("trench") }],
        puts: [id("stone")],
        leansOn: [{ piece: id("pipe") }],
        needs: [id("stone-load")],
        materials: [`${formatVolume(stone_m3, units)} of washed stone`],
      },
    ],
    deliveries: [ordered(given, "goods", "drain pipe, fittings, fleece", 5), ordered(given, "stone-load", "washed stone", 3)],
  };
}

/** A drain in a trench of its own; a retaining wall brings its own. */
export const drainLine: Kit = {
  id: "drain-line",
  name: "Drain in a trench",
  what: "A trench with fall, fleece, drain pipe, a water test while it can still be moved, stone, and earth over it.",
  group: "ground",
  rates: [...trenchRates, "membrane", "drain", "gravel", "check", "photograph", "inspection"],
  asks: [
    ...trenchAsks({ us: "2 ft 6 in", metric: "750 mm" }, { us: "16 in", metric: "400 mm" }),
    ...siteAsks({ us: "0 ft", metric: "0 m" }, { us: "20 ft", metric: "6 m" }),
    {
      key: "fall",
      label: "Fall in 100",
      help: "1 in 100 is usual; less stands, much more is seldom needed.",
      kind: "number",
      usual: 1,
      range: { least: 0.5, most: 10, unit: "%" },
    },
    saidAsk("says-outfall", "Where the water goes"),
    yesAsk("inspected", "Inspector sees the pipe", false),
    countAsk("visit", "Inspector's days from request to visit", 1, 1, 20, { when: (answers) => answers.yes("inspected") }),
  ],

  make(given): Made {
    const { id } = namer(given);
    const sizes = trenchSizes(given);
    const seen = given.answers.yes("inspected")
      ? inspected(given, {
          id: "inspect-pipe",
          name: "drain inspection",
          places: [id("run")],
          pieces: [id("pipe")],
          notice_days: given.answers.number("visit"),
        })
      : {};
    const lists = together(
      dug(given, sizes, given.common("dig")),
      piped(given),
      seen,
      filled(given, sizes, 1 - stoneShare, [id("stone")]),
      trenchSolid(given, sizes),
    );
    return { lists, unknown: [...unsaid(given, "says-outfall", "outfall"), ...soilUnknown(given, sizes)] };
  },

  offers: (part, answers) => [trenchOffer(part, answers)],
};
