import { formatLength } from "../../base";
import { lengthAsk } from "../asks";
import type { Answers, Ask, Given, KeyedOffer, Unknown } from "../kit";
import { saidAsk, unsaid } from "../said";
import { type Lists, namer } from "../together";

/** What a timber part stands on, and how it is bolted down. */
export interface Base {
  /** Where one works on it: the open ground where the build offers nothing. */
  readonly place: string;
  /** Every place that must be got at, where it stands on several. */
  readonly places: readonly string[];
  /** Holes at its foot that are still open: what sets its feet gets at them there. */
  readonly holes: readonly { readonly place: string }[];
  /** Concrete under it; false: somebody else's, or the bare ground. */
  readonly stands: boolean;
  /** What leans on it does so once the concrete is strong enough to be walked on, drilled and loaded with timber. */
  readonly lean: readonly { readonly piece: string; readonly once?: string }[];
  readonly at_mm: { readonly x: number; readonly y: number; readonly z: number };
  /** The form that bolts can still be set in; null: anchors are drilled in afterwards. */
  readonly cast: KeyedOffer | null;
}

export const baseAsks: readonly Ask[] = [
  {
    key: "base",
    label: "Stands on",
    kind: "joins",
    offers: ["walks"],
    least: 0,
    most: 1,
    // A floor, and no flight of steps.
    usually: ({ size_mm }) => Math.min(size_mm.long, size_mm.wide) >= 1500,
  },
  {
    key: "each",
    label: "Or on each of these",
    help: "Footings, piers, columns or walls under posts or beams.",
    kind: "joins",
    offers: ["bears", "top"],
    least: 0,
    most: 12,
    when: (answers) => answers.joins("base").length === 0,
  },
  {
    key: "bolts",
    label: "Anchor bolts cast into",
    help: "A form that is still to be poured. None: anchors are drilled in later.",
    kind: "joins",
    offers: ["cast"],
    least: 0,
    most: 1,
  },
  lengthAsk("right", "Its middle, right of the middle of that", "0 ft", "0 m", -30_000, 30_000),
  lengthAsk("back", "Its middle, behind the middle of that", "0 ft", "0 m", -30_000, 30_000),
];

/** Share of its strength at which timber work starts on concrete: common practice, no source. A load that carries people waits for the pour's own removals. */
const workOn_percent = 50;

/** One works on a floor or around a head; what lies in the ground is filled by its own concrete, and one works from the ground. */
const placeOn = (given: Given, on: KeyedOffer): string => (on.kind === "bears" ? given.common("ground") : on.place);

const unique = (ids: readonly string[]): readonly string[] => [...new Set(ids)].filter((id) => id !== "");

/** One floor or slab, or where there is none each footing, pier, column or wall. */
export const standsOn = (answers: Answers): readonly KeyedOffer[] =>
  answers.joins("base").length > 0 ? answers.joins("base") : answers.joins("each");

/** What a part stands on: one floor, or several footings, piers and columns of which the first gives the height. */
export function baseOf(given: Given, on: readonly KeyedOffer[] = standsOn(given.answers)): Base {
  const { answers } = given;
  const places = unique(on.map((one) => placeOn(given, one)));
  const ground = given.common("ground");
  const lean = unique(on.map(({ piece }) => piece)).map((piece) => {
    const { pourStep } = on.find((one) => one.piece === piece) as KeyedOffer;
    return { piece, ...(pourStep === "" ? {} : { once: `${workOn_percent} % of ${pourStep}` }) };
  });
  const cast = answers.joins("bolts")[0];
  return {
    place: places[0] ?? ground,
    places: places.length > 0 ? places : [ground],
    holes: unique(on.map(({ hole }) => hole ?? "")).map((place) => ({ place })),
    stands: lean.length > 0,
    lean,
    at_mm: middleOf(answers, on),
    // Bolts in another part's concrete would hold nothing here.
    cast: cast !== undefined && on.some(({ part }) => part === cast.part) ? cast : null,
  };
}

/** Middle of all it stands on, moved as answered, at the height of the first. */
export function middleOf(answers: Answers, on: readonly KeyedOffer[]): Base["at_mm"] {
  const mean = (axis: "x" | "y") => (on.length === 0 ? 0 : on.reduce((sum, { at_mm }) => sum + at_mm[axis], 0) / on.length);
  return { x: mean("x") + answers.length_mm("right"), y: mean("y") + answers.length_mm("back"), z: on[0]?.at_mm.z ?? 0 };
}

/** Said wherever timber first loads concrete. */
export const loadCautions = (base: Base): readonly string[] =>
  base.stands
    ? [
        `Begun at ${workOn_percent} % of its strength (common practice, no source). What it may carry, and from when, is for whoever designed it to say; while it stands on shores, these carry the timber too.`,
      ]
    : [];

/** Bolts: set in the form before it is poured, or drilled in and held until it is. Nothing where there is no concrete. */
export function bolted(given: Given, base: Base, count: number, work: string): Lists {
  const { id, called } = namer(given);
  if (!base.stands) return {};
  const bolts = { id: id("bolts"), name: called("anchor bolts"), sort: "other" };
  const spacing = formatLength(given.units === "us" ? 1828.8 : 1800, given.units);
  if (base.cast) {
    return {
      pieces: [bolts],
      steps: [
        {
          id: id("set-bolts"),
          name: called("jig and anchor bolts into the form"),
          sort: "embed",
          place: base.cast.place,
          work: given.hours("starters", count),
          reaches: [{ place: base.cast.place, need: "arm" }],
          puts: [id("bolts")],
          materials: [`${count} anchor bolts, nuts, washers`],
          notes: `Within ${formatLength(given.units === "us" ? 304.8 : 300, given.units)} of every end, at most ${spacing} apart, threads taped; size and number are the drawing's.`,
        },
      ],
    };
  }
  return {
    pieces: [bolts],
    steps: [
      {
        id: id("drill-anchors"),
        name: called("drill and set anchors"),
        place: work,
        work: given.hours("anchor", count, 2),
        hands: 2,
        reaches: [{ place: work }, ...base.holes],
        puts: [id("bolts")],
        leansOn: base.lean,
        materials: [`${count} anchors, as their sheet says`],
        cautions: [
          "Drilling concrete makes silica dust: water or a vacuum, and a mask. Missed bars are not cut; depth, edge and strength are the sheet's.",
        ],
      },
    ],
  };
}

export const baseRates = ["starters", "anchor"] as const;

export const sizeAsks: readonly Ask[] = [
  saidAsk("says-sizes", "Sizes of posts, beams, studs and rafters"),
  saidAsk("says-load", "Snow and wind that it must stand"),
];

/** What nobody has said of the timber: what it stands on, its sizes, its loads. */
export const timberUnknown = (given: Given, base: Base): readonly Unknown[] => [
  ...baseUnknown(given, base),
  ...unsaid(given, "says-sizes", "timber-sizes"),
  ...unsaid(given, "says-load", "roof-load"),
];

/** Whether the base says nothing that carries: then somebody has to. */
const baseUnknown = (given: Given, base: Base): readonly Unknown[] => (!base.stands ? [{ code: "stands-on", part: given.part }] : []);
