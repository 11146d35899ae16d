import { type DocumentEdit, writtenId } from "../base";
import type { Build, LocalMoment, Step } from "../build";

/** A date that somebody wrote at a step. */
export type DateKey = "notBefore" | "deadline" | "fixed";

/**
 * Steps by position whose date is moved with that of step `at`, smallest change first: a copy of a group by itself, then with every copy that has the same
 * date; the rounds of a trial always together.
 */
export function movedTogether(build: Build, at: number, key: DateKey): readonly (readonly number[])[] {
  const { id, group, [key]: date } = build.steps[at]!;
  const those = (wanted: (step: Step) => boolean): number[] => build.steps.flatMap((step, s) => (wanted(step) ? [s] : []));
  if (group === null) return [those((step) => step.group === null && writtenId(step.id) === writtenId(id))];
  const all = those((step) => step.group?.group === group.group && step.group.written === group.written && step[key] === date);
  return all.length > 1 ? [[at], all] : [[at]];
}

/** The build with the date of these steps moved; null takes it away. */
export function withDates(build: Build, steps: readonly number[], key: DateKey, to: LocalMoment | null): Build {
  return { ...build, steps: build.steps.map((step, s) => (steps.includes(s) ? { ...step, [key]: to } : step)) };
}

/** The same as edits of the document: a copy's date goes into its differences, what a trial says is written once. */
export function dateEdits(build: Build, steps: readonly number[], key: DateKey, to: LocalMoment): DocumentEdit[] {
  const edits = steps.map((s): DocumentEdit => {
    const { id, group } = build.steps[s]!;
    const written =
      group === null ? ["steps", `id=${writtenId(id)}`] : ["groups", `id=${group.group}`, "differences", String(group.copy), group.written];
    return { path: [...written, key], value: to };
  });
  return edits.filter(({ path }, i) => edits.findIndex((one) => one.path.join("\n") === path.join("\n")) === i);
}

/** What a way out says of the steps whose date it moves. */
export const datedSteps = (build: Build, steps: readonly number[], at: number): { step: string; steps?: readonly string[] } => ({
  step: build.steps[at]!.id,
  ...(steps.length > 1 && build.steps[at]!.group !== null ? { steps: steps.map((s) => build.steps[s]!.id) } : {}),
});
