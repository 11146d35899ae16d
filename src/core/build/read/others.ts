import type { CalendarSpec, Equipment, Stock } from "../model";
import type { Member } from "../schema/document";
import { weekdays } from "../schema/members";
import { maybeAmount } from "./amounts";
import { isDate, maybeMoment, readDate, readTimeOfDay, readWindows } from "./dates";
import type { BookingDraft, DeliveryDraft, GroupDraft, PersonDraft } from "./drafts";
import { type Notes, shown } from "./notes";
import { spot, volume_m3 } from "./quantities";

const none: readonly never[] = [];
const asId = <T extends string>(id: string): T => id as T;

export function readCalendar(raw: Member<"calendars">, notes: Notes): CalendarSpec {
  const week = weekdays.map((day) => readWindows(spot(notes, "week", day), raw.week?.[day] ?? []));
  const extra = new Map(
    Object.entries(raw.extra ?? {}).map(([date, windows]) => {
      if (!isDate(date)) notes.say("build.date", "extra", { part: "", value: shown(date) });
      return [date, Array.isArray(windows) ? readWindows(spot(notes, "extra", date), windows) : []] as const;
    }),
  );
  const works = week.some((windows) => windows.length > 0) || [...extra.values()].some((windows) => windows.length > 0);
  if (!works && notes.findings.length === 0) notes.say("build.never-works", "week", {});
  return {
    id: asId(raw.id),
    name: raw.name ?? raw.id,
    week,
    off: (raw.off ?? []).map((date, i) => readDate(spot(notes, "off", String(i + 1)), date)),
    extra,
    holidays: raw.holidays ?? null,
    daylightOnly: raw.daylightOnly ?? false,
    cutOff_min: raw.cutOff === undefined ? null : readTimeOfDay(spot(notes, "cutOff"), raw.cutOff),
    surcharge: raw.surcharge ?? null,
    minimumOrder: raw.minimumOrder ?? null,
  };
}

export function readPerson(raw: Member<"people">, notes: Notes): PersonDraft {
  return {
    id: raw.id,
    name: raw.name ?? raw.id,
    calendar: raw.calendar ?? null,
    roles: raw.roles ?? none,
    daysOffSpent: (raw.daysOff?.spent ?? none).map((date, i) => readDate(spot(notes, "daysOff", `spent.${i + 1}`), date)),
    daysOffBudget: raw.daysOff?.budget ?? 0,
    away: (raw.away ?? none).map((date, i) => readDate(spot(notes, "away", `${i + 1}`), date)),
  };
}

export const readEquipment = (raw: Member<"equipment">): Equipment => ({
  id: asId(raw.id),
  name: raw.name ?? raw.id,
  number: raw.number ?? 1,
});

export const readStock = (raw: Member<"stock">, notes: Notes): Stock => ({
  id: asId(raw.id),
  name: raw.name ?? raw.id,
  unit: raw.unit ?? "",
  inHand: raw.inHand ?? 0,
  yields_m3: raw.yields === undefined ? null : volume_m3(spot(notes, "yields"), raw.yields),
});

export function readDelivery(raw: Member<"deliveries">, notes: Notes): DeliveryDraft {
  return {
    id: raw.id,
    name: raw.name ?? raw.id,
    calendar: raw.calendar ?? null,
    promised: maybeMoment(spot(notes, "promised"), raw.promised),
    lead: maybeAmount(spot(notes, "lead"), raw.lead),
    ordered: raw.ordered ?? false,
    brings: (raw.brings ?? none).map((item) => ({ of: item.of, number: item.number ?? 1 })),
    notes: raw.notes ?? "",
  };
}

export function readBooking(raw: Member<"bookings">, notes: Notes): BookingDraft {
  return {
    id: raw.id,
    name: raw.name ?? raw.id,
    step: raw.step,
    calendar: raw.calendar ?? null,
    date: maybeMoment(spot(notes, "date"), raw.date),
    lead: maybeAmount(spot(notes, "lead"), raw.lead),
    booked: raw.booked ?? false,
  };
}

export function readGroup(raw: Member<"groups">, notes: Notes): GroupDraft {
  const differences = new Map<number, Map<string, Readonly<Record<string, unknown>>>>();
  for (const [copy, members] of Object.entries(raw.differences ?? {})) {
    const number = /^[1-9]\d{0,3}$/.test(copy) ? Number(copy) : 0;
    if (number < 1 || number > raw.count) {
      notes.say("build.unknown-id", "differences", { part: "", sort: "copy", value: shown(copy), nearest: "" });
    } else differences.set(number, new Map(Object.entries(members)));
    for (const member of Object.keys(members)) {
      if (!raw.members.includes(member)) {
        notes.say("build.unknown-id", "differences", { part: copy, sort: "group-member", value: shown(member), nearest: "" });
      }
    }
  }
  return { id: raw.id, name: raw.name ?? raw.id, count: raw.count, members: raw.members, differences };
}
