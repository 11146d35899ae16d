import { type ElapsedMinute, never } from "../../base";
import { byKey } from "../by-key";
import { solutionOf } from "../job";
import { lastOf } from "../last-of";
import { type Earliest, earliest, type Net, netOf } from "../network";
import type { Problem, Result, Solution, Stuck } from "../problem";
import { verify } from "../verify";
import { witness } from "../witness";
import { lacking, workBound } from "./bound";
import type { Ground } from "./member";
import { plainOf } from "./plain";
import { PlainGround } from "./plain-ground";
import { Population } from "./population";
import { prepared } from "./prepare";

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
  /** Passes of a generation scheme so far, forwards or backwards; one in which jobs are placed anew counts for as many as it places them. */
  readonly schedules: number;
  /** Gets ready, which takes a while by itself; a step does so too where it has not been done. */
  begin(): void;
  /** Goes on for so many schedules, or until done. */
  step(units: number): void;
  /** The best so far. "infeasible" only where no schedule within the horizon can be, "proved" where the finish meets the bound. */
  result(): Result;
}

const usual = 5000;

/** A population search for the earliest finish of a problem of any kind. It proves nothing but what its bound shows. */
export function searchOf(p: Problem, asked: Asked): Search {
  const net = netOf(p);
  const early = earliest(p, net);
  const none = { witness: [], stuck: null, earliest: early, solution: null, work: 0 };
  if (early.broken >= 0) return ended({ ...none, status: "infeasible", bound: 0 as ElapsedMinute, witness: witness(p, net, early) });
  const bound = Math.max(workBound(p), lastOf(early.finish)) as ElapsedMinute;
  const stuck = lacking(p);
  return stuck === null ? new PopulationSearch(p, asked, net, early, bound) : ended({ ...none, status: "not-found", bound, stuck });
}

class PopulationSearch implements Search {
  done = false;
  schedules = 0;
  private best: Solution | null = null;
  private finish: number = never;
  private stuck: Stuck | null = null;
  private impossible = false;
  private ground: Ground | null = null;
  private population: Population | null = null;

  constructor(
    private readonly problem: Problem,
    private readonly asked: Asked,
    private readonly net: Net,
    private readonly early: Earliest,
    private readonly bound: ElapsedMinute,
  ) {
    if (asked.first != null) this.take(asked.first);
  }

  step(units: number): void {
    const until = this.schedules + units;
    if (units > 0) this.begin();
    while (!this.done && this.schedules < until) this.once();
  }

  result(): Result {
    const { best, early, bound, schedules, stuck } = this;
    const known = { earliest: early, work: schedules, witness: [], solution: best };
    if (best === null && this.impossible) return { ...known, status: "infeasible", bound: never, stuck: null };
    if (best === null) return { ...known, status: "not-found", bound, stuck };
    return { ...known, status: this.finish <= bound ? "proved" : "planned", bound, stuck: null };
  }

  begin(): void {
    if (this.population !== null || this.done) return;
    const { problem: p, asked } = this;
    const plain = plainOf(p);
    if (plain !== null) this.ground = new PlainGround(plain);
    else {
      const { ground, first, passes, stuck, impossible } = prepared(p, this.net, this.early, this.bound, this.best);
      this.ground = ground;
      this.schedules += passes;
      this.stuck = stuck;
      this.impossible = impossible;
      if (first !== null) this.take(first);
    }
    this.done ||= this.ground === null;
    if (this.ground === null) return;
    const start = this.best?.start ?? this.ground.late;
    const given = [byKey(start.length, (j) => start[j]!)];
    this.population = new Population(this.ground, asked.seed, asked.schedules ?? usual, given);
  }

  private once(): void {
    const population = this.population!;
    const ground = this.ground!;
    this.schedules += population.step();
    if (ground.finish(population.made) >= this.finish) return;
    const start = ground.starts(population.turn, population.made);
    if (start !== null) this.take(solutionOf(this.problem, start));
  }

  private take(s: Solution): void {
    const last = lastOf(s.finish);
    if (last >= this.finish || last > this.problem.horizon || verify(this.problem, s).length > 0) return;
    this.best = s;
    this.finish = last;
    this.done = last <= this.bound;
  }
}

function ended(result: Result): Search {
  return { done: true, schedules: 0, begin: () => {}, step: () => {}, result: () => result };
}
