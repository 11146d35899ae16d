import type {
  BookingId,
  CalendarId,
  ChoiceId,
  DeliveryId,
  EquipmentId,
  GroupId,
  PersonId,
  PieceId,
  PlaceId,
  StepId,
  StockId,
  WaitId,
} from "../base";

/**
 * The build as every room reads it: parsed, units converted, groups written out as numbered copies, references checked.
 * Lengths in mm, masses in kg, amounts of time in whole minutes. Lists keep document order; ids are looked up in `at`.
 */
export interface Build {
  readonly id: string;
  readonly name: string;
  readonly site: Site;
  /** Local date of the first day, "2027-03-06". Its local midnight is minute 0. */
  readonly start: string;
  /** The calendar a step works on when it names none. */
  readonly usual: CalendarId;
  readonly calendars: readonly CalendarSpec[];
  readonly people: readonly Person[];
  readonly equipment: readonly Equipment[];
  readonly stock: readonly Stock[];
  readonly places: readonly Place[];
  readonly pieces: readonly Piece[];
  readonly steps: readonly Step[];
  readonly waits: readonly Wait[];
  readonly choices: readonly Choice[];
  readonly deliveries: readonly Delivery[];
  readonly bookings: readonly Booking[];
  readonly groups: readonly Group[];
  readonly kept: KeptPlan | null;
  readonly at: Indexes;
}

/** Position of every id in its list. */
export interface Indexes {
  readonly place: ReadonlyMap<string, number>;
  readonly piece: ReadonlyMap<string, number>;
  readonly step: ReadonlyMap<string, number>;
  readonly calendar: ReadonlyMap<string, number>;
  readonly person: ReadonlyMap<string, number>;
  readonly equipment: ReadonlyMap<string, number>;
  readonly stock: ReadonlyMap<string, number>;
  readonly delivery: ReadonlyMap<string, number>;
  readonly booking: ReadonlyMap<string, number>;
}

export interface Site {
  /** IANA time zone. */
  readonly zone: string;
  /** Degrees, north and east positive. */
  readonly latitude: number;
  readonly longitude: number;
  readonly units: "us" | "metric";
  /** Names of sides, for drawing only: "uphill", "inside", "shop". */
  readonly sides: readonly string[];
  /** Usual low and high of each month, degrees Celsius, January first; null where not given. */
  readonly usualTemperatures_C: readonly { readonly low: number; readonly high: number }[] | null;
}

/** Where a figure comes from. */
export type Source = "drawing" | "product sheet" | "inspector" | "supplier" | "own guess" | "measured" | "code" | string;

/** Minutes since local midnight, end exclusive. */
export interface DayWindow {
  readonly from_min: number;
  readonly to_min: number;
}

export interface CalendarSpec {
  readonly id: CalendarId;
  readonly name: string;
  /** Windows of each weekday, Sunday first. */
  readonly week: readonly (readonly DayWindow[])[];
  /** Local dates ("2027-04-02") that are off, and dates with windows of their own (an empty list is off too). */
  readonly off: readonly string[];
  readonly extra: ReadonlyMap<string, readonly DayWindow[]>;
  /** Names of holiday tables ("us-federal") and single dates are resolved where intervals are made. */
  readonly holidays: string | null;
  readonly daylightOnly: boolean;
  /** For offices and suppliers: a request made after this minute of the day counts as made on their next day. */
  readonly cutOff_min: number | null;
  readonly surcharge: string | null;
  readonly minimumOrder: string | null;
}

export interface Person {
  readonly id: PersonId;
  readonly name: string;
  readonly calendar: CalendarId;
  /** Empty: ordinary hands only. Everybody can be asked for as "hands". */
  readonly roles: readonly string[];
  /** Local dates already spent as days off work, on which this person is on site all of the site's usual day. */
  readonly daysOffSpent: readonly string[];
  readonly daysOffBudget: number;
}

export interface Equipment {
  readonly id: EquipmentId;
  readonly name: string;
  readonly number: number;
}

export interface Stock {
  readonly id: StockId;
  readonly name: string;
  readonly unit: string;
  readonly inHand: number;
}

