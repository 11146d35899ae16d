import type { Plan } from "../../core/plan";

/** Steps next to one step in the order: what it waits for and what waits for it, with what holds it first of all. */
export interface Neighbours {
  readonly causes: readonly number[];
  readonly consequences: readonly number[];
}

/** Direct causes and consequences of a step, without those that follow from others. */
export function neighbours(plan: Plan, step: number): Neighbours {
  const { arcs } = plan.access;
  const causes = new Set<number>();
  const consequences = new Set<number>();
  const { holder } = plan.steps[step] ?? {};
  const known = (job: number) => job >= 0 && job < plan.steps.length && job !== step;
  if (holder && "job" in holder && known(holder.job)) causes.add(holder.job);
  plan.steps.forEach((other, index) => {
    if (index !== step && "job" in other.holder && other.holder.job === step) consequences.add(index);
  });
  for (let row = 0; row < arcs.count; row += 1) {
    if (arcs.redundant[row] === 1 || arcs.orders[row] === 0) continue;
    if (arcs.to[row] === step && known(arcs.from[row] as number)) causes.add(arcs.from[row] as number);
    if (arcs.from[row] === step && known(arcs.to[row] as number)) consequences.add(arcs.to[row] as number);
  }
  return { causes: [...causes].sort((a, b) => a - b), consequences: [...consequences].sort((a, b) => a - b) };
}
