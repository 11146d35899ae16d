import { formatLength, formatMass } from "../../base";
import { choiceAsk, countAsk, lengthAsk } from "../asks";
import type { Ask, Given } from "../kit";
import { type Lists, namer, ordered } from "../together";
import { type Base, loadCautions } from "./base";

export const shellAsks: readonly Ask[] = [
  lengthAsk("long", "How long outside", "12 ft", "3.6 m", 1200, 12_000),
  lengthAsk("wide", "How wide outside", "8 ft", "2.4 m", 1200, 9000),
  lengthAsk("high", "Height of the walls", "8 ft", "2.4 m", 1500, 4000),
  choiceAsk("studs", "Studs", { "2x4": "2x4, or 45 by 95 mm", "2x6": "2x6, or 45 by 145 mm" }),
  choiceAsk("lumber", "Studs and plates", { ordered: "to be ordered", salvaged: "salvaged, in hand" }),
  countAsk("crew", "Hands that can be had to tip a wall up", 2, 2, 8),
];

export const shellRates = ["sill", "frame-wall", "tip-wall", "braces-down", "sheathe", "clean", "check"] as const;

/** A wall framed of studs at 16 in with plates, unsheathed, for each area: common practice, no source. */
const mass_kg_m2: Readonly<Record<string, number>> = { "2x4": 9, "2x6": 14 };
/** What one pair of hands tips up of it: half a lying wall is on the ground. 51 lb (23 kg) a person is the load constant of the revised NIOSH lifting equation, for an ideal lift (read in pages that quote it). */
const eachLifts_kg = 23;

/** How long a section may be so that the hands there are tip it up, and how many sections that makes of a wall. */
export function sectionsOf(
  long_mm: number,
  high_mm: number,
  studs: string,
  hands: number,
): { readonly number: number; readonly mass_kg: number } {
  const mass_kg = (long_mm / 1000) * (high_mm / 1000) * (mass_kg_m2[studs] ?? 14);
  const number = Math.max(1, Math.ceil(mass_kg / 2 / (eachLifts_kg * hands)));
  return { number, mass_kg: mass_kg / number };
}

/** Sills, walls built flat and tipped up, sheathing. */
export function shell(given: Given, base: Base): Lists {
  const { id, called } = namer(given);
  const { answers, units } = given;
  const [long_mm, wide_mm, high_mm] = [answers.length_mm("long"), answers.length_mm("wide"), answers.length_mm("high")];
  const round_m = (2 * (long_mm + wide_mm)) / 1000;
  const area_m2 = round_m * (high_mm / 1000);
  const hands = answers.number("crew");
  const studs = answers.choice("studs");
  const parts = [long_mm, wide_mm].map((one) => sectionsOf(one, high_mm, studs, hands));
  const sections = 2 * parts.reduce((sum, { number }) => sum + number, 0);
  const heaviest_kg = Math.max(...parts.map(({ mass_kg }) => mass_kg));
  const bolts = base.stands ? [{ piece: id("bolts") }] : [];
  const salvaged = answers.choice("lumber") === "salvaged";
  const timber = salvaged ? [] : [id("timber")];
  const store = given.common("store");
  return {
    pieces: [
      { id: id("sills"), name: called("sills on their seal"), sort: "other", fills: [id("seat")] },
      ...(salvaged ? [{ id: id("sorted"), name: called("salvaged studs, sorted"), sort: "other" }] : []),
      { id: id("lying"), name: called("lying wall frames"), sort: "other" },
      { id: id("walls"), name: called("framed walls"), sort: "other", heldBy: [[id("braces")], [id("sheathing"), id("rafters")]] },
      { id: id("braces"), name: called("temporary wall braces"), sort: "brace", off: [{ place: id("floor") }] },
      { id: id("sheathing"), name: called("wall sheathing"), sort: "other" },
    ],
    steps: [
      {
        id: id("check-base"),
        name: called("measure the base, snap the lines"),
        sort: "check",
        place: id("seat"),
        work: given.hours("check", 1, 2),
        hands: 2,
        reaches: [{ place: id("seat") }],
        leansOn: base.lean,
        notes: "Diagonals alike and the base level: what is out now is out in every wall.",
      },
      {
        id: id("set-sills"),
        name: called("seal and bolt the sills"),
        place: id("seat"),
        work: given.hours("sill", round_m, 2),
        hands: 2,
        reaches: [{ place: id("seat") }],
        puts: [id("sills")],
        leansOn: [...base.lean, ...bolts],
        needs: [id("sill-goods")],
        cautions: loadCautions(base),
        materials: ["treated sills, foam strip, washers, nuts"],
      },
      ...(salvaged
        ? [
            {
              id: id("sort-studs"),
              name: called("draw nails, sort the salvaged studs"),
              place: store,
              work: given.hours("clean", area_m2 * 0.4),
              reaches: [{ place: store }],
              puts: [id("sorted")],
              cautions: [
                "Old paint can be lead and old preservative arsenic: no dry sanding, no burning. Split, rotten or notched pieces carry nothing.",
              ],
            },
          ]
        : []),
      {
        id: id("frame-walls"),
        name: called("frame the walls lying"),
        place: id("floor"),
        work: given.hours("frame-wall", area_m2, 2),
        hands: 2,
        reaches: [{ place: id("floor") }],
        puts: [id("lying")],
        leansOn: [...base.lean, { piece: id("sills") }, ...(salvaged ? [{ piece: id("sorted") }] : [])],
        needs: timber,
        notes: `${sections} sections, the heaviest about ${formatMass(heaviest_kg, units)}: as much as ${hands} tip up.`,
      },
      {
        id: id("tip-walls"),
        name: called("tip the walls up, plumb and brace them"),
        place: id("floor"),
        work: given.hours("tip-wall", round_m, hands),
        hands,
        notAlone: true,
        reaches: [{ place: id("floor") }],
        puts: [id("walls"), id("braces")],
        leansOn: [{ piece: id("lying") }],
        weather: { wind: units === "us" ? "15 mph" : "25 km/h" },
        cautions: [
          `Stops nailed at the foot first; nobody before or behind a wall on its way up. No wall is let go before two braces are nailed.`,
          `A section over ${formatMass(2 * eachLifts_kg * hands, units)} wants more than ${hands} hands, or wall jacks.`,
        ],
      },
      {
        id: id("sheathe"),
        name: called("tie the corners, sheathe the walls"),
        place: id("nailing"),
        work: given.hours("sheathe", area_m2, 2),
        hands: 2,
        reaches: [{ place: id("nailing") }],
        puts: [id("sheathing")],
        leansOn: [{ piece: id("walls") }],
        needs: [id("sheets")],
        notes: `Nails as the drawing says; sheets ${formatLength(units === "us" ? 3.175 : 3, units)} apart.`,
      },
      {
        id: id("take-braces"),
        name: called("take the wall braces out"),
        place: id("floor"),
        work: given.hours("braces-down", round_m),
        reaches: [{ place: id("floor") }],
        takes: [id("braces")],
      },
    ],
    deliveries: [
      ordered(given, "sill-goods", "treated sills, seal, nuts and washers", 5),
      ...(salvaged ? [] : [ordered(given, "timber", "studs and plates", 10)]),
      ordered(given, "sheets", "wall sheathing", 10),
    ],
  };
}
