import { type DocumentEdit, writtenId } from "../base";
import type { Build, LocalMoment } from "../build";
import { memberOf } from "./written";

export interface Done {
  readonly start: LocalMoment;
  readonly finish: LocalMoment;
}

/**
 * Ticks a step as done, or takes the tick off (null). Of one copy of a group only that copy is ticked; a trial in rounds is ticked as a whole.
 * @param step id as read ("set-window#2")
 * @param document what the build was read from: a tick that a member of a group says for all its copies, as a file may, goes to each of them when it is
 * taken off one
 */
export function tick(build: Build, step: string, done: Done | null, document: unknown = null): readonly DocumentEdit[] {
  const { group = null, begun = null } = build.steps[build.at.step.get(step as never) ?? -1] ?? {};
  const own = ["steps", `id=${group?.written ?? writtenId(step)}`, "done"];
  const rest = done === null || begun === null ? [] : partly(build, step, null);
  if (group === null) return [done === null ? { path: own } : { path: own, value: done }, ...rest];
  const ofCopy = (copy: number) => ["groups", `id=${group.group}`, "differences", String(copy), group.written, "done"];
  const path = ofCopy(group.copy);
  if (done !== null) return [{ path, value: done }, ...rest];
  if (memberOf(document, "steps", group.written)?.done === undefined) return [{ path }];
  const others = build.steps.filter(
    (one) => one.group?.group === group.group && one.group.written === group.written && one.group.copy !== group.copy,
  );
  return [
    { path: own },
    ...others.flatMap((one) => (one.done && one.group ? [{ path: ofCopy(one.group.copy), value: one.done }] : [])),
    { path },
  ];
}

/**
 * Part of a step is done, and so much work is left of it; null: it is not begun. Of one copy of a group, of that copy alone.
 * @param step id as read ("set-window#2")
 * @param left working time as written ("3 h")
 */
export function partly(build: Build, step: string, left: string | null): readonly DocumentEdit[] {
  const group = build.steps[build.at.step.get(step as never) ?? -1]?.group ?? null;
  const written =
    group === null ? ["steps", `id=${writtenId(step)}`] : ["groups", `id=${group.group}`, "differences", String(group.copy), group.written];
  const path = [...written, "left"];
  return [left === null ? { path } : { path, value: left }];
}

/** From when on whatever is not done yet is planned; null: from the start of the build. */
export const resume = (at: LocalMoment | null): readonly DocumentEdit[] => [
  at === null ? { path: ["resumes"] } : { path: ["resumes"], value: at },
];
