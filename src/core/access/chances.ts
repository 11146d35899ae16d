import type { Build, Step } from "../build";
import { digraph, reachable, reversed } from "../graph";
import { reachesOf } from "./compile/steps";
import { passes } from "./passes";
import type { Access, Closing } from "./result";

/**
 * For each piece that closes or fills something when it is put up: every step that gets in where it closes and is ordered before it. In the order in which they
 * go up. Empty when there is no order.
 */
export function lastChances(build: Build, result: Access): readonly Closing[] {
  if (!result.possible) return [];
  const { arcs } = result;
  const rows = [...Array(arcs.count).keys()].filter((r) => arcs.orders[r] === 1);
  const ends = (list: Int32Array) => Int32Array.from(rows, (r) => list[r] as number);
  const back = reversed(digraph(build.steps.length, ends(arcs.from), ends(arcs.to)));
  const turn = new Int32Array(build.steps.length);
  result.order.forEach((s, i) => {
    turn[s] = i;
  });
  const visitors = visitorsOf(build);
  const through = throughOf(build, result);
  return build.pieces
    .flatMap((piece, p): Closing[] => {
      if (piece.up < 0 || (piece.closes.length === 0 && piece.fills.length === 0)) return [];
      const before = reachable(back, piece.up);
      const forced = reachable(back, piece.up, (arc) => arcs.forced[rows[arc] as number] === 1);
      const ways = [...piece.fills, ...piece.closes.map((ref) => `${ref.place}.${ref.way}`)];
      const steps = new Set([...ways.flatMap((way) => visitors.get(way) ?? []), ...(through.get(piece.id) ?? [])]);
      const ordered = [...steps].filter((s) => s !== piece.up && before[s] === 1).sort((a, b) => (turn[a] as number) - (turn[b] as number));
      const list = ordered.map((s) => ({ step: s, what: whatOf(build.steps[s] as Step), forced: forced[s] === 1 }));
      return [{ piece: p, step: piece.up, before: list, forGood: piece.down < 0 && piece.goesAfter === null }];
    })
    .sort((a, b) => (turn[a.step] as number) - (turn[b.step] as number) || a.piece - b.piece);
}

function whatOf({ sort }: Step): Closing["before"][number]["what"] {
  return sort === "pour" || sort === "office" ? "work" : sort;
}

/** Steps that get to each place, by the place's id, and those that could do so by each way, by its full name. */
function visitorsOf(build: Build): ReadonlyMap<string, readonly number[]> {
  const visitors = new Map<string, number[]>();
  const note = (key: string, s: number): void => {
    const list = visitors.get(key);
    if (list) list.push(s);
    else visitors.set(key, [s]);
  };
  build.steps.forEach((_, s) => {
    for (const { place, need } of reachesOf(build, s).flatMap(({ reach }) => reach.any)) {
      note(place, s);
      for (const way of build.places[build.at.place.get(place) ?? -1]?.ways ?? []) if (passes(way, need)) note(way.full, s);
    }
  });
  return visitors;
}

/** Steps that get through what a piece closes on their way to another place, by the piece's id. */
function throughOf(build: Build, { arcs, statements }: Access): ReadonlyMap<string, readonly number[]> {
  const steps = new Map<string, number[]>();
  for (let r = 0; r < arcs.count; r++) {
    const { rule, piece } = statements[arcs.reason[r] as number] ?? {};
    if ((rule !== "closes" && rule !== "fills") || piece === undefined) continue;
    if (build.pieces[build.at.piece.get(piece) ?? -1]?.up !== arcs.to[r]) continue;
    steps.set(piece, [...(steps.get(piece) ?? []), arcs.from[r] as number]);
  }
  return steps;
}
