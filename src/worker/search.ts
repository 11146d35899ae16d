import type { Apply } from "../core/access";
import type { Build } from "../core/build";
import { PlanSearch } from "../core/plan";
import type { Answers, Questions } from "./protocol";

/** How long one answer is worked on, so that other questions come in between. Where it stops has no say in what is found. */
const portion_ms = 80;

/** The search going on; another build starts another and forgets it. */
let last: { readonly build: Build; readonly search: PlanSearch } | null = null;

/** A portion of the search for an earlier finish. The page asks again until it is done or has enough. */
export function search(build: Build, edited: Apply, { upTo }: Questions["search"], now_ms: () => number): Answers["search"] {
  if (last?.build !== build) last = { build, search: new PlanSearch(build, edited) };
  const { search } = last;
  const until_ms = now_ms() + portion_ms;
  while (!search.done && search.rung < upTo && now_ms() < until_ms) search.step(1);
  return { sought: search.sought(), served: search.served() };
}
