/**
 * What a batten or stud that runs through leaves on each band or wale: reactions of a continuous beam of even stiffness on unyielding supports at any distances,
 * under the pressure diagram. Three moment equation (Clapeyron); the load in slices whose forces are exact, so the reactions add up to the diagram.
 */
import { type Diagram, thrust_lb_ft } from "./form-loads";

/** Slices of each span: reactions are then good to about a thousandth. */
const slices = 24;

interface Point {
  readonly at: number;
  readonly force: number;
}

/** The diagram between two heights above the foot, in, as forces on a foot of width, lb/ft. */
function points(d: Diagram, from_in: number, to_in: number): Point[] {
  const each = (to_in - from_in) / slices;
  if (each <= 0) return [];
  return Array.from({ length: slices }, (_, i) => {
    const low = from_in + i * each;
    return { at: low + each / 2, force: thrust_lb_ft(d, d.height_ft - (low + each) / 12, d.height_ft - low / 12) };
  });
}

const total = (list: readonly Point[], of: (point: Point) => number): number => list.reduce((sum, point) => sum + of(point), 0);

/**
 * Reactions, lb for each foot of width, on supports at rising heights above the foot, in; what is below the lowest and above the highest hangs over.
 */
export function reactions_lb_ft(d: Diagram, at_in: readonly number[]): number[] {
  const n = at_in.length;
  const [first, last] = [at_in[0] as number, at_in[n - 1] as number];
  const below = points(d, 0, first);
  const above = points(d, last, d.height_ft * 12);
  const spans = at_in.slice(1).map((to, i) => {
    const from = at_in[i] as number;
    return { from, to, long: to - from, loads: points(d, from, to) };
  });
  const moments = new Array<number>(n).fill(0);
  moments[0] = -total(below, ({ at, force }) => force * (first - at));
  moments[n - 1] = -total(above, ({ at, force }) => force * (at - last));
  // Tridiagonal, swept forward and back.
  const [swept, right] = [new Array<number>(n).fill(0), new Array<number>(n).fill(0)];
  right[0] = moments[0] as number;
  for (let i = 1; i < n - 1; i += 1) {
    const [a, b] = [spans[i - 1] as (typeof spans)[number], spans[i] as (typeof spans)[number]];
    const load =
      total(a.loads, ({ at, force }) => (force * (at - a.from) * (a.long ** 2 - (at - a.from) ** 2)) / a.long) +
      total(b.loads, ({ at, force }) => (force * (b.to - at) * (b.long ** 2 - (b.to - at) ** 2)) / b.long);
    const pivot = 2 * (a.long + b.long) - a.long * (swept[i - 1] as number);
    swept[i] = b.long / pivot;
    right[i] = (-load - a.long * (right[i - 1] as number)) / pivot;
  }
  for (let i = n - 2; i > 0; i -= 1) moments[i] = (right[i] as number) - (swept[i] as number) * (moments[i + 1] as number);
  const out = new Array<number>(n).fill(0);
  out[0] = total(below, ({ force }) => force);
  out[n - 1] = (out[n - 1] as number) + total(above, ({ force }) => force);
  spans.forEach(({ from, to, long, loads }, i) => {
    const turn = ((moments[i + 1] as number) - (moments[i] as number)) / long;
    out[i] = (out[i] as number) + total(loads, ({ at, force }) => (force * (to - at)) / long) + turn;
    out[i + 1] = (out[i + 1] as number) + total(loads, ({ at, force }) => (force * (at - from)) / long) - turn;
  });
  return out;
}

/** The same with the foot on a plate, which holds it only while it is pressed on it; null where it would lift off, or a support stands at the foot. */
export function reactionsOnFoot_lb_ft(d: Diagram, at_in: readonly number[]): number[] | null {
  if (!((at_in[0] as number) > 0)) return null;
  const [foot, ...rest] = reactions_lb_ft(d, [0, ...at_in]);
  return (foot as number) < 0 ? null : rest;
}
