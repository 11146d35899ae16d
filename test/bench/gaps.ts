import { PlanSearch } from "../../src/core/plan";
import { optionsOf } from "./options";
import { realistic } from "./realistic";

/**
 * How far from proved plans of many builds are: at the end of each rung the site days between the finish and the bound, and how many are proved in whatever order.
 * `npm run bench -- gaps [--steps N] [--builds N] [--units N]`: builds drawn from 1, 2 and so on, each searched for so many units.
 */
const values = optionsOf({
  steps: { type: "string", default: "300" },
  builds: { type: "string", default: "12" },
  units: { type: "string", default: "30000" },
});

const sums = new Map<number, { gap: number; proved: number; seconds: number }>();
const rungs = [1_000, 10_000, 30_000, 100_000].filter((rung) => rung <= Number(values.units));

/** At the end of a rung, or of the search before it. */
function count(rung: number, gap: number, proved: boolean, seconds: number): void {
  const sum = sums.get(rung) ?? { gap: 0, proved: 0, seconds: 0 };
  sums.set(rung, { gap: sum.gap + gap, proved: sum.proved + (proved ? 1 : 0), seconds: sum.seconds + seconds });
}

for (let start = 1; start <= Number(values.builds); start++) {
  const search = new PlanSearch(realistic(Number(values.steps), start));
  const from = performance.now();
  const gaps: number[] = [];
  for (const rung of rungs) {
    while (!search.done && search.rung < rung) search.step(1);
    const { gap, proved } = search.sought();
    count(rung, gap, proved === "any-order", (performance.now() - from) / 1000);
    gaps.push(gap);
  }
  console.log(`start ${start}: ${gaps.join(", ")} site days over the bound`);
}
for (const [rung, { gap, proved, seconds }] of sums)
  console.log(
    `after ${rung} units: ${gap} site days over the bounds in all, ${proved} of ${values.builds} proved, ${(seconds / Number(values.builds)).toFixed(1)} s in the mean`,
  );
