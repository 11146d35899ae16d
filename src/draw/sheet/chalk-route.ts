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

/** Where the line may go down or up in a band, what the way there costs, and by which gate of the band before. */
interface Gate {
  readonly x: number;
  readonly way: number;
  cost: number;
  back: Gate | null;
}

/** One x for each band that is crossed: the cheapest way through their gates, found band by band. */
function best(rows: readonly number[], bands: readonly Band[], from: End, to: End): number[] {
  const [low, high] = [Math.min(from.x, to.x), Math.max(from.x, to.x)];
  const [left, right] = [low - beyond, high + beyond];
  // A length of way, so measured that what lies outside the two ends is longer.
  const way = (x: number) => x - astray * Math.max(0, low - x) + astray * Math.max(0, x - high);
  const gateAt = (x: number, cost = 0): Gate => ({ x, way: way(x), cost, back: null });
  const inWay = (row: number) =>
    row === from.band || row === to.band || bands[row]!.taken.some((one) => one.to > left - margin && one.from < right + margin);
  const busy = rows.filter(inWay);
  const besides = busy.map((row) => edges(bands[row]!, left, right));
  const shared = nearest(besides.flat(), from, to);
  let gates: readonly Gate[] = [gateAt(from.x)];
  busy.forEach((row, index) => {
    const xs = [...new Set([from.x, to.x, from.side, to.side, ...besides[index]!, ...shared])].sort((a, b) => a - b);
    const next = xs.map((x) => gateAt(x, Number.POSITIVE_INFINITY));
    turnInto(gates, next);
    for (const gate of next) gate.cost += costAt(bands[row]!, row, gate.x, from, to);
    gates = next;
  });
  const end = gateAt(to.x, Number.POSITIVE_INFINITY);
  turnInto(gates, [end]);
  const found = new Map<number, number>();
  let gate = end.back;
  for (const row of busy.toReversed()) {
    found.set(row, gate!.x);
    gate = gate!.back;
  }
  // Through bands with nothing in the way the line goes on as it comes.
  let x = found.get(busy[0] ?? -1) ?? from.x;
  return rows.map((row) => {
    x = found.get(row) ?? x;
    return x;
  });
}

/** Gives each gate the cheapest way from those before it: straight on, or with a turn and the way to it. Both in the order of x. */
function turnInto(before: readonly Gate[], next: readonly Gate[]): void {
  const take = (gate: Gate, by: Gate | null, cost: number) => {
    if (by === null || cost >= gate.cost) return;
    gate.cost = cost;
    gate.back = by;
  };
  const sweep = (sign: 1 | -1) => {
    const ordered = <T>(list: readonly T[]): readonly T[] => (sign === 1 ? list : list.toReversed());
    const known = ordered(before);
    let at = 0;
    let near: Gate | null = null;
    for (const gate of ordered(next)) {
      for (; at < known.length && sign * (known[at]!.x - gate.x) <= 0; at += 1) {
        const one = known[at]!;
        if (one.x === gate.x) take(gate, one, one.cost);
        if (near === null || one.cost - sign * one.way < near.cost - sign * near.way) near = one;
      }
      if (near !== null) take(gate, near, near.cost + turn + Math.abs(gate.way - near.way));
    }
  };
  sweep(1);
  sweep(-1);
}

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
