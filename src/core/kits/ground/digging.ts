import { formatLength, fromModel, parseQuantity, toModel } from "../../base";
import type { Part } from "../../build";
import { ladderFrom_ft, protectFrom_ft, type Soil, slope, topWidth_ft, trenchRules, trenchVolume_ft3_ft } from "../../concrete";
import { choiceAsk, datumHelp, lengthAsk } from "../asks";
import type { Answers, Ask, Given, Offer, Unknown } from "../kit";
import { handDigCaution } from "../marks";
import { saidAsk, unsaid } from "../said";
import { type Lists, levelAt, namer, ordered } from "../together";

const isDeep = (answers: Answers): boolean => answers.length_mm("deep") >= toModel("length", protectFrom_ft, "ft") - 1e-6;

/** Soil as somebody competent classes it, and what is done about deep sides: asked by every kit that digs a trench. */
export const trenchAsks = (
  deep: { readonly us: string; readonly metric: string },
  wide: { readonly us: string; readonly metric: string },
): readonly Ask[] => [
  lengthAsk("long", "How long", "40 ft", "12 m", 500, 45_000),
  { key: "deep", label: "How deep", kind: "length", usual: deep, range_mm: { least: 300, most: 3000, unit: "mm" } },
  { key: "wide", label: "How wide at the bottom", kind: "length", usual: wide, range_mm: { least: 150, most: 1200, unit: "mm" } },
  choiceAsk(
    "soil",
    "Soil, as somebody competent classes it",
    { rock: "stable rock", A: "A: stiff clay, never dug", B: "B: firm, or dug before", C: "C: sand, gravel, wet" },
    { usual: "B", help: "B where nobody has looked: never A once it was dug before." },
  ),
  choiceAsk("sides", "Sides at 5 ft (1.5 m) or deeper", { slope: "laid back", shore: "shored as it goes down" }, { when: isDeep }),
  saidAsk("says-soil", "What the soil is", isDeep),
  choiceAsk("by", "Dug", { hand: "by hand", machine: "with a small machine, hired" }),
];

/** Where a part stands that stands on no other, from the datum. */
export const siteAsks = (
  right: { readonly us: string; readonly metric: string },
  back: { readonly us: string; readonly metric: string },
): readonly Ask[] => [
  {
    key: "right",
    label: "Its middle, right of the datum",
    help: `Left of it is below zero. ${datumHelp}`,
    kind: "length",
    usual: right,
    range_mm: { least: -60_000, most: 60_000, unit: "mm" },
  },
  {
    key: "back",
    label: "Its middle, behind the datum",
    help: `Before it is below zero. ${datumHelp}`,
    kind: "length",
    usual: back,
    range_mm: { least: -60_000, most: 60_000, unit: "mm" },
  },
];

export const trenchRates = ["dig", "dig-machine", "fill"] as const;

export interface TrenchSizes {
  readonly long_mm: number;
  readonly wide_mm: number;
  readonly deep_mm: number;
  readonly soil: Soil;
  readonly shored: boolean;
  readonly sloped: boolean;
  readonly ladder: boolean;
  readonly top_mm: number;
  readonly bank_m3: number;
}

const digWork = (given: Given, { bank_m3 }: TrenchSizes) =>
  given.hours(given.answers.choice("by") === "machine" ? "dig-machine" : "dig", bank_m3, 2);

/** Hours that two people dig in a week of weekends: common practice, no source. */
const weekend_min = 12 * 60;

/** Whether the trench is dug, at its likely hours, before marks of so many days expire; where it is not, they are asked for again meanwhile. */
export const isDugWithin = (given: Given, sizes: TrenchSizes, valid_days: number): boolean =>
  (parseQuantity("time", digWork(given, sizes).likely) ?? 0) <= weekend_min * Math.floor(valid_days / 7);

/** Width at the top, bank volume and what must be done, after OSHA 29 CFR 1926 Subpart P (see core/concrete). */
export function trenchSizes({ answers }: Given): TrenchSizes {
  const [long_mm, deep_mm, wide_mm] = [answers.length_mm("long"), answers.length_mm("deep"), answers.length_mm("wide")];
  const soil = answers.choice("soil") as Soil;
  const ft = (length_mm: number): number => fromModel("length", length_mm, "ft");
  const rules = trenchRules(ft(deep_mm), soil);
  const shored = rules.protect && answers.choice("sides") === "shore";
  const sloped = rules.protect && !shored;
  const as = sloped ? soil : "rock";
  const top_mm = toModel("length", topWidth_ft(ft(deep_mm), ft(wide_mm), as), "ft");
  const bank_ft3 = trenchVolume_ft3_ft(ft(deep_mm), ft(wide_mm), as) * ft(long_mm);
  return { long_mm, wide_mm, deep_mm, soil, shored, sloped, ladder: rules.ladder, top_mm, bank_m3: bank_ft3 * 0.3048 ** 3 };
}

function cautionsOf(given: Given, sizes: TrenchSizes): readonly string[] {
  const length = (mm: number) => formatLength(mm, given.units);
  const from = given.units === "us" ? `${protectFrom_ft} ft` : "1.5 m";
  const protect = sizes.shored
    ? `The sides stand only because they are shored: set from above as it goes down. Deep enough to bury: shoring and soil are judged by somebody competent, every day, before anybody goes in.`
    : `Sides laid back ${slope[sizes.soil]} to 1, ${length(sizes.top_mm)} wide at the top. A trench ${from} or deeper is entered only when somebody competent has judged the soil, every day and after rain.`;
  return [
    ...(sizes.shored || sizes.sloped ? [protect] : []),
    ...(sizes.ladder ? [`${ladderFrom_ft} ft (1.2 m) or deeper: a ladder within 25 ft (7.5 m) of everybody in it, and nobody alone.`] : []),
    `Spoil and machines at least ${length(given.units === "us" ? 609.6 : 600)} from the edge; at any depth, out and call for help when a side cracks or leans.`,
    handDigCaution(given.units),
  ];
}

