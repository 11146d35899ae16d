import { type ElapsedMinute, never } from "../base";
import type { Build } from "../build";
import { buildClocks } from "../pour";
import { asDone } from "./history";
import { lastOf } from "./last-of";
import { orderWithDates } from "./order";

/** The finish that `plan` would give, without working out what holds what: for whoever has to choose among many builds. `never` where it finds no dates. */
export function quickFinish(written: Build): ElapsedMinute {
  const build = asDone(written);
  const solution = orderWithDates(build, buildClocks(build)).result?.solution ?? null;
  return (solution === null ? never : lastOf(solution.finish, build.steps.length)) as ElapsedMinute;
}
