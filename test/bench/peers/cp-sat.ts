import { pathToFileURL } from "node:url";
import { type Answer, Watch } from "./answer";
import type { PeerJob, PeerModel } from "./model";

/** As much of the package as is used here. */
interface CpSat {
  readonly CpModel: new () => CpModel;
  readonly CpSolver: new () => CpSolver;
  readonly Domain: { fromValues(values: readonly number[]): object };
}

interface Variable {
  minus(other: Variable): Variable;
}

interface CpModel {
  newIntVar(least: number, most: number, name: string): Variable;
  newIntVarFromDomain(domain: object, name: string): Variable;
  newFixedSizeIntervalVar(start: Variable, size: number, name: string): object;
  newIntervalVar(start: Variable, size: Variable, end: Variable, name: string): object;
  addLinearConstraint(sum: Variable, least: number, most: number): { onlyEnforceIf(literal: object): unknown };
  newBoolVar(name: string): object;
  addExactlyOne(literals: readonly object[]): unknown;
  addCumulative(intervals: readonly object[], numbers: readonly number[], capacity: number): unknown;
  minimize(variable: Variable): void;
}

interface CpSolver {
  readonly wallTime: number;
  solve(model: CpModel, parameters: object): Promise<unknown>;
  statusName(status: unknown): string;
  value(variable: Variable): number;
}

/** CP-SAT in WebAssembly, one worker. */
export async function cpSat(require: NodeJS.Require): Promise<(m: PeerModel, seconds: number) => Promise<Answer>> {
  const { CpModel, CpSolver, Domain } = (await import(pathToFileURL(require.resolve("or-tools-wasm/cp-sat")).href)) as CpSat;

  const solve = async (m: PeerModel, seconds: number): Promise<Answer> => {
    const watch = new Watch();
    const model = new CpModel();
    const finishes: (Variable | null)[] = [];
    const intervals: object[] = [];
    const starts = m.jobs.map((job, i) => {
      if (job.length !== null) {
        const start = model.newIntVar(0, m.horizon, `s${i}`);
        finishes.push(null);
        intervals.push(model.newFixedSizeIntervalVar(start, job.length, `i${i}`));
        return start;
      }
      const lengths = job.starts.map((s, k) => job.finishes[k]! - s);
      const start = model.newIntVarFromDomain(Domain.fromValues(job.starts), `s${i}`);
      const finish = model.newIntVarFromDomain(Domain.fromValues([...new Set(job.finishes)]), `f${i}`);
      const length = model.newIntVarFromDomain(Domain.fromValues([...new Set(lengths)]), `d${i}`);
      // A literal for each stretch of starts with one length: a table of all pairs takes the solver longer to read than to solve.
      const stretches = stretchesOf(job);
      const here = stretches.map((_, k) => model.newBoolVar(`i${i} ${k}`));
      model.addExactlyOne(here);
      stretches.forEach(({ from, to, length: lasts }, k) => {
        model.addLinearConstraint(start, from, to).onlyEnforceIf(here[k]!);
        model.addLinearConstraint(finish.minus(start), lasts, lasts).onlyEnforceIf(here[k]!);
        model.addLinearConstraint(length, lasts, lasts).onlyEnforceIf(here[k]!);
      });
      finishes.push(finish);
      intervals.push(model.newIntervalVar(start, length, finish, `i${i}`));
      return start;
    });
    for (const { from, end, to, by, most } of m.waits) {
      const finish = end === 1 ? finishes[from]! : null;
      const offset = by + (end === 1 && finish === null ? m.jobs[from]!.length! : 0);
      const gap = starts[to]!.minus(finish ?? starts[from]!);
      const far = 2 * m.horizon;
      model.addLinearConstraint(gap, most ? -far : offset, most ? offset : far);
    }
    m.capacities.forEach((capacity, r) => {
      const users = m.jobs.flatMap((job, i) => (job.requests[r]! > 0 && job.length !== 0 ? [i] : []));
      model.addCumulative(
        users.map((i) => intervals[i]!),
        users.map((i) => m.jobs[i]!.requests[r]!),
        capacity,
      );
    });
    model.minimize(starts.at(-1)!);
    const solver = new CpSolver();
    const name = solver.statusName(await solver.solve(model, { numSearchWorkers: 1, maxTimeInSeconds: seconds }));
    const status = ({ OPTIMAL: "proved", FEASIBLE: "planned", INFEASIBLE: "infeasible", UNKNOWN: "not-found" } as const)[name];
    if (status === undefined) throw new Error(`CP-SAT answers ${name}.`);
    const found = status === "proved" || status === "planned";
    return { status, start: found ? starts.map((s) => solver.value(s)) : null, ...watch.read(), ownSeconds: solver.wallTime };
  };
  return solve;
}

interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly length: number;
}

/** Starts that follow on each other and take equally long. */
function stretchesOf(job: PeerJob): Stretch[] {
  const out: Stretch[] = [];
  job.starts.forEach((s, k) => {
    const length = job.finishes[k]! - s;
    const last = out.at(-1);
    if (last !== undefined && last.to === s - 1 && last.length === length) out[out.length - 1] = { ...last, to: s };
    else out.push({ from: s, to: s, length });
  });
  return out;
}
