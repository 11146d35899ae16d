import { type Clock, type ElapsedMinute, never } from "../base";
import { finishOf, fitFinish, fitStart } from "./job";
import type { Problem } from "./problem";

/**
 * When job `j` is being pushed later by a ring of links through itself, how far it can be moved at once without passing a time at which the ring would
 * be content; 0 when it is in no ring. Once round the ring takes t to g(t) > t; while every clock on the way runs at a minute a minute, g(t + d) = g(t) + d.
 */
export function climb(p: Problem, j: number, start: Int32Array, parent: Int32Array): number {
  const ring: number[] = [];
  let v = j;
  do {
    const code = parent[v]!;
    if (code < 0 || ring.length > p.jobs) return 0;
    ring.push(code);
    const l = code >> 1;
    v = (code & 1) === 0 ? p.links.from[l]! : p.links.to[l]!;
  } while (v !== j);
  ring.reverse();
  if (neverContent(p, ring)) return never;
  let t = start[j] as ElapsedMinute;
  const s0 = t;
  let room = never as number;
  for (const code of ring) {
    const l = code >> 1;
    const least = (code & 1) === 0;
    const from = least ? p.links.from[l]! : p.links.to[l]!;
    const to = least ? p.links.to[l]! : p.links.from[l]!;
    const fromEnd = least ? p.links.fromEnd[l]! : p.links.toEnd[l]!;
    const toEnd = least ? p.links.toEnd[l]! : p.links.fromEnd[l]!;
    room = Math.min(room, even(p, p.clock[from]!, t));
    let x = t;
    if (fromEnd === 1) {
      x = finishOf(p, from, t);
      room = Math.min(room, evenEnd(p, p.clock[from]!, x, p.amount[from]!));
    }
    const amount = least ? p.links.least[l]! : p.links.most[l]!;
    const clock = p.clocks[p.links.clock[l]!]!;
    const y = least ? clock.advance(x, amount) : clock.unlimit(x, amount);
    if (y >= never) return never;
    if (amount > 0) {
      const next = (x + 1) as ElapsedMinute;
      // An office counts in days: a minute later is not a minute more.
      const steady = (least ? clock.advance(next, amount) : clock.unlimit(next, amount)) === y + 1;
      room = steady ? Math.min(room, even(p, p.links.clock[l]!, x), evenEnd(p, p.links.clock[l]!, y, amount)) : 0;
    }
    const s = toEnd === 0 ? fitStart(p, to, y) : fitFinish(p, to, y);
    if (s >= never) return never;
    const reached = toEnd === 0 ? s : finishOf(p, to, s);
    if (reached !== y) room = 0;
    if (p.unbroken[to] === 1) room = Math.min(room, p.clocks[p.clock[to]!]!.runEnd(s) - finishOf(p, to, s));
    t = s;
  }
  return t > s0 ? Math.max(t, s0 + room) : 0;
}

/** True when the whole ring counts on one clock and asks for more on it than it allows: then no day helps. */
function neverContent(p: Problem, ring: readonly number[]): boolean {
  let clock = -1;
  let gain = 0;
  for (const code of ring) {
    const l = code >> 1;
    const least = (code & 1) === 0;
    const from = least ? p.links.from[l]! : p.links.to[l]!;
    const to = least ? p.links.to[l]! : p.links.from[l]!;
    const works = (least ? p.links.fromEnd[l]! : p.links.toEnd[l]!) === 1 ? p.amount[from]! : 0;
    const after = (least ? p.links.toEnd[l]! : p.links.fromEnd[l]!) === 1 ? p.amount[to]! : 0;
    const wait = least ? p.links.least[l]! : -p.links.most[l]!;
    for (const [on, amount] of [
      [p.clock[from]!, works],
      [p.links.clock[l]!, wait],
      [p.clock[to]!, -after],
    ] as const) {
      if (amount === 0) continue;
      if (clock >= 0 && p.clocks[clock] !== p.clocks[on]) return false;
      clock = on;
      gain += amount;
    }
  }
  return clock >= 0 && gain > 0 && additive(p.clocks[clock]!);
}

/** Whether amounts on a clock add up to readings: true of calendars and plain time, not of an office's days or a strength. Asked at a few instants. */
function additive(clock: Clock): boolean {
  if (clock.fromBeginning) return false;
  return [0, 100_003, 1_000_007].every((t) => {
    const at = t as ElapsedMinute;
    return [1, 60].every((a) => clock.advance(at, a) >= never || clock.reading(clock.advance(at, a)) === clock.reading(at) + a);
  });
}

/** For how many minutes from `t` on the clock runs without a pause. */
function even(p: Problem, clock: number, t: ElapsedMinute): number {
  return Math.max(0, p.clocks[clock]!.runEnd(t) - t);
}

/** The same for the end of an amount, which belongs to the minute before it. */
function evenEnd(p: Problem, clock: number, t: ElapsedMinute, amount: number): number {
  if (amount === 0) return even(p, clock, t);
  return Math.max(0, p.clocks[clock]!.runEnd((t - 1) as ElapsedMinute) - t);
}
