import { type ElapsedMinute, never } from "../../base";
import { earliest, netOf } from "../network";
import type { Problem, Result, Solution, Stuck } from "../problem";
import { solve } from "../solve";
import { verify } from "../verify";
import { witness } from "../witness";
import { workBound } from "./bound";
import { plainOf } from "./plain";
import { PlainGround } from "./plain-ground";
import { Population } from "./population";

export interface Asked {
  /** The same number, the same search. */
  readonly seed: number;
  /** A schedule that is there already; what is not one is not used. */
  readonly first?: Solution | null;
  /** For how many schedules the search is meant; it may be given fewer or more. */
  readonly schedules?: number;
}

/** A search for a good schedule that goes on for as much work as it is given. */
export interface Search {
  readonly done: boolean;
  /** Passes of a generation scheme so far, forwards or backwards. */
  readonly schedules: number;
  step(units: number): void;
  /** The best so far. "infeasible" is said of links and dates only, "proved" where the finish meets the bound. */
  result(): Result;
}

const usual = 5000;

/** A population search for the earliest finish; proves nothing but what its bound shows. */
export function searchOf(p: Problem, asked: Asked): Search {
  const early = earliest(p, netOf(p));
  const none = { witness: [], stuck: null, earliest: early, work: 0 };
  if (early.broken >= 0) {
    const broken = witness(p, netOf(p), early);
    return ended({ ...none, status: "infeasible", solution: null, bound: 0 as ElapsedMinute, witness: broken });
  }
  const bound = Math.max(workBound(p), lastOf(early.finish)) as ElapsedMinute;
  const short = lacking(p);
  if (short !== null) return ended({ ...none, status: "not-found", solution: null, bound, stuck: short });
  const plain = plainOf(p);
  const given = asked.first ?? null;
  const first = given !== null && lastOf(given.finish) <= p.horizon && verify(p, given).length === 0 ? given : null;
  let best = first;
  let finish = first === null ? never : lastOf(first.finish);
  let schedules = 0;
  const take = (s: Solution): void => {
    if (lastOf(s.finish) >= finish || lastOf(s.finish) > p.horizon || verify(p, s).length > 0) return;
    best = s;
    finish = lastOf(s.finish);
  };
  let population: Population | null = null;
  const ground = plain === null ? null : new PlainGround(plain);
  let ran = false;
  return {
    get done() {
      return finish <= bound || (ground === null && ran);
    },
    get schedules() {
      return schedules;
    },
    step(units) {
      if (ground === null) {
        if (ran || units < 1 || finish <= bound) return;
        ran = true;
        const made = solve(p);
        schedules += made.work;
        if (made.solution !== null) take(made.solution);
        return;
      }
      if (population === null) {
        if (units < 1) return;
        population = new Population(ground, asked.seed, asked.schedules ?? usual, [orderOf(first?.start ?? ground.late)]);
      }
      for (let k = 0; k < units && finish > bound; k++) {
        population.step();
        schedules++;
        if (ground.finish(population.made) >= finish) continue;
        const start = ground.starts(population.turn, population.made);
        if (start !== null) take({ start, finish: start.map((s, j) => p.clocks[p.clock[j]!]!.advance(s as ElapsedMinute, p.amount[j]!)) });
      }
    },
    result() {
      const status = best === null ? "not-found" : finish <= bound ? "proved" : "planned";
      return { ...none, status, solution: best, bound, work: schedules };
    },
  };
}

/** Jobs by start. */
function orderOf(start: Int32Array): Int32Array {
  return Int32Array.from(start.keys()).sort((a, b) => start[a]! - start[b]! || a - b);
}

/** A job that asks for more than there ever is. */
function lacking(p: Problem): Stuck | null {
  for (let d = 0; d < p.demands.length; d += 3) {
    const [job, index] = [p.demands[d]!, p.demands[d + 1]!];
    const most = p.capacities[index]!.levels.reduce((a, b) => Math.max(a, b), 0);
    if (p.amount[job]! > 0 && p.demands[d + 2]! > most) return { job, of: { kind: "capacity", index } };
  }
  return null;
}

function ended(result: Result): Search {
  return { done: true, schedules: 0, step: () => {}, result: () => result };
}

function lastOf(finish: Int32Array): number {
  return finish.reduce((a, b) => Math.max(a, b), 0);
}
