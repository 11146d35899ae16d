/** A whole pour as it is written, to its volumes and hours: one computation for the length of the step and for the sheet of the day. */
import { finished_m2, type PouredFace } from "./faces";
import { canWait, everyLift_min, handsFor, type Placed, throttled } from "./placing";
import { columnsSettle_min, type PourDayTimes, pourDayTimes } from "./pour-day";
import type { Checked } from "./range";
import { type LeftOut, netVolume_m3, type PouredShape, plan_m2 } from "./volume";

export interface PouredElement {
  readonly number: number;
  readonly shape: PouredShape;
  readonly faces: readonly PouredFace[];
  readonly rebates: readonly LeftOut[];
  /** Its rate of rise as an act; null or left out where nobody holds one. */
  readonly held?: { readonly pass_mm: number; readonly every_min: number } | null;
}

export interface PourWritten {
  readonly elements: readonly PouredElement[];
  /** Left out: nothing waits between lifts. */
  readonly placed?: Placed;
  readonly rate_m3_h: number;
  readonly weather: { readonly concrete_C: number };
  readonly pause: { readonly least_min: number; readonly most_min: number } | null;
  readonly waste_percent: number | null;
  readonly hopper_m3: number;
  readonly prime_m3: number;
}

export interface PourWork extends PourDayTimes {
  readonly net_m3: number;
  readonly order_m3: number;
  readonly waste_percent: number;
  readonly finished_m2: number;
  readonly finishers: number;
  /** What goes in over the whole pour, held rates and waits between lifts counted in, m3/h. */
  readonly over_m3_h: number;
}

const stands = new Set<PouredShape["kind"]>(["column", "pier", "wall"]);
const laid = new Set<PouredShape["kind"]>(["deck slab", "barrel"]);

/** 200 yd3: below it 10 % of waste are usual, above it 5 % (NAVEDTRA 14070, read). */
const wasteFrom_m3 = 200 * 0.9144 ** 3;

/** Per cent of the net volume: as written, else by the manual's rule. */
export function wastePercent(net_m3: number, written: number | null): number {
  return written ?? (net_m3 <= wasteFrom_m3 ? 10 : 5);
}

/** Two hands float up to 40 m2, one more each 20 m2 over it (common practice, no source). */
export function finishersFor(finished_m2: number): number {
  return 2 + Math.max(0, Math.ceil((finished_m2 - 40) / 20 - 1e-9));
}

/** How many people a pour takes: who places it, or who floats it where those are more. One rule for the sheet of the day and for whoever writes a pour. */
export function peopleFor({
  placed,
  elements,
  rate_m3_h,
}: Pick<PourWritten, "elements" | "rate_m3_h"> & { readonly placed: Placed }): number {
  const floated_m2 = elements.reduce((sum, e) => sum + finished_m2(e.shape, e.faces) * e.number, 0);
  const hands = handsFor(
    placed,
    elements.some(({ shape }) => stands.has(shape.kind)),
    floated_m2,
    rate_m3_h,
  );
  const placing = hands.reduce((sum, { number }) => sum + number, 0);
  return Math.max(placing, floated_m2 > 0 ? finishersFor(floated_m2) : 0);
}

/** Between what stands and what is laid on it, min: as written, else an hour; 0 where the pour has not both. */
export function pauseOf(pour: Pick<PourWritten, "elements" | "pause">): number {
  const both = pour.elements.some((e) => stands.has(e.shape.kind)) && pour.elements.some((e) => laid.has(e.shape.kind));
  return both ? (pour.pause?.least_min ?? columnsSettle_min.least) : (pour.pause?.least_min ?? 0);
}

const { si: lifts } = throttled;

/** Passes that make an element rise slower than it would be filled: as an act, or lifts where a chute or buckets would fill it too fast. The metric lifts, a little shallower, stand for both systems. */
function passesOf(element: PouredElement, { placed, rate_m3_h }: PourWritten): { pass_mm: number; every_min: number } | null {
  const { shape, held } = element;
  if (held != null) return held;
  if (!("high_mm" in shape) || placed === undefined || !canWait(placed) || shape.high_mm <= lifts.lift_mm) return null;
  return rate_m3_h / plan_m2(shape) > lifts.rise_m_h ? { pass_mm: lifts.lift_mm, every_min: everyLift_min(lifts) } : null;
}

/** How much longer an element takes in its passes than without, min; several alike are filled in turn. */
function slower_min(element: PouredElement, pour: PourWritten): number {
  const { shape, number, rebates } = element;
  const passes = passesOf(element, pour);
  if (passes === null || !("high_mm" in shape) || !(passes.pass_mm > 0 && passes.every_min > 0)) return 0;
  const passes_min = (shape.high_mm / passes.pass_mm) * passes.every_min;
  return Math.max(0, passes_min - ((netVolume_m3(shape, rebates) * number) / pour.rate_m3_h) * 60);
}

/** Volumes and hours of a pour; refused, with the range, when an input leaves it. */
export function pourWork(pour: PourWritten): Checked<PourWork> {
  const net_m3 = pour.elements.reduce((sum, e) => sum + netVolume_m3(e.shape, e.rebates) * e.number, 0);
  const floated_m2 = pour.elements.reduce((sum, e) => sum + finished_m2(e.shape, e.faces) * e.number, 0);
  const waste_percent = wastePercent(net_m3, pour.waste_percent);
  const order_m3 = net_m3 * (1 + waste_percent / 100) + pour.hopper_m3 + pour.prime_m3;
  const finishers = finishersFor(floated_m2);
  const longer_min = pour.elements.reduce((sum, element) => sum + slower_min(element, pour), 0);
  const times = pourDayTimes({
    order_m3,
    rate_m3_h: pour.rate_m3_h,
    slower_min: longer_min,
    finished_m2: floated_m2,
    concrete_C: pour.weather.concrete_C,
    pause_min: pauseOf(pour),
    finishers,
    tops: pour.elements.reduce((sum, { number }) => sum + number, 0),
  });
  if (!("value" in times)) return times;
  const over_m3_h = longer_min === 0 ? pour.rate_m3_h : order_m3 / (order_m3 / pour.rate_m3_h + longer_min / 60);
  return { value: { ...times.value, over_m3_h, net_m3, order_m3, waste_percent, finished_m2: floated_m2, finishers } };
}
