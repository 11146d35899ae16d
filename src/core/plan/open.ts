import { type ElapsedMinute, never } from "../base";
import type { Build } from "../build";
import type { Solution } from "../schedule";
import type { PieceSpan, PlaceState } from "./plan";

interface Touch {
  readonly piece: number;
  readonly way: string | null;
  readonly kind: "closes" | "makes" | "fills";
}

/** The states of every place through a plan: which ways in are usable, and whether any is. */
export function placeStates(build: Build, spans: readonly PieceSpan[], s: Solution): PlaceState[][] {
  const touches: Touch[][] = build.places.map(() => []);
  build.pieces.forEach((piece, p) => {
    for (const ref of piece.closes) touches[build.at.place.get(ref.place)!]!.push({ piece: p, way: ref.way, kind: "closes" });
    for (const ref of piece.makes) touches[build.at.place.get(ref.place)!]!.push({ piece: p, way: ref.way, kind: "makes" });
    for (const place of piece.fills) touches[build.at.place.get(place)!]!.push({ piece: p, way: null, kind: "fills" });
  });
  const dependents: number[][] = build.places.map(() => []);
  build.places.forEach((place, q) => {
    for (const way of place.ways) if (way.through !== null) dependents[build.at.place.get(way.through.place)!]!.push(q);
  });
  // From "nothing is open" up to the least table that agrees with itself: ways that lead through each other in a ring open nothing.
  const states: PlaceState[][] = build.places.map(() => []);
  const queue = outerFirst(build);
  const queued = new Set(queue);
  for (let k = 0; k < queue.length; k++) {
    const q = queue[k]!;
    queued.delete(q);
    const before = states[q]!;
    const found = statesOf(build, q, touches[q]!, spans, s, (outer) => states[outer]!);
    states[q] = found;
    if (dependents[q]!.length === 0 || JSON.stringify(found) === JSON.stringify(before)) continue;
    for (const d of dependents[q]!) {
      if (queued.has(d)) continue;
      queued.add(d);
      queue.push(d);
    }
  }
  return states;
}

/** Places so that, rings aside, those that ways lead through come first. */
function outerFirst(build: Build): number[] {
  const order: number[] = [];
  const seen = new Uint8Array(build.places.length);
  for (let root = 0; root < build.places.length; root++) {
    const path = [root];
    while (path.length > 0) {
      const q = path[path.length - 1]!;
      if (seen[q] === 0) {
        seen[q] = 1;
        const known = path.length;
        for (const { through } of build.places[q]!.ways) {
          const outer = through === null ? -1 : build.at.place.get(through.place)!;
          if (outer >= 0 && seen[outer] === 0) path.push(outer);
        }
        if (path.length > known) continue;
      }
      path.pop();
      if (seen[q] === 1) {
        seen[q] = 2;
        order.push(q);
      }
    }
  }
  return order;
}

function statesOf(
  build: Build,
  q: number,
  touches: readonly Touch[],
  spans: readonly PieceSpan[],
  s: Solution,
  of: (place: number) => PlaceState[],
): PlaceState[] {
  const { ways } = build.places[q]!;
  const during = touches.map((touch) => duringOf(build, touch, spans[touch.piece]!, s));
  const outer = ways.map(({ through }) => (through === null ? null : of(build.at.place.get(through.place)!)));
  const out: PlaceState[] = [];
  for (const t of timesOf(during, outer)) {
    const filled = during.some((x) => x.kind === "fills" && x.from <= t && t < x.until);
    const usableWays: string[] = [];
    if (!filled) {
      ways.forEach(({ id, full }, w) => {
        const through = outer[w];
        if (through && stateAt(through, t) !== "open") return;
        if (during.every((x) => x.way !== id || (x.from <= t && t < x.until) === (x.kind === "makes"))) usableWays.push(full);
      });
    }
    const state = filled ? "filled" : usableWays.length > 0 ? "open" : "closed";
    const before = out[out.length - 1];
    if (before !== undefined && before.state === state && areSame(before.usableWays, usableWays)) continue;
    const cause = before === undefined && t === 0 ? undefined : during.find((x) => x.from === t || x.until === t);
    out.push({ from: t as ElapsedMinute, state, by: cause?.piece ?? -1, usableWays });
  }
  return out;
}

/** A touch with when it lasts, in [from, until). */
interface During extends Touch {
  readonly from: number;
  readonly until: number;
}

/** A piece is in the way while it is being put up and until it is wholly gone; what it makes is there once it stands and until somebody begins to take it down. */
function duringOf(build: Build, { piece, way, kind }: Touch, span: PieceSpan, s: Solution): During {
  if (kind !== "makes") return { piece, way, kind, from: span.up, until: span.gone };
  const { down, fromStart } = build.pieces[piece]!;
  const until = Math.min(fromStart ? never : span.gone, down < 0 ? never : s.start[down]!);
  return { piece, way, kind, from: span.stands, until };
}

/** The beginning, and every instant at which something may change, in order. */
function timesOf(during: readonly During[], outer: readonly (readonly PlaceState[] | null)[]): Iterable<number> {
  const times = [0];
  for (const { from, until } of during) {
    if (from < never) times.push(from);
    if (until < never) times.push(until);
  }
  for (const list of outer) if (list !== null) for (const { from } of list) times.push(from);
  return times.length === 1 ? times : new Set(times.sort((a, b) => a - b));
}

function stateAt(states: readonly PlaceState[], t: number): PlaceState["state"] {
  let state: PlaceState["state"] = "closed";
  for (const x of states) if (x.from <= t) state = x.state;
  return state;
}

function areSame(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((x, i) => x === b[i]);
}
