import { type ElapsedMinute, randomFrom } from "../../base";
import { latest, netOf, type Problem, type Solution, solve } from "../../schedule";
import { lastOf } from "./relaxed";

/** Passes of generation that shake the best schedule before it is looked for by clashes. */
const passes = 200;

/**
 * Serial generation again and again along the starts of the best schedule so far, mixed with how late each job may be and shaken by chance from a fixed number;
 * what is no later is the next to be shaken. Yields after every pass: the schedule where it finishes earlier than all before, else null.
 */
export function* shaken(p: Problem, steps: number, from: Solution): Generator<Solution | null, void> {
  const random = randomFrom(1);
  const net = netOf(p);
  let best = from;
  let finish = lastOf(from.finish, steps);
  let late = latest(p, net, finish as ElapsedMinute).start;
  for (let pass = 0; pass < passes; pass++) {
    const spread = pass === 0 ? 0 : Math.ceil((finish * random.int(1, 12)) / 100);
    const part = random.int(0, 10);
    const key = best.start.map((s, j) => (10 - part) * Math.floor(s / 10) + part * Math.floor(late[j]! / 10) + random.int(-spread, spread));
    const found = solve(p, key).solution;
    const now = found === null ? Number.POSITIVE_INFINITY : lastOf(found.finish, steps);
    if (found === null || now > finish) {
      yield null;
      continue;
    }
    best = found;
    const earlier = now < finish;
    if (earlier) {
      finish = now;
      late = latest(p, net, finish as ElapsedMinute).start;
    }
    yield earlier ? found : null;
  }
}
