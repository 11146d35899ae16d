import type { Apply } from "../core/access";
import type { Build } from "../core/build";
import { OneMore, type OneMoreTable, quickFinish, searched } from "../core/plan";
import type { Questions } from "./protocol";

/** How long one answer is worked on. Where it stops has no say in what is found. */
const portion_ms = 80;

/** The table being worked out; a new run starts another and forgets it. */
let last: { readonly run: number; readonly search: OneMore } | null = null;

/** A portion of what one more of everything would buy. The page asks again until it is done, so that other questions come in between. */
export function oneMore(build: Build, edited: Apply, { run, from }: Questions["oneMore"], now_ms: () => number): OneMoreTable {
  if (last?.run !== run) last = { run, search: new OneMore(build, edited, { quick: quickFinish, search: searched }, from) };
  const { search } = last;
  const until_ms = now_ms() + portion_ms;
  do search.step(1);
  while (!search.table().done && now_ms() < until_ms);
  return search.table();
}
