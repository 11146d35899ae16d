import { uniformInt } from "pure-rand/distribution/uniformInt";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

/** Draws from some source; a source that only answers 0 gives the simplest thing each time. */
export interface Draw {
  /** 0 to below - 1. */
  readonly below: (below: number) => number;
  readonly chance: (percent: number) => boolean;
  readonly pick: <T>(list: readonly T[]) => T;
  /** Some members, each taken with the chance given, in their order. */
  readonly some: <T>(list: readonly T[], percent: number) => T[];
}

function drawFrom(below: (below: number) => number): Draw {
  const chance = (percent: number) => below(100) >= 100 - percent;
  return { below, chance, pick: (list) => list[below(list.length)]!, some: (list, percent) => list.filter(() => chance(percent)) };
}

/** The same start gives the same draws. */
export function drawFromStart(start: number): Draw {
  const generator = xoroshiro128plus(start);
  return drawFrom((below) => (below <= 1 ? 0 : uniformInt(generator, 0, below - 1)));
}

/** Draws from a list of whole numbers, then 0: what a property test can make smaller. */
export function drawFromList(list: readonly number[]): Draw {
  let i = 0;
  return drawFrom((below) => (below <= 1 ? 0 : (list[i++] ?? 0) % below));
}
