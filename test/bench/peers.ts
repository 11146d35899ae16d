import { writeFileSync } from "node:fs";
import { optionsOf } from "./options";
import { type Answer, Watch } from "./peers/answer";
import { chuffed } from "./peers/chuffed";
import { cpSat } from "./peers/cp-sat";
import { installed, versions } from "./peers/install";
import { modelOf } from "./peers/model";
import { compared, type Entry, linesOf } from "./peers/report";
import { readSet } from "./schedule/files";
import { problemOfRow } from "./schedule/read";
import { run } from "./schedule/run";

/**
 * The same instances in the same run with general-purpose solvers: `npm run bench:peers -- --data FILE [--seconds S] [--every K --offset O] [--json OUT]`.
 * They are packages in WebAssembly, installed by this script only. One thread each, one after the other, in a turn that changes from instance to instance.
 */
const values = optionsOf({
  data: { type: "string", multiple: true },
  seconds: { type: "string", default: "10" },
  every: { type: "string", default: "1" },
  offset: { type: "string", default: "0" },
  json: { type: "string" },
  each: { type: "boolean", default: false },
});

async function main(): Promise<void> {
  if (values.data === undefined) throw new Error("--data FILE is needed: a file of instances.");
  const [seconds, every, offset] = [Number(values.seconds), Number(values.every), Number(values.offset)];
  if (!(seconds > 0)) throw new Error(`--seconds ${values.seconds}: a number above 0 is needed.`);
  if (!Number.isInteger(every) || every < 1) throw new Error(`--every ${values.every}: a whole number of at least 1 is needed.`);
  if (!Number.isInteger(offset) || offset < 0) throw new Error(`--offset ${values.offset}: a whole number of at least 0 is needed.`);
  const require = installed();
  const peers = [
    ["CP-SAT", await cpSat(require)],
    ["Chuffed", chuffed(require)],
  ] as const;
  const out: object[] = [];
  for (const path of values.data) {
    const set = readSet(path);
    const entries: Entry[] = [];
    const chosen = set.instances.filter((_, k) => k % every === offset % every);
    for (const [turn, instance] of chosen.entries()) {
      const model = modelOf(instance.row, set.calendars);
      const solvers = [["ours", () => Promise.resolve(ours(instance.row, set.calendars, seconds))] as const].concat(
        peers.map(([name, solve]) => [name, () => solve(model, seconds)] as never),
      );
      for (let k = 0; k < solvers.length; k++) {
        const [name, solve] = solvers[(k + turn) % solvers.length]!;
        const entry = { solver: name, instance, answer: await solve() };
        entries.push(entry);
        if (values.each) console.log(`${instance.name} ${name} ${entry.answer.status} ${entry.answer.seconds.toFixed(2)} s`);
      }
    }
    const sums = compared(set, entries);
    out.push(...sums.map((s) => ({ ...s, secondsAllowed: seconds, versions })));
    console.log(linesOf(set.set, chosen.length, sums).join("\n"));
  }
  if (values.json !== undefined) writeFileSync(values.json, `${JSON.stringify(out, null, 1)}\n`);
}

function ours(row: Parameters<typeof modelOf>[0], calendars: Parameters<typeof modelOf>[1], seconds: number): Answer {
  const watch = new Watch();
  const asked = {
    mode: "proof",
    seconds,
    schedules: 0,
    seed: 1,
    cpu: false,
    data: [],
    every: 1,
    offset: 0,
    names: [],
    json: null,
  } as const;
  const o = run(problemOfRow(row, calendars), asked);
  return { status: o.status, start: o.start === null ? null : [...o.start], ...watch.read(), ownSeconds: o.seconds };
}

try {
  await main();
} catch (e) {
  console.error(e instanceof Error ? e.message : String(e));
  process.exitCode = 1;
}
