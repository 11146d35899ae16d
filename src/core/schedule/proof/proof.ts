import { drained, type ElapsedMinute, never } from "../../base";
import { lastOf } from "../last-of";
import { earliest, latest, netOf } from "../network";
import type { Problem, Result, Solution } from "../problem";
import { searchOf } from "../search";
import { improved } from "../search/improve";
import { Passes } from "../search/passes";
import { solve } from "../solve";
import { verify } from "../verify";
import { witness } from "../witness";
import { cliquesOf } from "./cliques";
import { energyBound } from "./energy";
import { modelOf } from "./model";
import { ProofSearch } from "./search";

/** Passes of generation before the search begins: more where a proof takes longer, fewer where a pass does. */
const passesByJobs = 2;
const passCost = 200_000_000;
const passCostByDay = 40_000_000;

/** A search for the earliest finish and its proof that goes on for as much work as it is given. */
export interface Proof {
  readonly done: boolean;
  /** Clashes met, and schedules made on the way to the first answer or found later. */
  readonly clashes: number;
  readonly schedules: number;
  /** Goes on for at most so many clashes and schedules; `rounds`: and for at most so many rounds of propagation, of which one unit may take any number. */
  step(units: number, rounds?: number): void;
  /** What is known so far. Infeasible is said only of what no schedule within the problem's horizon can meet. */
  result(): Result;
}

/**
 * The search for a problem, with links, dates, clocks, capacities and stock. `first`: a schedule that is there already (null: begin
 * without one); where it is left out, a few passes of serial generation make one.
 */
export function proofOf(p: Problem, first?: Solution | null): Proof {
  return drained(beginProof(p, first));
}

/** The same; what comes before its first clash in pieces, for of large problems it takes a while. */
export function* beginProof(p: Problem, first?: Solution | null): Generator<void, Proof> {
  const net = netOf(p);
  const early = earliest(p, net);
  const none = { witness: [], stuck: null, earliest: early };
  if (early.broken >= 0) {
    const broken = witness(p, net, early);
    return ended({ ...none, status: "infeasible", solution: null, bound: 0 as ElapsedMinute, work: 0, witness: broken });
  }
  const bound = lastOf(early.finish) as ElapsedMinute;
  const made = first === undefined ? begun(p) : null;
  const given = first ?? made?.solution ?? null;
  const start = given !== null && lastOf(given.finish) <= p.horizon && verify(p, given).length === 0 ? given : null;
  const target = start === null ? p.horizon : lastOf(start.finish);
  if (start !== null && target <= bound) return ended({ ...none, status: "proved", solution: start, bound, work: made?.work ?? 0 });
  const late = latest(p, net, target as ElapsedMinute);
  yield;
  const plain = modelOf(p, net, early.start, late.start, bound, target);
  if (plain === null) return ended({ ...none, status: "infeasible", solution: null, bound: never, work: 0 });
  yield;
  const model = { ...plain, shared: [...plain.shared, ...cliquesOf(plain)] };
  const least = yield* energyBound(model, (finish) => latest(p, net, finish as ElapsedMinute).start);
  if (least > model.high[p.jobs]!) return ended({ ...none, status: "infeasible", solution: null, bound: never, work: 0 });
  model.low[p.jobs] = least;
  const most = first === undefined ? Math.min(passesByJobs * p.jobs ** 2, Math.floor(passCost / p.jobs ** 2)) : 0;
  const better = start === null ? null : improved(p, start, model.low[p.jobs]!, most);
  yield;
  const search = new ProofSearch(p, model, better?.solution ?? null, Passes.of(p, most, 2));
  const before = (made?.work ?? 0) + (better?.passes ?? 0);
  return {
    get done() {
      return search.done;
    },
    get clashes() {
      return search.clashes;
    },
    get schedules() {
      return before + search.work - search.clashes;
    },
    step: (units, rounds) => search.step(units, rounds),
    result() {
      const { best, done, work } = search;
      const status = best === null ? (done ? "infeasible" : "not-found") : done ? "proved" : "planned";
      return { ...none, status, solution: best, bound: search.bound as ElapsedMinute, work: work + before };
    },
  };
}

/** A schedule to begin with: passes of serial generation; where lengths depend on the day, of which these know nothing, a short population search. */
function begun(p: Problem): Result {
  if (p.clock.every((c) => !p.clocks[c]!.fromBeginning)) return solve(p);
  const schedules = Math.min(passesByJobs * p.jobs ** 2, Math.floor(passCostByDay / p.jobs ** 2));
  const search = searchOf(p, { seed: 1, schedules });
  search.step(schedules);
  return search.result();
}

function ended(result: Result): Proof {
  return { done: true, clashes: 0, schedules: result.work, step: () => {}, result: () => result };
}
