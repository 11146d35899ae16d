import { formatLength } from "../../base";
import { choiceAsk, countAsk, datumHelp, lengthAsk } from "../asks";
import type { Given, Kit, Made } from "../kit";
import { saidAsk, unsaid } from "../said";
import { type Lists, levelAt, namer, ordered } from "../together";

/** Guards from here up, and a base a quarter of the height or ties: 29 CFR 1926.451 (g)(1), read in lessons quoting it, and (c)(1), read in the agency's letter of 8 April 2005. Local rules may ask for guards lower down. */
const guardFrom_mm = { us: 3048, metric: 3000 } as const;
const leastBase = 1 / 4;

/** Frames of so many bays and lifts: one more than there are bays, for each lift. */
export function framesFor(long_mm: number, high_mm: number): { readonly bays: number; readonly lifts: number; readonly frames: number } {
  const bays = Math.max(1, Math.ceil(long_mm / 2133.6));
  const lifts = Math.max(1, Math.ceil(high_mm / 1981.2));
  return { bays, lifts, frames: (bays + 1) * lifts };
}

function cautions(given: Given): readonly string[] {
  const { answers, units } = given;
  const high_mm = answers.length_mm("high");
  const guard = formatLength(guardFrom_mm[units], units);
  const narrow = answers.length_mm("wide") < leastBase * high_mm;
  return [
    `Put up, changed and taken down under somebody competent, who looks it over before every shift. Guards at every open side from ${guard} at the latest; here they are always on.`,
    ...(narrow
      ? [
          `Narrower than a quarter of its height: it is tied to what stands, or given outriggers, before anybody goes up. Where the ties go is for somebody competent.`,
        ]
      : []),
    "Sole plates on firm, level ground; never on fill, blocks or the edge of a hole. Ten feet (3 m) from any power line, more where its owner says so.",
  ];
}

function members(given: Given): Lists {
  const { id, called } = namer(given);
  const { answers, units } = given;
  const ground = given.common("ground");
  const [long_mm, high_mm] = [answers.length_mm("long"), answers.length_mm("high")];
  const area_m2 = (long_mm * high_mm) / 1e6;
  const { bays, lifts, frames } = framesFor(long_mm, high_mm);
  const own = answers.choice("frames") === "own";
  // A face that is reached from the ground stays so: the ground itself waits for no scaffold.
  const serves = answers.joins("serves").flatMap(({ place }) => (place === ground ? [] : [place]));
  const ways = [`${id("platform")}.ladder`, ...new Set(serves)];
  const pays = own ? "its own" : "hired: every week it stands costs";
  return {
    stock: [{ id: id("frames"), name: called("scaffold frames"), unit: "frame", inHand: own ? frames : 0 }],
    places: [
      {
        id: id("platform"),
        name: called("the platform"),
        room: Math.max(2, bays * 2),
        level: levelAt(high_mm),
        ways: [
          {
            id: "ladder",
            name: "up its ladder",
            passes: ["person", "unit", "hose"],
            opening: { wide: formatLength(Math.min(answers.length_mm("wide"), 1800), units), high: units === "us" ? "6 ft" : "1.8 m" },
            bears: units === "us" ? "250 lb" : "110 kg",
            through: ground,
          },
        ],
      },
    ],
    pieces: [
      {
        id: id("scaffold"),
        name: called("scaffold"),
        sort: "scaffold",
        makes: ways,
        off: [{ place: ground }],
        uses: [{ of: id("frames"), number: frames }],
      },
      {
        id: id("guards"),
        name: called("guards, toe boards, ladder"),
        sort: "scaffold",
        makes: ways,
        heldBy: [[id("scaffold")]],
        off: [{ place: ground }],
      },
      { id: id("released"), name: called("release for use"), sort: "other", makes: ways },
    ],
    steps: [
      {
        id: id("set"),
        name: called("put the scaffold up"),
        place: ground,
        work: given.hours("scaffold", area_m2, 2),
        hands: 2,
        notAlone: true,
        reaches: [{ place: ground }],
        puts: [id("scaffold")],
        needs: own ? [] : [id("hire")],
        weather: { wind: units === "us" ? "25 mph" : "40 km/h" },
        cautions: cautions(given),
        notes: `${bays} bays, ${lifts} lifts, ${frames} frames, ${pays}.`,
      },
      {
        id: id("guard"),
        name: called("guards, toe boards and ladder on"),
        place: ground,
        work: given.hours("guard", (2 * long_mm) / 1000 / 4, 2),
        hands: 2,
        notAlone: true,
        reaches: [{ place: ground }],
        puts: [id("guards")],
        leansOn: [{ piece: id("scaffold") }],
      },
      {
        id: id("look-over"),
        name: called("look it over, release it"),
        sort: "check",
        place: ground,
        work: given.hours("check", 1),
        reaches: [{ place: ground }],
        puts: [id("released")],
        leansOn: [{ piece: id("guards") }],
        notes: "By somebody competent: plates, plumb, braces, ties, planks, guards, ladder. Again after wind and rain.",
      },
      {
        id: id("take"),
        name: called("take the scaffold down"),
        place: ground,
        work: given.hours("scaffold-down", area_m2, 2),
        hands: 2,
        notAlone: true,
        reaches: [{ place: ground }],
        takes: [id("scaffold"), id("guards")],
        cautions: ["From the top down; ties come out with their lift, never before. Nothing is thrown."],
      },
    ],
    deliveries: own
      ? []
      : [
          {
            ...ordered(given, "hire", "scaffold frames, planks, guards, hired", answers.number("lead")),
            brings: [{ of: id("frames"), number: frames }],
          },
        ],
    solids: [
      {
        id: id("solid"),
        name: given.name,
        shape: "box",
        at: { x: answers.written("right"), y: answers.written("back"), z: units === "us" ? "0 in" : "0 mm" },
        size: { long: answers.written("long"), wide: answers.written("wide"), high: answers.written("high") },
        pieces: [id("scaffold")],
        places: [id("platform")],
      },
    ],
  };
}

