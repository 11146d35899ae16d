import type { ElapsedMinute } from "../../src/core/base";
import { type Air, airOf, gainClock, heldClock, RateClock, siteTime } from "../../src/core/clock";
import { gainCurve } from "../../src/core/concrete";
import { ageRate, gainTable } from "../../src/core/pour/maturity";

/** What the clock of a cure costs: made cold over two years of hourly temperatures, and asked. Medians of 30 runs after 20 unmeasured; the first is told apart. */
const site = {
  zone: "America/New_York",
  latitude: 41.4,
  longitude: -73.9,
  usualTemperatures_C: [-7, -6, -1, 5, 11, 16, 19, 18, 14, 7, 2, -4].map((low, i) => ({ low, high: low + 9 + (i % 3) })),
  days_C: Array.from({ length: 28 }, (_, i) => ({
    date: `2027-02-${String(i + 1).padStart(2, "0")}`,
    low: -9,
    high: 4 + (i % 5),
    source: "measured" as const,
  })),
};
const years_h = 2 * 365 * 24;

function ratesOf(air: Air, floor: number) {
  const of = (from: number, to: number) => air.hours_cC(from, to).map((air_cC) => Math.max(floor, ageRate(air_cC)));
  return { of, least: Math.max(floor, ageRate(100 * air.lowest_C)), most: ageRate(100 * air.highest_C) };
}

function cold(): RateClock {
  const air = airOf(site, "2027-01-01");
  const clock = new RateClock("age", ratesOf(air, 0));
  clock.reading((years_h * 60 - 1) as ElapsedMinute);
  return clock;
}

function timed(run: () => unknown): number {
  const from = performance.now();
  run();
  return performance.now() - from;
}

function median(times: readonly number[]): number {
  return [...times].sort((a, b) => a - b)[times.length >> 1]!;
}

siteTime(site.zone, "2027-01-01");
const first = timed(cold);
for (let i = 0; i < 20; i++) cold();
const made = median(Array.from({ length: 30 }, () => timed(cold)));
console.log(
  `two years of hourly temperatures, ${years_h} hours: made in ${made.toFixed(2)} ms (the first in its process ${first.toFixed(1)} ms)`,
);

const age = cold();
const kept = new RateClock("kept", ratesOf(airOf(site, "2027-01-01"), ageRate(1300)));
const held = heldClock("held", kept, age, 3 * 1440);
const strength = gainClock(gainTable("strength", gainCurve("I")), age);
const strengthHeld = gainClock(gainTable("strength", gainCurve("I")), held);
const asked = 200_000;
const at = Int32Array.from({ length: asked }, (_, i) => (i * 104_729) % (years_h * 60 - 120 * 1440));

const questions: readonly [name: string, ask: (t: ElapsedMinute) => number][] = [
  ["age: reading", (t) => age.reading(t)],
  ["age: advance 7 days", (t) => age.advance(t, 7 * 1_440_000)],
  ["age: retreat 7 days", (t) => age.retreat(t, 7 * 1_440_000)],
  ["strength: advance to 70 %", (t) => strength.advance(t, 700)],
  ["strength: retreat from 70 %", (t) => strength.retreat(t, 700)],
  ["strength: limit 70 %", (t) => strength.limit(t, 700)],
  ["kept warm: advance to 70 %", (t) => strengthHeld.advance(t, 700)],
  ["kept warm: retreat from 70 %", (t) => strengthHeld.retreat(t, 700)],
];
let sum = 0;
for (const [name, ask] of questions) {
  const run = () => {
    for (let i = 0; i < asked; i++) sum += ask(at[i] as ElapsedMinute);
  };
  run();
  const times = Array.from({ length: 9 }, () => timed(run));
  const [usual, best] = [median(times), Math.min(...times)].map((ms) => ((1000 * ms) / asked).toFixed(3));
  console.log(`  ${name.padEnd(30)} ${usual} µs, at best ${best} µs`);
}
if (!Number.isFinite(sum)) process.exitCode = 1;
