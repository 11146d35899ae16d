import { type Apply, inEveryOrder } from "../../access";
import type { ElapsedMinute, Finding } from "../../base";
import type { Build, Served } from "../../build";
import type { Clocks } from "../../clock";
import { buildClocks } from "../../pour";
import type { Problem, Proof, Solution } from "../../schedule";
import { asDone } from "../history";
import { lastOf } from "../last-of";
import { type Ordered, orderingWithDates } from "../order";
import type { Plan } from "../plan";
import { plan } from "../plan-of";
import { workedDays } from "../worked-days";
import { anyPlan } from "./any-plan";
import { turnedChoices } from "./chosen";
import { type FinishBound, raised } from "./finish-bound";
import { strongest } from "./hands-bound";
import { Hunt } from "./hunt";
import { otherOrders } from "./other-orders";
import { begun, eachFor, goOn, portion } from "./portions";
import { anyOrder, hasChosen, ofSteps } from "./relaxed";
import { type Found, replayed, sameOrder, servedAs } from "./replay";
import { rungs, type Sought } from "./sought";

/** Of so many portions one is of the search over all orders, while that in the chosen order is not done. */
const shares = 4;

/** A search for an earlier finish of a build that goes on for as much work as it is given. Deterministic: where it pauses has no say in what it finds. */
export class PlanSearch {
  private readonly build: Build;
  private readonly clocks: Clocks;
  private readonly course: Generator<number, void>;
  private was: number | null = null;
  private found: Found | null = null;
  private ordered: Proof | null = null;
  private relaxed: Proof | null = null;
  /** The last schedule of all orders at once that a plan was made of, or tried. */
  private looked: Solution | null = null;
  private orderShown = false;
  private bound: FinishBound | null = null;
  private readonly hunt: Hunt;
  private ruled: Finding | null = null;
  private tried = 0;
  done = false;
  /** The rung reached; 0 before the first. */
  rung = 0;
  /** As at the end of the last rung. */
  private at: { readonly found: Found | null; readonly rung: number; readonly proved: Sought["proved"] } = {
    found: null,
    rung: 0,
    proved: null,
  };
  private made: { readonly found: Found | null; readonly plan: Plan } | null = null;

  /** @param edited makes edits in the document the build was read from: without it fewer ways out of a refusal can be tried */
  constructor(
    private readonly written: Build,
    private readonly edited: Apply | null = null,
  ) {
    this.build = asDone(written);
    this.clocks = buildClocks(this.build);
    this.hunt = new Hunt(
      {
        found: () => this.found!,
        take: (made) => this.take(made),
        tell: (units) => {
          this.tried += units;
        },
        over: () => this.shown() || this.over(),
      },
      this.build.steps.length,
    );
    this.course = this.run();
  }

  /** Goes on for about so many units, or until done. What takes long without being a unit counts as some here. */
  step(units: number): void {
    for (let left = units; !this.done && left > 0; ) {
      const before = this.tried;
      const { done, value } = this.course.next();
      if (done === true) this.done = true;
      else left -= Math.max(value, this.tried - before);
    }
  }

  sought(): Sought {
    const finish = this.at.found?.finish ?? null;
    const { bound } = this;
    return {
      tried: this.tried,
      rung: this.rung,
      done: this.done,
      finishWas: this.was as ElapsedMinute | null,
      finish: finish as ElapsedMinute | null,
      bound,
      proved: this.at.proved,
      ruledOut: this.ruled,
      gain: finish === null || this.was === null ? 0 : this.days(finish, this.was),
      gap: finish === null || bound === null ? 0 : Math.max(0, this.days(bound.at, finish)),
    };
  }

  private days(from: number, to: number): number {
    return workedDays(this.clocks, this.build.usual, from, to);
  }

  /** What the build has to say to be planned as at the end of the last rung; null where that is how it is planned already. */
  served(): Served | null {
    const { found, rung } = this.at;
    return found === null || found.steps.length === 0 ? null : servedAs(found.steps, rung);
  }

  /** The plan at the end of the last rung. */
  plan(): Plan {
    if (this.made === null || this.made.found !== this.at.found) {
      const served = this.served();
      this.made = { found: this.at.found, plan: plan(served === null ? this.written : { ...this.written, served }) };
    }
    const { plan: made } = this.made;
    if (this.ruled === null) return made;
    return { ...made, status: "no-dates", findings: [...made.findings.filter(({ code }) => code !== "plan.not-found"), this.ruled] };
  }

  private *run(): Generator<number, void> {
    const first = yield* eachFor(portion, orderingWithDates(this.build, this.clocks));
    const solution = first.result?.solution ?? null;
    if (solution !== null) {
      this.was = lastOf(solution.finish, this.build.steps.length);
      this.found = { steps: [], ordered: first, solution, finish: this.was };
      this.at = { found: this.found, rung: 0, proved: null };
    }
    yield portion;
    if (this.found === null) yield* this.any(first);
    if (this.found === null) return;
    yield* this.earlier();
    const rung = rungs.find((r) => r > this.rung);
    if (rung !== undefined) this.settle(rung);
  }

  /** A plan where the quick passes found none; or why there is none. */
  private *any(first: Ordered): Generator<number, void> {
    if (first.result?.status !== "not-found") return;
    const looking = anyPlan(this.build, this.clocks, first, this.edited);
    let next = looking.next();
    for (; next.done !== true && this.tried < rungs[rungs.length - 1]!; next = looking.next()) {
      this.tried += next.value;
      yield Math.max(1, next.value);
    }
    if (next.done !== true || next.value === null) return;
    if ("code" in next.value) this.ruled = next.value;
    else this.found = next.value;
  }

