import { DynamicOrder } from "../dynamic-order";
import { Potentials } from "../potentials";
import type { ClauseProblem, TimeLayer } from "./problem";
import type { Trail } from "./trail";

/** What arcs that hold together must respect: no ring, and no ring of delays that gains time. */
export class Theory {
  readonly order: DynamicOrder;
  readonly #times: Potentials | null;
  readonly #time: TimeLayer | null;
  #from: Int32Array;
  #to: Int32Array;
  /** The variable each time arc belongs to. */
  readonly #owner: Int32Array;

  constructor(problem: ClauseProblem, order: Int32Array | null) {
    const time = problem.time;
    this.#from = problem.from;
    this.#to = problem.to;
    this.order = new DynamicOrder(problem.nodes, problem.from, problem.to, order);
    this.#time = time;
    this.#times = time === null ? null : new Potentials(time.nodes, time.from, time.to, time.delay);
    this.#owner = new Int32Array(time?.from.length ?? 0).fill(-1);
    if (time !== null) for (let arc = time.start[problem.variables] as number; arc < time.from.length; arc++) this.#times?.add(arc);
    if (time !== null) for (let v = 0; v < problem.variables; v++) this.#owner.fill(v, time.start[v], time.start[v + 1]);
  }

  get work(): number {
    return this.order.work + (this.#times?.work ?? 0);
  }

  widen(from: Int32Array, to: Int32Array): void {
    this.#from = from;
    this.#to = to;
    this.order.widen(from, to);
  }

  /** By variable, where its arc comes from; -1 for a selector. */
  get tails(): Int32Array {
    return this.#from;
  }

  get heads(): Int32Array {
    return this.#to;
  }

  isArc(variable: number): boolean {
    return (this.#from[variable] as number) >= 0;
  }

  /** The time found for an instant of the time layer. */
  instant(node: number): number {
    return this.#times?.at[node] ?? 0;
  }

  /** Takes in a variable that holds. Null, or variables that cannot all hold, with nothing changed. */
  take(variable: number, trail: Trail): number[] | null {
    if (this.isArc(variable) && !this.order.add(variable)) return [...this.why(variable, trail), variable];
    const times = this.#times;
    if (times === null) return null;
    const first = this.#firstTime(variable);
    for (let arc = first; arc < this.#firstTime(variable + 1); arc++) {
      const ring = times.add(arc);
      if (ring === null) continue;
      while (--arc >= first) times.remove(arc);
      if (this.isArc(variable)) this.order.remove(variable);
      return [...new Set(ring.map((a) => this.#owner[a] as number))].filter((owner) => owner >= 0);
    }
    return null;
  }

  /** Lets go of the variable that was taken in last. */
  letGo(variable: number): void {
    const times = this.#times;
    if (times !== null) for (let arc = this.#firstTime(variable + 1) - 1; arc >= this.#firstTime(variable); arc--) times.remove(arc);
    if (this.isArc(variable)) this.order.remove(variable);
  }

  /** Whether the arc would close a ring with those taken in. */
  refutes(variable: number): boolean {
    return this.order.reaches(this.#to[variable] as number, this.#from[variable] as number);
  }

  /** The arcs, given their values before `variable` got its own, that lead from its head back to its tail. */
  why(variable: number, trail: Trail): number[] {
    const limit = trail.placeOf(variable);
    const path = this.order.path(this.#to[variable] as number, this.#from[variable] as number, (arc) => trail.placeOf(arc) < limit);
    return path ?? [];
  }

  /** The first time arc of a variable; that of the next one where it has none. Those added later have none at all. */
  #firstTime(variable: number): number {
    const start = (this.#time as TimeLayer).start;
    return start[Math.min(variable, start.length - 1)] as number;
  }
}
