import type { FormSpec, Pour, Removal } from "../build";
import { isVouched } from "../build";

/** CD of lumber that is not reused; see `Use.duration`. */
export type Duration = 1 | 1.15 | 1.25;

const brief_min = 7 * 1440;
/** NDS Table 2.3.2, from memory: 1.15 up to two months. */
const months_min = 60 * 1440;

/** Days that somebody stands for and that nothing lengthens: neither a share that has yet to be expected nor days that only count while they are warm. */
function stay_min({ days, saidBy, share }: Removal): number | null {
  return days === null || share !== null || days.on.kind !== "elapsed" || !(days.amount > 0) || !isVouched(saidBy) ? null : days.amount;
}

/**
 * How long a form is loaded. What stands on its sides is only pressed until the concrete stiffens. What is under a soffit carries it until the last of soffit and
 * shores is out: up to seven days only where that is written for all of them; otherwise weeks (NDS 2.3.2).
 */
export function durationOf(pour: Pour, form: FormSpec | null): Duration {
  if (form?.kind !== "deck") return 1.25;
  const under = pour.removals.filter(({ sort }) => sort === "soffit" || sort === "shores");
  const stays = under.map(stay_min);
  if (stays.some((stay) => stay !== null && stay > months_min)) return 1;
  const staysShored = under.some(({ sort, shoresStay }) => sort === "soffit" && shoresStay) && !under.some(({ sort }) => sort === "shores");
  return stays.length > 0 && !staysShored && stays.every((stay) => stay !== null && stay <= brief_min) ? 1.25 : 1.15;
}
