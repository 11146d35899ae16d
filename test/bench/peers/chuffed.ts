import { dirname, join } from "node:path";
import { Worker } from "node:worker_threads";
import { type Answer, Watch } from "./answer";
import type { PeerModel } from "./model";

type Message =
  | { readonly type: "ready" | "exit"; readonly code?: number }
  | { readonly type: "solution"; readonly output: { readonly json: { readonly s: readonly number[] } } }
  | { readonly type: "status"; readonly status: string }
  | { readonly type: "statistics"; readonly statistics: Readonly<Record<string, number>> }
  | { readonly type: "error" | "warning" | "stderr" | "stdout"; readonly message?: string; readonly value?: string };

/** The package's worker is made for a browser; this much of one it asks for. */
const browser = `
const { parentPort, workerData } = require("node:worker_threads");
globalThis.postMessage = (message) => parentPort.postMessage(message);
globalThis.addEventListener = (_, heard) => parentPort.on("message", (data) => heard({ data }));
globalThis.require = require;
globalThis.__filename = workerData;
globalThis.__dirname = require("node:path").dirname(workerData);
require("node:vm").runInThisContext(require("node:fs").readFileSync(workerData, "utf8"), workerData);
`;

/** Chuffed (lazy clause generation) in WebAssembly, by way of MiniZinc: free search, begun from the smallest starts. A fresh worker for every instance, loaded before the watch starts. */
export function chuffed(require: NodeJS.Require): (m: PeerModel, seconds: number) => Promise<Answer> {
  const dist = dirname(require.resolve("minizinc"));
  return async (m, seconds) => {
    const worker = new Worker(browser, { eval: true, workerData: join(dist, "minizinc-worker.js") });
    try {
      return await ask(worker, dist, m, seconds);
    } finally {
      await worker.terminate();
    }
  };
}

function ask(worker: Worker, dist: string, m: PeerModel, seconds: number): Promise<Answer> {
  return new Promise((resolve, reject) => {
    let watch = new Watch();
    let start: readonly number[] | null = null;
    let status: Answer["status"] = "not-found";
    let ownSeconds: number | null = null;
    worker.on("error", reject);
    worker.on("message", (message: Message) => {
      if (message.type === "ready") {
        const asked = { solver: "chuffed", "free-search": true, "solver-time-limit": Math.round(1000 * seconds), statistics: true };
        watch = new Watch();
        const files = { "asked.mpc": JSON.stringify(asked), "jobs.mzn": textOf(m) };
        worker.postMessage({ jsonStream: true, files, args: ["-i", "--output-mode", "json", "asked.mpc", "jobs.mzn"] });
      } else if (message.type === "solution") {
        start = message.output.json.s;
        status = "planned";
      } else if (message.type === "status") {
        if (message.status === "OPTIMAL_SOLUTION") status = "proved";
        if (message.status === "UNSATISFIABLE") status = "infeasible";
      } else if (message.type === "statistics") {
        ownSeconds = message.statistics.solveTime ?? ownSeconds;
      } else if (message.type === "error") {
        reject(new Error(`Chuffed answers: ${message.message}`));
      } else if (message.type === "exit") resolve({ status, start, ...watch.read(), ownSeconds });
    });
    worker.postMessage({ wasmURL: join(dist, "minizinc.wasm"), dataURL: join(dist, "minizinc.data") });
  });
}

/** The model in MiniZinc. */
export function textOf(m: PeerModel): string {
  const n = m.jobs.length;
  const lines = ['include "cumulative.mzn";', `array[1..${n}] of var 0..${m.horizon}: s;`];
  m.jobs.forEach((job, i) => {
    if (job.length !== null) return;
    const ends = new Map(job.starts.map((s, k) => [s, job.finishes[k]!]));
    const table = Array.from({ length: m.horizon + 1 }, (_, t) => ends.get(t) ?? 0);
    lines.push(`constraint s[${i + 1}] in {${job.starts.join(",")}};`);
    lines.push(`array[0..${m.horizon}] of int: end${i + 1} = array1d(0..${m.horizon}, [${table.join(",")}]);`);
    lines.push(`var 0..${m.horizon}: f${i + 1} = end${i + 1}[s[${i + 1}]];`);
    const lengths = job.starts.map((s, k) => job.finishes[k]! - s);
    lines.push(`var {${[...new Set(lengths)].join(",")}}: d${i + 1} = f${i + 1} - s[${i + 1}];`);
  });
  const finish = (i: number): string => (m.jobs[i]!.length === null ? `f${i + 1}` : `s[${i + 1}] + ${m.jobs[i]!.length}`);
  for (const { from, end, to, by, most } of m.waits)
    lines.push(`constraint s[${to + 1}] ${most ? "<=" : ">="} ${end === 1 ? finish(from) : `s[${from + 1}]`} + ${by};`);
  m.capacities.forEach((capacity, r) => {
    const users = m.jobs.flatMap((job, i) => (job.requests[r]! > 0 && job.length !== 0 ? [i] : []));
    if (users.length === 0) return;
    const of = (what: (i: number) => unknown): string => `[${users.map(what).join(",")}]`;
    const lengths = of((i) => m.jobs[i]!.length ?? `d${i + 1}`);
    lines.push(`constraint cumulative(${of((i) => `s[${i + 1}]`)}, ${lengths}, ${of((i) => m.jobs[i]!.requests[r])}, ${capacity});`);
  });
  lines.push(`solve :: int_search(s, smallest, indomain_min, complete) minimize s[${n}];`);
  return lines.join("\n");
}
