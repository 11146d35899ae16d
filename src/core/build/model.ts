import type { CalendarId } from "../base";
import type { LocalMoment } from "./model/amounts";
import type { Part, Solid } from "./model/parts";
import type { Pour, PressureDocument } from "./model/pours";
import type { Booking, CalendarSpec, Delivery, Equipment, Person, Site, Stock } from "./model/site";
import type { Choice, Step, Wait } from "./model/steps";
import type { Group, Piece, Place } from "./model/structure";

export type * from "./model/amounts";
export type * from "./model/forms";
export type * from "./model/parts";
export type * from "./model/pours";
export type * from "./model/site";
export type * from "./model/steps";
export type * from "./model/structure";

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
  /** Whatever is not done yet starts no earlier than this; null: from the start. */
  readonly resumes: LocalMoment | null;
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
  readonly pours: readonly Pour[];
  /** The structure drawing, and what was built from kits; neither is read by order or plan. */
  readonly solids: readonly Solid[];
  readonly parts: readonly Part[];
  /** Whose pressure formula the forms are judged by. */
  readonly pressure: PressureDocument;
  readonly kept: KeptPlan | null;
  readonly served?: Served | null;
  readonly aim?: Aim | null;
  readonly at: Indexes;
}

/** Who is served first where steps want the same people, places or things: taken over from a search, which went as far as `rung` units of work. */
export interface Served {
  readonly engine: string;
  readonly rung: number;
  /** Ids of steps; a step that is not among them comes just before what waits for it. */
  readonly steps: readonly string[];
  /** Steps that wait on purpose, for the sake of the build's aim, each until a local moment. */
  readonly from?: Readonly<Record<string, LocalMoment>>;
}

/**
 * What a plan is to be good at beside its finish. site-days: as few as can be. visits: as few of those who are asked to come. pours: in certain months, on days
 * that do not get colder than that. weekends: work spread evenly over the weeks.
 */
export interface Aim {
  readonly for: "site-days" | "visits" | "pours" | "weekends";
  /** 1 is January; empty: any. */
  readonly months: readonly number[];
  readonly coldest_C: number | null;
  /** How much later the finish may be for it. */
  readonly weeksLater: number;
}

/** Position of every id in its list. */
export interface Indexes {
  readonly place: ReadonlyMap<string, number>;
  readonly piece: ReadonlyMap<string, number>;
  readonly step: ReadonlyMap<string, number>;
  readonly pour: ReadonlyMap<string, number>;
  readonly calendar: ReadonlyMap<string, number>;
  readonly person: ReadonlyMap<string, number>;
  readonly equipment: ReadonlyMap<string, number>;
  readonly stock: ReadonlyMap<string, number>;
  readonly delivery: ReadonlyMap<string, number>;
  readonly booking: ReadonlyMap<string, number>;
}

/** The plan last kept on purpose; comparisons refer to it. Local moments, so that a change of start does not shift them. */
export interface KeptPlan {
  readonly engine: string;
  readonly rung: number;
  /** Local date on which it was kept; null where that was not written down. */
  readonly on?: string | null;
  readonly steps: ReadonlyMap<string, { readonly start: LocalMoment; readonly finish: LocalMoment }>;
  readonly finish: LocalMoment;
}
