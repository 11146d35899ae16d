import type { Range } from "../base";
import type { Answer, ListName, Part } from "../build";
import type { RateName } from "./rates";

/** A figure as it would be typed, in both systems; the build's units choose. */
export interface Usual {
  readonly us: string;
  readonly metric: string;
}

interface Asked {
  readonly key: string;
  /** What the builder is asked, a few words: "How high above the footing". */
  readonly label: string;
  /** One short sentence where the question alone may not be understood. */
  readonly help?: string;
  /** Left out of the form while this is false of the answers so far. */
  readonly when?: (answers: Answers) => boolean;
  /** What a part meant that was put in before this was asked; left out: what is usual. */
  readonly unasked?: Answer;
}

/** One question of a kit. Every question has an answer that is usual, so that a kit can be put in with none given. */
export type Ask =
  | (Asked & {
      readonly kind: "length";
      readonly usual: Usual;
      readonly range_mm: Range;
      /** The part of the range that is left by other answers. */
      readonly within_mm?: (answers: Answers) => Range;
    })
  | (Asked & { readonly kind: "amount"; readonly usual: string })
  | (Asked & { readonly kind: "number"; readonly usual: number; readonly range: Range; readonly unit?: string })
  | (Asked & { readonly kind: "choice"; readonly usual: string; readonly options: readonly Option[] })
  | (Asked & { readonly kind: "several"; readonly usual: readonly string[]; readonly options: readonly Option[] })
  | (Asked & { readonly kind: "yes"; readonly usual: boolean })
  | (Asked & { readonly kind: "text"; readonly usual: string })
  /** Parts already in the build that offer this; usual: as many of the newest that offer it as `most` allows. */
  | (Asked & {
      readonly kind: "joins";
      readonly offers: readonly OfferKind[];
      readonly least: number;
      readonly most: number;
      /** Which of them a builder would mean unasked: then only such as nothing stands on yet are usual, and none where there are none. */
      readonly usually?: (offer: Offer) => boolean;
    });

export interface Option {
  readonly value: string;
  readonly name: string;
}

/** What was answered, over what is usual; read by key. A key that the kit does not ask is our own bug and throws. */
export interface Answers {
  length_mm(key: string): number;
  /** A length as entered ("12 in"), to be written on in the document. */
  written(key: string): string;
  number(key: string): number;
  choice(key: string): string;
  several(key: string): readonly string[];
  yes(key: string): boolean;
  text(key: string): string;
  joins(key: string): readonly KeyedOffer[];
}

/**
 * What a part lets others do with it: bears (a footing or slab on which something stands), top (the head of a column, pier or wall), face (a side against which
 * something leans or is filled), walks (a floor one can work on), cast (a form open for sleeves, bolts and conduit), trench (an open trench), dry (a room that is closed to rain).
 */
export type OfferKind = "bears" | "top" | "face" | "walks" | "cast" | "trench" | "dry" | "scaffold";

/** Ids of members of the build, so that another part can reach, close, lean on and wait for them. */
export interface Offer {
  readonly kind: OfferKind;
  readonly part: string;
  readonly name: string;
  /** Where one works on it. */
  readonly place: string;
  /** The ground around it, which has to be clear of its own scaffold and braces before something is built around it; left out: nothing of the kind. */
  readonly clear?: string;
  /** The hole in which it lies, open until earth goes back: whatever works at its foot gets at it there. Left out: it lies in none. */
  readonly hole?: string;
  /** The ground over it once earth is back: what bears on the ground there waits for that. Left out: nothing was dug. */
  readonly firm?: string;
  /** What stands there and carries; "" where nothing does. */
  readonly piece: string;
  /** The step that pours it, and its pour; "" where it is not concrete. */
  readonly pourStep: string;
  /** Middle of the surface offered, from the datum, and its size. */
  readonly at_mm: { readonly x: number; readonly y: number; readonly z: number };
  readonly size_mm: { readonly long: number; readonly wide: number };
  /** Bars or bolts stand out of it and must be reached by what joins. */
  readonly starters: boolean;
}

/** A member of a list of the document, as it is written there. */
export type Written = Readonly<Record<string, unknown>> & { readonly id: string };

export interface Given {
  readonly answers: Answers;
  readonly units: "us" | "metric";
  /** What the builder calls it: "Column A". */
  readonly name: string;
  /** The part's id. Every member that a kit makes is named `${part}-...`, so that it can be found again. */
  readonly part: string;
  /**
   * The id of a member that kits share (open ground, an inspector's calendar, the plant, the lumber yard, a pump, roles), made the first time it is asked for.
   * The table of them is `common.ts`.
   */
  readonly common: (name: CommonName) => string;
  /**
   * `work` of a step: a rate of `rates.ts` for a quantity in the rate's metric unit, with so many hands at it (left out: one). An answer `rate.<name>` ("1 h 30 min"
   * for each unit shown) replaces the rate.
   */
  readonly hours: (rate: RateName, quantity: number, hands?: number) => WrittenWork;
}

/** Hours as `work` of a step takes them. */
export interface WrittenWork {
  readonly low: string;
  readonly likely: string;
  readonly high: string;
  readonly from: string;
}

export type CommonName =
  | "ground"
  /** Days on which concrete can come, worked through without a break. */
  | "pour-days"
  /**
   * Ground that is dug: a place with one way, `marked`, through `ground`. Every step that digs reaches it, so that what must be there before any digging (marks of
   * utilities, lines, a permit) makes that way, and marks that expire are used in time, with no link from one part to another.
   */
  | "dig"
  /** What is set to the lines looks along them: a place with one way, `strings`, that sight passes. Batter boards make it, and come down after all that needs it. */
  | "lines"
  | "store"
  | "inspector"
  | "utility-office"
  | "plant"
  | "lumber-yard"
  | "steel-yard"
  | "pump"
  | "electrician";

export interface Made {
  /** Members by list, in the order in which a builder would read them. */
  readonly lists: Partial<Readonly<Record<ListName, readonly Written[]>>>;
  /** What nobody has said yet and somebody has to: sentences are made in words, by code. */
  readonly unknown: readonly Unknown[];
}

/** An offer as a `joins` answer names it: "part/kind", or "part/kind/2" for the second of several of a part. */
export interface KeyedOffer extends Offer {
  readonly key: string;
}

/** What was answered, by the keys of the asks, as it stands in a part; `rate.<name>` replaces a rate. */
export type RawAnswers = Readonly<Record<string, Answer>>;

/** Something a kit cannot know: what the ground carries, what the bars must be, who stands for the strength of a soffit. */
export interface Unknown {
  readonly code: string;
  readonly part: string;
}

/** A structure kit: a few questions, and the members that follow. Pure: same answers, same members. A new one is one file and one test. */
export interface Kit {
  readonly id: string;
  readonly name: string;
  /** One sentence: what it puts in. */
  readonly what: string;
  readonly group: "before" | "ground" | "concrete" | "timber" | "around";
  readonly asks: readonly Ask[];
  /** Rates of `rates.ts` that its hours come from. */
  readonly rates: readonly RateName[];
  make(given: Given): Made;
  /** What a part made from it offers, from its id and answers alone. */
  offers(part: Part, answers: Answers): readonly Offer[];
}

export type { Answer };
