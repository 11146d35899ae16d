import { formatLength } from "../../base";
import { lengthAsk } from "../asks";
import type { Answers, Ask, Given, KeyedOffer, Unknown } from "../kit";
import { saidAsk, unsaid } from "../said";
import { type Lists, namer } from "../together";

/** What a timber part stands on, and how it is bolted down. */
export interface Base {
  /** Where one works on it: the open ground where the build offers nothing. */
  readonly place: string;
  readonly piece: string | null;
  /** What leans on it does so once the concrete is strong enough to be walked on, drilled and loaded with timber. */
  readonly lean: readonly { readonly piece: string; readonly once?: string }[];
  readonly at_mm: { readonly x: number; readonly y: number; readonly z: number };
  /** The form that bolts can still be set in; null: anchors are drilled in afterwards. */
  readonly cast: KeyedOffer | null;
}

export const baseAsks: readonly Ask[] = [
  { key: "base", label: "Stands on", kind: "joins", offers: ["walks", "bears", "top"], least: 0, most: 1 },
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

export function baseOf(given: Given): Base {
  const { answers } = given;
  const on = answers.joins("base")[0];
  const place = on?.place ?? given.common("ground");
  const piece = on && on.piece !== "" ? on.piece : null;
  const at_mm = placeAt(answers, on);
  const lean = piece === null ? [] : [{ piece, ...(on?.pourStep ? { once: `${workOn_percent} % of ${on.pourStep}` } : {}) }];
  const cast = answers.joins("bolts")[0];
  // Bolts in another part's concrete would hold nothing here.
  return { place, piece, lean, at_mm, cast: cast && on && cast.part === on.part ? cast : null };
}

export function placeAt(answers: Answers, on: KeyedOffer | undefined): Base["at_mm"] {
  const at = on?.at_mm ?? { x: 0, y: 0, z: 0 };
  return { x: at.x + answers.length_mm("right"), y: at.y + answers.length_mm("back"), z: at.z };
}

/** Bolts: set in the form before it is poured, or drilled in and held until it is. Nothing where there is no concrete. */
export function bolted(given: Given, base: Base, count: number, work: string): Lists {
  const { id, called } = namer(given);
  if (base.piece === null) return {};
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
        reaches: [{ place: work }],
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
const baseUnknown = (given: Given, base: Base): readonly Unknown[] =>
  base.piece === null ? [{ code: "stands-on", part: given.part }] : [];
