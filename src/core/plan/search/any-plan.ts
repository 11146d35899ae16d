import type { Apply } from "../../access";
import type { Finding } from "../../base";
import type { Build } from "../../build";
import type { Clocks } from "../../clock";
import { refusalOf, type Solution } from "../../schedule";
import { bind } from "../bind";
import { furthest } from "../bound";
import type { Ordered } from "../order";
import { begun, goOn, uncounted } from "./portions";
import { anyOrder } from "./relaxed";
import { type Found, replayed } from "./replay";
import { ruledOut } from "./ruled-out";

/**
 * A plan for a build for which the quick passes found none, or why there is none: all orders at once first, then the order that was chosen. Yields the units
 * of work done; 0 in the midst of them.
 */
export function* anyPlan(build: Build, clocks: Clocks, first: Ordered, edited: Apply | null): Generator<number, Found | Finding | null> {
  const bound = bind(build, first.access, clocks, furthest);
  const over = anyOrder(bound);
  for (const p of [over, bound.problem]) {
    const search = yield* uncounted(begun(p, null));
    let solution: Solution | null = null;
    while (!search.done && solution === null) {
      const units = yield* uncounted(goOn(search));
      ({ solution } = search.result());
      yield units;
    }
    if (solution !== null) {
      const found = replayed(build, clocks, solution.start, first.access.order);
      if (found !== null) return found;
    } else if (p === over) {
      const refusal = refusalOf(p);
      while (!refusal.done) {
        const before = refusal.work;
        refusal.step(1);
        yield refusal.work - before;
      }
      return yield* ruledOut(bound, refusal.result(), edited);
    }
  }
  return null;
}
