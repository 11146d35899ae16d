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
const parts = 8;

/** @param pitch distance between loads over the span */
export function pointCoefficients(spans: Spans, pitch: number): PointCoefficients {
  let worst: PointCoefficients = { bending: 0, shear: 0, sag: 0 };
  for (let phase = 0; phase < phases; phase += 1) {
    const found = placed(spans, pitch, (phase / phases) * pitch);
    worst = {
      bending: Math.max(worst.bending, found.bending),
      shear: Math.max(worst.shear, found.shear),
      sag: Math.max(worst.sag, found.sag),
    };
  }
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

const sum = (list: readonly number[], of: (a: number) => number): number => list.reduce((total, a) => total + of(a), 0);

/** Moments over the inner supports, hogging negative, in P l. */
function supportMoments(loads: readonly (readonly number[])[]): number[] {
  const right = (span: number): number => -sum(loads[span] ?? [], (a) => a * (1 - a * a));
  const left = (span: number): number => -sum(loads[span] ?? [], (a) => (1 - a) * (1 - (1 - a) ** 2));
  if (loads.length === 1) return [0, 0];
  if (loads.length === 2) return [0, (right(0) + left(1)) / 4, 0];
  const [first, second] = [right(0) + left(1), right(1) + left(2)];
  return [0, (4 * first - second) / 15, (4 * second - first) / 15, 0];
}

function placed(spans: Spans, pitch: number, first: number): PointCoefficients {
  const loads = loadsIn(spans, pitch, first);
  const over = supportMoments(loads);
  let bending = Math.max(...over.map(Math.abs));
  let shear = 0;
  let sag = 0;
  for (const [span, list] of loads.entries()) {
    const [from, to] = [over[span] as number, over[span + 1] as number];
    const start = sum(list, (a) => 1 - a) + to - from;
    shear = Math.max(shear, Math.abs(start), Math.abs(list.length - start));
    for (const x of list) bending = Math.max(bending, Math.abs(from + start * x - sum(list, (a) => Math.max(0, x - a))));
    for (let part = 1; part < parts; part += 1) sag = Math.max(sag, Math.abs(bent(list, from, to, part / parts)));
  }
  return { bending, shear, sag };
}

/** Sag at x of a simple span under its loads and end moments, downwards. */
function bent(loads: readonly number[], from: number, to: number, x: number): number {
  const ends = (from * (2 * x - 3 * x * x + x ** 3) + to * (x - x ** 3)) / 6;
  const under = sum(loads, (a) => {
    const [b, at] = x <= a ? [1 - a, x] : [a, 1 - x];
    return (b * at * (1 - b * b - at * at)) / 6;
  });
  return under + ends;
}
