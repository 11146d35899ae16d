import { type Finding, isWithin, limits } from "../base";
import type { Build, Pour, PourElement } from "../build";
import { canWait, everyLift_min, plan_m2, throttled } from "../concrete";
import type { Upright } from "./element";
import { psfOf, settled } from "./form-units";
import { found, refused } from "./found";
import { batter_deg, type Fresh, fullHead, type Lowered, lacking, lowered, mostBatter_deg, outsideOf } from "./pressure-documents";
import type { Pressure, PressureCase, WhyFullHead } from "./result";

/** Under about 8 ft and 4 ft2 of plan nobody fills slowly enough: full before it stiffens (common practice, no source). */
const short_mm = 2438.4;
const smallPlan_m2 = 4 * 0.3048 ** 2;
/** Deeper than 4 ft (1.2 m): ACI 347R-14 4.2.2.1, in the unit of the build's document. */
const deep_mm = { us: 1219.2, si: 1200 } as const;
/** A lift as deep as is usual at once, 20 in (ACI 309, from memory): a deeper pass is a lift and a pause. */
export const deepestPass_mm = 508;

/** Lifts of what would rise faster from a chute or by hand; a hose cannot be throttled. Whole minutes, rounded up. */
function throttleOf(build: Build, pour: Pour, upright: Upright, rise_m_h: number): Pressure["throttle"] {
  const { rise_m_h: most_m_h, lift_mm } = throttled[build.pressure === "aci-us" ? "us" : "si"];
  if (!canWait(pour.placed) || rise_m_h <= most_m_h || upright.high_mm <= lift_mm) return null;
  return { rise_m_h: most_m_h, lift_mm, every_min: everyLift_min({ rise_m_h: most_m_h, lift_mm }) };
}

export interface Pressed {
  readonly pressure: Pressure;
  readonly findings: readonly Finding[];
}

const caseOf = (rise_m_h: number | null, { most_kPa, hydrostatic_mm, formula, why }: Lowered): PressureCase => ({
  rise_m_h: rise_m_h !== null && Number.isFinite(rise_m_h) ? rise_m_h : null,
  most_kPa,
  most_psf: psfOf(most_kPa),
  hydrostatic_mm,
  formula,
  why,
});

/** From its foot to the top of all that is fresh over it. */
const freshHigh_mm = ({ high_mm, over_mm }: Upright): number => high_mm + over_mm;

/** What the formulas are asked about an element that rises so fast. */
export function freshOf(pour: Pour, upright: Upright, rise_m_h: number): Fresh {
  return {
    mix: pour.mix,
    concrete_C: pour.weather.concrete_C,
    high_mm: freshHigh_mm(upright),
    across_mm: Math.max(upright.long_mm, upright.wide_mm),
    rise_m_h,
    vibrated_mm: pour.vibrated_mm,
    external: pour.externalVibration,
    fromBase: pour.placed === "from the base",
  };
}

/** Faces too steep for the European documents, or an input the formula lacks: nothing lower than full head then. */
const formulaBars = (build: Build, pour: Pour, upright: Upright): boolean =>
  lacking(build.pressure, pour.mix) !== null || isBattered(build, upright);

const steepest = ({ batter }: Upright): number => Math.max(Math.abs(batter.a), Math.abs(batter.b));
const isBattered = (build: Build, upright: Upright): boolean =>
  (build.pressure === "din" || build.pressure === "ciria") && batter_deg(steepest(upright)) > mostBatter_deg;

/** The pressure at a rise by the build's document, at most full head. */
export function atRise(build: Build, pour: Pour, upright: Upright, rise_m_h: number): Lowered {
  const fresh = freshOf(pour, upright, rise_m_h);
  if (!formulaBars(build, pour, upright)) return lowered(build.pressure, fresh);
  return fullHead(pour.mix.weight_kg_m3, freshHigh_mm(upright), fresh.fromBase, ["outside the formula"]);
}

/** Why full head, from the hose, in the order told. */
function hoseReasons(build: Build, pour: Pour, element: PourElement, upright: Upright, rise_m_h: number): WhyFullHead[] {
  const fresh = freshOf(pour, upright, rise_m_h);
  const system = build.pressure === "aci-us" ? "us" : "si";
  const said = atRise(build, pour, upright, rise_m_h).why[0];
  const holds: readonly (readonly [WhyFullHead, boolean])[] = [
    ["short and small in plan", upright.high_mm < short_mm && settled(plan_m2(element.shape)) < settled(smallPlan_m2)],
    ["vibrated deep", pour.vibrated_mm !== null && pour.vibrated_mm > deep_mm[system] + 1e-6],
    ["no rate is held", true],
    ["slump", said === "slump" || pour.mix.slump_mm > (system === "us" ? 177.8 : 175) + 1e-6],
    ["external vibration", pour.externalVibration],
    ["pumped from the base", fresh.fromBase],
    ["rises too fast", said === "rises too fast"],
    ["the formula is over it", said === "the formula is over it"],
    ["outside the formula", formulaBars(build, pour, upright) || outsideOf(build.pressure, fresh).length > 0],
  ];
  return holds.flatMap(([why, does]) => (does ? [why] : []));
}

