import type { ElapsedMinute, Finding } from "../base";
import type { PressureDocument, Removal, Source } from "../build";
import type { CheckKind, MemberResult } from "../concrete";

export type { CheckKind } from "../concrete";

/**
 * What the concrete room's figures say of one pour of a build. Everything the Forms view and a pour's printed sheet show; positions are those of
 * `build.pours` and of its `elements`. Depths count down from the top of the concrete, heights up from the foot of the form.
 */
export interface PourSheet {
  readonly pour: number;
  readonly elements: readonly ElementSheet[];
  /** Null when an input leaves the range its figures are good for; `findings` name it. */
  readonly day: PourDay | null;
  /** Findings of this pour, the ones of its elements and of its day included. */
  readonly findings: readonly Finding[];
  /** No finding of severity "stop": nothing computed here says it would not hold. It is never a release: that is for someone qualified. */
  readonly ready: boolean;
}

export interface ElementSheet {
  readonly element: number;
  /** Of one; net of rebates. */
  readonly volume_m3: number;
  readonly plan_m2: number;
  readonly mass_kg: number;
  readonly formArea_m2: number;
  /** Null for what has no side of its own to press on (a slab on the ground cast against earth). */
  readonly pressure: Pressure | null;
  readonly form: FormSheet | null;
  readonly fixes: readonly Fix[];
}

/** Why full head is the design, in the order told: the first that holds is the sentence. */
export type WhyFullHead =
  | "no rate is held"
  | "short and small in plan"
  | "vibrated deep"
  | "slump"
  | "external vibration"
  | "pumped from the base"
  | "rises too fast"
  | "the formula is over it"
  | "outside the formula";

export interface PressureCase {
  /** m of rise in an hour; null where it plays no part. */
  readonly rise_m_h: number | null;
  readonly most_kPa: number;
  readonly most_psf: number;
  /** Down to here it is plain head. */
  readonly hydrostatic_mm: number;
  /** "full head", "(b)", "(c)", "CIRIA 108", "DIN 18218". */
  readonly formula: string;
  readonly why: readonly WhyFullHead[];
}

/** Both cases stand side by side; `design` is the one the form is judged by. */
export interface Pressure {
  readonly document: PressureDocument;
  readonly height_mm: number;
  readonly weight_kg_m3: number;
  readonly hose: PressureCase;
  readonly held: PressureCase | null;
  readonly design: "hose" | "held";
  /** Fastest rise at which the weakest member carries exactly what it may, by a formula that lowers the pressure; null where full head rules. */
  readonly fastest_m_h: number | null;
  /** How a chute, or a gang with buckets, is throttled where it would fill the form faster than anybody vibrates it: lift and minutes from one to the next. Null: it need not be. */
  readonly throttle: { readonly rise_m_h: number; readonly lift_mm: number; readonly every_min: number } | null;
  /** The stop rule that is printed, where a held rate is the design: pass, interval, who. */
  readonly act: { readonly pass_mm: number; readonly every_min: number; readonly who: string | null } | null;
}

export type MemberPart =
  | "sheathing"
  | "battens"
  | "bands"
  | "corner bolts"
  | "studs"
  | "wales"
  | "ties"
  | "strongbacks"
  | "joists"
  | "stringers"
  | "shores"
  | "mudsills"
  | "braces"
  | "brace feet"
  | "hold-downs"
  | "boards"
  | "stakes";

