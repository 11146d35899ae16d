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
    const x = xs[index]!;
    const band = bands[row]!;
    goOn(line, x, yOf(down ? row - 1 : row));
    if (meets(band, x, "words") && !along(row, x, from, to)) {
      goOn(line, x, down ? band.y0 + 1 : band.y1 - 1);
      line = [[x, down ? band.y1 - 1 : band.y0 + 1]];
      lines.push(line);
    }
    goOn(line, x, yOf(down ? row : row - 1));
  });
  goOn(line, to.x, yOf(to.band));
  return lines.map(tidy).filter(({ length }) => length > 1);
}

/** A point further on; straight on, the last one is moved there. */
function goOn(line: Point[], x: number, y: number): void {
  const a = line[line.length - 2];
  const b = line[line.length - 1]!;
  if (b[0] === x && b[1] === y) return;
  if (a && a[0] === x && b[0] === x) line[line.length - 1] = [x, y];
  else line.push([x, y]);
}

/**
 * Where the line may go down or up in the bands, one band's gates after another's, each band's in the order of x: what the way to each costs, and by which
 * gate of the band before. In lists of plain numbers that are used again for the next line: a sheet tries some hundred thousand gates.
 */
interface Gates {
  readonly x: number[];
  /** A length of way, so measured that what lies outside the two ends is longer. */
  readonly way: number[];
  readonly cost: number[];
  readonly back: number[];
}
const gates: Gates = { x: [], way: [], cost: [], back: [] };

/** One x for each band that is crossed: the cheapest way through their gates, found band by band. */
function best(rows: readonly number[], bands: readonly Band[], from: End, to: End): number[] {
  const [low, high] = [Math.min(from.x, to.x), Math.max(from.x, to.x)];
  const [left, right] = [low - beyond, high + beyond];
  const busy = rows.filter((row) => row === from.band || row === to.band || isInWay(bands[row]!, left, right));
  const besides = busy.map((row) => edges(bands[row]!, left, right));
  const shared = [from.x, to.x, from.side, to.side, ...nearest(besides, from, to)].sort((a, b) => a - b);
  let count = 0;
  const add = (x: number, cost: number) => {
    gates.x[count] = x;
    gates.way[count] = x - astray * Math.max(0, low - x) + astray * Math.max(0, x - high);
    gates.cost[count] = cost;
    gates.back[count] = -1;
    count += 1;
  };
  add(from.x, 0);
  /** Where the gates of the band before begin. */
  let before = 0;
  busy.forEach((row, index) => {
    const here = count;
    addMerged(shared, besides[index]!, add);
    turnInto(before, here, count);
    for (let gate = here; gate < count; gate += 1) gates.cost[gate]! += costAt(bands[row]!, row, gates.x[gate]!, from, to);
    before = here;
  });
  const end = count;
  add(to.x, Number.POSITIVE_INFINITY);
  turnInto(before, end, count);
  const found = new Map<number, number>();
  let gate = gates.back[end]!;
  for (let at = busy.length - 1; at >= 0; at -= 1) {
    found.set(busy[at]!, gates.x[gate]!);
    gate = gates.back[gate]!;
  }
  // Through bands with nothing in the way the line goes on as it comes.
  let x = found.get(busy[0] ?? -1) ?? from.x;
  return rows.map((row) => {
    x = found.get(row) ?? x;
    return x;
  });
}

/** The numbers of two sorted lists in their order, each once. */
function addMerged(a: readonly number[], b: readonly number[], add: (x: number, cost: number) => void): void {
  let [i, j, last] = [0, 0, Number.NaN];
  while (i < a.length || j < b.length) {
    const fromA = j === b.length || (i < a.length && a[i]! <= b[j]!);
    const x = fromA ? a[i]! : b[j]!;
    if (fromA) i += 1;
    else j += 1;
    if (x !== last) add(x, Number.POSITIVE_INFINITY);
    last = x;
  }
}

/** Gives each gate from `from` up to `to` the cheapest way from those of the band before, from `first` up to there: straight on, or with a turn and the way to it. */
function turnInto(first: number, from: number, to: number): void {
  const { x, way, cost, back } = gates;
  const take = (gate: number, by: number, price: number) => {
    if (price >= cost[gate]!) return;
    cost[gate] = price;
    back[gate] = by;
  };
  for (const sign of [1, -1] as const) {
    const end = sign === 1 ? from : first - 1;
    let at = sign === 1 ? first : from - 1;
    let near = -1;
    for (let turned = 0; turned < to - from; turned += 1) {
      const gate = sign === 1 ? from + turned : to - 1 - turned;
      for (; at !== end && sign * (x[at]! - x[gate]!) <= 0; at += sign) {
        if (x[at] === x[gate]) take(gate, at, cost[at]!);
        if (near === -1 || cost[at]! - sign * way[at]! < cost[near]! - sign * way[near]!) near = at;
      }
      if (near !== -1) take(gate, near, cost[near]! + turn + Math.abs(way[gate]! - way[near]!));
    }
  }
}

/** Whether something stands in a band between two x; what stands in it is sorted by where it begins. */
function isInWay({ taken }: Band, left: number, right: number): boolean {
  for (const one of taken) {
    if (one.from >= right + margin) return false;
    if (one.to > left - margin) return true;
  }
  return false;
}

/** Just beside what stands in a band, as far as the line may go; sorted. */
function edges({ taken }: Band, low: number, high: number): number[] {
  const out: number[] = [];
  const least = Math.max(0, low);
  for (const { from, to } of taken) {
    if (from - margin > least && from - margin < high) out.push(from - margin);
    if (to + margin > least && to + margin < high) out.push(to + margin);
  }
  return out.sort((a, b) => a - b);
}

/** A line that goes straight through several bands needs the same gate in each: every band has those of all that are nearest to the ends. */
function nearest(lists: readonly (readonly number[])[], from: End, to: End): number[] {
  const far = (x: number) => Math.min(Math.abs(x - from.x), Math.abs(x - to.x));
  const kept: number[] = [];
  for (const list of lists)
    for (const x of list) {
      const last = kept[mostShared - 1];
      if (last !== undefined && far(x) >= far(last) && (far(x) > far(last) || x >= last)) continue;
      let at = kept.length;
      while (at > 0 && (far(x) < far(kept[at - 1]!) || (far(x) === far(kept[at - 1]!) && x < kept[at - 1]!))) at -= 1;
      if (kept[at - 1] === x) continue;
      kept.splice(at, 0, x);
      if (kept.length > mostShared) kept.pop();
    }
  return kept;
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

function meets({ taken }: Band, x: number, what: Band["taken"][number]["what"]): boolean {
  for (const one of taken) {
    if (one.from - margin >= x) return false;
    if (one.what === what && x < one.to + margin) return true;
  }
  return false;
}
