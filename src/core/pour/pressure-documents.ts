import type { Mix, PressureDocument } from "../build";
import {
  aciRanges_si,
  aciRanges_us,
  type Checked,
  chemistryCoefficient,
  ciriaC2,
  ciriaRanges,
  dinRanges,
  type OutOfRange,
  outside,
  pressureAci_si,
  pressureAci_us,
  pressureCiria,
  pressureDin,
} from "../concrete";
import { feet, inches, kPaOfPsf, settled, weightOf } from "./form-units";
import type { WhyFullHead } from "./result";

/** What a formula is asked about, in model units. */
export interface Fresh {
  readonly mix: Mix;
  readonly concrete_C: number;
  readonly high_mm: number;
  /** Greater side in plan. */
  readonly across_mm: number;
  readonly rise_m_h: number;
  /** Null: not said, taken as through the whole height. */
  readonly vibrated_mm: number | null;
  readonly external: boolean;
  readonly fromBase: boolean;
}

export interface Lowered {
  readonly most_kPa: number;
  readonly hydrostatic_mm: number;
  readonly formula: string;
  readonly why: readonly WhyFullHead[];
}

/** Full head: the weight of the concrete times its depth, a quarter more where it is pumped from the base (ACI 347R-14 4.2.2.1: at least 25 % for the surge). */
export function fullHead(weight_kg_m3: number, high_mm: number, fromBase: boolean, why: readonly WhyFullHead[]): Lowered {
  const most_kPa = ((fromBase ? 1.25 : 1) * weightOf(weight_kg_m3) * high_mm) / 1000;
  return { most_kPa, hydrostatic_mm: high_mm, formula: "full head", why };
}

const cementOf = (cement: Mix["cement"]) => (cement === "blend" || cement === "slow blend" ? cement : ("plain" as const));
const fahrenheit = (celsius: number): number => settled((celsius * 9) / 5 + 32);
const poundsPerCubicFoot = (weight_kg_m3: number): number => settled(weight_kg_m3 / (0.45359237 / 0.3048 ** 3));

function asked_us(f: Fresh) {
  return {
    // ACI: a wall has a side over 6.5 ft in plan.
    shape: settled(feet(f.across_mm)) > 6.5 ? ("wall" as const) : ("column" as const),
    height_ft: settled(feet(f.high_mm)),
    rise_ft_h: settled(f.rise_m_h / 0.3048),
    concrete_F: fahrenheit(f.concrete_C),
    weight_pcf: poundsPerCubicFoot(f.mix.weight_kg_m3),
    chemistry: chemistryCoefficient(cementOf(f.mix.cement), f.mix.retarder),
    slump_in: settled(inches(f.mix.slump_mm)),
    vibrated_ft: settled(feet(f.vibrated_mm ?? f.high_mm)),
    external: f.external,
    fromBase: f.fromBase,
  };
}

function asked_si(f: Fresh) {
  return {
    shape: f.across_mm > 2000 ? ("wall" as const) : ("column" as const),
    height_m: f.high_mm / 1000,
    rise_m_h: f.rise_m_h,
    concrete_C: f.concrete_C,
    density_kg_m3: settled(f.mix.weight_kg_m3),
    chemistry: chemistryCoefficient(cementOf(f.mix.cement), f.mix.retarder),
    slump_mm: f.mix.slump_mm,
    vibrated_m: (f.vibrated_mm ?? f.high_mm) / 1000,
    external: f.external,
    fromBase: f.fromBase,
  };
}

const asked_ciria = (f: Fresh) => ({
  shape: f.across_mm > 2000 ? ("wall" as const) : ("column" as const),
  form_m: f.high_mm / 1000,
  height_m: f.high_mm / 1000,
  rise_m_h: f.rise_m_h,
  concrete_C: f.concrete_C,
  weight_kN_m3: weightOf(f.mix.weight_kg_m3),
  c2: ciriaC2(cementOf(f.mix.cement), f.mix.retarder),
});

/** Temperature at which a setting time is usually told, °C (DIN 18218, from memory), and the setting time taken where nothing slower is known. */
const dinReference_C = 15;
const dinSetting_min = 300;

const asked_din = (f: Fresh) => ({
  consistency: f.mix.consistency ?? ("F6" as const),
  height_m: f.high_mm / 1000,
  rise_m_h: f.rise_m_h,
  setting_h: Math.max(dinSetting_min, f.mix.setting_min ?? dinSetting_min) / 60,
  weight_kN_m3: weightOf(f.mix.weight_kg_m3),
  colder_K: Math.max(0, dinReference_C - f.concrete_C),
});

const reasons = {
  slump: "slump",
  vibration: "vibrated deep",
  external: "external vibration",
  "pumped from base": "pumped from the base",
  rise: "rises too fast",
} as const satisfies Readonly<Record<string, WhyFullHead>>;