export interface MemberSheet {
  readonly part: MemberPart;
  /** What it is made of, as the builder wrote it ("2x4", "3/4"), and how many side by side. */
  readonly stuff: string;
  readonly pieces: number;
  /** Governing check of the worst place. */
  readonly of100: number;
  readonly governs: CheckKind;
  readonly result: MemberResult;
  /** Null where what gives first hangs on no span. */
  readonly largestSpan_mm: number | null;
  readonly span_mm: number | null;
  readonly load: { readonly value: number; readonly unit: "kPa" | "kN/m" | "kN" };
  /** Each of several at its height above the foot (bands, wales, ties), in that order; empty where all are alike. */
  readonly each: readonly {
    readonly at_mm: number;
    readonly from_mm: number;
    readonly to_mm: number;
    /** Its share to half way to its neighbours: they add up to the thrust. */
    readonly load_kN: number;
    /** What it is judged by: more than its share where battens or studs that run through leave more on it. */
    readonly most_kN: number;
    readonly of100: number;
    readonly governs: CheckKind;
  }[];
  /** Grade, carrying figure or section is a guess, or a value only known from memory. */
  readonly guessed: boolean;
  /** Documents the check follows. */
  readonly documents: readonly string[];
  readonly source: Source | null;
}

/** kN of a column's whole form, kN/m of a wall's. */
export type ByForm = number;

export interface FormSheet {
  readonly members: readonly MemberSheet[];
  /** Position in `members` of what gives first. */
  readonly first: number;
  /** Force of the fresh concrete on one face for its whole width (column) or for one metre (wall), kN or kN/m, by the diagram. */
  readonly thrust: number;
  readonly thrustAt_mm: number;
  readonly oneSided: boolean;
  /** Upward force on the form, its own weight against it, and what hold-downs carry; kN (column: all; wall: for each metre). */
  readonly lift: { readonly up: ByForm; readonly weight: ByForm | null; readonly held: ByForm; readonly needed: ByForm };
  /** Wind, or 100 lb/ft, or 2 % of the dead load: what the bracing is asked, kN/m. */
  readonly bracing_kN_m: number;
  /** Bands from the foot up that would do, where bands are asked for; mm. Null: none can. */
  readonly proposed_mm: readonly number[] | null;
}

/** One change of the form and what the most any member carries is after it, computed again. Cheapest first, slower placing last. */
export interface Fix {
  readonly kind:
    | "band more"
    | "bands as proposed"
    | "heavier bands"
    | "closer members"
    | "thicker sheathing"
    | "closer wales"
    | "stronger ties"
    | "closer ties"
    | "closer shores"
    | "brace shores"
    | "bigger mudsills"
    | "hold down"
    | "braces"
    | "bigger bolts"
    | "held rate";
  readonly part: MemberPart;
  readonly detail: Readonly<Record<string, string | number>>;
  readonly of100: number;
  readonly thenFirst: MemberPart;
  /** Where the change can be made in the document as it is. */
  readonly edits: readonly { readonly path: readonly string[]; readonly value?: unknown }[];
}

export interface PourDay {
  readonly net_m3: number;
  readonly order_m3: number;
  readonly waste_percent: number;
  readonly trucks: readonly { readonly load_m3: number; readonly after_min: number }[];
  /** Of placing, of waiting between columns and slab, of finishing, of striking off and washing up where nothing is floated; the step's length is their sum unless it is written. */
  readonly placing_min: number;
  readonly pause_min: number;
  readonly finishing_min: number;
  readonly clearing_min: number;
  readonly floatAfter_min: number;
  readonly coldJoint_min: number;
  readonly total_min: number;
  /** While it is placed; roles as in `PourRole`. */
  readonly hands: readonly { readonly role: string; readonly number: number }[];
  /** Of them so many come for this pour alone. */
  readonly helpers: number;
  /** Of them, so many float and trowel afterwards; 0 where nothing is floated. */
  readonly finishers: number;
  readonly evaporation: {
    readonly rate: number;
    readonly unit: "lb/ft2/h" | "kg/m2/h";
    readonly act: number;
    readonly protect: boolean;
  } | null;
  readonly aggregate: { readonly given_mm: number; readonly most_mm: number; readonly because: "bars" | "form" | "slab" } | null;
  readonly cement_kg: number | null;
  /** Of 94 lb of cement. */
  readonly sacks: number | null;
  /** Of the stock it is bought as, where one of it gives a known volume of concrete. */
  readonly bags: number | null;
}

