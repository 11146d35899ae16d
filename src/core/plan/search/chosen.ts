import { access, type RefusedLink } from "../../access";
import type { Build } from "../../build";
import type { Clocks } from "../../clock";
import { datesFor } from "../dates";
import { lastOf } from "../last-of";
import type { Plan } from "../plan";
import { type Found, replayed } from "./replay";

/** Chosen precedences that hold a step on the chain of a plan. */
function chosenOnChain({ chain, access: { arcs } }: Plan): RefusedLink[] {
  return chain.flatMap(({ holder }): RefusedLink[] =>
    holder.kind === "wait" && arcs.forced[holder.row] === 0
      ? [[arcs.from[holder.row]!, arcs.to[holder.row]!, arcs.link?.[holder.row] ?? -1]]
      : [],
  );
}

/** Choices of one plan turned in so many rounds, and so many in a round, before other means are taken. */
const mostRounds = 10;
const mostTurns = 12;

/**
 * Turns chosen precedences on the chain one by one, as long as the finish comes earlier by it. Yields null after every order tried, or what was found; goes
 * on from the plan that is made of it.
 */
export function* turnedChoices(build: Build, clocks: Clocks, finish: number, first: Plan): Generator<Found | null, void, Plan | undefined> {
  const turned: (readonly RefusedLink[])[] = [];
  const tried = new Set<string>();
  let best = finish;
  let now = first;
  for (let round = 0; round < mostRounds; round++) {
    let better: Found | null = null;
    for (const link of chosenOnChain(now).slice(0, mostTurns)) {
      if (tried.has(link.join())) continue;
      tried.add(link.join());
      const found = turn(build, clocks, [...turned, [link]], best);
      if (found === null) {
        yield null;
        continue;
      }
      better = found;
      turned.push([link]);
      break;
    }
    if (better === null) return;
    best = better.finish;
    now = (yield better) ?? now;
  }
}

function turn(build: Build, clocks: Clocks, refused: readonly (readonly RefusedLink[])[], best: number): Found | null {
  const order = access(build, refused);
  if (!order.possible) return null;
  const { solution } = datesFor(build, order, clocks).result;
  if (solution === null || lastOf(solution.finish, build.steps.length) >= best) return null;
  const found = replayed(build, clocks, solution.start, order.order);
  return found !== null && found.finish < best ? found : null;
}
