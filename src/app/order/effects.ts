import type { WayOut } from "../../core/base";
import { type Build, readDocument } from "../../core/build";
import { apply } from "../../core/edit";
import type { Plan } from "../../core/plan";
import { quickUpTo } from "../state/planner";

/**
 * Tries what each way out does to the finish, one at a time with room in between for what the builder does, and tells the list after each. Not for a build
 * that the page does not plan itself. @returns what ends it
 */
export function tryEffects(
  document: unknown,
  build: Build,
  now: Plan,
  ways: readonly WayOut[],
  tell: (ways: readonly WayOut[]) => void,
): () => void {
  if (build.steps.length > quickUpTo) return () => {};
  const made = [...ways];
  let at = 0;
  let timer = setTimeout(() => void next());
  let ended = false;
  async function next(): Promise<void> {
    const way = made[at];
    // Without the engine the ways out stand there as before, without what they do to the finish.
    const engine = await import("../state/engine").catch(() => null);
    if (way === undefined || engine === null || ended) return;
    if (way.detail.leads === undefined) {
      made[at] = engine.withEffect(way, now, (edits) => readDocument(apply(document, edits).document).build);
      tell([...made]);
    }
    at += 1;
    timer = setTimeout(() => void next());
  }
  return () => {
    ended = true;
    clearTimeout(timer);
  };
}