/** The trench itself: a place, its hole, what holds its sides, a ladder where it is deep, and the digging. `dig` is the ground that it goes into. */
export function dug(given: Given, sizes: TrenchSizes, dig: string): Lists {
  const { id, called } = namer(given);
  const machine = given.answers.choice("by") === "machine";
  const ground = given.common("ground");
  const way = `${id("trench")}.in`;
  const yard = given.common("lumber-yard");
  const extra = [
    ...(sizes.shored
      ? [{ id: id("shoring"), name: called("shoring of the sides"), sort: "shore", makes: [way], off: [{ place: ground }] }]
      : []),
    ...(sizes.ladder ? [{ id: id("ladder"), name: called("ladder"), sort: "scaffold", makes: [way], off: [{ place: ground }] }] : []),
  ];
  return {
    places: [
      {
        id: id("trench"),
        name: called("the open trench"),
        room: 3,
        level: levelAt(-sizes.deep_mm),
        ways: [
          {
            id: "in",
            name: sizes.ladder ? "down the ladder" : "from its edge",
            passes: ["person", "unit", "hose"],
            opening: { wide: formatLength(sizes.wide_mm, given.units), high: given.units === "us" ? "12 ft" : "4 m" },
            through: ground,
          },
        ],
      },
    ],
    pieces: [
      {
        id: id("hole"),
        name: called("trench"),
        sort: "hole",
        makes: [way],
        ...(sizes.shored ? { heldBy: [[id("shoring")], [id("backfill")]] } : {}),
      },
      ...extra,
    ],
    steps: [
      {
        id: id("dig"),
        name: called(sizes.shored ? "dig and shore as it goes down" : "dig"),
        place: dig,
        work: digWork(given, sizes),
        hands: 2,
        notAlone: true,
        reaches: [{ place: dig, need: machine ? "machine" : "person" }],
        puts: [id("hole"), ...extra.map((piece) => piece.id)],
        ...(machine ? { alone: [id("trench")] } : {}),
        ...(sizes.shored ? { needs: [id("shores-hired")] } : {}),
        cautions: cautionsOf(given, sizes),
        notes: `${formatLength(sizes.long_mm, given.units)} long, ${formatLength(sizes.wide_mm, given.units)} wide at the bottom, ${formatLength(sizes.deep_mm, given.units)} deep.`,
      },
    ],
    deliveries: sizes.shored ? [ordered(given, "shores-hired", "trench shoring, hired", 5)] : [],
    bookings: machine
      ? [
          {
            id: id("excavator"),
            name: called("small excavator, hired"),
            step: id("dig"),
            calendar: yard,
            lead: { is: `3 days of ${yard}`, from: "own guess" },
            booked: false,
          },
        ]
      : [],
  };
}

/** Fills the trench for good, shoring and ladder coming out as the fill rises. `share` of the trench is filled here. */
export function filled(given: Given, sizes: TrenchSizes, share: number, on: readonly string[]): Lists {
  const { id, called } = namer(given);
  const out = [...(sizes.shored ? [id("shoring")] : []), ...(sizes.ladder ? [id("ladder")] : [])];
  return {
    pieces: [{ id: id("backfill"), name: called("backfill"), sort: "earth", fills: [id("trench")] }],
    steps: [
      {
        id: id("fill"),
        name: called("backfill in layers"),
        place: id("trench"),
        work: given.hours("fill", sizes.bank_m3 * share, 2),
        hands: 2,
        ...(sizes.ladder ? { notAlone: true } : {}),
        reaches: [{ place: given.common("ground") }],
        puts: [id("backfill")],
        takes: out,
        leansOn: on.map((piece) => ({ piece })),
        tools: ["rammer or plate compactor"],
        cautions: sizes.shored
          ? ["Shoring comes out from the bottom up as the fill rises, from above, never with somebody between bare sides."]
          : ["No stones on pipe or conduit; the first layer by hand."],
      },
    ],
  };
}

/** The trench in the drawing: open while it is open, then filled. */
export function trenchSolid(given: Given, sizes: TrenchSizes): Lists {
  const { id } = namer(given);
  const { answers, units, name } = given;
  const length = (mm: number) => formatLength(mm, units);
  return {
    solids: [
      {
        id: id("solid"),
        name,
        shape: "box",
        at: { x: answers.written("right"), y: answers.written("back"), z: length(-sizes.deep_mm) },
        size: { long: length(sizes.long_mm), wide: length(sizes.wide_mm), high: length(sizes.deep_mm) },
        pieces: [id("backfill")],
        places: [id("trench")],
      },
    ],
  };
}

/** Deep sides stand or slide by what the soil is: somebody competent has to say. */
export const soilUnknown = (given: Given, sizes: TrenchSizes): readonly Unknown[] =>
  sizes.shored || sizes.sloped ? unsaid(given, "says-soil", "trench-soil") : [];

/** The trench as others may join it. */
export function trenchOffer(part: Part, answers: Answers): Offer {
  return {
    kind: "trench",
    part: part.id,
    name: part.name,
    place: `${part.id}-trench`,
    piece: `${part.id}-hole`,
    pourStep: "",
    at_mm: { x: answers.length_mm("right"), y: answers.length_mm("back"), z: -answers.length_mm("deep") },
    size_mm: { long: answers.length_mm("long"), wide: answers.length_mm("wide") },
    starters: false,
  };
}
