import type { Band } from "./layout";
import { crossings, type Point, tidy } from "./route";

/** An end of a thin run of the chalk line: below its band; `side`: beside its block, where it may pass along the edge of the block. Band -1: the top of the sheet. */
export interface End {
  readonly band: number;
  readonly x: number;
  readonly side: number;
}

/** What it costs to pass, in px of a way round. A block is never passed while there is another way. */
const passing = { block: 10_000, wait: 70, words: 45 } as const;
/** A turn costs as much as this much of way, and what lies before the start or after the end as so many times its length, px. */
const [turn, astray] = [28, 3];
/** How far beyond its ends the line may go, and how near it comes to what it passes, px. */
const [beyond, margin] = [60, 3];

/** Where the line may go down or up in a band, and what that costs. */
interface Gate {
  readonly x: number;
  readonly cost: number;
}

/**
 * The chalk line between two blocks, in lines of points: level in the channels below the bands, upright from one to the next, by the way that turns and strays
 * least, round blocks; words it passes behind, broken there as a drafter breaks a line at a figure.
 */
export function chalkRoute(bands: readonly Band[], from: End, to: End): Point[][] {
  const rows = crossings(bands, from.band, to.band);
  const down = to.band > from.band;
  const yOf = (band: number) => (band < 0 ? 0 : bands[band]!.channel);
  const xs = best(rows, bands, from, to);
  let line: Point[] = [[from.x, yOf(from.band)]];
  const lines = [line];
  rows.forEach((row, index) => {
    const [x, band] = [xs[index]!, bands[row]!];
    const [above, below] = [yOf(row - 1), yOf(row)];
    const [start, end] = down ? [above, below] : [below, above];
    line.push([x, start]);
    if (meets(band, x, "words") && !along(row, x, from, to)) {
      const gap = [band.y0 + 1, band.y1 - 1] as const;
      line.push([x, down ? gap[0] : gap[1]]);
      line = [[x, down ? gap[1] : gap[0]]];
      lines.push(line);
    }
    line.push([x, end]);
  });
  line.push([to.x, yOf(to.band)]);
  return lines.map(tidy).filter(({ length }) => length > 1);
}

/** One x for each band that is crossed: the cheapest way through their gates, found band by band. */
function best(rows: readonly number[], bands: readonly Band[], from: End, to: End): number[] {
  const [low, high] = [Math.min(from.x, to.x), Math.max(from.x, to.x)];
  const level = (a: number, b: number): number => {
    const outside = Math.max(0, low - Math.min(a, b)) + Math.max(0, Math.max(a, b) - high);
    return Math.abs(a - b) < 0.5 ? 0 : turn + Math.abs(a - b) + astray * outside;
  };
  const [left, right] = [low - beyond, high + beyond];
  const shared = nearest(
    rows.flatMap((row) => edges(bands[row]!, left, right)),
    from,
    to,
  );
  const steps: { readonly gate: Gate; readonly cost: number; readonly back: number }[][] = [];
  rows.forEach((row, index) => {
    const xs = new Set([from.x, to.x, from.side, to.side, ...edges(bands[row]!, left, right), ...shared]);
    const gates = [...xs].map((x): Gate => ({ x, cost: costAt(bands[row]!, row, x, from, to) }));
    const before = steps[index - 1];
    steps.push(
      gates.map((gate) => {
        if (!before) return { gate, cost: gate.cost + level(from.x, gate.x), back: -1 };
        let [cost, back] = [Number.POSITIVE_INFINITY, 0];
        before.forEach((one, at) => {
          const sum = one.cost + level(one.gate.x, gate.x);
          if (sum < cost) [cost, back] = [sum, at];
        });
        return { gate, cost: cost + gate.cost, back };
      }),
    );
  });
  const xs: number[] = [];
  let at = -1;
  for (let index = rows.length - 1; index >= 0; index -= 1) {
    const list = steps[index]!;
    if (at < 0) at = list.reduce((least, one, i) => (one.cost + level(one.gate.x, to.x) < endCost(list[least]!, to, level) ? i : least), 0);
    xs[index] = list[at]!.gate.x;
    at = list[at]!.back;
  }
  return xs;
}

const endCost = (one: { readonly gate: Gate; readonly cost: number }, to: End, level: (a: number, b: number) => number): number =>
  one.cost + level(one.gate.x, to.x);

/** Just beside what stands in a band, as far as the line may go. */
const edges = ({ taken }: Band, low: number, high: number): number[] =>
  taken.flatMap((one) => [one.from - margin, one.to + margin]).filter((x) => x > Math.max(0, low) && x < high);

/** A line that goes straight through several bands needs the same gate in each: every band has those of all that are nearest to the ends. */
function nearest(xs: readonly number[], from: End, to: End): number[] {
  const far = (x: number) => Math.min(Math.abs(x - from.x), Math.abs(x - to.x));
  return [...new Set(xs)].sort((a, b) => far(a) - far(b) || a - b).slice(0, mostShared);
}

const mostShared = 20;

/** Along the edge of the block that the line comes from or goes to there is always room. */
const along = (row: number, x: number, from: End, to: End): boolean =>
  (row === from.band && x === from.side) || (row === to.band && x === to.side);

function costAt(band: Band, row: number, x: number, from: End, to: End): number {
  if (along(row, x, from, to)) return 0;
  if (meets(band, x, "block")) return passing.block;
  return (meets(band, x, "wait") ? passing.wait : 0) + (meets(band, x, "words") ? passing.words : 0);
}

const meets = ({ taken }: Band, x: number, what: Band["taken"][number]["what"]): boolean =>
  taken.some((one) => one.what === what && x > one.from - margin && x < one.to + margin);
