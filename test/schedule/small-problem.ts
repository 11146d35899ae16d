import { type Clock, type ElapsedMinute, never, notEver, type Random, randomFrom } from "../../src/core/base";
import type { Problem } from "../../src/core/schedule";
import { constant, elapsed, type JobSpec, type LinkSpec, problemOf, repeating } from "./problem-of";

/** Plain time, days of 6 minutes with 4 worked, and days of 10 with a long rest in the middle. */
const working = [elapsed, repeating("short day", 6, [[1, 5]]), repeating("two shifts", 10, [[0, 3], [6, 9]])]; // biome-ignore format: a table of windows

/** Gathers so much in each minute of a period, as strength does by the warmth of the hour. For waits; looks minute by minute. */
function gathering(id: string, rates: readonly number[]): Clock {
  const rate = (t: number): number => rates[((t % rates.length) + rates.length) % rates.length]!;
  const whole = rates.reduce((sum, r) => sum + r, 0);
  const reading = (t: number): number => {
    const periods = Math.floor(t / rates.length);
    return periods * whole + rates.slice(0, t - periods * rates.length).reduce((sum, r) => sum + r, 0);
  };
  const between = (from: number, to: number): number => reading(to) - reading(from);
  const walk = (t: number, by: 1 | -1, on: (u: number) => boolean): ElapsedMinute => {
    let u = t;
    while (on(u)) u += by;
    return u as ElapsedMinute;
  };
  const ends = (t: number): boolean => t >= never || t <= notEver;
  return {
    id,
    reading,
    advance: (t, amount) => (ends(t) ? t : walk(t, 1, (u) => between(t, u) < amount)),
    retreat: (t, amount) => (ends(t) ? t : walk(t, -1, (u) => between(u, t) < amount)),
    limit: (t, amount) => (ends(t) ? t : walk(t, 1, (u) => between(t, u + 1) <= amount)),
    unlimit: (t, amount) => (ends(t) ? t : walk(t, -1, (u) => between(u - 1, t) <= amount)),
    begin: (t) => walk(t, 1, (u) => rate(u) === 0),
    runEnd: (t) => walk(t, 1, (u) => rate(u) > 0),
  };
}

const strength = gathering("strength", [1, 3, 0, 2, 0]);

/** The small problem of a number: up to four jobs, a few minutes, and every feature that a problem can have; rings of waits occur. */
export function smallProblem(number: number): Problem {
  const r = randomFrom(number);
  const chance = (percent: number): boolean => r.int(1, 100) <= percent;
  const n = r.int(3, 4);
  const index = (): number => r.int(0, n - 1);
  const jobs = Array.from({ length: n }, (): JobSpec => {
    // Short jobs in plain time fit into the pauses of others.
    const clock = r.int(0, 2);
    const amount = chance(8) ? 0 : clock === 0 ? r.int(1, 3) : r.int(2, 5);
    return {
      clock,
      amount,
      unbroken: amount >= 1 && amount <= 4 - Math.floor(clock / 2) && chance(35),
      ...(chance(20) ? { release: r.int(1, 8) } : {}),
      ...(chance(14) ? { due: r.int(6, 16) } : {}),
      ...(chance(7) ? { fixed: r.int(0, 9) } : {}),
    };
  });
  // Most of them want the same.
  const scarce = r.int(0, 2);
  const leave = r.int(0, 9);
  const away = r.pick([1, 2, 2, 3, 3]);
  const demands = new Map<string, readonly [number, number, number]>();
  for (let j = 0; j < n; j++) {
    for (let k = r.int(1, 2); k > 0; k--) {
      const capacity = chance(60) ? scarce : r.int(0, 2);
      demands.set(`${j} ${capacity}`, [j, capacity, chance(65) ? 3 : r.int(1, 2)]);
    }
  }
  return problemOf({
    clocks: [...working, strength],
    horizon: r.int(15, 24),
    jobs,
    links: Array.from({ length: r.int(0, n - 1) }, () => link(r, n)).filter((l) => l.from !== l.to),
    capacities: [
      // Four people, some of them away for a while.
      { id: "people", kind: "people", times: Int32Array.of(0, leave, leave + 4), levels: Int32Array.of(4, away, 4), holds: "working" },
      constant("pump", "equipment", chance(85) ? 3 : 2, "span"),
      constant("pit", "alone", 3),
    ],
    demands: [...demands.values()],
    stocks: [{ id: "sheets", inHand: r.int(0, 3), arrivals: chance(60) ? [{ job: index(), number: 2 }] : [] }],
    spans: Array.from({ length: r.int(0, 2) }, () => {
      const number = r.int(1, 2);
      return { stock: 0, number, loss: r.int(0, number), out: index(), back: chance(25) ? -1 : index() };
    }),
  });
}

function link(r: Random, n: number): LinkSpec {
  const most = r.int(1, 100) <= 45;
  const least = !most || r.int(1, 100) <= 40 ? r.int(0, 4) : -1;
  return {
    from: r.int(0, n - 1),
    to: r.int(0, n - 1),
    ends: r.pick(["FS", "FS", "SS", "FF", "SF"] as const),
    clock: r.int(0, 3),
    least,
    ...(most ? { most: Math.max(least, 0) + r.int(0, 3) } : {}),
  };
}
