import type { ElapsedMinute } from "../../base";
import type { Problem, Solution } from "../problem";
import { plainOf } from "./plain";
import { PlainGround } from "./plain-ground";
import { Population } from "./population";

/** What a few passes came to, and how many there were. */
export interface Improved {
  readonly solution: Solution;
  readonly passes: number;
}

/**
 * A better schedule where lengths, waits and capacities never change: passes of a population search until one finishes by `bound` or `most` were made. Gives back
 * `from` itself where the problem is of another kind.
 */
export function improved(p: Problem, from: Solution, bound: number, most: number): Improved {
  const plain = plainOf(p);
  if (plain === null || most < 1) return { solution: from, passes: 0 };
  const ground = new PlainGround(plain);
  const list = Int32Array.from(from.start.keys()).sort((a, b) => from.start[a]! - from.start[b]! || a - b);
  const population = new Population(ground, 1, most, [list]);
  let solution = from;
  let finish = from.finish.reduce((a, b) => Math.max(a, b), 0);
  let passes = 0;
  while (passes < most && finish > bound) {
    passes += population.step();
    if (ground.finish(population.made) >= finish) continue;
    const start = ground.starts(population.turn, population.made);
    if (start === null) continue;
    finish = ground.finish(population.made);
    solution = { start, finish: start.map((s, j) => p.clocks[p.clock[j]!]!.advance(s as ElapsedMinute, p.amount[j]!)) };
  }
  return { solution, passes };
}
