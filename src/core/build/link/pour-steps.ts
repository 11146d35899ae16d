import { writtenId } from "../../base";
import { pourWork } from "../../concrete";
import type { Pour, Step } from "../model";
import type { StepDraft } from "../read/drafts";
import type { Written } from "./groups";
import type { Names } from "./names";

interface Follows {
  readonly pour: Pour | null;
  readonly notBefore: string | null;
  readonly step: Step;
}

const memory = new WeakMap<Step, Follows>();

/** Hours of the pour day in whole minutes; null with a finding when an input leaves the range they are good for. */
function length_min(pour: Pour, names: Names): number | null {
  const work = pourWork(pour);
  if ("value" in work) return work.value.total_min;
  for (const { outOfRange, given } of work.refused) {
    const { name, least, most, unit, source } = outOfRange;
    const value = Number.isFinite(given) ? String(Number(given.toPrecision(4))) : "";
    names.say("build.outside", { list: "pours", id: pour.id, key: "elements" }, { part: "", value, name, least, most, unit, source });
  }
  return null;
}

function follow(step: Step, unsaid: StepDraft["unsaid"], pour: Pour | null, notBefore: string | null, names: Names): Step {
  const dated = notBefore === null ? step : { ...step, notBefore };
  if (pour === null) return dated;
  const likely_min = unsaid.work ? length_min(pour, names) : null;
  return {
    ...dated,
    sort: unsaid.sort ? "pour" : step.sort,
    work: likely_min === null || step.begun !== null ? step.work : { low_min: likely_min, likely_min, high_min: likely_min },
    begun: likely_min === null || step.begun === null ? step.begun : { whole_min: likely_min },
    unbroken: unsaid.unbroken ? likely_min !== null || step.unbroken : step.unbroken,
    pour: { strength_MPa: pour.mix.strength_MPa, cement: pour.mix.cement },
  };
}

/** A step of a pour, or one that waits for what a break has shown; the same step, pour and day give the same object. */
function once(step: Step, unsaid: StepDraft["unsaid"], pour: Pour | null, notBefore: string | null, names: Names): Step {
  const known = memory.get(step);
  if (known && known.pour === pour && known.notBefore === notBefore) return known.step;
  const before = names.saidSoFar;
  const made = follow(step, unsaid, pour, notBefore, names);
  if (names.saidSoFar === before) memory.set(step, { pour, notBefore, step: made });
  return made;
}

/** Steps with what their pours make of them: strength and cement, and sort, length and being unbroken where they do not say. */
export function withPours(
  steps: readonly Step[],
  written: readonly Written<"steps">[],
  pourOf: ReadonlyMap<string, Pour>,
  notBefore: ReadonlyMap<string, string>,
  names: Names,
): readonly Step[] {
  const drafts = new Map(written.map(({ id, draft }) => [id, draft]));
  return steps.map((step) => {
    const pour = pourOf.get(step.id) ?? null;
    const day = notBefore.get(step.id) ?? null;
    const draft = drafts.get(step.id) ?? drafts.get(writtenId(step.id));
    return (pour === null && day === null) || draft === undefined ? step : once(step, draft.unsaid, pour, day, names);
  });
}
