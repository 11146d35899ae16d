import type { Site } from "../model";
import { readDate } from "./dates";
import { shown } from "./notes";
import { inside, type Quantity, type Spot, temperature_C, textOf } from "./quantities";

interface RawLowAndHigh {
  readonly low: Quantity;
  readonly high: Quantity;
}

/** Low and high of a month or a day in degrees Celsius; a low above its high is a slip of the pen. */
export function readLowAndHigh(at: Spot, raw: RawLowAndHigh): { low: number; high: number } {
  const read = { low: temperature_C(inside(at, "low"), raw.low), high: temperature_C(inside(at, "high"), raw.high) };
  if (read.low > read.high)
    at.notes.say("build.low-above-high", at.key, { part: at.part, low: shown(textOf(raw.low)), high: shown(textOf(raw.high)) });
  return read;
}

type RawDay = RawLowAndHigh & { readonly date: string; readonly source?: "forecast" | "measured" | undefined };

/** Single days by rising date, each written once. */
export function readDays(at: Spot, raw: readonly RawDay[]): Site["days_C"] {
  raw.forEach(({ date }, i) => {
    const before = raw[i - 1]?.date;
    if (before === undefined || before < date) return;
    const { key, part } = inside(inside(at, i + 1), "date");
    at.notes.say("build.not-rising", key, { part, first: before, second: date });
  });
  return raw.map((day, i) => {
    const spot = inside(at, i + 1);
    return { date: readDate(inside(spot, "date"), day.date), ...readLowAndHigh(spot, day), source: day.source ?? "measured" };
  });
}
