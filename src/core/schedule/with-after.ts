import type { Links } from "./problem";

/** Links and, besides, row by row, no start of `to` before the finish of `from`; their rows follow those of the links. `clock`: what these say theirs is. */
export function withAfter(links: Links, from: readonly number[], to: readonly number[], clock: number): Links {
  const { count } = links;
  const all = count + from.length;
  const grown = <T extends Int32Array | Uint8Array>(made: T, list: T): T => {
    made.set(list.subarray(0, count));
    return made;
  };
  const numbers = (list: Int32Array, value: number): Int32Array => grown(new Int32Array(all).fill(value), list);
  const ends = (list: Uint8Array, value: number): Uint8Array => grown(new Uint8Array(all).fill(value), list);
  const jobs = (list: Int32Array, more: readonly number[]): Int32Array => {
    const made = numbers(list, 0);
    made.set(more, count);
    return made;
  };
  return {
    count: all,
    from: jobs(links.from, from),
    to: jobs(links.to, to),
    fromEnd: ends(links.fromEnd, 1),
    toEnd: ends(links.toEnd, 0),
    clock: numbers(links.clock, clock),
    least: numbers(links.least, 0),
    most: numbers(links.most, -1),
  };
}
