import type { Access } from "../access";
import type { ElapsedMinute } from "../base";
import type { Build } from "../build";
import type { Clocks } from "../clock";
import { type Result, solve } from "../schedule";
import { bind } from "./bind";
import { type Bound, furthest } from "./bound";

const firstLook = (800 * 1440) as ElapsedMinute;

/** Dates for an order. People are counted two years ahead, and further only when the plan does not fit in that. */
export function datesFor(build: Build, access: Access, clocks: Clocks): { readonly bound: Bound; readonly result: Result } {
  for (let seen = firstLook; ; ) {
    const bound = bind(build, access, clocks, seen);
    const result = solve(bound.problem);
    const of = result.stuck?.of;
    const peopleRanOut = of?.kind === "capacity" && bound.problem.capacities[of.index]!.kind === "people";
    if (!peopleRanOut || seen >= furthest) return { bound, result };
    seen = Math.min(furthest, Math.max(4 * seen, 2 * result.bound)) as ElapsedMinute;
  }
}
