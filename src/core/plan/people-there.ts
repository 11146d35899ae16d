import type { Clock, ElapsedMinute } from "../base";
import type { Clocks, WorkingClock } from "../clock";
import { IntList } from "../graph";
import type { Capacity } from "../schedule";
import type { Pool } from "./crews";

/** How many people of a pool are on site, up to `seen`; nobody after it, so that a plan that needs to look further is noticed. */
export function peopleThere({ people }: Pool, clocks: Clocks, seen: ElapsedMinute): Capacity {
  const each = people.map((id) => clocks.person(id));
  return { id: people.join(" "), kind: "people", ...levelsOf(each, seen), holds: "working" };
}

type Levels = Pick<Capacity, "times" | "levels">;

/** Levels of each set of people, as far as they were last asked for, kept as long as their clocks are: those are shared between plans, and so are these. */
const known = new WeakMap<Clock, readonly { readonly each: readonly Clock[]; readonly seen: number; readonly made: Levels }[]>();

function levelsOf(each: readonly WorkingClock[], seen: ElapsedMinute): Levels {
  const [first] = each;
  if (first === undefined) return fresh(each, seen);
  const before = known.get(first) ?? [];
  const own = before.find((k) => k.each.length === each.length && k.each.every((clock, i) => clock === each[i]));
  if (own?.seen === seen) return own.made;
  const made = fresh(each, seen);
  known.set(first, [...before.filter((k) => k !== own), { each, seen, made }]);
  return made;
}

function fresh(each: readonly WorkingClock[], seen: ElapsedMinute): Levels {
  // One number a change: twice its time, and one more where somebody comes; so that one plain sort puts them all in order.
  const changes: number[] = [];
  for (const clock of each) {
    const runs = clock.runs(0, seen);
    for (let k = 0; k < runs.length; k++) changes.push(2 * runs[k]! + ((k & 1) === 0 ? 1 : 0));
  }
  const times = new IntList(changes.length + 2);
  const levels = new IntList(changes.length + 2);
  times.push(0);
  levels.push(0);
  let level = 0;
  for (const change of new Float64Array(changes).sort()) {
    const at = change >> 1;
    level += (change & 1) === 1 ? 1 : -1;
    if (times.at(times.length - 1) !== at) {
      times.push(at);
      levels.push(level);
    } else levels.data[levels.length - 1] = level;
  }
  times.push(seen);
  levels.push(0);
  return { times: times.packed(), levels: levels.packed() };
}