/** What leaves the published range of the build's document. A rise does not: above its range it is full head, and that is said as such. */
export function outsideOf(document: PressureDocument, f: Fresh): readonly OutOfRange[] {
  const slow = { ...f, rise_m_h: 1 };
  switch (document) {
    case "aci-us": {
      const a = asked_us(slow);
      return outside(aciRanges_us, {
        height: a.height_ft,
        rise: a.rise_ft_h,
        temperature: a.concrete_F,
        weight: a.weight_pcf,
        chemistry: a.chemistry,
        slump: a.slump_in,
        vibrated: a.vibrated_ft,
      });
    }
    case "aci-si": {
      const a = asked_si(slow);
      return outside(aciRanges_si, {
        height: a.height_m,
        rise: a.rise_m_h,
        temperature: a.concrete_C,
        density: a.density_kg_m3,
        chemistry: a.chemistry,
        slump: a.slump_mm,
        vibrated: a.vibrated_m,
      });
    }
    case "ciria": {
      const a = asked_ciria(slow);
      return outside(ciriaRanges, {
        form: a.form_m,
        height: a.height_m,
        rise: a.rise_m_h,
        temperature: a.concrete_C,
        weight: a.weight_kN_m3,
        c2: a.c2,
      });
    }
    case "din": {
      const a = asked_din(slow);
      return outside(dinRanges, {
        height: a.height_m,
        rise: a.rise_m_h,
        setting: a.setting_h,
        weight: a.weight_kN_m3,
        colder: a.colder_K,
      });
    }
  }
}

/** A refused formula is full head: either it rises faster than the document reaches, or another input leaves its range. */
const slowest_m_h = 0.1;
const refusedWhy = (document: PressureDocument, f: Fresh): WhyFullHead =>
  f.rise_m_h > slowest_m_h && outsideOf(document, f).length === 0 ? "rises too fast" : "outside the formula";

/** What voids every lower figure. The European documents have no clause of their own on most of it; what voids the one voids the others here. */
function voids(f: Fresh): WhyFullHead | null {
  if (f.fromBase) return "pumped from the base";
  if (f.external) return "external vibration";
  if (f.mix.slump_mm > 175 && f.mix.consistency === null) return "slump";
  return (f.vibrated_mm ?? f.high_mm) > 1200 ? "vibrated deep" : null;
}

/** The formula of the document at a rise; full head with the reason where it has nothing lower to say. */
export function lowered(document: PressureDocument, f: Fresh): Lowered {
  const full = (why: WhyFullHead) => fullHead(f.mix.weight_kg_m3, f.high_mm, f.fromBase, [why]);
  if (document === "aci-us") {
    const found = pressureAci_us(asked_us(f));
    if (!("value" in found)) return full(refusedWhy(document, f));
    const { governs, because, most_psf, hydrostatic_ft } = found.value;
    if (governs === "full head") return full(because === "" ? "the formula is over it" : reasons[because]);
    return { most_kPa: kPaOfPsf(most_psf), hydrostatic_mm: hydrostatic_ft * 304.8, formula: governs, why: [] };
  }
  if (document === "aci-si") {
    const found = pressureAci_si(asked_si(f));
    if (!("value" in found)) return full(refusedWhy(document, f));
    const { governs, because, most_kPa, hydrostatic_m } = found.value;
    if (governs === "full head") return full(because === "" ? "the formula is over it" : reasons[because]);
    return { most_kPa, hydrostatic_mm: hydrostatic_m * 1000, formula: governs, why: [] };
  }
  const barred = voids(f);
  if (barred !== null) return full(barred);
  const found: Checked<{ most_kPa: number; governs: string; hydrostatic_m: number }> =
    document === "ciria" ? pressureCiria(asked_ciria(f)) : pressureDin(asked_din(f));
  if (!("value" in found)) return full(refusedWhy(document, f));
  const { governs, most_kPa, hydrostatic_m } = found.value;
  if (governs === "full head") return full("the formula is over it");
  return { most_kPa, hydrostatic_mm: hydrostatic_m * 1000, formula: governs, why: [] };
}

/** Steeper than this and the European documents say nothing (DIN 18218: within 5° of plumb). */
export const mostBatter_deg = 5;

export const batter_deg = (run: number): number => (Math.atan(Math.abs(run)) * 180) / Math.PI;

/** What a formula needs and the mix does not say. */
export function lacking(document: PressureDocument, mix: Mix): "consistency" | "setting" | null {
  if (document !== "din") return null;
  if (mix.consistency === null) return "consistency";
  return mix.retarder && mix.setting_min === null ? "setting" : null;
}
