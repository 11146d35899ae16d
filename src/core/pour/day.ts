import { type Finding, toModel } from "../base";
import type { Build, Pour } from "../build";
import { handsFor, netVolume_m3, type PourWork, peopleFor, pourWork } from "../concrete";
import { aggregate } from "./day-aggregate";
import { callOff, ground } from "./day-ground";
import { joints } from "./day-joints";
import { truckLoads } from "./day-trucks";
import { drying, hotAndCold } from "./day-weather";
import { found, refused } from "./found";
import type { PourDay } from "./result";
import { isStanding } from "./shapes";

/** A sack of cement: 94 lb. */
const sack_kg = toModel("mass", 94, "lb");

/**
 * The day of one pour of a build, date-free: volumes, trucks, hours, hands, what the weather as entered asks for, and what is to be looked at. `day` is null
 * when an input leaves the range its figures are good for; the findings name it.
 */
export function pourDay(build: Build, at: number): { readonly day: PourDay | null; readonly findings: readonly Finding[] } {
  const pour = build.pours[at] as Pour;
  const hollow = pour.elements.flatMap((e) => {
    const left_m3 = netVolume_m3(e.shape, e.rebates);
    return left_m3 > 0 ? [] : [found(pour, "pour.nothing-left", "stop", { element: e.id, left_m3 }, "elements")];
  });
  const work = pourWork(pour);
  if (hollow.length > 0) return { day: null, findings: hollow };
  if (!("value" in work)) return { day: null, findings: refused(pour, work.refused) };
  return made(build, pour, work.value);
}

function made(build: Build, pour: Pour, work: PourWork): { day: PourDay; findings: readonly Finding[] } {
  const { trucks, findings: ofTrucks } = truckLoads(pour, work);
  const dry = drying(build, pour, work);
  const stone = aggregate(pour);
  const hands = handsOf(pour, work);
  const yields_m3 = yieldOf(build, pour);
  const cement_kg = pour.mix.cement_kg_m3 === null ? null : pour.mix.cement_kg_m3 * work.order_m3;
  const day: PourDay = {
    net_m3: work.net_m3,
    order_m3: work.order_m3,
    waste_percent: work.waste_percent,
    trucks: trucks.map(({ load_m3, after_min }) => ({ load_m3, after_min })),
    placing_min: work.placing_min,
    pause_min: work.pause_min,
    finishing_min: work.finishing_min,
    clearing_min: work.clearing_min,
    floatAfter_min: work.floatAfter_min,
    coldJoint_min: work.coldJoint_min,
    total_min: work.total_min,
    hands,
    helpers: pour.helpers ?? 0,
    finishers: work.finished_m2 > 0 ? work.finishers : 0,
    evaporation: dry.value,
    aggregate: stone.value,
    cement_kg,
    sacks: cement_kg === null ? null : Math.ceil(cement_kg / sack_kg - 1e-9),
    bags: yields_m3 === null ? null : Math.ceil(work.order_m3 / yields_m3 - 1e-9),
  };
  const findings = [
    ...ofTrucks,
    ...joints(pour, work),
    ...short(build, pour, day),
    ...dry.findings,
    ...hotAndCold(pour),
    ...stone.findings,
    ...(pour.sacks !== null && cement_kg === null && yields_m3 === null ? [found(pour, "pour.cement-unknown", "look", {}, "mix")] : []),
    ...ground(pour),
    ...callOff(build, pour),
  ];
  return { day, findings };
}

/** Concrete that one of the stock it is bought as gives. */
function yieldOf(build: Build, pour: Pour): number | null {
  const stock = pour.sacks === null ? undefined : build.stock[build.at.stock.get(pour.sacks) ?? -1];
  return stock !== undefined && stock.yields_m3 !== null && stock.yields_m3 > 0 ? stock.yields_m3 : null;
}

function handsOf(pour: Pour, work: PourWork): PourDay["hands"] {
  const stands = pour.elements.some((e) => isStanding(e.shape));
  return handsFor(pour.placed, stands, work.finished_m2, pour.rate_m3_h);
}

function short(build: Build, pour: Pour, day: PourDay): Finding[] {
  const step = build.steps[build.at.step.get(pour.step) ?? -1];
  if (step === undefined) return [];
  const wanted = peopleFor(pour);
  const have = step.hands.reduce((sum, h) => sum + h.number, 0) + day.helpers;
  return have >= wanted ? [] : [found(pour, "pour.hands-short", "look", { step: step.id, wanted, have })];
}
