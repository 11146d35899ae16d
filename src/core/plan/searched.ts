import type { Build, Served } from "../build";
import type { Plan } from "./plan";
import { PlanSearch } from "./search/plan-search";
import { rungs } from "./search/sought";

/** Units between two looks at whether anybody else is waiting. */
const portion = 4;

/** The best plan that a search finds on its first rung, worked out in portions, with the order of serving that leads to it where that is new. */
export function* searched(build: Build): Generator<void, { readonly plan: Plan; readonly served: Served | null }> {
  const search = new PlanSearch(build);
  for (let sought = search.sought(); !sought.done && sought.rung < rungs[0]; sought = search.sought()) {
    search.step(portion);
    yield;
  }
  return { plan: search.plan(), served: search.served() };
}
