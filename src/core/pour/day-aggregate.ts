import { type Finding, fromModel, toModel } from "../base";
import type { ElementShape, Pour, PourElement } from "../build";
import { bar, cement_lb_yd3, largestAggregate_in, pumpedAggregate_in, pumpedSacks, usualHose_in } from "../concrete";
import { found } from "./found";
import type { PourDay } from "./result";
import { isStanding, leastDimension_mm } from "./shapes";

interface Limit {
  readonly element: string;
  readonly most_mm: number;
  readonly because: "bars" | "form" | "slab";
}

const inMm = (inches: number): number => toModel("length", inches, "in");
const inIn = (length_mm: number): number => fromModel("length", length_mm, "in");

/** Between the sides of its form, mm: a slab has none that near. */
function formWidth_mm(shape: ElementShape): number | null {
  if (isStanding(shape)) return leastDimension_mm(shape);
  return shape.kind === "footing" ? Math.min(shape.long_mm, shape.wide_mm) : null;
}

function limits(element: PourElement): Limit[] {
  const list: Limit[] = [];
  const add = (because: Limit["because"], given: Parameters<typeof largestAggregate_in>[0]) =>
    list.push({ element: element.id, because, most_mm: inMm(largestAggregate_in(given)) });
  for (const set of element.bars) {
    const steel = bar(set.size);
    if (steel === null || set.spacing_mm === null || set.sort === "tie") continue;
    add("bars", { clear_in: Math.max(0, inIn(set.spacing_mm) - steel.diameter_in) });
  }
  const wide_mm = formWidth_mm(element.shape);
  if (wide_mm !== null) add("form", { narrowest_in: inIn(wide_mm) });
  if (!isStanding(element.shape)) add("slab", { slab_in: inIn(leastDimension_mm(element.shape)) });
  return list;
}

/** The largest aggregate against bar gaps, forms and slabs, and against the hose. */
export function aggregate(pour: Pour): { value: PourDay["aggregate"]; findings: readonly Finding[] } {
  const given_mm = pour.mix.aggregate_mm;
  const all = pour.elements.flatMap(limits);
  const least = all.reduce<Limit | null>((low, l) => (low === null || l.most_mm < low.most_mm ? l : low), null);
  const findings: Finding[] = [...pumped(pour)];
  if (least === null) return { value: null, findings };
  const { element, most_mm, because } = least;
  if (given_mm === null) {
    return { value: null, findings: [...findings, found(pour, "pour.aggregate-unknown", "note", { element, most_mm, because }, "mix")] };
  }
  // A nominal 3/4 in against three quarters of an inch is no breach.
  if (given_mm > most_mm + 0.01) {
    findings.push(found(pour, "pour.aggregate-large", "look", { element, given_mm, most_mm, because }, "mix"));
  }
  return { value: { given_mm, most_mm, because }, findings };
}

function pumped(pour: Pour): Finding[] {
  if (pour.placed !== "hose" && pour.placed !== "from the base") return [];
  const findings: Finding[] = [];
  const { aggregate_mm, cement_kg_m3 } = pour.mix;
  const most_mm = inMm(pumpedAggregate_in(usualHose_in));
  if (aggregate_mm !== null && aggregate_mm > most_mm + 0.01) {
    findings.push(found(pour, "pour.aggregate-pumped", "look", { given_mm: aggregate_mm, most_mm, hose_mm: inMm(usualHose_in) }, "mix"));
  }
  const least_kg_m3 = toModel("mass", cement_lb_yd3(pumpedSacks), "lb") / 0.9144 ** 3;
  if (cement_kg_m3 !== null && cement_kg_m3 < least_kg_m3 - 0.01) {
    findings.push(found(pour, "pour.cement-low-for-pump", "note", { cement_kg_m3, least_kg_m3 }, "mix"));
  }
  return findings;
}
