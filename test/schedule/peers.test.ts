import { describe, expect, test } from "vitest";
import { proofOf } from "../../src/core/schedule";
import { textOf } from "../bench/peers/chuffed";
import { modelOf, type PeerModel } from "../bench/peers/model";
import { compared, linesOf } from "../bench/peers/report";
import { readSet } from "../bench/schedule/files";
import { problemOfRow } from "../bench/schedule/read";

/** What is handed to general-purpose solvers, judged by schedules that are known to be right. */
const sets = ["plain", "lags", "clocks"].map((name) => readSet(`test/fixtures/schedule/${name}.json`));

/** Whether starts meet every constraint of a model, minute by minute. */
function meets(m: PeerModel, start: ArrayLike<number>): boolean {
  const finish = m.jobs.map((job, i) => {
    if (job.length !== null) return start[i]! + job.length;
    const k = job.starts.indexOf(start[i]!);
    return k < 0 ? Number.NaN : job.finishes[k]!;
  });
  if (finish.some((f) => !(f <= m.horizon))) return false;
  for (const { from, end, to, by, most } of m.waits) {
    const at = (end === 1 ? finish[from]! : start[from]!) + by;
    if (most ? start[to]! > at : start[to]! < at) return false;
  }
  return m.capacities.every((capacity, r) =>
    Array.from(start).every((t) => {
      const used = m.jobs.reduce((sum, job, i) => sum + (start[i]! <= t && t < finish[i]! ? job.requests[r]! : 0), 0);
      return used <= capacity;
    }),
  );
}

describe.each(sets)("of $set", (set) => {
  const solved = set.instances.flatMap((instance) => {
    const search = proofOf(problemOfRow(instance.row, set.calendars));
    for (let k = 0; k < 2000 && !search.done; k++) search.step(50);
    const { solution } = search.result();
    return solution === null ? [] : [{ instance, start: [...solution.start], model: modelOf(instance.row, set.calendars) }];
  });

  test("the best schedule is one of the model, and is not when a job is moved before what it waits for", () => {
    expect(solved.length).toBeGreaterThan(0);
    for (const { model, start } of solved) {
      expect(meets(model, start)).toBe(true);
      expect(meets(model, start.with(-1, 0))).toBe(false);
      expect(
        meets(
          model,
          start.map(() => start.at(-1)!),
        ),
      ).toBe(false);
    }
  });

  test("every job, wait and capacity is in the text", () => {
    for (const { model } of solved) {
      const lines = textOf(model).split("\n");
      const tabled = model.jobs.filter((job) => job.length === null).length;
      expect(lines.filter((l) => l.startsWith("array[0.."))).toHaveLength(tabled);
      expect(lines.filter((l) => /^constraint s\[\d+\] [<>]= /.test(l))).toHaveLength(model.waits.length);
      expect(lines.filter((l) => l.startsWith("constraint cumulative"))).toHaveLength(model.capacities.length);
      expect(lines.at(-1)).toContain(`minimize s[${model.jobs.length}]`);
    }
  });

  test("answers are judged from the file and compared with ours", () => {
    const { instance, start } = solved[0]!;
    const answer = { status: "proved", start, seconds: 2, cpuSeconds: 1, ownSeconds: 1 } as const;
    const late = start.map((s) => s);
    late[late.length - 1]! += 5;
    const sums = compared(set, [
      { solver: "other", instance, answer: { ...answer, start: late, seconds: 3 } },
      { solver: "ours", instance, answer },
    ]);
    expect(sums.map((s) => [s.solver, s.proved, s.wrong, s.timesOurs])).toEqual([
      ["ours", 1, 0, 1],
      ["other", 1, 1, 1.5],
    ]);
    expect(linesOf(set.set, 1, sums)).toHaveLength(4);
  });
});
