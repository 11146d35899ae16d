import type { CalendarId, StepId } from "../../base";

/** Where a figure comes from. */
export type Source = "drawing" | "product sheet" | "inspector" | "supplier" | "own guess" | "measured" | "code" | string;

/** "2027-06-26" or "2027-06-26T07:30", local at the site. */
export type LocalMoment = string;

/** An amount on a clock. */
export interface Amount {
  readonly on: ClockRef;
  /** Whole minutes for elapsed and working, whole working days for days, thousandths of the specified strength for strength; minutes for warm. */
  readonly amount: number;
  readonly text: string;
  readonly from: Source | null;
}

export type ClockRef =
  | { readonly kind: "elapsed" }
  | { readonly kind: "working"; readonly calendar: CalendarId }
  /** The office's days: 1 is "from their next day"; a request after their cut-off counts as made on their next day. */
  | { readonly kind: "days"; readonly calendar: CalendarId }
  | { readonly kind: "strength"; readonly pour: StepId }
  /** Minutes, not necessarily on end, during which the air around a pour is at 50 °F (10 °C) or above; counted from its finish like strength. */
  | { readonly kind: "warm"; readonly pour: StepId };
