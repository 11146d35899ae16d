import * as v from "valibot";
import { type Kind, type LimitName, limits, quantityPattern, writtenIdPattern } from "../../base";

const text = (pattern: RegExp, code: string) => v.pipe(v.string(), v.regex(pattern, code));

/** A message here is the code of the finding; `kind:` carries what kind of quantity was wanted. */
export const id = text(writtenIdPattern, "build.id");
/** An id of something else: a copy may be named. */
export const ref = text(/^[a-z][a-z0-9-]*(?:#[1-9][0-9]{0,3})?$/, "build.id");
/** A way (`place.way`) or a place, meaning all its ways. */
export const wayRef = text(/^[a-z][a-z0-9-]*(?:#[1-9][0-9]{0,3})?(?:\.[a-z][a-z0-9-]*)?$/, "build.id");
export const date = text(/^\d{4}-\d{2}-\d{2}$/, "build.date");
export const moment = text(/^\d{4}-\d{2}-\d{2}(?:[T ]\d{1,2}:\d{2})?$/, "build.moment");
export const timeOfDay = text(/^\d{1,2}:\d{2}$/, "build.time-of-day");
export const window = text(/^\d{1,2}:\d{2} ?[-–] ?\d{1,2}:\d{2}$/, "build.window");

const sourced = (is: v.GenericSchema<string>, code: string) => v.union([is, v.looseObject({ is, from: v.optional(v.string()) })], code);

const quantityOf = (kind: Kind) => sourced(text(quantityPattern[kind], `kind:${kind}`), `kind:${kind}`);
export const length = quantityOf("length");
export const mass = quantityOf("mass");
export const temperature = quantityOf("temperature");
export const speed = quantityOf("speed");
export const pressure = quantityOf("pressure");
export const time = quantityOf("time");
export const volume = quantityOf("volume");
export const volumeRate = quantityOf("volumeRate");
export const density = quantityOf("density");
export const massPerLength = quantityOf("massPerLength");
export const force = quantityOf("force");
/** Run to rise of a battered face, "1:8"; below zero where a face leans out towards the top. */
export const ratio = text(/^-?\d+(?:\.\d+)?:\d+(?:\.\d+)?$/, "kind:ratio");

const signed = (kind: Kind) => sourced(text(new RegExp(quantityPattern[kind].source.replace("^", "^-?")), `kind:${kind}`), `kind:${kind}`);
export const coordinate = signed("length");
/** With a minus let through to the reader, who tells it with the range that it leaves. */
export const published = {
  length: coordinate,
  speed: signed("speed"),
  volumeRate: signed("volumeRate"),
  density: signed("density"),
};

const reference = "[a-z][a-z0-9-]*(?:#[1-9][0-9]{0,3})?";
const bare = (pattern: RegExp): string => pattern.source.slice(1, -1);
/** Time; warm days or hours after a pour; days of an office or a supplier; a share or a stress of a pour's strength. */
export const amountPattern = new RegExp(
  `^(?:${bare(quantityPattern.time)}|\\d+ days? of ${reference}|\\d+ warm (?:days?|hours?) of ${reference}|\\d+(?:\\.\\d+)? ?% of ${reference}|${bare(quantityPattern.pressure)} of ${reference})$`,
);
const amountText = text(amountPattern, "kind:amount");
/** An amount on a clock; `on` names the calendar whose working time counts. */
export const amount = v.union(
  [amountText, v.looseObject({ is: amountText, on: v.optional(ref), from: v.optional(v.string()) })],
  "kind:amount",
);

const within = (name: LimitName) => {
  const range = limits[name];
  return v.pipe(v.number(), v.minValue(range.least, `range:${name}`), v.maxValue(range.most, `range:${name}`));
};
/** A plain number within the limits named. */
export const numberIn = within;
/** A whole number within the limits named. */
export const wholeIn = (name: LimitName) => v.pipe(within(name), v.integer("build.whole"));

export const line = v.string();
export const yes = v.boolean();
export const lines = v.array(line);
export const refs = v.array(ref);
