import type { ElapsedMinute } from "../../base";
import { lastOf } from "../last-of";
import type { Problem, Solution } from "../problem";
import type { Ground } from "../search/member";
import { plainOf } from "../search/plain";
import { PlainGround } from "../search/plain-ground";
import { Population } from "../search/population";

/** The seed of the first population; the search that makes the first schedule has the one before it. */
const firstSeed = 2;

/**
 * Populations one after the other, each meant for twice as many passes as the one before it and begun with the best schedule there is: a proof of an early finish
 * is shorter than the search for it by clashes.
 */
export class Passes {
  private population: Population | null = null;
  private left = 0;
  private seed = firstSeed;

  private constructor(
    private readonly problem: Problem,
    private readonly ground: Ground,
    private most: number,
  ) {}

  /** Null where lengths, waits or capacities change. @param most passes for which the first population is meant, at least 1 */
  static of(p: Problem, most: number): Passes | null {
    const plain = plainOf(p);
    return plain === null ? null : new Passes(p, new PlainGround(plain), most);
  }

  /** One more schedule; how many passes it took, and the schedule where it is earlier than `best`. */
  next(best: Solution): { readonly passes: number; readonly better: Solution | null } {
    const { problem: p, ground } = this;
    if (this.population === null || this.left <= 0) {
      const list = Int32Array.from(best.start.keys()).sort((a, b) => best.start[a]! - best.start[b]! || a - b);
      this.population = new Population(ground, this.seed++, this.most, [list]);
      this.left = this.most;
      this.most *= 2;
    }
    const { population } = this;
    const passes = population.step();
    this.left -= passes;
    if (ground.finish(population.made) >= lastOf(best.finish)) return { passes, better: null };
    const start = ground.starts(population.turn, population.made);
    if (start === null) return { passes, better: null };
    return { passes, better: { start, finish: start.map((s, j) => p.clocks[p.clock[j]!]!.advance(s as ElapsedMinute, p.amount[j]!)) } };
  }
}
