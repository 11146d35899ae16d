import { readFileSync } from "node:fs";
import { readDocument } from "../../src/core/build";
import { apply } from "../../src/core/edit";
import { keep, plan } from "../../src/core/plan";
import { unforced } from "../fixtures/could-stay";
import { smallEdit } from "../fixtures/small-edits";

/**
 * How far plans stay near the one that was kept: fifty small changes of each example that has dates, planned afresh and beside the kept plan. A step moves for
 * nothing where it could stay with everybody served as before and no step earlier than before.
 */
const edits = 50;

for (const name of ["garden-wall", "bank-cellar"]) {
  const document: unknown = JSON.parse(readFileSync(`src/examples/${name}.json`, "utf8"));
  const build = readDocument(document).build!;
  const before = plan(build);
  const sums = { fresh: { steps: 0, moved: 0, unforced: 0, finish: 0 }, near: { steps: 0, moved: 0, unforced: 0, finish: 0 } };
  let made = 0;
  for (let n = 1; n <= edits; n++) {
    const changed = apply(document, smallEdit(build, n)).document;
    const kept = { ...keep(build, before), on: build.start };
    const near = readDocument(apply(changed, [{ path: ["kept"], value: kept }]).document).build;
    const fresh = readDocument(changed).build;
    if (near === null || fresh === null) continue;
    const plans = { near: plan(near), fresh: plan(fresh) };
    if (plans.near.status !== "planned" || plans.fresh.status !== "planned") continue;
    made++;
    for (const way of ["near", "fresh"] as const) {
      const { moved, forNothing } = unforced(near, kept, plans[way]);
      const sum = sums[way];
      sum.steps += near.steps.length;
      sum.moved += moved;
      sum.unforced += forNothing;
      sum.finish += plans[way].finish;
    }
  }
  const percent = (part: number, of: number): string => `${((100 * part) / of).toFixed(1)} %`;
  console.log(`${name}: ${made} changes of ${edits} planned, ${build.steps.length} steps`);
  for (const way of ["fresh", "near"] as const) {
    const { steps, moved, unforced: forNothing, finish } = sums[way];
    console.log(
      `  ${way.padEnd(6)} moved ${percent(moved, steps).padStart(7)}, for nothing ${percent(forNothing, steps).padStart(7)}, mean finish ${(finish / made / 1440).toFixed(2)} days`,
    );
  }
}
