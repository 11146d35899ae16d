import { type ElapsedMinute, never } from "../base";
import { byKey } from "./by-key";
import { lastOf } from "./last-of";
import { needsOf } from "./needs";
import { type Earliest, earliest, latest, type Net, netOf } from "./network";
import type { Problem, Result, Solution, Stuck } from "./problem";
import { type Ground, SerialPass } from "./serial";
import { witness } from "./witness";

/** Further priorities are tried while fewer jobs than this have been placed. */
const mostPlaced = 900;

/** A problem made ready for passes of serial generation. */
export class SerialPasses {
  readonly #early: Earliest;
  readonly #net: Net;
  /** Null where times alone allow nothing. */
  readonly #ground: Ground | null;

  constructor(readonly problem: Problem) {
    const p = problem;
    this.#net = netOf(p);
    this.#early = earliest(p, this.#net);
    this.#ground = this.#early.broken >= 0 ? null : groundOf(p, this.#net, this.#early);
  }

  /** One pass by a priority (lower first): its schedule, or null where it gives none. */
  schedule(key: Int32Array): Solution | null {
    return this.#ground && new SerialPass(this.#ground, key, true).run().solution;
  }

  /**
   * Dates by a few passes with different priorities; the earliest finish is kept, the first of equals. Infeasible is said only of links, releases, dues and fixed
   * dates without people, equipment, room and stock.
   * @param enough once there are dates, further priorities are tried while fewer jobs than this have been placed
   * @param only the one priority to go by (lower first), where that is known
   */
  solve(enough: number, only: Int32Array | null): Result {
    const p = this.problem;
    const early = this.#early;
    const ground = this.#ground;
    if (ground === null) {
      return {
        status: "infeasible",
        solution: null,
        earliest: early,
        bound: 0 as ElapsedMinute,
        work: 0,
        witness: witness(p, this.#net, early),
        stuck: null,
      };
    }
    const bound = lastOf(early.finish) as ElapsedMinute;
    let best: Solution | null = null;
    let stuck: Stuck | null = null;
    let work = 0;
    const attempt = (key: Int32Array, whole = true): void => {
      const found = new SerialPass(ground, key, whole).run();
      work++;
      if (found.solution === null) stuck ??= found.stuck;
      else if (best === null || lastOf(found.solution.finish) < lastOf(best.finish)) best = found.solution;
    };
    const lacks = (): Stuck["of"]["kind"] | null => stuck?.of.kind ?? null;
    const finish = (): number => (best === null ? never : lastOf(best.finish));
    const late = only ? null : latest(p, this.#net, bound);
    let asWritten = false;
    for (const key of late ? keys(p, late) : [only!]) {
      // Where things went out in an order in which they could not come back, the order as it is written is the next to try.
      if (finish() >= never && lacks() === "stock" && !asWritten && late) {
        asWritten = true;
        attempt(p.rank);
        if (finish() < never) break;
      }
      attempt(key);
      if (finish() <= bound || (finish() < never && work * p.jobs >= enough)) break;
      // Nobody there for as long as anything is known: another order would not bring them.
      if (lacks() === "capacity") break;
    }
    if (late && finish() >= never && lacks() !== "capacity") {
      if (!asWritten) attempt(p.rank);
      if (finish() >= never) attempt(hurried(p, this.#net, late.start, stuck!), false);
    }
    if (best === null) return { status: "not-found", solution: null, earliest: early, bound, work, witness: [], stuck };
    const status = finish() <= bound ? "proved" : "planned";
    return { status, solution: best, earliest: early, bound, work, witness: [], stuck: null };
  }
}

/** As `SerialPasses.solve`, for a problem of which no more is asked. */
export function solve(p: Problem, only: Int32Array | null = null): Result {
  return new SerialPasses(p).solve(mostPlaced, only);
}

function groundOf(p: Problem, net: Net, early: Earliest): Ground {
  const limit = dated(p) ? latest(p, net, never).start : new Int32Array(p.jobs).fill(never);
  const byTurn = byKey(p.jobs, (j) => p.rank[j]!);
  const turn = new Int32Array(p.jobs);
  for (let k = 0; k < byTurn.length; k++) turn[byTurn[k]!] = k;
  return { problem: p, net, needs: needsOf(p), earliest: early.start, limit, byTurn, turn };
}

/** Latest start, latest finish, and latest start with the longer job first. */
function* keys(p: Problem, late: { readonly start: Int32Array; readonly finish: Int32Array }): Generator<Int32Array> {
  yield late.start;
  yield late.finish;
  yield late.start.map((s, j) => s - (p.amount[j]! >> 1));
}

/** When no pass met the windows: what leads to the job that came too late goes before everything else. */
function hurried(p: Problem, net: Net, base: Int32Array, stuck: Stuck): Int32Array {
  const key = base.slice();
  const ahead = 1 << 26;
  const urgent = new Uint8Array(p.jobs);
  const todo = [stuck.job];
  for (let j = todo.pop(); j !== undefined; j = todo.pop()) {
    if (urgent[j] === 1) continue;
    urgent[j] = 1;
    key[j]! -= ahead;
    for (let k = net.adj.inAt[j]!; k < net.adj.inAt[j + 1]!; k++) todo.push(p.links.from[net.adj.in[k]!]!);
  }
  return key;
}

function dated(p: Problem): boolean {
  return p.due.some((d) => d < never) || p.fixed.some((f) => f >= 0);
}
