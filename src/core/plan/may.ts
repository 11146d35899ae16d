import { type May, may } from "../access";
import type { ElapsedMinute } from "../base";
import type { Build } from "../build";
import { asDone } from "./history";
import { plainWait } from "./plain-wait";
import { plan } from "./plan-of";

/** As access answers, with dates and people: a yes carries the finish that would follow. */
export type PlanMay = Exclude<May, { readonly verdict: "yes" }> | { readonly verdict: "yes"; readonly finish: ElapsedMinute };

/** May step `before` finish before step `after` starts? No with the minimal set, "not found" where only people, stock or room stood in the way. */
export function planMay(build: Build, before: number, after: number): PlanMay {
  const order = may(asDone(build), before, after);
  if (order.verdict !== "yes") return order;
  const from = build.steps[before]!.id;
  const to = build.steps[after]!.id;
  const asked = plainWait(from, to, `${from}-before-${to}`);
  const tried = plan({ ...build, waits: [...build.waits, asked] });
  if (tried.status === "planned") return { verdict: "yes", finish: tried.finish };
  const stop = tried.findings.findLast((f) => f.severity === "stop");
  return tried.status === "not-found" || stop === undefined ? { verdict: "not-found", tried: 1 } : { verdict: "no", finding: stop };
}
