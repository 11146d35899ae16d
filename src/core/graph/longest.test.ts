import { expect, test } from "vitest";
import { digraph, longestPath } from "./index";

test("of two ways as long the lower arc is named, whichever comes first along the order, and none where no time is gained", () => {
  const graph = digraph(4, Int32Array.of(0, 1, 2), Int32Array.of(3, 3, 1));
  const delay = (arc: number) => (arc === 2 ? 0 : 4);
  for (const order of [
    [0, 2, 1, 3],
    [2, 1, 0, 3],
  ]) {
    const { at, by } = longestPath(graph, Int32Array.from(order), delay);
    expect([[...at], [...by]]).toEqual([
      [0, 0, 0, 4],
      [-1, -1, -1, 0],
    ]);
  }
});
