import type { Build } from "../core/build";
import { type Aimed, AimSearch } from "../core/plan";
import type { Questions } from "./protocol";

/** The search going on; another run starts another and forgets it. */
let last: { readonly run: number; readonly search: AimSearch } | null = null;

/**
 * A portion of the search for a plan that is better by what the build aims at; null where it aims at nothing else. The page asks again until it is done, so that
 * other questions come in between.
 */
export function aim(build: Build, { run, schedules }: Questions["aim"]): Aimed | null {
  if (!build.aim) return null;
  const { search } = last?.run === run ? last : { search: new AimSearch(build, build.aim) };
  last = { run, search };
  search.step(schedules);
  return search.aimed();
}