/** m/h from the hose into the smallest section of one element, and by passes. */
export const hoseRise_m_h = (pour: Pour, element: PourElement): number => pour.rate_m3_h / plan_m2(element.shape);
const heldRise_m_h = ({ pass_mm, every_min }: NonNullable<PourElement["held"]>): number => (pass_mm / 1000 / every_min) * 60;

/**
 * Both cases of an element. From the hose it is full head, whatever the formula says at that rise: nobody keeps a hose slow without a written act. The held rate is
 * the design only where the act is whole (a pass of at most 20 in, an interval, a named person) and the document lowers the pressure for it.
 */
export function pressureOf(build: Build, pour: Pour, element: PourElement, upright: Upright): Pressed {
  const rise = hoseRise_m_h(pour, element);
  const fromBase = pour.placed === "from the base";
  const why = hoseReasons(build, pour, element, upright, rise);
  const hose = caseOf(rise, fullHead(pour.mix.weight_kg_m3, freshHigh_mm(upright), fromBase, why));
  const act = element.held;
  const counts = act !== null && isWithin(limits.opening, act.pass_mm) && act.every_min > 0 && isWithin(limits.elapsed, act.every_min);
  const heldRise = counts ? heldRise_m_h(act) : 0;
  const held = counts ? caseOf(heldRise, atRise(build, pour, upright, heldRise)) : null;
  const isAct = counts && act.who !== null && act.pass_mm <= deepestPass_mm + 1e-6 && pour.vibrated_mm !== null;
  const design = held !== null && isAct && held.formula !== "full head" ? "held" : "hose";
  const who = act?.who == null ? null : (build.people[build.at.person.get(act.who) ?? -1]?.name ?? act.who);
  return {
    pressure: {
      document: build.pressure,
      height_mm: freshHigh_mm(upright),
      weight_kg_m3: pour.mix.weight_kg_m3,
      hose,
      held,
      design,
      fastest_m_h: null,
      throttle: throttleOf(build, pour, upright, rise),
      act: design === "held" && act !== null ? { pass_mm: act.pass_mm, every_min: act.every_min, who } : null,
    },
    findings: [...inputFindings(build, pour, element, upright), ...(act === null ? [] : actFindings(pour, element, held))],
  };
}

function inputFindings(build: Build, pour: Pour, element: PourElement, upright: Upright): Finding[] {
  const at = { element: element.id };
  const out = refused(pour, outsideOf(build.pressure, freshOf(pour, upright, hoseRise_m_h(pour, element))), element.id);
  if (upright.over_mm > 0) out.push(found(pour, "pressure.laid-on", "note", { ...at, over_mm: upright.over_mm }, "elements"));
  const lacks = lacking(build.pressure, pour.mix);
  if (lacks !== null)
    out.push(found(pour, lacks === "setting" ? "pressure.setting-unknown" : "pressure.consistency-unknown", "look", at, "mix"));
  if (isBattered(build, upright)) {
    const detail = { ...at, batter_deg: batter_deg(steepest(upright)), most_deg: mostBatter_deg, document: build.pressure };
    out.push(found(pour, "pressure.batter", "look", detail, "elements"));
  }
  return out;
}

/** What keeps a written act from counting. */
function actFindings(pour: Pour, element: PourElement, held: PressureCase | null): Finding[] {
  const at = { element: element.id };
  const act = element.held as NonNullable<PourElement["held"]>;
  if (held === null) return [found(pour, "pressure.no-dimension", "look", { ...at, what: "pass" }, "elements")];
  const out: Finding[] = [];
  if (act.who === null) out.push(found(pour, "pressure.nobody-holds", "look", at, "elements"));
  if (act.pass_mm > deepestPass_mm + 1e-6)
    out.push(found(pour, "pressure.pass-deep", "look", { ...at, pass_mm: act.pass_mm, most_mm: deepestPass_mm }, "elements"));
  if (pour.vibrated_mm === null) out.push(found(pour, "pressure.vibration-unknown", "look", at, "vibrated"));
  else if (held.formula === "full head")
    out.push(found(pour, "pressure.held-earns-nothing", "look", { ...at, why: held.why[0] ?? "" }, "elements"));
  return out;
}
