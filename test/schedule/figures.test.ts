import { expect, test } from "vitest";
import { type Kept, runsOf } from "../bench/results/runs";
import { tableOf } from "../bench/results/table";

const about = { date: "2027-03-06T10:00", machine: "a machine", commit: "abc", seed: 1, command: "" };
const sums = { devCpmPercent: 12.345, devBestPercent: 0.5, equalBest: 3, infeasibleFound: 1, wrong: 0, schedules: 9, conflicts: 8 };

test("tables say what is kept, in the order of the sets, and leave out what is not", () => {
  const kept: Kept[] = [
    { ...about, name: "proof-j60", result: { ...sums, set: "j60", mode: "proof", instances: 4, proved: 2, wallSeconds: 7.2 } },
    { ...about, name: "proof-j30", result: { ...sums, set: "j30", mode: "proof", instances: 4, proved: 3, wallSeconds: 5 } },
    { ...about, name: "heuristic-j30-5000", result: { ...sums, set: "j30", mode: "heuristic", instances: 4, proved: 0, wallSeconds: 8 } },
  ];
  expect(tableOf(kept).split("\n")).toEqual([
    "| schedules made, then stopped | instances | over the critical path | over the best known | wrong | seconds an instance |",
    "| --- | ---: | ---: | ---: | ---: | ---: |",
    "| j30, 5,000 | 4 | 12.35 % | 0.50 % | 0 | 2.00 |",
    "",
    "| at most 10 s of the processor an instance | instances | proved best | shown infeasible | closed | over the best known | wrong | total s |",
    "| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |",
    "| j30 | 4 | 3 | 1 | 100.0 % | 0.50 % | 0 | 5 |",
    "| j60 | 4 | 2 | 1 | 75.0 % | 0.50 % | 0 | 7 |",
    "",
    "Measured 2027-03-06 at abc on a machine.",
  ]);
  expect(tableOf([])).toBe("");
});

test("every run has a name of its own, and fewer instances where that is asked for", () => {
  const names = runsOf(1).map((r) => r.name);
  expect(new Set(names).size).toBe(names.length);
  const proof = (thin: number) => runsOf(thin).find((r) => r.name === "proof-j60")!.args;
  expect(proof(1)).toEqual(["--mode", "proof", "--seconds", "10", "--cpu"]);
  expect(proof(5).slice(-2)).toEqual(["--every", "5"]);
});
