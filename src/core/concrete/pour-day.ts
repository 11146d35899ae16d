/** Hours of a pour day, from volume, rate, area and temperature: what the length of a step that pours is made of. */
import { coldJoint_h, floatAfter_h } from "./pour";
import { type Checked, checked } from "./range";

export interface PourDayInput {
  /** All that goes through hose or chute, m3: net, waste, what fills line and hopper. */
  readonly order_m3: number;
  /** What hose, chute or mixer gives over the pour, its moves and changes of truck included, m3/h. */
  readonly rate_m3_h: number;
  /** How much longer held rates of rise make it, min. */
  readonly slower_min?: number;
  /** Floated and trowelled, m2; 0 where tops are struck off while placing. */
  readonly finished_m2: number;
  readonly concrete_C: number;
  /** Between the columns and what stands on them, min; 0 where nothing does. */
  readonly pause_min: number;
  /** Hands that float and trowel. */
  readonly finishers: number;
  /** Tops that are struck off, one an element; left out: none. */
  readonly tops?: number;
}

export const pourDayRanges = {
  volume: { name: "volume of the pour", least: 0.001, most: 2000, unit: "m³", source: "own bounds" },
  rate: { name: "rate of placing", least: 0.05, most: 150, unit: "m³/h", source: "own bounds" },
  finished: { name: "floated area", least: 0, most: 10000, unit: "m²", source: "own bounds" },
  temperature: { name: "concrete temperature", least: 0, most: 37.78, unit: "°C", source: "setting times from 30 to 100 °F (from memory)" },
  pause: { name: "pause", least: 0, most: 1440, unit: "min", source: "own bounds" },
  finishers: { name: "hands that float", least: 1, most: 40, unit: "", source: "own bounds" },
} as const;

/** Floated, edged and trowelled by one hand, m2/h (about 110 ft2/h; common practice, no source). */
const finishing_m2_h = 10;

/** Even a small slab is gone over twice with a wait between (common practice, no source), min. */
const leastFinishing_min = 60;

/**
 * Each top struck off and what stands out of it set straight; then chute or hose, vibrator and tools washed before they set (common practice, no source), min.
 * What is floated leaves time for both while it stiffens.
 */
const clearing_min = { top: 10, washing: 30 } as const;

/** Between the last of the columns and what stands on them, min: until they have settled and bled, about 1 to 2 h (older codes, read as quoted). */
export const columnsSettle_min = { least: 60, most: 120 } as const;

export interface PourDayTimes {
  readonly placing_min: number;
  readonly pause_min: number;
  /** From the last of the concrete until it takes the float; 0 where nothing is floated. */
  readonly floatAfter_min: number;
  readonly finishing_min: number;
  /** Striking off and washing up at the end; 0 where it is done while what is floated stiffens. */
  readonly clearing_min: number;
  /** One after another: no floating is counted before the last of it is in, as the last part decides. */
  readonly total_min: number;
  /** The longest one layer may lie before the next, half of the initial set. */
  readonly coldJoint_min: number;
}

const up = (minutes: number): number => Math.ceil(minutes - 1e-6);

/** Whole minutes, each rounded to the careful side. */
export function pourDayTimes(input: PourDayInput): Checked<PourDayTimes> {
  const given = {
    volume: input.order_m3,
    rate: input.rate_m3_h,
    finished: input.finished_m2,
    temperature: input.concrete_C,
    pause: input.pause_min,
    finishers: input.finishers,
  };
  return checked(pourDayRanges, given, () => {
    const concrete_F = (input.concrete_C * 9) / 5 + 32;
    const floated = input.finished_m2 > 0;
    const placing_min = up((input.order_m3 / input.rate_m3_h) * 60 + (input.slower_min ?? 0));
    const pause_min = up(input.pause_min);
    const floatAfter_min = floated ? up(floatAfter_h(concrete_F) * 60) : 0;
    const finishing_min = floated ? up(Math.max(leastFinishing_min, (input.finished_m2 / finishing_m2_h / input.finishers) * 60)) : 0;
    const tops = input.tops ?? 0;
    const cleared_min = floated || tops === 0 ? 0 : clearing_min.top * tops + clearing_min.washing;
    return {
      placing_min,
      pause_min,
      floatAfter_min,
      finishing_min,
      clearing_min: cleared_min,
      total_min: placing_min + pause_min + floatAfter_min + finishing_min + cleared_min,
      coldJoint_min: Math.floor(coldJoint_h(concrete_F) * 60),
    };
  });
}
