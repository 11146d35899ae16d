import { access, type RefusedLink } from "../../access";
import type { Build } from "../../build";
import type { Clocks } from "../../clock";
import { dating } from "../dates";
import { heldChain } from "../held-chain";
import { lastOf } from "../last-of";
import { eachFor, portion } from "./portions";
import { type Found, replaying } from "./replay";

/** Chosen precedences that hold a step on the chain of a plan. */
function chosenOnChain({ ordered: { bound }, solution }: Found, clocks: Clocks): RefusedLink[] {
  const { arcs } = bound!.access;
  return heldChain(bound!, clocks, solution).chain.flatMap(({ holder }): RefusedLink[] =>
    holder.kind === "wait" && arcs.forced[holder.row] === 0
      ? [[arcs.from[holder.row]!, arcs.to[holder.row]!, arcs.link?.[holder.row] ?? -1]]
      : [],
  );
}

/** Choices of one plan turned in so many rounds, and so many in a round, before other means are taken. */
const mostRounds = 10;
const mostTurns = 12;

/**
 * Turns chosen precedences on the chain one by one, as long as the finish comes earlier by it; goes on from what was found. Yields in pieces, and `take` hears of
 * every order tried: null, or what was found.
 */
export function* turnedChoices(build: Build, clocks: Clocks, first: Found, take: (found: Found | null) => void): Generator<number, void> {
  const turned: (readonly RefusedLink[])[] = [];
  const tried = new Set<string>();
  let best = first;
  for (let round = 0; round < mostRounds; round++) {
    const before = best;
    const links = chosenOnChain(best, clocks).slice(0, mostTurns);
    yield portion;
    for (const link of links) {
      if (tried.has(link.join())) continue;
      tried.add(link.join());
      const found = yield* turn(build, clocks, [...turned, [link]], best.finish);
      take(found);
      yield portion;
      if (found === null) continue;
      best = found;
      turned.push([link]);
      break;
    }
    if (best === before) return;
  }
}

function* turn(build: Build, clocks: Clocks, refused: readonly (readonly RefusedLink[])[], best: number): Generator<number, Found | null> {
  const order = access(build, refused);
  if (!order.possible) return null;
  yield portion;
  const { solution } = (yield* eachFor(portion, dating(build, order, clocks))).result;
  if (solution === null || lastOf(solution.finish, build.steps.length) >= best) return null;
  yield portion;
  const found = yield* eachFor(portion, replaying(build, clocks, solution.start, order.order));
  return found !== null && found.finish < best ? found : null;
}
