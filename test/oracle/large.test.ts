import { expect, test } from "vitest";
import { access, may, why } from "../../src/core/access";
import { faultsOfOrder } from "./check-access";
import { drawFromStart } from "./draw";
import { large, randomDocument } from "./random-builds";
import { sat } from "./sat";
import { read } from "./shard";

test("builds of 15 to 25 steps: access agrees with a general-purpose solver (logic-solver, MiniSat) on what is possible and what must be", () => {
  let possible = 0;
  let asked = 0;
  const builds = 40;
  for (let start = 0; start < builds; start++) {
    const build = read(randomDocument(start, large));
    const n = build.steps.length;
    const known = sat(build);
    const result = access(build);
    if (known.possible) possible++;
    // The rows say which pairs are worth asking about; every answer is asked of the solver.
    const allowed = Array.from({ length: n }, () => new Array<boolean>(n).fill(true));
    for (let r = 0; r < result.arcs.count; r++) {
      const [from, to] = [result.arcs.from[r]!, result.arcs.to[r]!];
      if (result.arcs.orders[r] === 0) continue;
      allowed[to]![from] = known.may(to, from);
      asked++;
    }
    const draw = drawFromStart(start);
    for (let i = 0; i < 5; i++) {
      const a = draw.below(n);
      const b = (a + 1 + draw.below(n - 1)) % n;
      const pair = `build ${start}: ${build.steps[a]!.id} before ${build.steps[b]!.id}`;
      expect(may(build, a, b).verdict, pair).toBe(known.may(a, b) ? "yes" : "no");
      if (known.possible) expect(why(build, result, a, b).verdict === "must", pair).toBe(!known.may(b, a));
    }
    expect(faultsOfOrder(build, result, { possible: known.possible, may: allowed }, draw), `build ${start}`).toEqual([]);
  }
  console.info(`${builds} large builds: ${possible} possible, ${asked} pairs asked`);
  expect(possible).toBeGreaterThan(builds * 0.25);
  expect(builds - possible).toBeGreaterThan(builds * 0.25);
}, 300_000);
