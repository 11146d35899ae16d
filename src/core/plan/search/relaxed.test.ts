import { expect, test } from "vitest";
import { realistic } from "../../../../test/bench/realistic";
import { access, inEveryOrder } from "../../access";
import { drained } from "../../base";
import { digraph, reachMany, topologicalOrder } from "../../graph";
import { buildClocks } from "../../pour";
import { datesFor } from "../dates";
import { anyOrder } from "./relaxed";

test.each([1, 2, 3])(
  "the problem of all orders keeps every precedence of every order, also those that follow from chosen ones (%i)",
  (start) => {
    const build = realistic(100, start);
    const order = access(build);
    const { arcs } = order;
    const pairs = drained(inEveryOrder(build, order));
    const { bound } = datesFor(build, order, buildClocks(build));
    const any = anyOrder(bound, undefined, pairs);
    const { links } = any.problem;
    const asked = [...Array(links.count).keys()].filter((l) => links.least[l]! >= 0 && links.fromEnd[l] === 1 && links.toEnd[l] === 0);
    const ends = (of: Int32Array) => Int32Array.from(asked, (l) => of[l]!);
    const graph = digraph(any.problem.jobs, ends(links.from), ends(links.to));
    const rows = [...Array(arcs.count).keys()].filter((r) => arcs.forced[r] === 1 && arcs.orders[r] === 1);
    expect(rows.some((r) => arcs.redundant[r] === 1)).toBe(true);
    const from = [...rows.map((r) => arcs.from[r]!), ...pairs.map(([before]) => before)];
    const to = [...rows.map((r) => arcs.to[r]!), ...pairs.map(([, after]) => after)];
    expect(reachMany(graph, topologicalOrder(graph)!, from, to).every((leads) => leads === 1)).toBe(true);
    // Of what was chosen none is asked for; what was added beside leads back to its statement.
    for (const l of asked) if (any.row[l]! >= 0) expect(arcs.forced[any.row[l]!]).toBe(1);
    expect(any.row.length).toBe(links.count);
  },
);