/** What must get through a way or to a place. */
export type Passage =
  | { readonly kind: "sight" }
  | { readonly kind: "hand"; readonly depth_mm: number }
  | { readonly kind: "arm"; readonly depth_mm: number }
  | { readonly kind: "hose" }
  | { readonly kind: "person" }
  | {
      readonly kind: "unit";
      readonly long_mm: number;
      readonly wide_mm: number;
      readonly thick_mm: number;
      readonly mass_kg: number;
      readonly piece: PieceId | null;
    }
  | { readonly kind: "machine" };

export type PassageKind = Passage["kind"];

/**
 * A way into a place. `passes` lists kinds; person lets pass sight, hand, arm and hose at any depth, machine all that person does, arm what
 * a hand does to the same depth. hand and arm reach `depth_mm` at most. A unit passes an `opening` that its two smaller sides fit through.
 */
export interface Way {
  readonly id: string;
  /** "place.way" */
  readonly full: string;
  readonly name: string;
  readonly passes: readonly PassageKind[];
  readonly depth_mm: number | null;
  readonly opening_mm: { readonly wide: number; readonly high: number } | null;
  readonly longest_mm: number | null;
  readonly bears_kg: number | null;
  /** The place this way leads through, and what must get there (a person where not stated). */
  readonly through: { readonly place: PlaceId; readonly need: Passage } | null;
}

export interface Place {
  readonly id: PlaceId;
  readonly name: string;
  readonly ways: readonly Way[];
  /** People at once; null: no limit. */
  readonly room: number | null;
  readonly below: readonly PlaceId[];
  /** For drawing only: side, height order (higher is up), and the place whose lanes this one is bracketed with. */
  readonly side: string | null;
  readonly level: number;
  readonly layerOf: PlaceId | null;
  /** Its outline in the elevation, mm from the site's datum, y upwards; null: not drawn. */
  readonly elevation_mm: {
    readonly x: number;
    readonly y: number;
    readonly wide: number;
    readonly high: number;
    readonly shape: "box" | "arch" | "gable";
  } | null;
  readonly group: Membership | null;
}

export interface WayRef {
  readonly place: PlaceId;
  readonly way: string;
}

export interface Piece {
  readonly id: PieceId;
  readonly name: string;
  readonly fromStart: boolean;
  /** Goes by itself once this has passed since it was put up. */
  readonly goesAfter: Amount | null;
  readonly closes: readonly WayRef[];
  readonly fills: readonly PlaceId[];
  readonly makes: readonly WayRef[];
  /** Sets of pieces; each set can hold this one. Empty: nothing need hold it. */
  readonly heldBy: readonly (readonly PieceId[])[];
  /** Holds itself once it has this; without an amount it never does. */
  readonly holdsItself: Amount | null;
  /** Marked as holding itself without an amount: worth nothing, and said so. */
  readonly claimsToHoldItself: boolean;
  /** What taking it down must reach: its fasteners, and the way out for its own size. */
  readonly off: readonly Reach[];
  readonly uses: readonly StockUse[];
  readonly size_mm: { readonly long: number; readonly wide: number; readonly thick: number } | null;
  readonly mass_kg: number | null;
  /** concrete, earth, form, shore, brace, scaffold, hole, cover, other: for drawing and cautions only. */
  readonly sort: string;
  readonly from: Source | null;
  readonly group: Membership | null;
  /** Steps that put it up and take it down (positions in `steps`); -1 where there is none. */
  readonly up: number;
  readonly down: number;
}

export interface StockUse {
  readonly of: StockId | EquipmentId;
  readonly number: number;
  /** Not returned when the piece comes down. */
  readonly loss: number;
}

export interface Reach {
  /** Any one of these is enough. Usually one. */
  readonly any: readonly { readonly place: PlaceId; readonly need: Passage }[];
}

/** An amount on a clock. */
export interface Amount {
  readonly on: ClockRef;
  /** Whole minutes for elapsed and working, whole working days for days, thousandths of the specified strength for strength. */
  readonly amount: number;
  readonly text: string;
  readonly from: Source | null;
}

export type ClockRef =
  | { readonly kind: "elapsed" }
  | { readonly kind: "working"; readonly calendar: CalendarId }
  /** The office's days: 1 is "from their next day"; a request after their cut-off counts as made on their next day. */
  | { readonly kind: "days"; readonly calendar: CalendarId }
  | { readonly kind: "strength"; readonly pour: StepId };

