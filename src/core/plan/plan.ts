import type { Access, Closing } from "../access";
import type { ElapsedMinute, Finding } from "../base";

/**
 * Dates for every step and delivery, and why. Pure data: the same build gives the same bytes. Positions are those of `build.steps`,
 * `build.deliveries`, `build.places`, `build.pieces`; times are minutes since the build's epoch.
 */
export interface Plan {
  readonly engine: string;
  readonly rung: number;
  /**
   * planned: dates for all. no-order: no order exists. no-dates: orders exist, none has dates. not-found: people, stock or room stood in the way, or the
   * work allowed was spent first; nothing is proved.
   */
  readonly status: "planned" | "no-order" | "no-dates" | "not-found";
  /** Ids of the steps and of the deliveries, and local date of the build's first day: what a comparison with another plan needs. */
  readonly ids: readonly string[];
  readonly deliveryIds?: readonly string[];
  readonly buildStart: string;
  readonly findings: readonly Finding[];
  readonly access: Access;
  readonly steps: readonly StepDates[];
  readonly deliveries: readonly DeliveryDates[];
  readonly bookings: readonly BookingDates[];
  readonly finish: ElapsedMinute;
  /** Steps from first to last that set the finish, with what holds each to the one before. */
  readonly chain: readonly ChainLink[];
  readonly closings: readonly ClosingDate[];
  readonly stands: Stands;
  readonly days: readonly SiteDay[];
  readonly visits: readonly Visit[];
  /** Every least amount of `access.arcs` that runs in this plan, with when it lets go; drawn at that length. */
  readonly waits?: readonly WaitDates[];
  /** Minutes of work times people, over all steps. */
  readonly handMinutes: number;
  /** Assumptions the plan rests on, as codes ("plan.strength-at-20"). */
  readonly assumes: readonly string[];
}

export interface StepDates {
  readonly start: ElapsedMinute;
  readonly finish: ElapsedMinute;
  readonly earliestStart: ElapsedMinute;
  readonly latestStart: ElapsedMinute;
  readonly latestFinish: ElapsedMinute;
  /** Minutes on its own clock by which its finish can be later with nothing that matters moved. */
  readonly slack: number;
  readonly holder: Holder;
  readonly onChain: boolean;
  /** Running stretches of work between start and finish. */
  readonly pieces: readonly (readonly [ElapsedMinute, ElapsedMinute])[];
  readonly people: readonly string[];
}

/** The one thing that keeps a step from being earlier. `job` counts steps first, then deliveries. */
export type Holder =
  | { readonly kind: "start-of-build" }
  | { readonly kind: "wait"; readonly job: number; readonly row: number }
  | { readonly kind: "delivery"; readonly delivery: number }
  | { readonly kind: "people" | "equipment" | "room" | "alone"; readonly job: number; readonly of: string }
  | { readonly kind: "stock"; readonly job: number; readonly of: string }
  /** No window was long enough, or had people enough, since `after` was done (-1: since the build began); the chain goes on there. */
  | { readonly kind: "window"; readonly calendar: string; readonly after?: number }
  | { readonly kind: "not-before" | "fixed" | "booking" | "notice" | "resumes" | "done"; readonly date: ElapsedMinute }
  | { readonly kind: "on-purpose"; readonly job: number }
  /** It could be earlier with nothing gained by it, and stays on the date of the kept plan. */
  | { readonly kind: "kept"; readonly date: ElapsedMinute }
  /** It waits for the sake of what the build aims at. */
  | { readonly kind: "aim"; readonly date: ElapsedMinute };

export interface ChainLink {
  readonly job: number;
  readonly holder: Holder;
  /** When what holds it let go, and when it then started (a wait may end between site days). */
  readonly ready: ElapsedMinute;
}

export interface DeliveryDates {
  /** When it is on site; for one not yet promised, the latest that costs nothing. */
  readonly arrives: ElapsedMinute;
  readonly neededBy: ElapsedMinute;
  readonly firstStep: number;
  /** The last minute to order it at which the supplier is open. */
  readonly orderBy: ElapsedMinute | null;
  readonly slack: number;
}

export interface BookingDates {
  readonly at: ElapsedMinute;
  /** The last minute to book it at which somebody is there to be asked. */
  readonly bookBy: ElapsedMinute | null;
}

export interface ClosingDate extends Closing {
  readonly at: ElapsedMinute;
  readonly opensAgain: ElapsedMinute | null;
}

/** What stands, is usable and holds, as intervals; `never` where it does not end. */
export interface Stands {
  readonly pieces: readonly PieceSpan[];
  /** One list a place: in time order, covering the whole plan. open: some way in for a person, an arm or sight is usable. */
  readonly places: readonly (readonly PlaceState[])[];
  readonly stock: readonly { readonly of: string; readonly times: readonly ElapsedMinute[]; readonly left: readonly number[] }[];
}

export interface PieceSpan {
  readonly up: ElapsedMinute;
  readonly stands: ElapsedMinute;
  readonly gone: ElapsedMinute;
}

export interface PlaceState {
  readonly from: ElapsedMinute;
  readonly state: "open" | "closed" | "filled";
  /** The piece that brought this state about, -1 at the start. */
  readonly by: number;
  readonly usableWays: readonly string[];
}

export interface SiteDay {
  /** Local date. */
  readonly date: string;
  readonly from: ElapsedMinute;
  readonly to: ElapsedMinute;
  readonly steps: readonly number[];
  readonly deliveries: readonly number[];
  readonly closings: readonly number[];
  readonly peopleWanted: number;
  readonly peopleThere: number;
  readonly sunrise: ElapsedMinute | null;
  readonly sunset: ElapsedMinute | null;
  /** False for a weekday with only an inspection, a delivery or a visit. */
  readonly site: boolean;
}

export interface Visit {
  readonly wait: number;
  readonly from: number;
  readonly at: ElapsedMinute;
  readonly lasts: number;
  readonly who: string;
  readonly for: string;
}

/** Row of `access.arcs`; from the end it counts from until the instant its least amount is there. */
export interface WaitDates {
  readonly row: number;
  readonly from: ElapsedMinute;
  readonly ready: ElapsedMinute;
}

/** What moved between two plans of one build. */
export interface Comparison {
  readonly finishBefore: ElapsedMinute;
  readonly finishAfter: ElapsedMinute;
  /** Site days on which the usual calendar works between the two finishes; negative when gained. */
  readonly siteDaysLost: number;
  readonly moved: readonly Moved[];
  readonly stayed: number;
  /** Steps from the cause to the finish, as positions in the new build. */
  readonly through: readonly ChainLink[];
  readonly findings: readonly Finding[];
}

export interface Moved {
  readonly step: string;
  readonly startBefore: ElapsedMinute;
  readonly startAfter: ElapsedMinute;
  readonly siteDays: number;
  readonly holder: Holder;
}
