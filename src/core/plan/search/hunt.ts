import { freed, justified, keptOrder, type Problem, SerialPasses, type Solution, searchOf } from "../../schedule";
import { lastOf } from "../last-of";
import { begun, breed, goOn, portion } from "./portions";
import { ofSteps } from "./relaxed";
import type { Found } from "./replay";

/** Schedules made by the population search at the beginning: what did best on builds of 60 to 300 steps drawn by numbers. */
const mostBred = 600;

/** Beyond so many jobs one schedule takes longer than a portion may, and what is bred is no better. */
const jobsForBreeding = 500;

/** The last so many jobs of a plan are put anew at a time, in builds that are too large for a proof of the whole to come by better ones soon. */
const ends = [25, 40, 60, 90, 130, 180];
const longestEnd = 240;
const jobsForParts = 100;

/** So many jobs that begin one after the other are put anew among all others, half of them the next time too. */
const middle = 100;

/** Units for one such part: at first, and at last, three times as many whenever none of them finishes earlier. With the most a longer end is tried too. */
const leastUnits = 300;
const mostUnits = 8_100;

/** What a hunt goes by and where it brings what it finds. */
export interface Prey {
  /** The best plan so far. */
  found(): Found;
  /** Makes a plan of a schedule, where that is better. */
  take(solution: Solution): void;
  /** Counts units of work. */
  tell(units: number): void;
  /** Nothing better can be, or no more work is allowed. */
  over(): boolean;
}

/** Ways to come by better plans that prove nothing, each in portions: what they yield is what a portion counts for. */
export class Hunt {
  /** The plan that was last served again in the order of how late it may be. */
  private justifiedOf: Found | null = null;

  constructor(
    private readonly prey: Prey,
    private readonly steps: number,
  ) {}

  /** Schedules bred from one another, in the order of the best plan so far, before clashes are learned from. */
  *bred(): Generator<number, void> {
    if (this.problem().jobs > jobsForBreeding) return;
    const { prey } = this;
    const search = searchOf(this.problem(), { seed: 1, first: prey.found().solution, schedules: mostBred });
    yield portion;
    while (!search.done && search.schedules < mostBred) {
      prey.tell(yield* breed(search));
      const made = search.result().solution;
      if (made !== null) prey.take(made);
      yield 1;
      yield* this.justify();
      if (prey.over()) return;
    }
  }

  /** Serves a better plan again in the order of how late everything may be, as long as that makes it better still; true where it did. */
  *justify(): Generator<number, boolean> {
    const { prey } = this;
    let better = false;
    for (let now = prey.found(); now !== this.justifiedOf; now = prey.found()) {
      this.justifiedOf = now;
      const solution = justified(new SerialPasses(now.ordered.bound!.problem), now.solution, this.steps, 1);
      prey.tell(2);
      yield portion;
      if (solution === now.solution) continue;
      prey.take(solution);
      better ||= prey.found() !== now;
      yield portion;
    }
    return better;
  }

  /**
   * Puts parts of the best plan anew, with more and more work: at first its end, which gains most soon, later its midst before that. Begins again from what is found.
   */
  *parts(): Generator<number, void> {
    if (this.problem().jobs < jobsForParts) return;
    const { prey } = this;
    for (let units = leastUnits; units <= mostUnits; ) {
      const before = prey.found();
      for (const inMidst of units === leastUnits ? [false, true] : [true, false]) {
        yield* inMidst ? this.middles(units) : this.ends(units);
        if (prey.over()) return;
      }
      if (prey.found() === before) units *= 3;
    }
  }

  /**
   * The last jobs, with those before them where they are: few first, then more (large neighbourhoods in time: Godard, Laborie & Nuijten 2005, from memory).
   */
  private *ends(units: number): Generator<number, void> {
    const { prey } = this;
    const lengths = units === mostUnits ? [...ends, longestEnd] : ends;
    for (let k = 0; k < lengths.length; k++) {
      const before = prey.found();
      yield* this.tried(this.end(lengths[k]!, units));
      if (prey.over()) return;
      if (prey.found() !== before) k = -1;
    }
  }

  /** Jobs that begin one after the other, from the last to the first, with all others in the order in which they take what they share. */
  private *middles(units: number): Generator<number, void> {
    const { jobs } = this.problem();
    for (let after = 0; after < jobs - middle / 2; after += middle / 2) {
      yield* this.tried(this.middle(after, units));
      if (this.prey.over()) return;
    }
  }

  private *tried(part: Generator<number, Solution | null>): Generator<number, void> {
    const solution = yield* part;
    if (solution !== null) this.prey.take(solution);
    yield 1;
    yield* this.justify();
  }

  private *end(last: number, most: number): Generator<number, Solution | null> {
    const { solution } = this.prey.found();
    const p = this.problem();
    const from = solution.start.toSorted()[Math.max(0, p.jobs - last)]!;
    const part = freed(p, solution, (j) => solution.start[j]! >= from, from);
    return yield* this.sooner(part.problem, part.solution, most, (s) => part.whole(s.start));
  }

  private *middle(after: number, most: number): Generator<number, Solution | null> {
    const { solution } = this.prey.found();
    const p = this.problem();
    const starts = solution.start.toSorted();
    const from = starts[Math.max(0, p.jobs - after - middle)]!;
    const until = starts[p.jobs - 1 - after]!;
    const part = keptOrder(p, solution, (j) => solution.start[j]! >= from && solution.start[j]! <= until);
    return yield* this.sooner(part, solution, most, (s) => s);
  }

  /** The best schedule that so many units find of a part, or the first with which the whole finishes earlier. */
  private *sooner(part: Problem, first: Solution, most: number, whole: (s: Solution) => Solution): Generator<number, Solution | null> {
    const { prey } = this;
    const { finish } = prey.found();
    const search = yield* begun(part, first);
    const made = (): Solution | null => {
      const { solution } = search.result();
      return solution && whole(solution);
    };
    for (let units = 0; !search.done && units < most; ) {
      const done = yield* goOn(search);
      prey.tell(done);
      units += done;
      const now = made();
      if ((now !== null && lastOf(now.finish, this.steps) < finish) || prey.over()) return now;
    }
    return made();
  }

  private problem(): Problem {
    return ofSteps(this.prey.found().ordered.bound!.problem, this.steps);
  }
}
