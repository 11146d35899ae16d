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
  /** What the search does before its first portion, and the longest that it worked without looking up; what the process ran of it (on a busy machine it waits besides). */
  readonly beforeMs: number;
  readonly beforeRanMs: number;
  readonly longestPortionMs: number;
  readonly longestPortionRanMs: number;
  /** How many units of work had been done when that began, how many portions there were, and how many took 100 ms or more. */
  readonly longestPortionAt: number;
  readonly portions: number;
  readonly portionsOver100Ms: number;
  readonly finish: number | null;
  readonly bound: number | null;
  readonly gainSiteDays: number;
  readonly gapSiteDays: number;
  readonly units: number;
}

/** Asked for at a time, as the worker does, which looks at the clock after each. */
const portion = 1;

/** Milliseconds of processor that this process has used so far, those of collecting garbage included. */
function ran_ms(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

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
  const ranBefore = ran_ms();
  let search!: PlanSearch;
  const beforeMs = ms(() => {
    search = new PlanSearch(build);
  });
  const beforeRanMs = ran_ms() - ranBefore;
  let sought = search.sought();
  let lastBetterSeconds = 0;
  let longest = 0;
  let longestRan = 0;
  let longestAt = 0;
  let portions = 0;
  let over = 0;
  while (!search.done && now() < seconds) {
    const ran = ran_ms();
    longest = Math.max(
      longest,
      ms(() => search.step(portion)),
    );
    const ranNow = ran_ms() - ran;
    portions++;
    if (ranNow >= 100) over++;
    if (ranNow > longestRan) [longestRan, longestAt] = [ranNow, sought.tried];
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
    beforeMs: round(beforeMs),
    beforeRanMs: round(beforeRanMs),
    longestPortionMs: round(longest),
    longestPortionRanMs: round(longestRan),
    longestPortionAt: longestAt,
    portions,
    portionsOver100Ms: over,
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
  console.log(
    `  ${r.units} units of work in ${r.portions} portions, ${r.beforeRanMs} ms before the first; the longest took ${r.longestPortionRanMs} ms of processor after ${r.longestPortionAt} units (${r.longestPortionMs} ms by the clock), ${r.portionsOver100Ms} took 100 ms or more`,
  );
}
if (values.json !== undefined) writeFileSync(values.json, `${JSON.stringify(rows, null, 1)}\n`);

function round(n: number): number {
  return Number(n.toFixed(2));
}