export interface HandsNeed {
  /** "hands" is anybody. */
  readonly role: string;
  readonly number: number;
}

export type StepSort = "work" | "embed" | "check" | "photograph" | "inspection" | "pour" | "office";

export interface Step {
  readonly id: StepId;
  readonly name: string;
  readonly sort: StepSort;
  /** The lane it is drawn in. */
  readonly place: PlaceId | null;
  /** Minutes on its calendar with the people it asks for. */
  readonly work: { readonly low_min: number; readonly likely_min: number; readonly high_min: number };
  readonly hands: readonly HandsNeed[];
  readonly notAlone: boolean;
  readonly calendar: CalendarId;
  readonly unbroken: boolean;
  readonly reaches: readonly Reach[];
  readonly puts: readonly PieceId[];
  readonly takes: readonly PieceId[];
  readonly leansOn: readonly { readonly piece: PieceId; readonly once: Amount | null }[];
  readonly alone: readonly PlaceId[];
  readonly needs: readonly DeliveryId[];
  readonly equipment: readonly { readonly of: EquipmentId; readonly number: number }[];
  readonly notBefore: LocalMoment | null;
  readonly deadline: LocalMoment | null;
  readonly fixed: LocalMoment | null;
  readonly weather: {
    readonly lowest_C: number | null;
    readonly highest_C: number | null;
    readonly wind_km_h: number | null;
    readonly dry: boolean;
  } | null;
  readonly tools: readonly string[];
  readonly materials: readonly string[];
  readonly cautions: readonly string[];
  readonly notes: string;
  readonly holdPoint: { readonly places: readonly PlaceId[] } | null;
  /** `round` counts from 1; a trial in several rounds is as many steps, "id#1" and on. */
  readonly trial: { readonly rounds: number; readonly round: number; readonly decides: readonly StepId[]; readonly what: string } | null;
  readonly pour: { readonly strength_MPa: number; readonly cement: "I" | "III" } | null;
  readonly from: Source | null;
  readonly group: Membership | null;
}

/** "2027-06-26" or "2027-06-26T07:30", local at the site. */
export type LocalMoment = string;

/** `from` finishes (or starts) ... before `to` starts (or finishes). Least and most on one clock; visits while it runs. */
export interface Wait {
  readonly id: WaitId;
  readonly name: string;
  readonly from: StepId;
  readonly to: StepId;
  readonly fromEnd: "start" | "finish";
  readonly toEnd: "start" | "finish";
  readonly least: Amount | null;
  readonly most: Amount | null;
  readonly visits: { readonly every_min: number; readonly lasts_min: number; readonly who: string; readonly for: string } | null;
  readonly why: string;
  /** Written as a step's `after`, with no entry of its own. */
  readonly plain: boolean;
}

/** Either all waits of one alternative hold, or all of another. */
export interface Choice {
  readonly id: ChoiceId;
  readonly name: string;
  readonly either: readonly { readonly name: string; readonly waits: readonly Wait[] }[];
}

export interface Delivery {
  readonly id: DeliveryId;
  readonly name: string;
  /** The supplier's calendar. */
  readonly calendar: CalendarId;
  readonly promised: LocalMoment | null;
  readonly lead: Amount | null;
  readonly ordered: boolean;
  readonly brings: readonly { readonly of: StockId; readonly number: number }[];
  readonly notes: string;
}

/** An appointment for a step: a pump, an inspector. */
export interface Booking {
  readonly id: BookingId;
  readonly name: string;
  readonly step: StepId;
  readonly calendar: CalendarId;
  readonly date: LocalMoment | null;
  readonly lead: Amount | null;
  readonly booked: boolean;
}

export interface Group {
  readonly id: GroupId;
  readonly name: string;
  readonly count: number;
}

export interface Membership {
  readonly group: GroupId;
  /** 1-based. */
  readonly copy: number;
  /** Id of the member as written, before "#copy". */
  readonly written: string;
}

/** The plan last kept on purpose; comparisons refer to it. Local moments, so that a change of start does not shift them. */
export interface KeptPlan {
  readonly engine: string;
  readonly rung: number;
  readonly steps: ReadonlyMap<string, { readonly start: LocalMoment; readonly finish: LocalMoment }>;
  readonly finish: LocalMoment;
}
