import { partsOf } from "../parts";
import type { Problem, WitnessPart } from "../problem";
import { problemOfParts } from "../reduced";
import { solve } from "../solve";
import { verify } from "../verify";
import { proofOf } from "./proof";

/** A search for the parts of a problem that already make it infeasible, which goes on for as much work as it is given. */
export interface Refusal {
  readonly done: boolean;
  /** Clashes and schedules so far, one more for every set of parts that was tried. */
  readonly work: number;
  step(units: number): void;
  /** Parts that cannot hold together. `minimal`: without any one of them the others can, and that has been shown. */
  result(): { readonly parts: readonly WitnessPart[]; readonly minimal: boolean };
}

/** Clashes after which a set of parts counts as undecided and nothing of it is dropped. */
const mostClashes = 5000;
const portion = 50;

/** Work after which nothing more is dropped: what is left cannot be, and may not be minimal. */
const mostWork = 12_000;

/**
 * Why a problem that a proof found infeasible is so: lengths, dates, sides of links, capacities and stocks of which none can be left out. Parts are dropped in
 * ever smaller lots (stocks and capacities first, then lengths, dates, waits, each from the back) while a proof says that the rest still cannot be. Where a
 * proof takes more than `most` clashes the parts stay, and the set may not be minimal. `beginning`: parts of which that has been proved already.
 */
export function refusalOf(p: Problem, most = mostClashes, beginning: readonly WitnessPart[] = partsOf(p)): Refusal {
  let parts = inTurn(beginning);
  let done = false;
  let minimal = true;
  let work = 0;

  /** Whether the rest cannot be; null: not decided in time. Pauses where work was done. */
  function* cannotBe(rest: readonly WitnessPart[]): Generator<void, boolean | null> {
    const q = problemOfParts(p, rest);
    work++;
    yield;
    if (q.jobs === 0) return false;
    const made = solve(q);
    work += made.work;
    if (made.status === "infeasible") return true;
    const { solution } = made;
    if (solution?.finish.every((f) => f <= q.horizon) && verify(q, solution).length === 0) return false;
    const search = proofOf(q, null);
    while (!search.done && search.clashes < most) {
      const before = search.clashes + search.schedules;
      search.step(portion);
      work += search.clashes + search.schedules - before;
      if (search.result().solution !== null) return false;
      yield;
    }
    return search.done ? search.result().status === "infeasible" : null;
  }

  function* shrink(): Generator<void, void> {
    for (let size = Math.max(1, parts.length >> 1); size >= 1; size >>= 1) {
      for (let from = 0; from < parts.length && parts.length > 1; ) {
        if (work >= mostWork) {
          minimal = false;
          return;
        }
        const rest = [...parts.slice(0, from), ...parts.slice(from + size)];
        const verdict = yield* cannotBe(rest);
        if (verdict === true) parts = rest;
        else {
          if (verdict === null && size === 1) minimal = false;
          from += size;
        }
      }
    }
  }

  const run = shrink();
  return {
    get done() {
      return done;
    },
    get work() {
      return work;
    },
    step(units) {
      const until = work + units;
      while (!done && work < until) done = run.next().done === true;
    },
    result: () => ({ parts: [...parts].sort((a, b) => weight(a) - weight(b) || place(a) - place(b)), minimal: done && minimal }),
  };
}

/** In the order in which they are tried to be dropped. */
const inTurn = (parts: readonly WitnessPart[]): WitnessPart[] => [...parts].sort((a, b) => weight(b) - weight(a) || place(b) - place(a));

const weights = { link: 0, release: 1, due: 1, fixed: 1, job: 2, capacity: 3, stock: 4 } as const;

function weight(part: WitnessPart): number {
  return weights[part.kind];
}

function place(part: WitnessPart): number {
  if (part.kind === "link") return 2 * part.link + (part.side === "most" ? 1 : 0);
  return "index" in part ? part.index : part.job;
}
