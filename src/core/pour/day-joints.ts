import type { Finding } from "../base";
import type { Pour } from "../build";
import { columnsSettle_min, layer_min, type PourWork } from "../concrete";
import { found } from "./found";
import { isLaid, isStanding } from "./shapes";

/** Columns first, the pause between, and every layer placed while the one before still knits. */
export function joints(pour: Pour, work: PourWork): Finding[] {
  return [...order(pour), ...pause(pour, work), ...layers(pour, work)];
}

function order(pour: Pour): Finding[] {
  return pour.elements.flatMap((standing, i) => {
    const before = pour.elements.slice(0, i).find((e) => isLaid(e.shape));
    if (!isStanding(standing.shape) || before === undefined) return [];
    return [found(pour, "pour.columns-after", "look", { element: standing.id, before: before.id }, "elements")];
  });
}

function pause(pour: Pour, { pause_min, coldJoint_min }: PourWork): Finding[] {
  if (pause_min === 0) return [];
  const both = pour.elements.some((e) => isStanding(e.shape)) && pour.elements.some((e) => isLaid(e.shape));
  const { least, most } = columnsSettle_min;
  const findings: Finding[] = [];
  if (pour.pause === null) findings.push(found(pour, "pour.pause-usual", "note", { least_min: least, most_min: most }, "pause"));
  else if (both && pause_min < least)
    findings.push(found(pour, "pour.pause-short", "look", { least_min: pause_min, usual_min: least }, "pause"));
  const most_min = pour.pause?.most_min ?? most;
  if (most_min > coldJoint_min) findings.push(found(pour, "pour.pause-cold", "look", { most_min, coldJoint_min }, "pause"));
  return findings;
}

function layers(pour: Pour, { coldJoint_min }: PourWork): Finding[] {
  const findings: Finding[] = [];
  let longest_min = 0;
  for (const element of pour.elements) {
    const held_min = element.held?.every_min;
    const one_min = held_min ?? Math.ceil(layer_min(element.shape, pour.rate_m3_h) - 1e-6);
    longest_min = Math.max(longest_min, one_min);
    if (one_min <= coldJoint_min) continue;
    const at = { element: element.id, coldJoint_min };
    if (held_min === undefined) findings.push(found(pour, "pour.layer-cold", "look", { ...at, layer_min: one_min }, "rate"));
    else findings.push(found(pour, "pour.pass-cold", "look", { ...at, every_min: held_min }, "elements"));
  }
  if (pour.sacks === null && longest_min < coldJoint_min)
    findings.push(found(pour, "pour.truck-late", "note", { late_min: coldJoint_min - longest_min }));
  return findings;
}
