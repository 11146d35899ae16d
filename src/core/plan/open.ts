import { type ElapsedMinute, never, type PlaceId } from "../base";
import type { Build } from "../build";
import type { Solution } from "../schedule";
import type { PieceSpan, PlaceState } from "./plan";

/** What a piece does to a place, and when, in [from, until). */
interface Touch {
  readonly piece: number;
  readonly way: string | null;
  readonly kind: "closes" | "makes" | "fills";
  readonly from: number;
  readonly until: number;
}

const shut: readonly PlaceState[] = [];

/** The states of every place through a plan: which ways in are usable, and whether any is. */
export function placeStates(build: Build, spans: readonly PieceSpan[], s: Solution): (readonly PlaceState[])[] {
  const touches: (Touch[] | undefined)[] = new Array(build.places.length);
  const note = (place: PlaceId, touch: Touch): void => noted(touches, build.at.place.get(place)!, touch);
  build.pieces.forEach(({ closes, makes, fills, down, fromStart }, piece) => {
    // A piece is in the way while it is being put up and until it is wholly gone; what it makes is there once it stands and until somebody begins to take it down.
    const { up: from, stands, gone: until } = spans[piece]!;
    for (const { place, way } of closes) note(place, { piece, way, kind: "closes", from, until });
    const served = Math.min(fromStart ? never : until, down < 0 ? never : s.start[down]!);
    for (const { place, way } of makes) note(place, { piece, way, kind: "makes", from: stands, until: served });
    for (const place of fills) note(place, { piece, way: null, kind: "fills", from, until });
  });
  const dependents: (number[] | undefined)[] = new Array(build.places.length);
  build.places.forEach((place, q) => {
    for (const { through } of place.ways) if (through !== null) noted(dependents, build.at.place.get(through.place)!, q);
  });
  // From "nothing is open" up to the least table that agrees with itself: ways that lead through each other in a ring open nothing.
  const states: (readonly PlaceState[])[] = build.places.map(() => shut);
  const queue = outerFirst(build);
  const queued = new Set(queue);
  for (let k = 0; k < queue.length; k++) {
    const q = queue[k]!;
    queued.delete(q);
    const before = states[q]!;
    const found = statesOf(build, q, touches[q] ?? none, (outer) => states[outer]!);
    states[q] = found;
    const next = dependents[q];
    if (next === undefined || JSON.stringify(found) === JSON.stringify(before)) continue;
    for (const d of next) {
      if (queued.has(d)) continue;
      queued.add(d);
      queue.push(d);
    }
  }
  return states;
}

const none: readonly never[] = [];

/** One more in the list at a position; most lists have one member. */
function noted<T>(lists: (T[] | undefined)[], at: number, one: T): void {
  const list = lists[at];
  if (list === undefined) lists[at] = [one];
  else list.push(one);
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

function statesOf(build: Build, q: number, touches: readonly Touch[], of: (place: number) => readonly PlaceState[]): PlaceState[] {
  const { ways } = build.places[q]!;
  const outer = ways.map(({ through }) => (through === null ? null : of(build.at.place.get(through.place)!)));
  const out: PlaceState[] = [];
  for (const t of timesOf(touches, outer)) {
    const filled = touches.some((x) => x.kind === "fills" && x.from <= t && t < x.until);
    const usableWays: string[] = [];
    if (!filled) {
      ways.forEach(({ id, full }, w) => {
        const through = outer[w];
        if (through && stateAt(through, t) !== "open") return;
        if (touches.every((x) => x.way !== id || (x.from <= t && t < x.until) === (x.kind === "makes"))) usableWays.push(full);
      });
    }
    const state = filled ? "filled" : usableWays.length > 0 ? "open" : "closed";
    const before = out[out.length - 1];
    if (before !== undefined && before.state === state && areSame(before.usableWays, usableWays)) continue;
    const cause = before === undefined && t === 0 ? undefined : touches.find((x) => x.from === t || x.until === t);
    out.push({ from: t as ElapsedMinute, state, by: cause?.piece ?? -1, usableWays });
  }
  return out;
}

/** The beginning, and every instant at which something may change, in order. */
function timesOf(touches: readonly Touch[], outer: readonly (readonly PlaceState[] | null)[]): Iterable<number> {
  const times = [0];
  for (const { from, until } of touches) {
    if (from < never) times.push(from);
    if (until < never) times.push(until);
  }
  for (const list of outer) if (list !== null) for (const { from } of list) times.push(from);
  return times.every((t, k) => k === 0 || t > times[k - 1]!) ? times : new Set(times.sort((a, b) => a - b));
}

function stateAt(states: readonly PlaceState[], t: number): PlaceState["state"] {
  let state: PlaceState["state"] = "closed";
  for (const x of states) if (x.from <= t) state = x.state;
  return state;
}

function areSame(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((x, i) => x === b[i]);
}
