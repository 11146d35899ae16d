import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { cpus, tmpdir, totalmem } from "node:os";
import { join } from "node:path";
import { optionsOf } from "./options";
import { type Kept, runsOf } from "./results/runs";
import { tableOf } from "./results/table";

/**
 * Runs every bench of the engine and keeps what came of it beside the machine, the day, the seed, the commit and the command, one file a run, in
 * test/bench/results; then writes the README's tables from these files. `npm run bench:results -- --data FOLDER [--only NAME]... [--thin N]` takes the instances
 * in FOLDER (j30.json and so on); `--thin` takes only every Nth of them; `--table` only writes the tables from what is kept.
 */
const values = optionsOf({
  data: { type: "string" },
  only: { type: "string", multiple: true },
  thin: { type: "string", default: "1" },
  table: { type: "boolean", default: false },
  list: { type: "boolean", default: false },
});
const folder = "test/bench/results";
const [begin, end] = ["<!-- figures: written by npm run bench:results -->", "<!-- end of figures -->"];

function output(command: string, args: readonly string[]): string {
  return spawnSync(command, args, { encoding: "utf8" }).stdout.trim();
}

function machine(): string {
  const [first] = cpus();
  const memory = Math.round(totalmem() / 1024 ** 3);
  return `${cpus().length} cores (${first?.model.trim() ?? "unknown"}), ${memory} GiB, ${process.platform} ${process.arch}, Node ${process.version}`;
}

function keep(name: string, bench: string, args: readonly string[], data: readonly string[]): void {
  const scratch = mkdtempSync(join(tmpdir(), "bench-"));
  const json = join(scratch, "out.json");
  try {
    const files = data.flatMap((set) => ["--data", join(values.data ?? "", `${set}.json`)]);
    const done = spawnSync(process.execPath, ["test/tools/bench.mjs", bench, ...files, ...args, "--json", json], { stdio: "inherit" });
    if (done.status !== 0 || !existsSync(json)) throw new Error(`${name}: the run ended with ${done.status} and left no result.`);
    const script = bench === "schedule" || bench === "peers" ? `npm run bench:${bench} --` : `npm run bench -- ${bench}`;
    const kept: Kept = {
      name,
      date: new Date().toISOString().slice(0, 16),
      machine: machine(),
      commit:
        output("git", ["rev-parse", "--short", "HEAD"]) +
        (output("git", ["status", "--porcelain", "--", "src"]) === "" ? "" : " and changes"),
      seed: 1,
      command: [script, ...data.map((set) => `--data ${set}.json`), ...args].join(" "),
      result: JSON.parse(readFileSync(json, "utf8")),
    };
    writeFileSync(join(folder, `${name}.json`), `${JSON.stringify(kept, null, 2)}\n`);
  } finally {
    rmSync(scratch, { recursive: true });
  }
}

function writeTables(): void {
  const files = readdirSync(folder).filter((f) => f.endsWith(".json"));
  const kept = files.map((f) => JSON.parse(readFileSync(join(folder, f), "utf8")) as Kept);
  const text = readFileSync("README.md", "utf8");
  const [from, to] = [text.indexOf(begin), text.indexOf(end)];
  if (from < 0 || to < from) throw new Error(`README.md has no place for figures: a line "${begin}" and a line "${end}" after it.`);
  writeFileSync("README.md", `${text.slice(0, from + begin.length)}\n${tableOf(kept)}\n${text.slice(to)}`);
}

try {
  const thin = Number(values.thin);
  if (!Number.isInteger(thin) || thin < 1) throw new Error(`--thin ${values.thin}: a whole number of at least 1 is needed.`);
  const runs = runsOf(thin).filter((r) => values.only === undefined || values.only.some((name) => r.name.startsWith(name)));
  if (values.list) console.log(runs.map((r) => `${r.name}: ${r.bench} ${r.data.join(" ")} ${r.args.join(" ")}`).join("\n"));
  else {
    if (!values.table && values.data === undefined && runs.some((r) => r.data.length > 0))
      throw new Error("--data FOLDER is needed: where j30.json and the other files of instances are.");
    if (!values.table) for (const r of runs) keep(r.name, r.bench, r.args, r.data);
    writeTables();
  }
} catch (e) {
  console.error(e instanceof Error ? e.message : String(e));
  process.exitCode = 1;
}
