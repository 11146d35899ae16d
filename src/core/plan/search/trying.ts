import { never } from "../../base";
import type { Build } from "../../build";
import { plan } from "../plan-of";
import { quickFinish } from "../quick-finish";

/** Work that yields a unit for every plan that was tried. */
export type Trying<T> = Generator<number, T>;

/** Whether a build has a plan: a quick look at the dates first, for most have none. */
export function* hasPlan(build: Build | null): Trying<boolean> {
  if (build === null) return false;
  yield 1;
  if (quickFinish(build) >= never) return false;
  yield 1;
  return plan(build).status === "planned";
}
