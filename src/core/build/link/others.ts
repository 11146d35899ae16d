import { asId, type CalendarId } from "../../base";
import type { Booking, Delivery, KeptPlan, Person } from "../model";
import type { BookingDraft, DeliveryDraft, PersonDraft } from "../read/drafts";
import { linkMaybe } from "./amounts";
import { type Context, sayAt } from "./context";
import type { Speaker } from "./names";
import { linkHeld } from "./pieces";

const calendarOf = (ref: string | null, context: Context, speaker: Speaker): CalendarId =>
  ref === null ? context.usual : (context.names.one("calendar", ref, speaker, "calendar") ?? context.usual);

export function linkPerson(draft: PersonDraft, context: Context): Person {
  const calendar = calendarOf(draft.calendar, context, { list: "people", id: draft.id, copy: null });
  return { ...draft, id: asId(draft.id), calendar };
}

/** What was promised for a day before the build begins is not known to be there: it may be a slip of the pen. */
function checkStart(value: string | null, key: string, context: Context, speaker: Speaker): void {
  if (value !== null && value.slice(0, 10) < context.start)
    sayAt(context, speaker, key, "build.before-start", { value, start: context.start });
}

export function linkDelivery(draft: DeliveryDraft, context: Context): Delivery {
  const speaker: Speaker = { list: "deliveries", id: draft.id, copy: null };
  checkStart(draft.promised, "promised", context, speaker);
  return {
    ...draft,
    id: asId(draft.id),
    calendar: calendarOf(draft.calendar, context, speaker),
    lead: linkMaybe(draft.lead, context, speaker, "lead"),
    brings: draft.brings.flatMap((item, i) => {
      const of = linkHeld(item.of, context, speaker, "brings", String(i + 1));
      return of === null ? [] : [{ of, number: item.number }];
    }),
  };
}

export function linkBooking(draft: BookingDraft, context: Context): Booking {
  const speaker: Speaker = { list: "bookings", id: draft.id, copy: null };
  checkStart(draft.date, "date", context, speaker);
  return {
    ...draft,
    id: asId(draft.id),
    step: context.names.one("step", draft.step, speaker, "step") ?? asId(""),
    calendar: calendarOf(draft.calendar, context, speaker),
    lead: linkMaybe(draft.lead, context, speaker, "lead"),
  };
}

export interface RawKept {
  readonly engine: string;
  readonly rung: number;
  /** Local date on which it was kept. */
  readonly on?: string | undefined;
  readonly finish: string;
  readonly steps: Readonly<Record<string, readonly [string, string]>>;
}

export function linkKept(raw: RawKept): KeptPlan {
  const steps = new Map(Object.entries(raw.steps).map(([id, [start, finish]]) => [id, { start, finish }]));
  return { engine: raw.engine, rung: raw.rung, on: raw.on ?? null, finish: raw.finish, steps };
}
