import type { Access } from "../access";
import type { Build } from "../build";
import type { Clocks } from "../clock";
import type { Links } from "../schedule";
import type { ClockList } from "./bound";

/** Links of a problem from the precedences that access derived and the deliveries that steps need; `row` leads back to the precedence. */
export function linksOf(
  build: Build,
  access: Access,
  clocks: Clocks,
  list: ClockList,
): { readonly links: Links; readonly row: Int32Array } {
  const { arcs, amounts } = access;
  const steps = build.steps.length;
  let room = arcs.count * 2;
  for (const step of build.steps) room += step.needs.length;
  const links = {
    count: 0,
    from: new Int32Array(room),
    to: new Int32Array(room),
    fromEnd: new Uint8Array(room),
    toEnd: new Uint8Array(room),
    clock: new Int32Array(room),
    least: new Int32Array(room),
    most: new Int32Array(room),
  };
  const row = new Int32Array(room);
  const plain = list.of(clocks.elapsed);
  const add = (r: number, from: number, to: number, fromEnd: number, toEnd: number, clock: number, least: number, most: number): void => {
    const l = links.count++;
    row[l] = r;
    links.from[l] = from;
    links.to[l] = to;
    links.fromEnd[l] = fromEnd;
    links.toEnd[l] = toEnd;
    links.clock[l] = clock;
    links.least[l] = least;
    links.most[l] = most;
  };
  for (let r = 0; r < arcs.count; r++) {
    if (arcs.redundant[r] === 1 || (arcs.orders[r] === 0 && arcs.least[r]! < 0 && arcs.most[r]! < 0)) continue;
    const least = arcs.least[r]! < 0 ? null : amounts[arcs.least[r]!]!;
    const most = arcs.most[r]! < 0 ? null : amounts[arcs.most[r]!]!;
    const leastClock = least === null ? plain : list.of(clocks.of(least.on));
    const mostClock = most === null ? leastClock : list.of(clocks.of(most.on));
    const hasLeast = least !== null || arcs.orders[r] === 1;
    const together = most !== null && hasLeast && (leastClock === mostClock || least === null);
    const from = arcs.from[r]!;
    const to = arcs.to[r]!;
    const fromEnd = arcs.fromEnd[r]!;
    const toEnd = arcs.toEnd[r]!;
    if (together) add(r, from, to, fromEnd, toEnd, mostClock, least?.amount ?? 0, most.amount);
    else {
      if (hasLeast) add(r, from, to, fromEnd, toEnd, leastClock, least?.amount ?? 0, -1);
      if (most !== null) add(r, from, to, fromEnd, toEnd, mostClock, -1, most.amount);
    }
  }
  for (let s = 0; s < steps; s++) {
    for (const id of build.steps[s]!.needs) add(-1, steps + build.at.delivery.get(id)!, s, 1, 0, plain, 0, -1);
  }
  return { links, row };
}
