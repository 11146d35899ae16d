import { spawnSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { readDocument } from "../../src/core/build";
import { PlanSearch, plan } from "../../src/core/plan";
import { optionsOf } from "./options";
import { realisticDocument } from "./realistic";

/**
 * What a proof run of 300 steps takes of memory at its highest, and whether 100 plans one after the other, each of another edit and each with some search
 * behind it, leave anything behind. Each in a process of its own. `npm run bench -- memory [--seconds S] [--json OUT]`
 */
const values = optionsOf({ seconds: { type: "string", default: "20" }, part: { type: "string" }, json: { type: "string" } });
const steps = 300;
const MB = 1024 * 1024;

interface ProofRun {
  readonly steps: number;
  readonly seconds: number;
  readonly units: number;
  readonly peakRssMB: number;
  readonly peakHeapMB: number;
}

interface Replans {
  readonly plans: number;
  readonly heapAfter20MB: number;
  readonly heapAfter100MB: number;
  readonly growthMB: number;
}

function edited(k: number): NonNullable<ReturnType<typeof readDocument>["build"]> {
  const document = realisticDocument(steps, 1);
  const rows = document.steps as Record<string, unknown>[];
  rows[(7 * k) % rows.length]!.work = `${60 + (k % 9) * 30} min`;
  return readDocument(document).build!;
}

function proofRun(seconds: number): ProofRun {
  const from = performance.now();
  const search = new PlanSearch(edited(0));
  let peak = 0;
  while (!search.done && performance.now() - from < 1000 * seconds) {
    search.step(200);
    peak = Math.max(peak, process.memoryUsage().heapUsed);
  }
  return {
    steps,
    seconds: round((performance.now() - from) / 1000),
    units: search.sought().tried,
    peakRssMB: round((process.resourceUsage().maxRSS * 1024) / MB),
    peakHeapMB: round(peak / MB),
  };
}

function replans(): Replans {
  setFlagsFromString("--expose-gc");
  const gc = runInNewContext("gc") as () => void;
  const heap: number[] = [];
  for (let k = 1; k <= 100; k++) {
    const build = edited(k);
    plan(build);
    new PlanSearch(build).step(60);
    if (k % 20 !== 0) continue;
    gc();
    heap.push(process.memoryUsage().heapUsed / MB);
  }
  return { plans: 100, heapAfter20MB: round(heap[0]!), heapAfter100MB: round(heap.at(-1)!), growthMB: round(heap.at(-1)! - heap[0]!) };
}

function inProcess<T>(part: string): T {
  const done = spawnSync(process.execPath, [process.argv[1]!, "--part", part, "--seconds", values.seconds], { encoding: "utf8" });
  if (done.status !== 0) throw new Error(`The ${part} run ended with ${done.status}: ${done.stderr}`);
  return JSON.parse(done.stdout) as T;
}

function round(n: number): number {
  return Number(n.toFixed(1));
}

if (values.part === "proof") console.log(JSON.stringify(proofRun(Number(values.seconds))));
else if (values.part === "replans") console.log(JSON.stringify(replans()));
else {
  const run = inProcess<ProofRun>("proof");
  const again = inProcess<Replans>("replans");
  console.log(
    `proof run of ${run.steps} steps, ${run.seconds} s, ${run.units} units: at its highest ${run.peakRssMB} MB of the process, ${run.peakHeapMB} MB of heap`,
  );
  console.log(`${again.plans} plans one after the other: ${again.heapAfter20MB} MB of heap after 20, ${again.heapAfter100MB} MB after 100`);
  if (values.json !== undefined) writeFileSync(values.json, `${JSON.stringify({ proofRun: run, replans: again }, null, 1)}\n`);
}
