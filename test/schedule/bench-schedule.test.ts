import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";

/** The bench as it is called from outside, on files of every kind from which all that is known of the answers was taken. */
const outDir = "dist/bench/schedule-test";
const scratch = mkdtempSync(join(tmpdir(), "bench-schedule-"));
const kinds = ["plain", "lags", "clocks"] as const;
const known = ["lb", "ub", "start", "cpm", "tlb", "energy", "closed", "feasible", "temporalOpt", "temporalStatus", "exactSeconds"];

beforeAll(() => {
  const built = spawnSync(process.execPath, ["test/tools/build-node.mjs", "test/bench/schedule.ts", outDir], { encoding: "utf8" });
  expect(built.status, built.stderr).toBe(0);
  for (const kind of kinds) {
    const set = JSON.parse(readFileSync(`test/fixtures/schedule/${kind}.json`, "utf8")) as { instances: Record<string, unknown>[] };
    const bare = set.instances.map((i) => Object.fromEntries(Object.entries(i).filter(([key]) => !known.includes(key))));
    writeFileSync(join(scratch, `${kind}.json`), JSON.stringify({ ...set, instances: bare }));
  }
});
afterAll(() => rmSync(scratch, { recursive: true }));

function bench(...args: string[]): { status: number | null; said: string; errors: string } {
  const { status, stdout, stderr } = spawnSync(process.execPath, [`${outDir}/schedule.js`, ...args], { encoding: "utf8" });
  return { status, said: stdout, errors: stderr };
}

function written(file: string, ...args: string[]): Record<string, unknown> {
  const json = join(scratch, "out.json");
  const { status, errors } = bench("--data", file, "--json", json, ...args);
  expect(status, errors).toBe(0);
  return JSON.parse(readFileSync(json, "utf8")) as Record<string, unknown>;
}

const keys = [
  "set",
  "mode",
  "instances",
  "devCpmPercent",
  "devBestPercent",
  "equalBest",
  "proved",
  "infeasibleFound",
  "wrong",
  "schedules",
  "conflicts",
  "wallSeconds",
];

describe.each(kinds)("a file of %s problems without anything known", (kind) => {
  const bare = (): string => join(scratch, `${kind}.json`);
  const full = `test/fixtures/schedule/${kind}.json`;

  test("is proved as the one with the answers is", () => {
    const [a, b] = [written(bare(), "--mode", "proof", "--seconds", "60"), written(full, "--mode", "proof", "--seconds", "60")];
    expect(Object.keys(a)).toEqual(keys);
    expect(a).toMatchObject({ mode: "proof", devCpmPercent: null, devBestPercent: null, equalBest: 0, wrong: 0 });
    expect(b).toMatchObject({ devBestPercent: 0, wrong: 0 });
    for (const key of ["set", "instances", "proved", "infeasibleFound", "schedules", "conflicts"]) expect(a[key]).toBe(b[key]);
    expect(Number(a.proved) + Number(a.infeasibleFound)).toBe(a.instances);
    expect(b.equalBest).toBe(b.proved);
  });

  test("is searched with as many schedules as were asked for", () => {
    const a = written(bare(), "--mode", "heuristic", "--schedules", "40", "--seed", "3");
    expect(Object.keys(a)).toEqual(keys);
    expect(a).toMatchObject({ mode: "heuristic", devBestPercent: null, wrong: 0, conflicts: 0 });
    // A pass that is begun is ended.
    expect(Number(a.schedules)).toBeLessThanOrEqual(41 * Number(a.instances));
    const { wallSeconds: _, ...again } = written(bare(), "--mode", "heuristic", "--schedules", "40", "--seed", "3");
    expect(a).toMatchObject(again);
  });

  test("is taken in parts that make up the whole", () => {
    const part = (offset: string): number =>
      Number(written(bare(), "--mode", "proof", "--seconds", "60", "--every", "2", "--offset", offset).instances);
    const whole = (JSON.parse(readFileSync(full, "utf8")) as { instances: unknown[] }).instances.length;
    expect(part("0") + part("1")).toBe(whole);
    expect(part("0")).toBe(Math.ceil(whole / 2));
  });

  test("no time and no schedules: no claim that was not earned", () => {
    expect(written(bare(), "--mode", "proof", "--seconds", "0")).toMatchObject({ wrong: 0, conflicts: 0 });
    expect(written(bare(), "--mode", "heuristic", "--schedules", "0")).toMatchObject({ wrong: 0, schedules: 0 });
  });
});

test.each([
  [["--data", "no-such-file.json"], "cannot be read"],
  [["--data", "package.json"], 'no list "instances"'],
  [["--mode", "proof"], "--data FILE is needed"],
  [["--data", "x.json", "--mode", "quick"], '"heuristic" or "proof"'],
  [["--data", "x.json", "--every", "0"], "--every 0"],
  [["--data", "x.json", "--seconds", "-1"], "--seconds"],
  [["--data", "x.json", "--seconds=-1"], "at least 0"],
  [["--dat", "x.json"], "--dat"],
])("%j is refused with one sentence", (args, sentence) => {
  const { status, said, errors } = bench(...args);
  expect(status).toBe(1);
  expect(said).toBe("");
  expect(errors).toContain(sentence);
  expect(errors.trim().split("\n")).toHaveLength(1);
});
