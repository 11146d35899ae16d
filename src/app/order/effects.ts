import type { WayOut } from "../../core/base";
import { type Build, readDocument } from "../../core/build";
import { apply } from "../../core/edit";
import { type Plan, withEffect } from "../../core/plan";
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
  let timer = setTimeout(next);
  function next(): void {
    const way = made[at];
    if (way === undefined) return;
    if (way.detail.leads === undefined) {
      made[at] = withEffect(way, now, (edits) => readDocument(apply(document, edits).document).build);
      tell([...made]);
    }
    at += 1;
    timer = setTimeout(next);
  }
  return () => clearTimeout(timer);
}
