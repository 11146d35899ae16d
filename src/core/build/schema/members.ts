import * as v from "valibot";
import { cements } from "./pours";
import * as s from "./scalars";

const from = v.optional(v.string());
const maybe = v.optional;

export const weekdays = ["sun", "mon", "tue", "wed", "thu", "fri", "sat"] as const;
export const passages = ["sight", "hand", "arm", "hose", "person", "unit", "machine"] as const;
export const stepSorts = ["work", "embed", "check", "photograph", "inspection", "pour", "office"] as const;
export const pieceSorts = ["concrete", "earth", "form", "shore", "brace", "scaffold", "hole", "cover", "other"] as const;

const windows = v.array(s.window);
const days = maybe(windows);

export const calendar = v.looseObject({
  id: s.id,
  name: maybe(s.line),
  week: maybe(v.looseObject({ sun: days, mon: days, tue: days, wed: days, thu: days, fri: days, sat: days })),
  off: maybe(v.array(s.date)),
  extra: maybe(v.record(v.string(), windows)),
  holidays: maybe(s.line),
  daylightOnly: maybe(s.yes),
  cutOff: maybe(s.timeOfDay),
  surcharge: maybe(s.line),
  minimumOrder: maybe(s.line),
});

export const person = v.looseObject({
  id: s.id,
  name: maybe(s.line),
  calendar: maybe(s.ref),
  roles: maybe(s.lines),
  daysOff: maybe(v.looseObject({ budget: maybe(s.wholeIn("daysOff")), spent: maybe(v.array(s.date)) })),
  away: maybe(v.array(s.date)),
});

export const equipment = v.looseObject({ id: s.id, name: maybe(s.line), number: maybe(s.wholeIn("equipment")) });

export const stock = v.looseObject({
  id: s.id,
  name: maybe(s.line),
  unit: maybe(s.line),
  inHand: maybe(s.numberIn("number")),
  yields: maybe(s.volume),
});

const need = maybe(v.picklist(passages));
const aim = { place: s.ref, need, depth: maybe(s.length), piece: maybe(s.ref) };

const way = v.looseObject({
  id: s.id,
  name: maybe(s.line),
  passes: maybe(v.array(v.picklist(passages))),
  depth: maybe(s.length),
  opening: maybe(v.looseObject({ wide: s.length, high: s.length })),
  longest: maybe(s.length),
  bears: maybe(s.mass),
  through: maybe(v.union([s.ref, v.looseObject(aim)])),
});

export const place = v.looseObject({
  id: s.id,
  name: maybe(s.line),
  room: maybe(s.wholeIn("people")),
  below: maybe(s.refs),
  side: maybe(s.line),
  level: maybe(s.numberIn("level")),
  layerOf: maybe(s.ref),
  elevation: maybe(
    v.looseObject({ x: s.coordinate, y: s.coordinate, wide: s.length, high: s.length, shape: maybe(v.picklist(["box", "arch", "gable"])) }),
  ),
  ways: maybe(v.array(way)),
});

export const reach = v.union([v.looseObject(aim), v.looseObject({ any: v.array(v.looseObject(aim)) })]);
const reaches = maybe(v.array(reach));
const counted = { of: s.ref, number: maybe(s.numberIn("number")) };

export const piece = v.looseObject({
  id: s.id,
  name: maybe(s.line),
  sort: maybe(v.picklist(pieceSorts)),
  fromStart: maybe(s.yes),
  goesAfter: maybe(s.amount),
  closes: maybe(v.array(s.wayRef)),
  fills: maybe(s.refs),
  makes: maybe(v.array(s.wayRef)),
  heldBy: maybe(v.array(s.refs)),
  holdsItself: maybe(v.union([s.yes, s.amount])),
  off: reaches,
  uses: maybe(v.array(v.looseObject({ ...counted, loss: maybe(s.numberIn("number")) }))),
  size: maybe(v.looseObject({ long: s.length, wide: s.length, thick: s.length })),
  weight: maybe(s.mass),
  from,
});

const work = v.union([s.time, v.looseObject({ low: s.time, likely: s.time, high: s.time, from })]);

export const step = v.looseObject({
  id: s.id,
  name: maybe(s.line),
  sort: maybe(v.picklist(stepSorts)),
  place: maybe(s.ref),
  work: maybe(work),
  hands: maybe(v.union([s.wholeIn("people"), v.array(v.looseObject({ role: s.line, number: maybe(s.wholeIn("people")) }))])),
  notAlone: maybe(s.yes),
  calendar: maybe(s.ref),
  unbroken: maybe(s.yes),
  reaches,
  puts: maybe(s.refs),
  takes: maybe(s.refs),
  closes: maybe(v.array(s.wayRef)),
  leansOn: maybe(v.array(v.looseObject({ piece: s.ref, once: maybe(s.amount) }))),
  alone: maybe(s.refs),
  after: maybe(s.refs),
  needs: maybe(s.refs),
  equipment: maybe(v.array(v.looseObject(counted))),
  notBefore: maybe(s.moment),
  deadline: maybe(s.moment),
  fixed: maybe(s.moment),
  weather: maybe(v.looseObject({ lowest: maybe(s.temperature), highest: maybe(s.temperature), wind: maybe(s.speed), dry: maybe(s.yes) })),
  tools: maybe(s.lines),
  materials: maybe(s.lines),
  cautions: maybe(s.lines),
  notes: maybe(s.line),
  holdPoint: maybe(v.looseObject({ places: s.refs })),
  trial: maybe(v.looseObject({ rounds: maybe(s.wholeIn("rounds")), gap: maybe(s.amount), decides: maybe(s.refs), what: maybe(s.line) })),
  pour: maybe(v.looseObject({ strength: s.pressure, cement: maybe(v.picklist(cements)) })),
  left: maybe(s.time),
  done: maybe(v.looseObject({ start: s.moment, finish: s.moment })),
  from,
});

const end = maybe(v.picklist(["start", "finish"]));
const linking = {
  from: s.ref,
  to: s.ref,
  fromEnd: end,
  toEnd: end,
  least: maybe(s.amount),
  most: maybe(s.amount),
  visits: maybe(v.looseObject({ every: s.time, lasts: s.time, who: maybe(s.line), for: maybe(s.line) })),
  why: maybe(s.line),
};
export const wait = v.looseObject({ id: s.id, name: maybe(s.line), ...linking });

export const choice = v.looseObject({
  id: s.id,
  name: maybe(s.line),
  either: v.array(
    v.looseObject({ name: maybe(s.line), waits: v.array(v.looseObject({ id: maybe(s.id), name: maybe(s.line), ...linking })) }),
  ),
});

export const delivery = v.looseObject({
  id: s.id,
  name: maybe(s.line),
  calendar: maybe(s.ref),
  promised: maybe(s.moment),
  lead: maybe(s.amount),
  ordered: maybe(s.yes),
  brings: maybe(v.array(v.looseObject(counted))),
  notes: maybe(s.line),
});

export const booking = v.looseObject({
  id: s.id,
  name: maybe(s.line),
  step: s.ref,
  calendar: maybe(s.ref),
  date: maybe(s.moment),
  lead: maybe(s.amount),
  booked: maybe(s.yes),
});

export const group = v.looseObject({
  id: s.id,
  name: maybe(s.line),
  count: s.wholeIn("copies"),
  members: v.array(s.id),
  differences: maybe(v.record(v.string(), v.record(v.string(), v.record(v.string(), v.unknown())))),
});
