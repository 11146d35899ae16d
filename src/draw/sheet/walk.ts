import type { Plan } from "../../core/plan";
import type { Sheet } from "./sheet";

export type Way = "left" | "right" | "up" | "down" | "first" | "last";

/** The step that an arrow key leads to from another, over the whole sheet, drawn in the window or not. Null at an end. */
export function walk({ blocks, lanes }: Sheet, from: number | null, way: Way): number | null {
  const all = [...blocks.values()].sort((a, b) => a.x0 - b.x0 || a.y0 - b.y0 || a.step - b.step);
  if (all.length === 0) return null;
  const here = from === null ? undefined : blocks.get(from);
  if (!here || way === "first") return all[0]!.step;
  if (way === "last") return all[all.length - 1]!.step;
  const inLane = all.filter(({ lane }) => lane === here.lane);
  const at = inLane.indexOf(here);
  if (way === "left") return inLane[at - 1]?.step ?? null;
  if (way === "right") return inLane[at + 1]?.step ?? null;
  const turn = way === "down" ? 1 : -1;
  for (let lane = here.lane + turn; lane >= 0 && lane < lanes.length; lane += turn) {
    const there = all.filter((one) => one.lane === lane);
    if (there.length > 0) return there.reduce((best, one) => (Math.abs(one.x0 - here.x0) < Math.abs(best.x0 - here.x0) ? one : best)).step;
  }
  return null;
}

/** The step after or before another on the chalk line; from a step beside the line the nearest on it. Null at an end. */
export function walkChalk(plan: Plan, from: number | null, way: "left" | "right"): number | null {
  const chain = plan.chain.map(({ job }) => job).filter((job) => job < plan.steps.length);
  if (chain.length === 0) return null;
  if (from === null) return chain[0]!;
  const at = chain.indexOf(from);
  if (at >= 0) return chain[at + (way === "right" ? 1 : -1)] ?? null;
  const start = plan.steps[from]?.start ?? 0;
  const later = chain.find((job) => plan.steps[job]!.start >= start);
  const earlier = [...chain].reverse().find((job) => plan.steps[job]!.start <= start);
  return (way === "right" ? (later ?? earlier) : (earlier ?? later)) ?? null;
}
