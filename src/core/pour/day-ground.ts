import { type Finding, toModel } from "../base";
import type { Build, Pour } from "../build";
import { found } from "./found";

/** Clearance of any part of a machine to wires up to 50 kV: 10 ft (OSHA 29 CFR 1926.1408 Table A, from memory). The utility's word goes before it. */
const clear_mm = toModel("length", 10, "ft");

/** A truck mixer stands about 13 ft high (from memory). */
const truckHigh_mm = toModel("length", 13, "ft");

/** Steeper than this a loaded truck is not driven on unpaved ground without asking its driver (common practice, no source). */
const steepest_percent = 10;

/** Whether truck, hose and wash water can be where they must. */
export function ground(pour: Pour): Finding[] {
  return [...hose(pour), ...wires(pour), ...truck(pour)];
}

function hose(pour: Pour): Finding[] {
  if (pour.placed !== "hose" && pour.placed !== "from the base") return [];
  const { hoseReach_mm, hoseNeeded_mm } = pour.ground;
  if (hoseReach_mm === null || hoseNeeded_mm === null) return [found(pour, "pour.hose-unknown", "note", {}, "ground")];
  if (hoseReach_mm >= hoseNeeded_mm) return [];
  return [found(pour, "pour.hose-short", "stop", { reach_mm: hoseReach_mm, needed_mm: hoseNeeded_mm }, "ground")];
}

function wires(pour: Pour): Finding[] {
  if (pour.placed === "by hand" || pour.sacks !== null) return [];
  const wires_mm = pour.ground.wiresAbove_mm;
  if (wires_mm === "none") return [];
  if (wires_mm === null) return [found(pour, "pour.wires-unknown", "note", { clear_mm }, "ground")];
  const highest_mm = wires_mm - clear_mm;
  if (highest_mm < truckHigh_mm) {
    return [found(pour, "pour.wires-near", "stop", { wires_mm, clear_mm, machine_mm: truckHigh_mm }, "ground")];
  }
  return [found(pour, "pour.wires", "look", { wires_mm, clear_mm, highest_mm }, "ground")];
}

function truck(pour: Pour): Finding[] {
  if (pour.sacks !== null) return [];
  const { truck_kg, slope_percent, washout } = pour.ground;
  const findings: Finding[] = [];
  if (slope_percent !== null && slope_percent > steepest_percent) {
    findings.push(found(pour, "pour.truck-slope", "look", { slope_percent, most_percent: steepest_percent }, "ground"));
  }
  if (truck_kg !== null) findings.push(found(pour, "pour.truck-weight", "note", { truck_kg }, "ground"));
  if (washout === null) findings.push(found(pour, "pour.washout-unknown", "note", {}, "ground"));
  return findings;
}

/** Until when it costs nothing to call it off: the supplier's cut-off of the day before, for every delivery the step needs. The date is the plan's. */
export function callOff(build: Build, pour: Pour): Finding[] {
  const step = build.steps[build.at.step.get(pour.step) ?? -1];
  if (step === undefined) return [];
  return step.needs.flatMap((id) => {
    const delivery = build.deliveries[build.at.delivery.get(id) ?? -1];
    const calendar = delivery && build.calendars[build.at.calendar.get(delivery.calendar) ?? -1];
    if (delivery === undefined || calendar === undefined) return [];
    const at = { step: step.id, delivery: delivery.id, calendar: calendar.id };
    return calendar.cutOff_min === null
      ? [found(pour, "pour.call-off-unknown", "note", at)]
      : [found(pour, "pour.call-off", "note", { ...at, cutOff_min: calendar.cutOff_min })];
  });
}
