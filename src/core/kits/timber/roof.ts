import { formatLength } from "../../base";
import { choiceAsk, lengthAsk } from "../asks";
import type { Ask, Given, Written } from "../kit";
import { type Lists, levelAt, namer, ordered, together } from "../together";

/** `over`: what the roof stands over at its eaves. */
export const roofAsks = (over: "walls" | "posts"): readonly Ask[] => [
  choiceAsk("roof", "Roof", { shed: "one slope", gable: "two slopes" }),
  { key: "pitch", label: "Rise of the roof in 12", kind: "number", usual: 3, range: { least: 1, most: 18, unit: "in 12" } },
  lengthAsk("eaves", `Roof beyond the ${over}`, "12 in", "300 mm", 0, 1200),
  choiceAsk("covering", "Covered with", { metal: "metal sheets", shingles: "shingles", membrane: "a membrane" }),
  {
    key: "scaffold",
    label: "Reached from the scaffold",
    help: "None: the roof brings a light scaffold of its own.",
    kind: "joins",
    offers: ["scaffold"],
    least: 0,
    most: 1,
  },
];

export const roofRates = ["scaffold", "scaffold-down", "rafter", "board-roof", "underlay", "roofing"] as const;

export interface RoofOf {
  readonly long_mm: number;
  readonly wide_mm: number;
  /** Of the eaves above the datum, and above where one stands below. */
  readonly eaves_mm: number;
  readonly high_mm: number;
  /** Where one works below and where the scaffold stands. */
  readonly inside: string;
  readonly outside: string;
  /** What the rafters lie on. */
  readonly on: readonly string[];
  /** What stands before a scaffold of its own does, and which other ways that makes. */
  readonly scaffold: { readonly after: readonly string[]; readonly makes: readonly string[]; readonly high_mm: number };
  /** Ways that a tight roof makes: into the dry room below. */
  readonly makes: readonly string[];
}

/** Slope length times length of all slopes, with eaves. */
function roofArea_m2({ answers }: Given, long_mm: number, wide_mm: number): number {
  const eaves_mm = answers.length_mm("eaves");
  const rise = answers.number("pitch") / 12;
  return ((long_mm + 2 * eaves_mm) / 1000) * ((wide_mm + 2 * eaves_mm) / 1000) * Math.hypot(1, rise);
}

/** Rise of the roof above the eaves. */
function roofRise_mm({ answers }: Given, wide_mm: number): number {
  const across_mm = (answers.choice("roof") === "gable" ? wide_mm / 2 : wide_mm) + 2 * answers.length_mm("eaves");
  return (across_mm * answers.number("pitch")) / 12;
}

/** The roof as it is drawn: over a length and a width, with its eaves; never flatter than 50 mm, so that it can be seen. */
export function roofSolid(
  given: Given,
  at_mm: { readonly x: number; readonly y: number; readonly z: number },
  long_mm: number,
  wide_mm: number,
): Written {
  const { id, called } = namer(given);
  const length = (mm: number): string => formatLength(mm, given.units);
  const eaves_mm = given.answers.length_mm("eaves");
  return {
    id: id("roof-solid"),
    name: called("roof"),
    shape: given.answers.choice("roof") === "gable" ? "gable" : "wedge",
    at: { x: length(at_mm.x), y: length(at_mm.y), z: length(at_mm.z) },
    size: {
      long: length(long_mm + 2 * eaves_mm),
      wide: length(wide_mm + 2 * eaves_mm),
      high: length(Math.max(50, roofRise_mm(given, wide_mm))),
    },
    pieces: [id("rafters"), id("roofing")],
    places: [id("roof")],
  };
}

