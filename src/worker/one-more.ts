import type { Apply } from "../core/access";
import type { Build } from "../core/build";
import { OneMore, type OneMoreTable, quickFinish, searched } from "../core/plan";
import type { Questions } from "./protocol";

/** The table being worked out; a new run starts another and forgets it. */
let last: { readonly run: number; readonly search: OneMore } | null = null;

/** A portion of what one more of everything would buy. The page asks again until it is done, so that other questions come in between. */
export function oneMore(build: Build, edited: Apply, { run, from, plans }: Questions["oneMore"]): OneMoreTable {
  if (last?.run !== run) last = { run, search: new OneMore(build, edited, { quick: quickFinish, search: searched }, from) };
  last.search.step(plans);
  return last.search.table();
}
