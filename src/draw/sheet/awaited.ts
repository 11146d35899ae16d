import type { Amount, Build, Wait } from "../../core/build";
import type { Plan } from "../../core/plan";

/** A least amount that runs in a plan: what starts it, what it holds, from when until when. */
export interface Awaited {
  /** Row of `plan.access.arcs`. */
  readonly row: number;
  readonly from: number;
  readonly to: number;
  readonly fromEnd: number;
  /** As written; null where it comes from another rule. */
  readonly wait: Wait | null;
  readonly amount: Amount;
  readonly begins: number;
  readonly ready: number;
}

/** Instants beyond a decade are answers like "never", not dates. */
const never = 6_000_000;

/** Every wait of a plan, in the order of its arcs. */
export function awaited(build: Build, plan: Plan): Awaited[] {
  const { arcs, amounts, statements } = plan.access;
  const stated = new Map((plan.waits ?? []).map(({ row, ready }) => [row, ready as number]));
  const held = new Map(plan.chain.flatMap(({ holder, ready }) => (holder.kind === "wait" ? [[holder.row, ready as number] as const] : [])));
  const waits = new Map(build.waits.map((wait) => [wait.id as string, wait]));
  const out: Awaited[] = [];
  for (let row = 0; row < arcs.count; row += 1) {
    const amount = amounts[arcs.least[row] as number];
    const from = arcs.from[row] as number;
    const dates = plan.steps[from];
    if (!amount || amount.amount === 0 || !dates) continue;
    const fromEnd = arcs.fromEnd[row] as number;
    const begins = fromEnd === 0 ? dates.start : dates.finish;
    const ready = stated.get(row) ?? held.get(row) ?? (amount.on.kind === "elapsed" ? begins + amount.amount : null);
    if (ready === null || ready > never) continue;
    const wait = waits.get(statements[arcs.reason[row] as number]?.id ?? "") ?? null;
    out.push({ row, from, to: arcs.to[row] as number, fromEnd, wait, amount, begins, ready });
  }
  return out;
}