/** When something may come off or go on, with every ground that was looked at. */
export interface RemovalSheet {
  readonly removal: Removal;
  readonly step: number;
  readonly planned: ElapsedMinute;
  /** Each ground and when it is met: table of least days, curve, 28 warm days, the drawing's days, shown by a test. */
  readonly grounds: readonly {
    readonly by: "table" | "curve" | "28 days" | "days" | "shown" | "12 h";
    readonly at: ElapsedMinute;
    readonly detail: Readonly<Record<string, string | number>>;
  }[];
  /** The ground that sets the date. */
  readonly governs: number;
  /** A hold until shown: it carries, and only days and curve speak for it. */
  readonly hold: boolean;
  readonly saidBy: Source | null;
}

/** A step that waits for the concrete by what it leans on, or by a wait of its own. */
export interface AlsoWaits {
  readonly step: number;
  readonly planned: ElapsedMinute;
  /** The amount as written ("50 % of slab-place", "24 h"). */
  readonly amount: string;
  readonly by: "leans" | "waits";
}

/** One pour after it is placed, with the plan's dates. */
export interface CureSheet {
  readonly pour: number;
  readonly placed: ElapsedMinute;
  readonly until: ElapsedMinute;
  /** Low and high of each local day from the day of the pour. */
  readonly days: readonly {
    readonly date: string;
    readonly from: ElapsedMinute;
    readonly low_C: number;
    readonly high_C: number;
    readonly source: "usual" | "forecast" | "measured";
  }[];
  /** Expected share of the specified strength, thousandths, at rising instants. */
  readonly expected: readonly { readonly at: ElapsedMinute; readonly share: number }[];
  /** At a constant 20 °C, for comparison. */
  readonly at20: readonly { readonly at: ElapsedMinute; readonly share: number }[];
  readonly shown: readonly { readonly at: ElapsedMinute; readonly share: number; readonly strength_MPa: number; readonly by: Source }[];
  readonly removals: readonly RemovalSheet[];
  /** Beside them: what steps and waits say themselves. */
  readonly also: readonly AlsoWaits[];
  /** `least`: what its document asks for, at 50 °F and above; `beside`: another document that asks for other days. */
  readonly wet: {
    readonly days: number;
    readonly until: ElapsedMinute;
    readonly document: string;
    readonly visits: number;
    readonly least: { readonly days: number; readonly document: string };
    readonly beside: { readonly days: number; readonly document: string } | null;
  };
  readonly cold: {
    readonly called: boolean;
    readonly lowest_C: number;
    readonly hold_C: number;
    readonly for_min: number | null;
    readonly drop_K: number;
    readonly given: boolean;
  };
  /** The last floating begins here; after the sun has gone it needs lights. */
  readonly floating: {
    readonly from: ElapsedMinute;
    readonly to: ElapsedMinute;
    readonly sunset: ElapsedMinute | null;
    readonly inDaylight: boolean;
  } | null;
  readonly findings: readonly Finding[];
}

/** One line of the shopping list. */
export interface Bought {
  readonly what: "concrete" | "cement sacks" | "plywood" | "lumber" | "bars" | "ties" | "fasteners" | "cover" | "other";
  /** Stock: its name; concrete and cover: the pour's; plywood: its thickness, lumber: its size, bars: their number, as written. */
  readonly name: string;
  /** Of one, where it is sold by length. */
  readonly long_mm: number | null;
  readonly needed: number;
  readonly inHand: number;
  /** Brought by deliveries that are ordered. */
  readonly ordered: number;
  /** Comes back from an earlier form in time. */
  readonly back: number;
  /** What is needed less what is in hand, ordered and coming back; never under 0. */
  readonly toBuy: number;
  readonly unit: string;
  /** Needed on site by (where something is to buy: from when what there is does not do), and order by; null where the plan has no date for it. */
  readonly neededBy: ElapsedMinute | null;
  readonly orderBy: ElapsedMinute | null;
  readonly for: readonly string[];
}
