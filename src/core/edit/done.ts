import { type DocumentEdit, writtenId } from "../base";
import type { Build, LocalMoment } from "../build";

export interface Done {
  readonly start: LocalMoment;
  readonly finish: LocalMoment;
}

/**
 * Ticks a step as done, or takes the tick off (null). Of one copy of a group only that copy is ticked; a trial in rounds is ticked as a whole.
 * @param step id as read ("set-window#2")
 */
export function tick(build: Build, step: string, done: Done | null): readonly DocumentEdit[] {
  const group = build.steps[build.at.step.get(step as never) ?? -1]?.group ?? null;
  const path =
    group === null
      ? ["steps", `id=${writtenId(step)}`, "done"]
      : ["groups", `id=${group.group}`, "differences", String(group.copy), group.written, "done"];
  return [done === null ? { path } : { path, value: done }];
}

/** From when on whatever is not done yet is planned; null: from the start of the build. */
export const resume = (at: LocalMoment | null): readonly DocumentEdit[] => [
  at === null ? { path: ["resumes"] } : { path: ["resumes"], value: at },
];
