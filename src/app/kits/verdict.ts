import type { Build } from "../../core/build";
import { siteTime } from "../../core/clock";
import type { Plan } from "../../core/plan";
import { dateLabel } from "../../draw";
import { findingSentence } from "../../words";

export interface Verdict {
  readonly kind: "yes" | "no" | "unknown";
  readonly sentences: readonly string[];
}

type Units = "us" | "metric";

/** What the plan says to a build as it would be. `before`: the finish now; null where there is none yet. */
export function planVerdict(
  build: Build,
  plan: Plan,
  before: { readonly build: Build; readonly plan: Plan } | null,
  units: Units,
): Verdict {
  const stops = plan.findings.filter(({ severity }) => severity === "stop").map((finding) => findingSentence(finding, build, units));
  if (plan.status === "no-order") return { kind: "no", sentences: ["With this it cannot be built in any order.", ...stops] };
  if (plan.status === "no-dates")
    return { kind: "no", sentences: ["An order was found, but with this the dates cannot be met.", ...stops] };
  if (plan.status === "not-found")
    return { kind: "unknown", sentences: ["An order was found, but no dates with the people, stock and room there are.", ...stops] };
  const finish = finishText(build, plan);
  const now = before?.plan.status === "planned" && before.plan.steps.length > 0 ? finishText(before.build, before.plan) : null;
  const stays = now === finish ? "The finish stays" : "It finishes";
  const instead = now === null || now === finish ? "" : ` instead of ${now}`;
  return { kind: "yes", sentences: [`An order was found. ${stays} ${finish}${instead}.`] };
}

function finishText(build: Build, plan: Plan): string {
  const time = siteTime(build.site.zone, build.start);
  return `${dateLabel(time, plan.finish)} ${time.local(plan.finish).date.slice(0, 4)}`;
}
