import { DirectedGraph } from "graphology";
import { topologicalSort } from "graphology-dag";
import { access } from "../../src/core/access";
import type { Build } from "../../src/core/build";
import { plan } from "../../src/core/plan";
import { realistic } from "./realistic";
import { stages } from "./stages";

/**
 * What a plan costs, stage by stage, beside making the graphology graph of all its precedences and sorting it. Medians of 30 runs after 20 unmeasured
 * ones, all in this process; the first plan of all is told apart.
 */
const sizes = process.argv
  .slice(2)
  .map(Number)
  .filter((n) => n > 0);
const asked = sizes.length > 0 ? sizes : [60, 300, 1000, 5000];

function median(run: () => unknown, measured = 30, before = 20): number {
  for (let i = 0; i < before; i++) run();
  const times: number[] = [];
  for (let i = 0; i < measured; i++) {
    const from = performance.now();
    run();
    times.push(performance.now() - from);
  }
  return times.sort((a, b) => a - b)[measured >> 1]!;
}

function graphOf(build: Build): DirectedGraph {
  const { arcs } = access(build);
  return arcsGraph(build, arcs);
}

function arcsGraph(build: Build, arcs: ReturnType<typeof access>["arcs"]): DirectedGraph {
  const graph = new DirectedGraph();
  build.steps.forEach((_, s) => void graph.addNode(`s${s}`));
  for (let r = 0; r < arcs.count; r++) if (arcs.orders[r] === 1) graph.mergeDirectedEdge(`s${arcs.from[r]}`, `s${arcs.to[r]}`, { row: r });
  return graph;
}

const fresh = realistic(90);
const from = performance.now();
plan(fresh);
console.log(`first plan in a fresh process, ${fresh.steps.length} steps: ${(performance.now() - from).toFixed(0)} ms`);

const perStep = new Map<number, number>();
for (const size of asked) {
  const build = realistic(size);
  const few = size > 2000 ? ([10, 5] as const) : ([30, 20] as const);
  const made = plan(build);
  const { arcs } = made.access;
  const rows: [string, number][] = stages(build).map(([name, run]) => [name, median(run, ...few)]);
  const whole = median(() => plan(build), ...few);
  const made_ms = median(() => arcsGraph(build, arcs), ...few);
  const graph = graphOf(build);
  const sort_ms = median(() => topologicalSort(graph), ...few);
  perStep.set(size, whole / size);
  console.log(`\n${size} steps, ${arcs.count} precedences, ${made.access.choices.length} choices, ${made.status}, medians in ms`);
  for (const [name, ms] of rows) console.log(`  ${name.padEnd(22)} ${ms.toFixed(2).padStart(9)}`);
  console.log(`  ${"whole plan".padEnd(22)} ${whole.toFixed(2).padStart(9)}   ${((1000 * whole) / size).toFixed(1)} µs a step`);
  console.log(`  ${"graphology: build".padEnd(22)} ${made_ms.toFixed(2).padStart(9)}`);
  console.log(
    `  ${"graphology-dag: sort".padEnd(22)} ${sort_ms.toFixed(2).padStart(9)}   plan is ${(whole / (made_ms + sort_ms)).toFixed(1)} times build and sort`,
  );
}

const [small, large] = [300, 5000].map((n) => perStep.get(n));
if (small !== undefined && large !== undefined) {
  const nlogn = (large * 5000) / (small * 300) / ((5000 * Math.log2(5000)) / (300 * Math.log2(300)));
  console.log(`\nfrom 300 to 5000 steps: ${((large * 5000) / (small * 300)).toFixed(1)} times, ${nlogn.toFixed(2)} times n log n`);
}
