import type { Band } from "./layout";

export type Point = readonly [number, number];

/** How far out of its way a line goes to keep off blocks and words before it runs behind them, px. */
const farthest = 160;
const margin = 3;

interface Reach {
  readonly low: number;
  readonly high: number;
}

/**
 * The x nearest to `wanted` at which a band is clear, or null within reach; leaving the stretch of time that the line spans counts three times.
 * Taken spans are sorted by where they begin.
 */
export function clearAt(band: Band, wanted: number, { low, high }: Reach = { low: wanted, high: wanted }, far = farthest): number | null {
  let left = wanted;
  let right = wanted;
  const spans = band.taken;
  for (let i = spans.length - 1; i >= 0; i -= 1) {
    const { from, to } = spans[i]!;
    if (left > from - margin && left < to + margin) left = from - margin;
  }
  for (const { from, to } of spans) if (right > from - margin && right < to + margin) right = to + margin;
  const cost = (x: number) => Math.abs(x - wanted) + 2 * Math.max(0, low - x, x - high);
  const best = left > 0 && cost(left) <= cost(right) ? left : right;
  return Math.abs(best - wanted) <= far ? best : null;
}

/** The bands that a line between two channels crosses, in its order. */
export function crossings(bands: readonly Band[], from: number, to: number): number[] {
  const rows: number[] = [];
  // Channels lie below their bands: going down one enters the next band, going up one leaves one's own.
  if (to > from) for (let band = from + 1; band <= to; band += 1) rows.push(band);
  else for (let band = from; band > to; band -= 1) rows.push(band);
  return rows.filter((band) => band >= 0 && band < bands.length);
}

/**
 * A stepped line from (x0, channel of band `from`) to (x1, channel of band `to`): sideways in channels only, up and down only where a row is clear.
 * Where nothing within reach is clear it goes straight on behind what stands there; `broken` leaves that piece out. Band -1 is the top edge of the sheet.
 */
export function routes(
  bands: readonly Band[],
  from: number,
  x0: number,
  to: number,
  x1: number,
  { early = true, far = farthest, broken = false }: { readonly early?: boolean; readonly far?: number; readonly broken?: boolean } = {},
): Point[][] {
  const yOf = (band: number) => (band < 0 ? 0 : bands[band]!.channel);
  let line: Point[] = [[x0, yOf(from)]];
  const lines = [line];
  let x = early ? x0 : x1;
  const reach = { low: Math.min(x0, x1) - 4, high: Math.max(x0, x1) + 4 };
  for (const band of crossings(bands, from, to)) {
    const clear = clearAt(bands[band]!, x, reach, far);
    const here = to > from ? yOf(band - 1) : yOf(band);
    const there = to > from ? yOf(band) : yOf(band - 1);
    line.push([clear ?? x, here]);
    if (clear === null && broken) {
      line = [];
      lines.push(line);
    }
    line.push([clear ?? x, there]);
    x = clear ?? x;
  }
  line.push([x1, yOf(to)]);
  return lines.map(tidy);
}

/** Leaves out points that lie on a straight run. */
export function tidy(points: readonly Point[]): Point[] {
  const out: Point[] = [];
  for (const point of points) {
    const a = out[out.length - 2];
    const b = out[out.length - 1];
    if (b && b[0] === point[0] && b[1] === point[1]) continue;
    if (a && b && ((a[0] === b[0] && b[0] === point[0]) || (a[1] === b[1] && b[1] === point[1]))) out.pop();
    out.push(point);
  }
  return out;
}
