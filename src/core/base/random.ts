import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { uniformInt } from "pure-rand/distribution/uniformInt";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

/** A source of chance that is handed in, so that the same number always gives the same run. */
export interface Random {
  /** A whole number from `least` to `most`, both included. */
  int(least: number, most: number): number;
  /** At least 0, less than 1. */
  fraction(): number;
  /** One member of a list that is not empty. */
  pick<T>(list: readonly T[]): T;
  /** The members in another order; the list itself stays as it is. */
  shuffled<T>(list: readonly T[]): T[];
}

/** Chance that starts from a whole number: the same number, the same sequence, on every machine. */
export function randomFrom(start: number): Random {
  const generator = xoroshiro128plus(start);
  const int = (least: number, most: number): number => uniformInt(generator, least, most);
  return {
    int,
    fraction: () => uniformFloat64(generator),
    pick: (list) => list[int(0, list.length - 1)] as (typeof list)[number],
    shuffled: (list) => {
      const copy = [...list];
      for (let last = copy.length - 1; last > 0; last--) {
        const other = int(0, last);
        [copy[last], copy[other]] = [copy[other] as (typeof copy)[number], copy[last] as (typeof copy)[number]];
      }
      return copy;
    },
  };
}
