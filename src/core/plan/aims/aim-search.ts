import { type ElapsedMinute, never } from "../../base";
import type { Aim, Build, Served } from "../../build";
import type { Clocks } from "../../clock";
import { buildClocks } from "../../pour";
import { type Solution, solve } from "../../schedule";
import { engine } from "../engine";
import { asDone } from "../history";
import { lastOf } from "../last-of";
import { type Ordered, orderWithDates } from "../order";
import { servedKey, servedSteps } from "../served";
import { Measure, type Measured } from "./measure";
import { movesFor } from "./moves";

/** Schedules made before the search is over. */
const aimBudget = 2_000;

export interface Aimed {
  readonly tried: number;
  readonly done: boolean;
  /** Null where the build has no dates. */
  readonly before: Measured | null;
  readonly after: Measured | null;
  /** The latest that the finish may be: where the plan without any aim ends, and what the builder gives beside. */
  readonly finishBy: ElapsedMinute;
  /** What the build has to say to be planned like that; null where nothing better was found. */
  readonly served: Served | null;
}

/**
 * Looks for a plan that is better by an aim, with the finish no later than allowed, by letting steps wait on purpose: in turn each of the moves that may help is
 * tried, the first that does is kept, until none does or the work allowed is spent. Every schedule keeps all dates, waits, people and things. Deterministic.
 */
export class AimSearch {
  private readonly build: Build;
  private readonly clocks: Clocks;
  private readonly course: Generator<void, void>;
  private tried = 0;
  private over = false;
  private before: Measured | null = null;
  private after: Measured | null = null;
  private finishBy: number = never;
  private found: Served | null = null;

  constructor(
    written: Build,
    private readonly aim: Aim,
  ) {
    this.build = asDone(written);
    this.clocks = buildClocks(this.build);
    this.course = this.run();
  }

  /** Goes on for so many schedules. */
  step(units: number): void {
    for (let k = 0; k < units && !this.over; k++) this.over = this.course.next().done === true;
  }

  get done(): boolean {
    return this.over;
  }

  aimed(): Aimed {
    const { tried, over: done, before, after, found: served } = this;
    return { tried, done, before, after, finishBy: this.finishBy as ElapsedMinute, served };
  }

  private *run(): Generator<void, void> {
    const { build, clocks, aim } = this;
    const now = orderWithDates(build, clocks);
    const plain: Ordered = build.served?.from === undefined ? now : orderWithDates({ ...build, served: without(build.served) }, clocks);
    const shown = now.result?.solution ?? null;
    const base = plain.result?.solution ?? null;
    const { bound } = plain;
    if (shown === null || base === null || bound === null) return;
    const finish = lastOf(base.finish, build.steps.length);
    const measure = new Measure(bound, aim, finish);
    this.before = measure.of(shown);
    this.finishBy = clocks.time.at(clocks.time.dayOf(finish) + 7 * aim.weeksLater, clocks.time.local(finish).minute);
    const { problem } = bound;
    const steps = servedSteps(build, base.start, plain.access.order);
    const key = servedKey({ ...build, served: { engine, rung: 0, steps } }, problem);

    const made = (release: Int32Array): { s: Solution; m: Measured } | null => {
      const { solution } = solve({ ...problem, release }, key);
      if (solution === null || lastOf(solution.finish, build.steps.length) > this.finishBy) return null;
      return { s: solution, m: measure.of(solution) };
    };
    let release = problem.release;
    let best = { s: base, m: measure.of(base) };
    const from = new Map<number, number>();
    for (let moved = true; moved && this.tried < aimBudget; ) {
      moved = false;
      for (const { steps: some, from: t } of movesFor(bound, aim, best.s)) {
        if (this.tried >= aimBudget) break;
        const free = some.filter((j) => problem.fixed[j]! < 0 && build.steps[j]!.done === null);
        if (free.length < some.length) continue;
        const later = release.slice();
        for (const j of free) later[j] = Math.max(later[j]!, t);
        this.tried++;
        const next = made(later);
        yield;
        if (next === null || !isBetter(next.m, best.m)) continue;
        best = next;
        release = later;
        for (const j of free) from.set(j, later[j]!);
        moved = true;
        break;
      }
    }
    // What waits for nothing does not wait.
    for (const j of [...from.keys()]) {
      const less = release.slice();
      less[j] = problem.release[j]!;
      const next = made(less);
      this.tried++;
      yield;
      if (next === null || isBetter(best.m, next.m)) continue;
      best = next;
      release = less;
      from.delete(j);
    }
    this.settle(best.m, steps, from);
  }

  /** Found only where the build, told so, is planned like that. */
  private settle(after: Measured, steps: readonly string[], from: ReadonlyMap<number, number>): void {
    const { build, clocks } = this;
    this.after = this.before;
    const moments = [...from].sort(([a], [b]) => a - b).map(([j, t]) => [build.steps[j]!.id, clocks.time.momentOf(t)] as const);
    const served: Served = { engine, rung: this.tried, steps, from: Object.fromEntries(moments) };
    const { solution } = orderWithDates({ ...build, served }, clocks).result ?? { solution: null };
    if (this.before === null || solution === null || !isBetter(after, this.before)) return;
    if (lastOf(solution.finish, build.steps.length) !== after.finish) return;
    this.after = after;
    this.found = served;
  }
}

const isBetter = (a: Measured, b: Measured): boolean => a.cost < b.cost || (a.cost === b.cost && a.finish < b.finish);

function without({ engine: by, rung, steps }: Served): Served {
  return { engine: by, rung, steps };
}