/** A scaffold on the ground, for whatever is worked on from it. */
export const scaffold: Kit = {
  id: "scaffold",
  name: "Scaffold",
  what: "Frames on the ground with guards and a ladder, looked over before anybody goes up, and down again when all that is done from it is done.",
  group: "around",
  rates: ["scaffold", "scaffold-down", "guard", "check"],
  asks: [
    {
      key: "serves",
      label: "Work there is done from it",
      help: "Nobody gets there while it does not stand.",
      kind: "joins",
      offers: ["top", "face"],
      least: 0,
      most: 2,
    },
    lengthAsk("long", "How long", "14 ft", "4.2 m", 1200, 30_000),
    lengthAsk("wide", "How wide", "5 ft", "1.5 m", 600, 3000),
    lengthAsk("high", "Height of the platform", "6 ft 6 in", "2 m", 900, 9000),
    lengthAsk("right", "Its middle, right of the datum", "0 ft", "0 m", -60_000, 60_000, {
      help: `Left of it is below zero. ${datumHelp}`,
    }),
    lengthAsk("back", "Its middle, behind the datum", "-6 ft", "-2 m", -60_000, 60_000, { help: `Before it is below zero. ${datumHelp}` }),
    saidAsk("says-scaffold", "What it stands on, and who is competent to put it up"),
    choiceAsk("frames", "Frames", { hired: "hired", own: "in hand" }),
    countAsk("lead", "Yard's days from order to site", 3, 1, 30, { when: (answers) => answers.choice("frames") === "hired" }),
  ],

  make(given): Made {
    return { lists: members(given), unknown: unsaid(given, "says-scaffold", "scaffold-competent") };
  },

  offers: (part, answers) => [
    {
      kind: "scaffold",
      part: part.id,
      name: part.name,
      place: `${part.id}-platform`,
      piece: `${part.id}-scaffold`,
      pourStep: "",
      at_mm: { x: answers.length_mm("right"), y: answers.length_mm("back"), z: answers.length_mm("high") },
      size_mm: { long: answers.length_mm("long"), wide: answers.length_mm("wide") },
      starters: false,
    },
  ],
};
