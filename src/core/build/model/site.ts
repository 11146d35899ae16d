import type { BookingId, CalendarId, DeliveryId, EquipmentId, PersonId, StepId, StockId } from "../../base";
import type { Amount, LocalMoment } from "./amounts";

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
  /** Single days, forecast or measured, that replace the usual ones; by rising local date. */
  readonly days_C: readonly {
    readonly date: string;
    readonly low: number;
    readonly high: number;
    readonly source: "forecast" | "measured";
  }[];
}

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
  /** Local dates on which this person is not there, whatever the calendar says. */
  readonly away: readonly string[];
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
  /** Concrete that one of it gives (a bag of dry mix); null for anything else. */
  readonly yields_m3: number | null;
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
