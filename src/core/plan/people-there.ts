import type { Clock, ElapsedMinute } from "../base";
import type { Clocks, WorkingClock } from "../clock";
import type { Capacity } from "../schedule";
import type { Pool } from "./crews";

/** How many people of a pool are on site, up to `seen`; nobody after it, so that a plan that needs to look further is noticed. */
export function peopleThere({ people }: Pool, clocks: Clocks, seen: ElapsedMinute): Capacity {
  const each = people.map((id) => clocks.person(id));
  return {
    id: people.join(" "),
    kind: "people",
    ...levelsOf(each, seen, () => clocks.there(people, 0 as ElapsedMinute, seen)),
    holds: "working",
  };
}

type Levels = Pick<Capacity, "times" | "levels">;

/** Levels of each set of people, as far as they were last asked for, kept as long as their clocks are: those are shared between plans, and so are these. */
const known = new WeakMap<Clock, readonly { readonly each: readonly Clock[]; readonly seen: number; readonly made: Levels }[]>();

function levelsOf(each: readonly WorkingClock[], seen: ElapsedMinute, there: () => Levels): Levels {
  const [first] = each;
  if (first === undefined) return closed(there(), seen);
  const before = known.get(first) ?? [];
  const own = before.find((k) => k.each.length === each.length && k.each.every((clock, i) => clock === each[i]));
  if (own?.seen === seen) return own.made;
  const made = closed(there(), seen);
  known.set(first, [...before.filter((k) => k !== own), { each, seen, made }]);
  return made;
}

/** With nobody there from `seen` on. */
function closed({ times, levels }: Levels, seen: ElapsedMinute): Levels {
  const out = { times: new Int32Array(times.length + 1), levels: new Int32Array(levels.length + 1) };
  out.times.set(times);
  out.levels.set(levels);
  out.times[times.length] = seen;
  return out;
}
