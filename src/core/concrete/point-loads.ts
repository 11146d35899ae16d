/**
 * Equal point loads on 1, 2 or 3 equal continuous spans: what a wale gets from its studs where there are too few of them to count as a uniform load (APA
 * V345: fewer than three between ties). Three moment equation; checked against the uniform coefficients it tends to, and against closed forms.
 */
import type { Spans } from "./beam";

/** M = bending · P l, V = shear · P, sag = sag · P l³ / (E I): the worst over where the first load falls. */
export interface PointCoefficients {
  readonly bending: number;
  readonly shear: number;
  readonly sag: number;
}

const phases = 24;
/** Where sag is looked for in a span; the greatest is never far from its middle half. */
const looks = [0.25, 0.375, 0.5, 0.625, 0.75];

/** Few of them come up in a form, each often: while its parts are judged again with one of them changed. */
const known = new Map<number, PointCoefficients>();
const mostKnown = 512;

/** @param asked distance between loads over the span */
export function pointCoefficients(spans: Spans, asked: number): PointCoefficients {
  // Rounded, so that what is kept is what would be computed again.
  const pitch = Math.round(asked * 1e12) / 1e12;
  const key = spans * 1000 + pitch;
  const before = known.get(key);
  if (before !== undefined) return before;
  const worst = { bending: 0, shear: 0, sag: 0 };
  for (let phase = 0; phase < phases; phase += 1) place(spans, pitch, (phase / phases) * pitch, worst);
  if (known.size >= mostKnown) known.clear();
  known.set(key, worst);
  return worst;
}

/** Where the loads stand in each span, as shares of it; a load over a support bends nothing. */
function loadsIn(spans: Spans, pitch: number, first: number): number[][] {
  const loads: number[][] = Array.from({ length: spans }, () => []);
  for (let k = 0; first + k * pitch < spans; k += 1) {
    const at = first + k * pitch;
    const share = at - Math.floor(at);
    if (share > 1e-9) loads[Math.floor(at)]?.push(share);
  }
  return loads;
}

/** The load term of the three moment equation on one side of a support: distances from the far end. */
function term(loads: readonly number[], fromLeft: boolean): number {
  let sum = 0;
  for (const a of loads) {
    const far = fromLeft ? a : 1 - a;
    sum -= far * (1 - far * far);
  }
  return sum;
}

/** Moments over the supports, hogging negative, in P l. */
function supportMoments(loads: readonly (readonly number[])[]): readonly number[] {
  const [one = [], two = [], three = []] = loads;
  if (loads.length === 1) return [0, 0];
  const first = term(one, true) + term(two, false);
  if (loads.length === 2) return [0, first / 4, 0];
  const second = term(two, true) + term(three, false);
  return [0, (4 * first - second) / 15, (4 * second - first) / 15, 0];
}

type Worst = { bending: number; shear: number; sag: number };

/** Statics of one placing of the loads; `worst` takes what is worse. */
function place(spans: Spans, pitch: number, offset: number, worst: Worst): void {
  const loads = loadsIn(spans, pitch, offset);
  const over = supportMoments(loads);
  for (const moment of over) worst.bending = Math.max(worst.bending, Math.abs(moment));
  for (let span = 0; span < spans; span += 1) {
    const list = loads[span] as readonly number[];
    const from = over[span] as number;
    const to = over[span + 1] as number;
    let start = to - from;
    for (const a of list) start += 1 - a;
    worst.shear = Math.max(worst.shear, Math.abs(start), Math.abs(list.length - start));
    for (const x of list) {
      let moment = from + start * x;
      for (const a of list) if (a < x) moment -= x - a;
      worst.bending = Math.max(worst.bending, Math.abs(moment));
    }
    for (const x of looks) worst.sag = Math.max(worst.sag, Math.abs(bent(list, from, to, x)));
  }
}

/** Sag at x of a simple span under its loads and end moments, downwards. */
function bent(loads: readonly number[], from: number, to: number, x: number): number {
  let sum = (from * (2 * x - 3 * x * x + x * x * x) + to * (x - x * x * x)) / 6;
  for (const a of loads) {
    const b = x <= a ? 1 - a : a;
    const at = x <= a ? x : 1 - x;
    sum += (b * at * (1 - b * b - at * at)) / 6;
  }
  return sum;
}
