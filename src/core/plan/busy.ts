import type { Build } from "../build";
import type { Clocks } from "../clock";
import { IntList } from "../graph";
import type { Capacity } from "../schedule";
import { anybody, type Pool } from "./crews";
import type { HandsDone } from "./history";
import { fromMoment } from "./moments";

/** The people of a pool that are left while what is done was being done: two do not start something else in the hours in which they did that. */
export function leftOver(capacity: Capacity, pool: Pool, build: Build, clocks: Clocks, done: readonly HandsDone[]): Capacity {
  const changes = new Map<number, number>();
  const change = (t: number, by: number): void => void changes.set(t, (changes.get(t) ?? 0) + by);
  for (const { start, finish, hands } of done) {
    const number = hands.reduce(
      (sum, need) => sum + (pool.roles.includes(need.role) || asksAnybody(need.role, pool, build) ? need.number : 0),
      0,
    );
    const [from, to] = [Math.max(0, fromMoment(clocks, start)), Math.max(0, fromMoment(clocks, finish))];
    if (number === 0 || to <= from) continue;
    change(from, number);
    change(to, -number);
  }
  return changes.size === 0 ? capacity : { ...capacity, ...lowered(capacity, changes) };
}

/** A role that nothing left to do asks for is somebody of the whole crew all the same. */
const asksAnybody = (role: string, pool: Pool, build: Build): boolean =>
  pool.roles.includes(anybody) && !build.steps.some(({ hands }) => hands.some((need) => need.role === role));

function lowered({ times, levels }: Capacity, changes: ReadonlyMap<number, number>): Pick<Capacity, "times" | "levels"> {
  const instants = [...new Set([...times, ...changes.keys()])].sort((a, b) => a - b);
  const outTimes = new IntList(instants.length);
  const outLevels = new IntList(instants.length);
  let [at, busy] = [-1, 0];
  for (const t of instants) {
    while (at + 1 < times.length && times[at + 1]! <= t) at++;
    busy += changes.get(t) ?? 0;
    outTimes.push(t);
    outLevels.push(Math.max(0, (at < 0 ? 0 : levels[at]!) - busy));
  }
  return { times: outTimes.packed(), levels: outLevels.packed() };
}
