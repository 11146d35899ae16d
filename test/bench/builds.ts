import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import type { Build } from "../../src/core/build";
import { readDocument } from "../../src/core/build";
import { PlanSearch, plan } from "../../src/core/plan";
import { examples } from "../../src/examples";
import { rehearse, rehearsed } from "../../src/worker/rehearse";
import { optionsOf } from "./options";
import { realistic } from "./realistic";

/**
 * Whole builds as the worker plans them: the first plan of a process of its own, after the worker's rehearsal and without it (the middle of five each), the
 * same when the code is warm, and the search for an earlier finish portion by portion until it is done or the seconds are over.
 * `npm run bench -- builds [--steps N] [--start N] [--seconds S] [--json OUT]`: the bank cellar, and a build of so many steps drawn from a number.
 */
const values = optionsOf({
  steps: { type: "string", multiple: true, default: ["300"] },
  start: { type: "string", default: "1" },
  seconds: { type: "string", default: "5" },
  json: { type: "string" },
  // For the processes this one starts: only the first plan of the build at this place, its milliseconds printed.
  first: { type: "string" },
  rehearsed: { type: "boolean", default: false },
});

interface Told {
  readonly build: string;
  readonly steps: number;
  /** After what the worker does while nothing is asked; and without that. */
  readonly firstPlanMs: number;
  readonly coldPlanMs: number;
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

interface Row {
  readonly name: string;
  build(): Promise<Build> | Build;
}

const rows: readonly Row[] = [
  { name: "bank cellar", build: async () => readDocument(await examples.find((e) => e.id === "bank-cellar")!.load()).build! },
  ...values.steps.map((n) => ({
    name: `drawn, ${n} steps, start ${values.start}`,
    build: () => realistic(Number(n), Number(values.start)),
  })),
];

/** The first plan of a process of its own, the middle of five. */
function first_ms(row: number, rehearsed: boolean): number {
  const args = [process.argv[1]!, ...process.argv.slice(2), "--first", `${row}`, ...(rehearsed ? ["--rehearsed"] : [])];
  const all = Array.from({ length: 5 }, () => Number(execFileSync(process.execPath, args, { encoding: "utf8" })));
  return all.sort((a, b) => a - b)[2]!;
}

function told(row: number, build: Build, seconds: number): Told {
  const ms = (run: () => unknown): number => {
    const from = performance.now();
    run();
    return performance.now() - from;
  };
  const firstPlanMs = first_ms(row, true);
  const coldPlanMs = first_ms(row, false);
  plan(build);
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
    build: rows[row]!.name,
    steps: build.steps.length,
    firstPlanMs: round(firstPlanMs),
    coldPlanMs: round(coldPlanMs),
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
if (values.first !== undefined) {
  if (values.rehearsed) await rehearse({ builds: rehearsed, asked: () => false, later: setTimeout, now: () => performance.now() });
  const build = await rows[Number(values.first)]!.build();
  const from = performance.now();
  plan(build);
  console.log(performance.now() - from);
  process.exit(0);
}
const results: Told[] = [];
for (const [k, row] of rows.entries()) results.push(told(k, await row.build(), seconds));
for (const r of results) {
  const state = r.proved === null ? "not proved" : `proved (${r.proved}) after ${r.provedSeconds} s`;
  console.log(`${r.build}, ${r.steps} steps: first plan ${r.firstPlanMs} ms (not rehearsed ${r.coldPlanMs}), warm ${r.warmPlanMs} ms`);
  console.log(
    `  ${state}; last better plan after ${r.lastBetterSeconds} s; ${r.gainSiteDays} site days earlier than the first plan, ${r.gapSiteDays} site days over the bound`,
  );
  console.log(
    `  ${r.units} units of work in ${r.portions} portions, ${r.beforeRanMs} ms before the first; the longest took ${r.longestPortionRanMs} ms of processor after ${r.longestPortionAt} units (${r.longestPortionMs} ms by the clock), ${r.portionsOver100Ms} took 100 ms or more`,
  );
}
if (values.json !== undefined) writeFileSync(values.json, `${JSON.stringify(results, null, 1)}\n`);

function round(n: number): number {
  return Number(n.toFixed(2));
}
