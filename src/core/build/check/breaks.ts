import { writtenId } from "../../base";
import type { Names } from "../link/names";
import { isHeldUntilShown, isVouched, shareOf } from "../link/removals";
import type { KeptPlan, Pour, Removal, Step } from "../model";

/** Whether a local moment comes before another; where one of them has no hour, only their days are compared. */
export function isBefore(a: string, b: string): boolean {
  const days = a.length < 11 || b.length < 11;
  return days ? a.slice(0, 10) < b.slice(0, 10) : a < b;
}

/** When it was placed, or is to be on a date that does not move. */
const placedAt = ({ done, fixed }: Step): string | null => done?.finish ?? fixed;

/** Says which results cannot be of this pour, and which of them nothing can be told of before the pour has its date. */
export function checkBreaks(pour: Pour, step: Step, start: string, kept: KeptPlan | null, names: Names): void {
  const where = { list: "pours", id: pour.id, key: "breaks" };
  const placed = placedAt(step);
  const planned = kept?.steps.get(step.id)?.finish ?? null;
  pour.breaks.forEach(({ at }, i) => {
    const say = (by: "start" | "fixed", poured: string): void =>
      names.say("build.break-before-pour", where, { part: String(i + 1), value: at, poured, by });
    if (isBefore(at, start)) say("start", start);
    else if (placed !== null && isBefore(at, placed)) say("fixed", placed);
    else if (placed === null && planned !== null && isBefore(at, planned))
      names.say("build.break-before-kept", where, { part: String(i + 1), value: at, poured: planned });
    else if (placed === null) names.say("build.break-undated", where, { part: String(i + 1), step: writtenId(step.id) });
  });
}

/**
 * The local moment at which a result showed the share that a removal asks for; null while none has. Counts only after the pour is done, or has a fixed date: a pour that
 * could still move may come after its own result. A guess shows nothing. What may go ahead on what is expected is not put off by a later result.
 */
export function shownAt(pour: Pour, step: Step, removal: Removal): string | null {
  const share = shareOf(pour, removal);
  const placed = placedAt(step);
  if (share === null || placed === null || !isHeldUntilShown(pour, removal)) return null;
  const reached = pour.breaks
    .filter(
      ({ at, strength_MPa, by }) => isVouched(by) && !isBefore(at, placed) && strength_MPa * 1000 >= share * pour.mix.strength_MPa - 1e-9,
    )
    .map(({ at }) => at)
    .sort();
  return reached[0] ?? null;
}
