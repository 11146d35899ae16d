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
  const place = build.places[q]!;
  const outer = place.ways.map((way) => (way.through === null ? null : of(build.at.place.get(way.through.place)!)));
  const times = new Set<number>([0]);
  for (const t of touches) {
    const span = spans[t.piece]!;
    for (const at of t.kind === "makes" ? [span.stands, servesUntil(build, t.piece, span, s)] : [span.up, span.gone])
      if (at < never) times.add(at);
  }
  for (const list of outer) for (const state of list ?? []) times.add(state.from);
  const out: PlaceState[] = [];
  for (const t of [...times].sort((a, b) => a - b)) {
    const filler = touches.find((x) => x.kind === "fills" && closesAt(spans[x.piece]!, t));
    const usable =
      filler !== undefined
        ? []
        : place.ways.filter((way, w) => {
            const through = outer[w];
            if (through !== null && through !== undefined && stateAt(through, t) !== "open") return false;
            return touches.every(
              (x) =>
                x.way !== way.id || (x.kind === "closes" ? !closesAt(spans[x.piece]!, t) : servesAt(build, x.piece, spans[x.piece]!, s, t)),
            );
          });
    const state = filler !== undefined ? "filled" : usable.length > 0 ? "open" : "closed";
    const usableWays = usable.map((w) => w.full);
    const before = out[out.length - 1];
    if (before !== undefined && before.state === state && before.usableWays.join() === usableWays.join()) continue;
    out.push({ from: t as ElapsedMinute, state, by: t === 0 && out.length === 0 ? -1 : causeAt(build, touches, spans, s, t), usableWays });
  }
  return out;
}

/** A piece is in the way while it is being put up and until it is wholly gone. */
function closesAt(span: PieceSpan, t: number): boolean {
  return span.up <= t && t < span.gone;
}

/** What it makes is there once it stands and until somebody begins to take it down. */
function servesAt(build: Build, piece: number, span: PieceSpan, s: Solution, t: number): boolean {
  return span.stands <= t && t < servesUntil(build, piece, span, s);
}

function servesUntil(build: Build, piece: number, span: PieceSpan, s: Solution): number {
  const { down, fromStart } = build.pieces[piece]!;
  return Math.min(fromStart ? never : span.gone, down < 0 ? never : s.start[down]!);
}

function stateAt(states: readonly PlaceState[], t: number): PlaceState["state"] {
  let state: PlaceState["state"] = "closed";
  for (const x of states) if (x.from <= t) state = x.state;
  return state;
}

/** The piece whose coming or going falls on this instant; -1 when the change comes from an outer place. */
function causeAt(build: Build, touches: readonly Touch[], spans: readonly PieceSpan[], s: Solution, t: number): number {
  for (const x of touches) {
    const span = spans[x.piece]!;
    const times = x.kind === "makes" ? [span.stands, servesUntil(build, x.piece, span, s)] : [span.up, span.gone];
    if (times.includes(t as ElapsedMinute)) return x.piece;
  }
  return -1;
}