  private *earlier(): Generator<number, void> {
    const { build, clocks } = this;
    const steps = build.steps.length;
    const first = this.found!;
    const pairs = yield* eachFor(1, inEveryOrder(build, first.ordered.access));
    const over = ofSteps(anyOrder(first.ordered.bound!, undefined, pairs).problem, steps);
    this.bound = yield* eachFor(portion, strongest(first.ordered.bound!, over, first.finish));
    yield portion;
    if (this.shown()) return;
    const turning = turnedChoices(build, clocks, first, (made) => {
      this.tried++;
      this.found = made ?? this.found;
    });
    for (let next = turning.next(); next.done !== true; next = turning.next()) {
      yield next.value;
      if (this.shown()) return;
    }
    yield* this.hunt.bred();
    if (this.shown()) return;
    // A first look at all orders at once may say more of the finish than waits and people did.
    yield* this.inAnyOrder(over);
    yield* this.hunt.parts();
    if (this.over()) return;
    for (let turn = 0; !this.shown(); turn++) {
      const oneOrder = this.ordered === null || !this.ordered.done;
      const anyLeft = this.relaxed === null || !this.relaxed.done;
      if (this.orderShown) {
        if (yield* this.inOtherOrders(over)) continue;
        return;
      }
      if (!oneOrder && !anyLeft) return;
      if (oneOrder && (turn % shares !== 0 || turn === 0 || !anyLeft || !hasChosen(this.found!.ordered.bound!))) yield* this.inOrder();
      else {
        yield* this.inAnyOrder(over);
      }
      yield 1;
      // What is made better from outside is where the search in its order begins anew.
      if (yield* this.hunt.justify()) [this.ordered, this.orderShown] = [null, false];
      if (this.over()) return;
    }
  }

  /** Settles a rung where it is reached; true after the last. */
  private over(): boolean {
    const rung = rungs.find((r) => r > this.rung);
    if (rung !== undefined && this.tried >= rung) this.settle(rung);
    return this.rung === rungs[rungs.length - 1];
  }

  /** Once nothing finishes earlier in the order of the best plan: a better one in another order (true: go on from it), or that there is none. */
  private *inOtherOrders(over: Problem): Generator<number, boolean> {
    const { found } = this;
    const cases = otherOrders(this.build, this.clocks, over, found!.ordered.bound!, found!);
    for (let next = cases.next(); ; next = cases.next()) {
      if (next.done !== true) {
        this.tried += next.value;
        yield Math.max(1, next.value);
        if (this.over()) return false;
        continue;
      }
      if (next.value === true) this.raise(found!.finish);
      if (typeof next.value === "boolean") return false;
      this.found = next.value;
      this.ordered = null;
      this.orderShown = false;
      return true;
    }
  }

  /** A portion of the search over all orders at once. */
  private *inAnyOrder(over: Problem): Generator<number, void> {
    this.relaxed ??= yield* begun(over, this.found!.solution);
    this.tried += yield* goOn(this.relaxed);
    const { solution, bound } = this.relaxed.result();
    this.raise(bound);
    if (solution === null || solution === this.looked) return;
    this.looked = solution;
    this.take(solution);
  }

  /** A portion of the search in the order of the best plan so far. */
  private *inOrder(): Generator<number, void> {
    const { bound } = this.found!.ordered;
    this.ordered ??= yield* begun(ofSteps(bound!.problem, this.build.steps.length), this.found!.solution);
    this.tried += yield* goOn(this.ordered);
    if (!hasChosen(bound!)) this.raise(this.ordered.result().bound);
    if (!this.ordered.done) return;
    const { status, solution } = this.ordered.result();
    const search = this.ordered;
    if (solution !== null) this.take(solution);
    this.orderShown =
      search === this.ordered && status === "proved" && lastOf(solution!.finish, solution!.finish.length) >= this.found!.finish;
  }

  /** Makes a plan of a schedule that is better than the best so far. */
  private take(solution: Solution): void {
    const now = this.found!;
    if (lastOf(solution.finish, this.build.steps.length) >= now.finish) return;
    const found = replayed(this.build, this.clocks, solution.start, now.ordered.access.order);
    if (found === null || found.finish >= now.finish) return;
    this.found = found;
    if (this.ordered === null || sameOrder(now.ordered.bound!.problem, found.ordered.bound!.problem)) return;
    this.ordered = null;
    this.orderShown = false;
  }

  private settle(rung: number): void {
    const solution = this.ordered?.result().solution ?? null;
    if (solution !== null) this.take(solution);
    this.rung = rung;
    const proved = this.shown() ? "any-order" : this.orderShown ? "this-order" : null;
    this.at = { found: this.found, rung: this.found === this.at.found ? this.at.rung : rung, proved };
    // The search over all orders goes on from the best there is: it needs to find nothing later.
    const over = this.relaxed?.result().solution ?? null;
    if (over !== null && this.relaxed?.done === false && lastOf(over.finish, this.build.steps.length) > this.found!.finish)
      this.relaxed = null;
  }

  private shown(): boolean {
    return this.bound !== null && this.bound.at >= this.found!.finish;
  }

  private raise(at: number): void {
    if (this.bound !== null) this.bound = raised(this.bound, at);
  }
}
