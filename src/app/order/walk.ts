import type { Access } from "../../core/access";
import type { Build } from "../../core/build";

export interface Box {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
  readonly of?: { readonly id: string };
}

const directions: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** Ids of the steps that arrows join a step to. */
export interface Joined {
  readonly before: readonly string[];
  readonly after: readonly string[];
}

/**
 * The id of the box that an arrow key leads to; null where the key is none or there is nothing that way. Left and right follow the drawn arrows where
 * there are any that way. What lies straight ahead counts nearer than what lies aside. Without a start every arrow key, and Home, gives the first box;
 * End the last.
 */
export function walkFrom(boxes: readonly Box[], from: string | null, key: string, joined?: Joined): string | null {
  const sorted = [...boxes].sort((a, b) => a.x0 - b.x0 || a.y0 - b.y0);
  if (key === "Home") return sorted[0]?.of?.id ?? null;
  if (key === "End") return sorted.at(-1)?.of?.id ?? null;
  const way = directions[key];
  if (!way) return null;
  const here = boxes.find((box) => box.of?.id === from);
  if (!here) return sorted[0]?.of?.id ?? null;
  const next = new Set(key === "ArrowLeft" ? joined?.before : key === "ArrowRight" ? joined?.after : []);
  let best: string | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const box of boxes) {
    const dx = (box.x0 + box.x1 - here.x0 - here.x1) / 2;
    const dy = (box.y0 + box.y1 - here.y0 - here.y1) / 2;
    const ahead = dx * way[0] + dy * way[1];
    const aside = Math.abs(dx * way[1]) + Math.abs(dy * way[0]);
    if (box === here || ahead <= 0 || (next.size > 0 && !next.has(box.of?.id ?? ""))) continue;
    const far = ahead + 2 * aside;
    if (far < least) {
      least = far;
      best = box.of?.id ?? null;
    }
  }
  return best;
}

/** Steps and arrows ("from to") next to a step. */
export function neighboursOf(
  build: Build,
  access: Access,
  id: string,
): { readonly steps: ReadonlySet<string>; readonly arrows: ReadonlySet<string> } {
  const { arcs } = access;
  const at = build.at.step.get(id);
  const steps = new Set<string>();
  const arrows = new Set<string>();
  for (let row = 0; row < arcs.count; row += 1) {
    const [from, to] = [arcs.from[row] as number, arcs.to[row] as number];
    if (from !== at && to !== at) continue;
    const [a, b] = [build.steps[from]?.id ?? "", build.steps[to]?.id ?? ""];
    steps.add(from === at ? b : a);
    arrows.add(`${a} ${b}`);
  }
  return { steps, arrows };
}
