import * as v from "valibot";
import * as m from "./members";
import { part, solid } from "./parts";
import { pour, pressureDocuments } from "./pours";
import * as s from "./scalars";

/** The version this program writes. */
export const version = 1;

const twelve = v.pipe(v.array(v.looseObject({ low: s.temperature, high: s.temperature })), v.length(12, "build.twelve-months"));

const day = v.looseObject({
  date: s.date,
  low: s.temperature,
  high: s.temperature,
  source: v.optional(v.picklist(["forecast", "measured"])),
});

export const aimKinds = ["site-days", "visits", "pours", "weekends"] as const;

/** Everything that is no list. */
export const head = v.looseObject({
  batterboard: v.number(),
  id: v.optional(s.id),
  name: v.optional(s.line),
  site: v.looseObject({
    zone: s.line,
    latitude: s.numberIn("latitude"),
    longitude: s.numberIn("longitude"),
    units: v.optional(v.picklist(["us", "metric"])),
    sides: v.optional(s.lines),
    usualTemperatures: v.optional(twelve),
    days: v.optional(v.array(day)),
  }),
  start: s.date,
  resumes: v.optional(s.moment),
  usual: v.optional(s.ref),
  pressure: v.optional(v.picklist(pressureDocuments)),
  aim: v.optional(
    v.looseObject({
      for: v.picklist(aimKinds),
      months: v.optional(v.array(s.wholeIn("month"))),
      coldest: v.optional(s.temperature),
      weeksLater: v.optional(s.wholeIn("weeksLater")),
    }),
  ),
  notes: v.optional(s.line),
});

/** The lists, in the order in which they are written. */
export const lists = {
  calendars: m.calendar,
  people: m.person,
  equipment: m.equipment,
  stock: m.stock,
  places: m.place,
  pieces: m.piece,
  steps: m.step,
  waits: m.wait,
  choices: m.choice,
  pours: pour,
  deliveries: m.delivery,
  bookings: m.booking,
  groups: m.group,
  solids: solid,
  parts: part,
} as const;

export type ListName = keyof typeof lists;
export const listNames = Object.keys(lists) as readonly ListName[];

export const kept = v.looseObject({
  engine: s.line,
  rung: v.number(),
  on: v.optional(s.date),
  finish: s.moment,
  steps: v.record(v.string(), v.tuple([s.moment, s.moment])),
});

export const served = v.looseObject({
  engine: s.line,
  rung: v.pipe(v.number(), v.integer("build.whole"), v.minValue(0)),
  steps: s.refs,
  from: v.optional(v.record(v.string(), s.moment)),
});

const several = <S extends v.GenericSchema>(member: S) => v.optional(v.array(member));

/** The whole document: what the published schema is made from. The order of keys here is the order in which they are written. */
export const document = v.looseObject({
  ...head.entries,
  calendars: v.array(m.calendar),
  people: several(m.person),
  equipment: several(m.equipment),
  stock: several(m.stock),
  places: several(m.place),
  pieces: several(m.piece),
  steps: several(m.step),
  waits: several(m.wait),
  choices: several(m.choice),
  pours: several(pour),
  deliveries: several(m.delivery),
  bookings: several(m.booking),
  groups: several(m.group),
  solids: several(solid),
  parts: several(part),
  kept: v.optional(kept),
  served: v.optional(served),
});
export type Member<L extends ListName> = v.InferOutput<(typeof lists)[L]>;
