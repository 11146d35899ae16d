import type { Apply } from "../access";
import type { Finding, WayOut } from "../base";
import type { Build } from "../build";
import { compare } from "./compare";
import type { Plan } from "./plan";
import { plan } from "./plan-of";

/**
 * A way out with what it does to the whole plan, in its detail: `leads` is the status of the plan that would follow, `finishAt` its finish; where the build
 * has dates already, `finishWas` and the `siteDays` lost (negative when gained). As it was where it cannot be applied.
 */
export function withEffect(way: WayOut, now: Plan, edited: Apply): WayOut {
  const build = edited(way.edits);
  if (build === null) return way;
  const after = plan(build);
  if (after.status !== "planned") return { ...way, detail: { ...way.detail, leads: after.status } };
  const { finishBefore, siteDaysLost } = compare(now, after, build);
  const detail = { ...way.detail, leads: after.status, finishAt: after.finish };
  return { ...way, detail: now.status === "planned" ? { ...detail, finishWas: finishBefore, siteDays: siteDaysLost } : detail };
}

/** Findings with the effect of each of their ways out. `now`: the plan of the build as it stands, made when first needed. */
export function withEffects(build: Build, findings: readonly Finding[], edited: Apply, now: () => Plan = () => plan(build)): Finding[] {
  return findings.map((finding) =>
    finding.waysOut === undefined || finding.waysOut.length === 0
      ? finding
      : { ...finding, waysOut: finding.waysOut.map((way) => withEffect(way, now(), edited)) },
  );
}
