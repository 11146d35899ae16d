import type { DocumentEdit } from "../../core/base";
import type { Build } from "../../core/build";
import { siteTime } from "../../core/clock";
import type { Plan } from "../../core/plan";
import type { Selection } from "../state";
import { memberOf, putKey, quantityOf, withFigure } from "../write/written";

/** Something worth trying on what is selected, as a change of the document. */
export interface Try {
  readonly words: string;
  readonly edits: readonly DocumentEdit[];
}

const days = (count: number): string => (count === 7 ? "a week" : count === 14 ? "two weeks" : `${count} days`);

/** What one would try first: a slip of it, and the work taking half as long again. Slips begin where the plan has it now. */
export function triesFor(document: unknown, build: Build, plan: Plan, selected: Selection): readonly Try[] {
  if (plan.status !== "planned") return [];
  const time = siteTime(build.site.zone, build.start);
  const later = (t: number, count: number): string => time.dateOf(time.dayOf(t) + count);
  if (selected.list === "deliveries") {
    const index = build.at.delivery.get(selected.id);
    const dates = index === undefined ? undefined : plan.deliveries[index];
    if (!dates) return [];
    return [3, 14].map((count) => ({
      words: `${days(count)} later`,
      edits: [putKey("deliveries", selected.id, "promised", later(dates.arrives, count))],
    }));
  }
  if (selected.list !== "steps") return [];
  const index = build.at.step.get(selected.id);
  const dates = index === undefined ? undefined : plan.steps[index];
  const step = index === undefined ? undefined : build.steps[index];
  if (!dates || !step || step.fixed !== null) return [];
  const written = memberOf(document, "steps", selected.id);
  const tries: Try[] = [{ words: "a week later", edits: [putKey("steps", selected.id, "notBefore", later(dates.start, 7))] }];
  if (step.work.likely_min >= 60 && !quantityOf(written?.work).includes("/")) {
    const longer_min = Math.round((step.work.likely_min * 1.5) / 15) * 15;
    tries.push({
      words: "half as long again",
      edits: [putKey("steps", selected.id, "work", withFigure(written?.work, `${longer_min} min`))],
    });
  }
  return tries;
}
