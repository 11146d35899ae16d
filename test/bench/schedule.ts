import { writeFileSync } from "node:fs";
import { optionsOf } from "./options";
import { readSet } from "./schedule/files";
import { problemOfRow } from "./schedule/read";
import { judge, lines, type Sums, sum } from "./schedule/report";
import { type Asked, run } from "./schedule/run";

/**
 * The scheduling engine on files of benchmark instances: `npm run bench:schedule -- --data FILE [--mode heuristic|proof] [--schedules N] [--seed N] [--seconds S]
 * [--every K --offset O] [--json OUT]`. Only the fields of the problem reach the engine; every schedule is checked from the file itself. `--each` prints a line
 * an instance, `--name` takes only instances of that name, `--cpu` counts the processor's seconds.
 */
const values = optionsOf({
  data: { type: "string", multiple: true },
  mode: { type: "string", default: "heuristic" },
  schedules: { type: "string", default: "1000" },
  seed: { type: "string", default: "1" },
  seconds: { type: "string", default: "10" },
  every: { type: "string", default: "1" },
  offset: { type: "string", default: "0" },
  json: { type: "string" },
  name: { type: "string", multiple: true },
  cpu: { type: "boolean", default: false },
  each: { type: "boolean", default: false },
});

function whole(name: "schedules" | "seed" | "every" | "offset", least: number): number {
  const n = Number(values[name]);
  if (!Number.isInteger(n) || n < least) throw new Error(`--${name} ${values[name]}: a whole number of at least ${least} is needed.`);
  return n;
}

function asked(): Asked {
  const { mode } = values;
  if (mode !== "heuristic" && mode !== "proof") throw new Error(`--mode ${mode}: it is "heuristic" or "proof".`);
  if (values.data === undefined) throw new Error("--data FILE is needed: a file of instances.");
  const seconds = Number(values.seconds);
  if (!(seconds >= 0)) throw new Error(`--seconds ${values.seconds}: a number of at least 0 is needed.`);
  const [schedules, seed, every, offset] = [whole("schedules", 0), whole("seed", 0), whole("every", 1), whole("offset", 0)];
  return {
    data: values.data,
    mode,
    schedules,
    seed,
    seconds,
    cpu: values.cpu,
    every,
    offset,
    names: values.name ?? [],
    json: values.json ?? null,
  };
}

function main(a: Asked): void {
  const all: Sums[] = [];
  for (const path of a.data) {
    const set = readSet(path);
    const from = performance.now();
    const judged = set.instances
      .filter((i, k) => k % a.every === a.offset % a.every && (a.names.length === 0 || a.names.includes(i.name)))
      .map((instance) => {
        const j = judge(set, instance, run(problemOfRow(instance.row, set.calendars), a));
        const o = j.outcome;
        if (values.each) {
          const seen = j.makespan === null ? "no schedule" : `finish ${j.makespan}`;
          const known = `known ${instance.known.lb ?? "?"}..${instance.known.ub ?? "?"}`;
          console.log(
            `${instance.name} ${o.status} ${seen} bound ${o.bound} ${known} conflicts ${o.conflicts} ${o.seconds.toFixed(2)} s ${j.wrong ?? ""}`,
          );
        }
        return j;
      });
    const s = sum(set, a, judged, (performance.now() - from) / 1000);
    all.push(s);
    console.log(lines(s, judged).join("\n"));
  }
  if (a.json !== null) writeFileSync(a.json, `${JSON.stringify(all.length === 1 ? all[0] : all, null, 1)}\n`);
}

try {
  main(asked());
} catch (e) {
  console.error(e instanceof Error ? e.message : String(e));
  process.exitCode = 1;
}
