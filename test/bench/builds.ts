import { writeFileSync } from "node:fs";
import type { Build } from "../../src/core/build";
import { readDocument } from "../../src/core/build";
import { PlanSearch, plan } from "../../src/core/plan";
import { examples } from "../../src/examples";
import { optionsOf } from "./options";
import { realistic } from "./realistic";

/**
 * Whole builds as the worker plans them: the first plan, the same again when the code is warm, and the search for an earlier finish portion by portion until
 * it is done or the seconds are over. `npm run bench -- builds [--steps N] [--start N] [--seconds S] [--json OUT]`: the bank cellar, and a build of so many steps drawn from a number.
 */
const values = optionsOf({
  steps: { type: "string", multiple: true, default: ["300"] },
  start: { type: "string", default: "1" },
  seconds: { type: "string", default: "5" },
  json: { type: "string" },
});

interface Told {
  readonly build: string;
  readonly steps: number;
  readonly firstPlanMs: number;
  readonly warmPlanMs: number;
  /** Until the last better plan, and until it was proved; null: it was not. */
  readonly lastBetterSeconds: number;
  readonly provedSeconds: number | null;
  readonly proved: string | null;
  /** Longest that the worker did not listen. */
  readonly longestPortionMs: number;
  readonly finish: number | null;
  readonly bound: number | null;
  readonly gainSiteDays: number;
  readonly gapSiteDays: number;
  readonly units: number;
}

/** Units between two looks at what was asked meanwhile, as in the worker. */
const portion = 20;

function told(name: string, build: Build, seconds: number): Told {
  const ms = (run: () => unknown): number => {
    const from = performance.now();
    run();
    return performance.now() - from;
  };
  const firstPlanMs = ms(() => plan(build));
  const warm = Array.from({ length: 20 }, () => ms(() => plan(build))).sort((a, b) => a - b);
  const from = performance.now();
  const now = (): number => (performance.now() - from) / 1000;
  const search = new PlanSearch(build);
  let sought = search.sought();
  let lastBetterSeconds = 0;
  let longest = 0;
  while (!search.done && now() < seconds) {
    longest = Math.max(
      longest,
      ms(() => search.step(portion)),
    );
    const next = search.sought();
    if (next.finish !== sought.finish) lastBetterSeconds = now();
    sought = next;
  }
  return {
    build: name,
    steps: build.steps.length,
    firstPlanMs: round(firstPlanMs),
    warmPlanMs: round(warm[10]!),
    lastBetterSeconds: round(lastBetterSeconds),
    provedSeconds: sought.proved === null ? null : round(now()),
    proved: sought.proved,
    longestPortionMs: round(longest),
    finish: sought.finish,
    bound: sought.bound?.at ?? null,
    gainSiteDays: sought.gain,
    gapSiteDays: sought.gap,
    units: sought.tried,
  };
}

const seconds = Number(values.seconds);
if (!(seconds >= 0)) throw new Error(`--seconds ${values.seconds}: a number of at least 0 is needed.`);
const cellar = readDocument(await examples.find((e) => e.id === "bank-cellar")!.load()).build!;
const rows = [
  told("bank cellar", cellar, seconds),
  ...values.steps.map((n) => told(`drawn, ${n} steps, start ${values.start}`, realistic(Number(n), Number(values.start)), seconds)),
];
for (const r of rows) {
  const state = r.proved === null ? "not proved" : `proved (${r.proved}) after ${r.provedSeconds} s`;
  console.log(`${r.build}, ${r.steps} steps: first plan ${r.firstPlanMs} ms, warm ${r.warmPlanMs} ms`);
  console.log(
    `  ${state}; last better plan after ${r.lastBetterSeconds} s; ${r.gainSiteDays} site days earlier than the first plan, ${r.gapSiteDays} site days over the bound`,
  );
  console.log(`  ${r.units} units of work, longest portion ${r.longestPortionMs} ms`);
}
if (values.json !== undefined) writeFileSync(values.json, `${JSON.stringify(rows, null, 1)}\n`);

function round(n: number): number {
  return Number(n.toFixed(2));
}
