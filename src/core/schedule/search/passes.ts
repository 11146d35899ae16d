import { byKey } from "../by-key";
import { solutionOf } from "../job";
import { lastOf } from "../last-of";
import type { Problem, Solution } from "../problem";
import type { Ground } from "./member";
import { plainOf } from "./plain";
import { PlainGround } from "./plain-ground";
import { Population } from "./population";

/**
 * Populations one after the other, each meant for twice as many passes as the one before it and begun with the best schedule there is: a proof of an early finish
 * is shorter than the search for it by clashes.
 */
export class Passes {
  private population: Population | null = null;
  private left = 0;

  private constructor(
    private readonly problem: Problem,
    private readonly ground: Ground,
    private most: number,
    private seed: number,
  ) {}

  /** Null where lengths, waits or capacities change. @param most passes for which the first population is meant; below 1: none is, null; `seed`: its seed */
  static of(p: Problem, most: number, seed: number): Passes | null {
    const plain = most < 1 ? null : plainOf(p);
    return plain === null ? null : new Passes(p, new PlainGround(plain), most, seed);
  }

  /** One more schedule; how many passes it took, the schedule where it is earlier than `best`, and its starts where it is as early. */
  next(best: Solution): { readonly passes: number; readonly better: Solution | null; readonly level: Int32Array | null } {
    const { problem: p, ground } = this;
    if (this.population === null || this.left <= 0) {
      const list = byKey(p.jobs, (j) => best.start[j]!);
      this.population = new Population(ground, this.seed++, this.most, [list]);
      this.left = this.most;
      this.most *= 2;
    }
    const { population } = this;
    const passes = population.step();
    this.left -= passes;
    const over = ground.finish(population.made) - lastOf(best.finish);
    const start = over > 0 ? null : ground.starts(population.turn, population.made);
    return { passes, better: start === null || over === 0 ? null : solutionOf(p, start), level: over === 0 ? start : null };
  }
}
