import type { ElapsedMinute } from "../../base";
import type { Build } from "../../build";
import type { Clocks } from "../../clock";

/** There for at least half of the time that the usual calendar works until the finish. */
export function isRegular(build: Build, clocks: Clocks, person: string, finish: number): boolean {
  const usual = clocks.work(build.usual).reading(finish as ElapsedMinute);
  return 2 * clocks.crewOn(build.usual, [person], 1).reading(finish as ElapsedMinute) >= usual;
}
