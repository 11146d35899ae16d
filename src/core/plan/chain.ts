import type { Solution } from "../schedule";
import type { Held } from "./holders";
import type { ChainLink } from "./plan";

/** From the last finish back through what holds it; never through what was put late on purpose, which itself waits for something on the chain. */
export function chainOf(s: Solution, held: readonly Held[], steps: number): ChainLink[] {
  let last = -1;
  for (let j = 0; j < steps; j++) if (last < 0 || s.finish[j]! > s.finish[last]!) last = j;
  const chain: ChainLink[] = [];
  const seen = new Set<number>();
  for (let j = last; j >= 0 && !seen.has(j); j = before(held[j]!, steps)) {
    seen.add(j);
    const { holder, ready } = held[j]!;
    // The last to finish may be late on purpose itself: then the chain is that of the job it keeps close to.
    if (holder.kind !== "on-purpose") chain.push({ job: j, holder, ready });
    else if (chain.length > 0) break;
  }
  return chain.reverse();
}

function before({ holder }: Held, steps: number): number {
  if (holder.kind === "delivery") return steps + holder.delivery;
  if (holder.kind === "window") return holder.after ?? -1;
  return "job" in holder ? holder.job : -1;
}
