import { writtenId } from "../../base";
import type { Names } from "../link/names";
import type { Step, Wait } from "../model";
import { rings } from "./ring";

/** Written waits that make each step wait for itself: finish to start, with some least or none at all. */
export function checkWaits(steps: readonly Step[], waits: readonly Wait[], positions: ReadonlyMap<string, number>, names: Names): void {
  const after: { to: number; id: string }[][] = steps.map(() => []);
  const next: number[][] = steps.map(() => []);
  for (const wait of waits) {
    if (wait.fromEnd !== "finish" || wait.toEnd !== "start" || (wait.least === null && wait.most !== null)) continue;
    const [from, to] = [positions.get(wait.from) ?? -1, positions.get(wait.to)];
    if (to === undefined) continue;
    after[from]?.push({ to, id: wait.plain ? "" : wait.id });
    next[from]?.push(to);
  }
  for (const ring of rings(steps.length, (i) => next[i] ?? [])) {
    const first = steps[ring[0] ?? -1];
    if (!first) continue;
    const written = ring.map((from, i) => after[from]?.find((wait) => wait.to === ring[(i + 1) % ring.length])?.id ?? "");
    names.say(
      "build.wait-ring",
      { list: "steps", id: writtenId(first.id), key: "after" },
      { ring: ring.map((i) => steps[i]?.id ?? ""), waits: written },
    );
  }
}
