import type { Statement } from "../base";
import type { Build } from "../build";
import { digraph, shortestPath } from "../graph";
import { may } from "./may";
import type { Access, Why, WhyLink } from "./result";

/**
 * Why step `before` comes before step `after`: the shortest chain of precedences, through such as hold in every order where there is one.
 * must: it is so in every order. chosen: it could also be after. none: the order found does not ask for it.
 */
export function why(build: Build, result: Access, before: number, after: number): Why {
  const { arcs, statements } = result;
  const rows = [...Array(arcs.count).keys()].filter((r) => arcs.orders[r] === 1);
  const ends = (list: Int32Array) => Int32Array.from(rows, (r) => list[r] as number);
  const graph = digraph(build.steps.length, ends(arcs.from), ends(arcs.to));
  if (before === after || !result.possible) return { verdict: "none" };
  const links = (path: Int32Array): WhyLink[] =>
    [...path].map((arc) => {
      const r = rows[arc] as number;
      return { from: arcs.from[r] as number, to: arcs.to[r] as number, reason: statements[arcs.reason[r] as number] as Statement };
    });
  const must = shortestPath(graph, before, after, (arc) => arcs.forced[rows[arc] as number] === 1);
  if (must !== null) return { verdict: "must", links: links(must) };
  const any = shortestPath(graph, before, after);
  if (any === null) return { verdict: "none" };
  return { verdict: may(build, after, before).verdict === "no" ? "must" : "chosen", links: links(any) };
}
