import { type Digraph, digraph } from "../graph";
import { byKey, type Problem, type Solution } from "../schedule";

/** Who asks for what of the same capacities as others, by when they are done. */
export class Sharers {
  readonly #capacitiesOf: Digraph;
  /** By capacity, the jobs that ask for it, those done first first; of equals, as they ask. */
  readonly #users: (Int32Array | null)[];

  constructor(
    private readonly problem: Problem,
    private readonly plan: Solution,
  ) {
    const count = problem.demands.length / 3;
    const job = new Int32Array(count);
    const capacity = new Int32Array(count);
    for (let d = 0; d < count; d++) {
      job[d] = problem.demands[3 * d]!;
      capacity[d] = problem.demands[3 * d + 1]!;
    }
    this.#capacitiesOf = digraph(problem.jobs, job, capacity);
    this.#users = problem.capacities.map(() => null);
  }

  /** Of the jobs that share a capacity with this one, the last to finish after `since` and by its start; null: none. */
  last(j: number, since: number): { readonly job: number; readonly capacity: number } | null {
    const { start, target } = this.#capacitiesOf;
    const { finish } = this.plan;
    let found: { job: number; capacity: number } | null = null;
    for (let at = start[j]!; at < start[j + 1]!; at++) {
      const job = this.#lastOf(target[at]!, j);
      if (job >= 0 && finish[job]! > since && (found === null || finish[job]! > finish[found.job]!)) found = { job, capacity: target[at]! };
    }
    return found;
  }

  /** The last job but `j` itself that asks for the capacity and is done by its start, the first of those done together; -1: none. */
  #lastOf(capacity: number, j: number): number {
    const { start, finish } = this.plan;
    const users = this.#usersOf(capacity);
    let low = 0;
    let high = users.length;
    while (low < high) {
      const mid = (low + high) >> 1;
      if (finish[users[mid]!]! <= start[j]!) low = mid + 1;
      else high = mid;
    }
    let found = -1;
    for (let k = low - 1; k >= 0 && (found < 0 || finish[users[k]!] === finish[found]); k--) if (users[k] !== j) found = users[k]!;
    return found;
  }

  #usersOf(capacity: number): Int32Array {
    let users = this.#users[capacity]!;
    if (users === null) {
      const { demands } = this.problem;
      const asking: number[] = [];
      for (let d = 0; d < demands.length; d += 3) if (demands[d + 1] === capacity) asking.push(demands[d]!);
      users = byKey(asking.length, (k) => this.plan.finish[asking[k]!]!).map((k) => asking[k]!);
      this.#users[capacity] = users;
    }
    return users;
  }
}
