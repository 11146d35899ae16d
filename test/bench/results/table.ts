import type { Compared } from "../peers/report";
import type { Sums } from "../schedule/report";
import type { Heard } from "../worker";
import type { Kept } from "./runs";

/** The README's tables, from what is kept; a table of which nothing is kept is left out. */
export function tableOf(kept: readonly Kept[]): string {
  return [heuristics(kept), proofs(kept), peers(kept), builds(kept), heard(kept), memory(kept), said(kept)]
    .filter((part) => part !== "")
    .join("\n\n");
}

const order = ["patterson", "j30", "j60", "j90", "j120", "sm_j10", "sm_j20", "sm_j30", "ubo50", "clock30", "clock60"];
const place = (set: string): number => (order.includes(set) ? order.indexOf(set) : order.length);

function rows<T>(kept: readonly Kept[], begins: string): { readonly name: string; readonly row: T }[] {
  return kept.filter((k) => k.name.startsWith(begins)).flatMap((k) => [k.result].flat().map((row) => ({ name: k.name, row: row as T })));
}

function table(head: readonly string[], lines: readonly (readonly unknown[])[]): string {
  if (lines.length === 0) return "";
  const line = (cells: readonly unknown[]): string => `| ${cells.join(" | ")} |`;
  return [line(head), line(head.map((_, k) => (k === 0 ? "---" : "---:"))), ...lines.map(line)].join("\n");
}

function heuristics(kept: readonly Kept[]): string {
  const all = rows<Sums>(kept, "heuristic-").map(({ name, row }) => ({ row, budget: Number(name.split("-").at(-1)) }));
  all.sort((a, b) => place(a.row.set) - place(b.row.set) || a.budget - b.budget);
  return table(
    ["schedules made, then stopped", "instances", "over the critical path", "over the best known", "wrong", "seconds an instance"],
    all.map(({ row, budget }) => [
      `${row.set}, ${budget.toLocaleString("en")}`,
      row.instances,
      percent(row.devCpmPercent),
      percent(row.devBestPercent),
      row.wrong,
      (row.wallSeconds / Math.max(1, row.instances)).toFixed(2),
    ]),
  );
}

function proofs(kept: readonly Kept[]): string {
  const all = rows<Sums>(kept, "proof-").map(({ row }) => row);
  all.sort((a, b) => place(a.set) - place(b.set));
  return table(
    [
      "at most 10 s of the processor an instance",
      "instances",
      "proved best",
      "shown infeasible",
      "closed",
      "over the best known",
      "wrong",
      "total s",
    ],
    all.map((r) => [
      r.set,
      r.instances,
      r.proved,
      r.infeasibleFound,
      percent((100 * (r.proved + r.infeasibleFound)) / Math.max(1, r.instances), 1),
      percent(r.devBestPercent),
      r.wrong,
      r.wallSeconds.toFixed(0),
    ]),
  );
}

function peers(kept: readonly Kept[]): string {
  const all = rows<Compared>(kept, "peers-").map(({ row }) => row);
  all.sort((a, b) => place(a.set) - place(b.set));
  return table(
    [
      "beside general solvers in WebAssembly",
      "instances",
      "proved",
      "over the best known",
      "without a schedule",
      "wrong",
      "total s",
      "times ours",
    ],
    all.map((r) => [
      `${r.set}, ${r.solver === "ours" ? "this engine" : r.solver}`,
      r.instances,
      r.proved + r.infeasibleFound,
      percent(r.devBestPercent),
      r.withoutSchedule,
      r.wrong,
      r.wallSeconds.toFixed(1),
      r.timesOurs,
    ]),
  );
}

interface Built {
  readonly build: string;
  readonly firstPlanMs: number;
  readonly coldPlanMs: number;
  readonly warmPlanMs: number;
  readonly provedSeconds: number | null;
  readonly gainSiteDays: number;
  readonly gapSiteDays: number;
}

function builds(kept: readonly Kept[]): string {
  return table(
    [
      "whole builds",
      "first plan of a process, rehearsed, ms",
      "not rehearsed, ms",
      "again, ms",
      "proved after",
      "site days found",
      "site days over the bound",
    ],
    rows<Built>(kept, "builds").map(({ row: r }) => [
      r.build,
      r.firstPlanMs.toFixed(0),
      r.coldPlanMs.toFixed(0),
      r.warmPlanMs.toFixed(0),
      r.provedSeconds === null ? "not in 20 s" : `${r.provedSeconds} s`,
      r.gainSiteDays,
      r.gapSiteDays,
    ]),
  );
}

function heard(kept: readonly Kept[]): string {
  return table(
    [
      "in a browser, from the question to the worker until its answer, reading included",
      "first, ms",
      "asked while it loads, ms",
      "again, ms",
    ],
    rows<Heard>(kept, "worker").map(({ row: r }) => [r.build, r.firstMs.toFixed(0), r.atOnceMs.toFixed(0), r.againMs.toFixed(0)]),
  );
}

function memory(kept: readonly Kept[]): string {
  const list = kept.filter((k) => k.name === "memory").map((k) => k.result) as {
    readonly proofRun: { readonly steps: number; readonly seconds: number; readonly peakRssMB: number };
    readonly replans: { readonly plans: number; readonly heapAfter20MB: number; readonly heapAfter100MB: number };
  }[];
  return list
    .map(
      ({ proofRun: p, replans: r }) =>
        `Memory: a search of ${p.seconds} s on ${p.steps} steps takes ${p.peakRssMB} MB at its highest, the process included; of ${r.plans} plans one after the other the heap keeps ${r.heapAfter20MB} MB after 20 and ${r.heapAfter100MB} MB after all.`,
    )
    .join("\n");
}

/** Where and when; one line a machine. */
function said(kept: readonly Kept[]): string {
  const machines = [...new Set(kept.map((k) => k.machine))].sort();
  return machines
    .map((machine) => {
      const here = kept.filter((k) => k.machine === machine);
      const days = [...new Set(here.map((k) => k.date.slice(0, 10)))].sort();
      const commits = [...new Set(here.map((k) => k.commit.split(" ")[0]!))].sort();
      const changed = here.some((k) => k.commit.includes(" ")) ? " (some with changes that were not in yet)" : "";
      return `Measured ${days.join(" and ")} at ${commits.join(", ")}${changed} on ${machine}.`;
    })
    .join("\n");
}

function percent(n: number | null, digits = 2): string {
  return n === null ? "–" : `${n.toFixed(digits)} %`;
}