/** From scaffold to ridge: rafters, boards, underlay, covering; the scaffold comes down after all that is done from it. */
export function roofed(given: Given, roof: RoofOf): Lists {
  const { id, called } = namer(given);
  const { answers, units } = given;
  const area_m2 = roofArea_m2(given, roof.long_mm, roof.wide_mm);
  const joined = answers.joins("scaffold")[0];
  const round_m2 = (2 * (roof.long_mm + roof.wide_mm) * roof.scaffold.high_mm) / 1e6;
  const fall = `${formatLength(roof.high_mm, units)} down: no step over the edge without a guard, a net or a line to an anchor that somebody competent chose.`;
  const up = joined ? { through: joined.place } : { through: roof.outside };
  const own = joined
    ? {}
    : {
        pieces: [
          {
            id: id("roof-scaffold"),
            name: called("roof scaffold and ladder"),
            sort: "scaffold",
            makes: [`${id("roof")}.up`, ...roof.scaffold.makes],
            off: [{ place: roof.outside }],
          },
        ],
        steps: [
          {
            id: id("set-roof-scaffold"),
            name: called("roof scaffold and ladder"),
            place: roof.outside,
            work: given.hours("scaffold", round_m2, 2),
            hands: 2,
            reaches: [{ place: roof.outside }],
            puts: [id("roof-scaffold")],
            leansOn: roof.scaffold.after.map((piece) => ({ piece })),
            needs: [id("frames")],
            cautions: [
              `On sole plates, level, tied to what stands. Guards from ${units === "us" ? "10 ft" : "3 m"} at the latest (29 CFR 1926.451); earlier where local rules say so.`,
            ],
          },
          {
            id: id("take-roof-scaffold"),
            name: called("gutters on, roof scaffold down"),
            place: roof.outside,
            work: given.hours("scaffold-down", round_m2, 2),
            hands: 2,
            reaches: [{ place: roof.outside }],
            takes: [id("roof-scaffold")],
            leansOn: [{ piece: id("roofing") }],
          },
        ],
        deliveries: [ordered(given, "frames", "scaffold frames and planks, hired", 3)],
      };
  const lists: Lists = {
    places: [
      {
        id: id("roof"),
        name: called("the roof"),
        room: 3,
        level: levelAt(roof.eaves_mm + 300),
        ways: [
          {
            id: "up",
            name: "from the scaffold",
            passes: ["person", "unit"],
            opening: units === "us" ? { wide: "12 ft", high: "12 ft" } : { wide: "4 m", high: "4 m" },
            ...up,
          },
        ],
      },
      {
        id: id("decking"),
        name: called("nailing of the roof boards"),
        level: levelAt(roof.eaves_mm + 300),
        layerOf: id("roof"),
        ways: [{ id: "bare", name: "before the underlay", passes: ["person"], through: id("roof") }],
      },
    ],
    pieces: [
      { id: id("rafters"), name: called("rafters"), sort: "other", heldBy: [roof.on] },
      { id: id("roof-boards"), name: called("roof boards"), sort: "other" },
      { id: id("underlay"), name: called("roof underlay"), sort: "cover", fills: [id("decking")], makes: roof.makes },
      { id: id("roofing"), name: called("roof covering"), sort: "cover" },
    ],
    steps: [
      {
        id: id("set-rafters"),
        name: called("cut and set the rafters"),
        place: id("roof"),
        work: given.hours("rafter", area_m2, 2),
        hands: 2,
        notAlone: true,
        reaches: [{ place: id("roof") }, { place: roof.inside }],
        puts: [id("rafters")],
        leansOn: roof.on.map((piece) => ({ piece })),
        needs: [id("roof-timber")],
        weather: { wind: units === "us" ? "25 mph" : "40 km/h" },
        cautions: [fall],
        notes: "Ties or straps at every rafter against uplift, before the boards hide them.",
      },
      {
        id: id("board-roof"),
        name: called("board the roof"),
        place: id("roof"),
        work: given.hours("board-roof", area_m2, 2),
        hands: 2,
        reaches: [{ place: id("decking") }],
        puts: [id("roof-boards")],
        leansOn: [{ piece: id("rafters") }],
        needs: [id("roof-timber")],
        weather: { wind: units === "us" ? "20 mph" : "30 km/h", dry: true },
        cautions: [fall, "Wet boards are left alone."],
      },
      {
        id: id("lay-underlay"),
        name: called("drip edges and underlay"),
        place: id("roof"),
        work: given.hours("underlay", area_m2, 2),
        hands: 2,
        reaches: [{ place: id("roof") }],
        puts: [id("underlay")],
        leansOn: [{ piece: id("roof-boards") }],
        needs: [id("roof-goods")],
        weather: { dry: true },
        cautions: [fall],
      },
      {
        id: id("lay-roofing"),
        name: called("lay the roof covering"),
        place: id("roof"),
        work: given.hours("roofing", area_m2, 2),
        hands: 2,
        reaches: [{ place: id("roof") }],
        puts: [id("roofing")],
        leansOn: [{ piece: id("underlay") }],
        needs: [id("roof-goods")],
        weather: { wind: units === "us" ? "15 mph" : "25 km/h", dry: true },
        cautions: [fall],
      },
    ],
    waits: [
      {
        id: id("underlay-bare"),
        from: id("lay-underlay"),
        to: id("lay-roofing"),
        most: { is: "60 d", from: "own guess" },
        why: "Underlay may lie bare for so long only: its sheet says how long.",
      },
    ],
    deliveries: [
      ordered(given, "roof-timber", "rafters and roof boards", 10),
      ordered(given, "roof-goods", `roofing (${answers.choice("covering")}), underlay, flashings`, 15),
    ],
  };
  return together(lists, own);
}
