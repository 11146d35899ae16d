import { type Finding, fromModel, toModel } from "../base";
import type { Pour, PourElement } from "../build";
import {
  type Earth,
  facesOf,
  foot_m2,
  footThickness_mm,
  formTrench_ft,
  ladderFrom_ft,
  onceDug,
  pitVolume,
  protectFrom_ft,
  type Soil,
  slope,
  swell,
  trenchDepth,
  trenchRules,
} from "../concrete";
import { faultyDimension, measures, uprightOf } from "./element";
import { formDepth_mm } from "./form-parts";
import { found, refused } from "./found";

/** The ground as somebody competent classed it, and how deep it is cut: on a slope at its uphill side. */
export interface Cut {
  readonly soil: Soil;
  readonly earth: Earth;
  readonly deep_mm: number;
  /** Dug or filled before. */
  readonly disturbed: boolean;
}

export interface Trench {
  /** The floor: the element, its form and braces where it is formed, room to work beside them. */
  readonly long_mm: number;
  readonly wide_mm: number;
  readonly topLong_mm: number;
  readonly topWide_mm: number;
  /** Sloped, so wide at its top, or shored; false: the sides may stand. */
  readonly protect: boolean;
  readonly soil: Soil;
  readonly bank_m3: number;
  /** Dug out. */
  readonly loose_m3: number;
  /** To be filled again around the element, as it lies compacted. */
  readonly fill_m3: number;
  /** Of the loose, what is left over. */
  readonly away_m3: number;
}

const inFt = (length_mm: number): number => fromModel("length", length_mm, "ft");
const inMm = (feet: number): number => toModel("length", feet, "ft");

/**
 * How wide a trench an element wants in its form, and what comes out of it; nothing of the ground is designed here. `trench` is null for what lies on a form
 * and where a figure is out of range.
 */
export function trenchFor(
  pour: Pour,
  element: PourElement,
  cut: Cut,
): { readonly trench: Trench | null; readonly findings: readonly Finding[] } {
  const up = uprightOf(element.shape);
  if (up === null || faultyDimension(element.shape) !== null) return { trench: null, findings: [] };
  const deep = Math.round(inFt(cut.deep_mm) * 1e6) / 1e6;
  if (!(deep >= trenchDepth.least && deep <= trenchDepth.most)) {
    const engineer = deep > trenchDepth.most;
    const at = { element: element.id, deep_mm: cut.deep_mm, from_mm: inMm(trenchDepth.most) };
    return {
      trench: null,
      findings: engineer
        ? [found(pour, "trench.engineer", "stop", at)]
        : refused(pour, [{ outOfRange: trenchDepth, given: deep }], element.id, "stop"),
    };
  }
  const soil = cut.disturbed ? onceDug(cut.soil) : cut.soil;
  const rules = trenchRules(deep, soil);
  const run = rules.protect ? slope[soil] : 0;
  const [long_mm, wide_mm] = floor(element, up.long_mm);
  const bank_m3 = pitVolume(long_mm, wide_mm, cut.deep_mm, run) / 1e9;
  const { loose, compacted } = swell[cut.earth];
  const inside_m3 = Math.min(measures(element, 1).volume_m3, foot_m2(element.shape) * (cut.deep_mm / 1000));
  const fill_m3 = Math.max(0, bank_m3 - inside_m3);
  const trench: Trench = {
    long_mm,
    wide_mm,
    topLong_mm: long_mm + 2 * run * cut.deep_mm,
    topWide_mm: wide_mm + 2 * run * cut.deep_mm,
    protect: rules.protect,
    soil,
    bank_m3,
    loose_m3: bank_m3 * loose,
    fill_m3,
    away_m3: Math.max(0, (bank_m3 - fill_m3 / compacted) * loose),
  };
  const at = { element: element.id, deep_mm: cut.deep_mm };
  const findings = [
    found(pour, "trench.marks", "look", { element: element.id }),
    ...(rules.protect
      ? [found(pour, "trench.protect", "look", { ...at, from_mm: inMm(protectFrom_ft), soil, top_mm: trench.topWide_mm })]
      : []),
    ...(rules.ladder ? [found(pour, "trench.ladder", "look", { ...at, from_mm: inMm(ladderFrom_ft) })] : []),
    found(pour, "trench.spoil", "note", { element: element.id, back_mm: inMm(rules.spoilBack_ft), loose_m3: trench.loose_m3 }),
  ];
  return { trench, findings };
}

/** Length and width of the floor. A face against earth, old work or nothing needs no room. */
function floor(element: PourElement, long_mm: number): [number, number] {
  const faces = facesOf(element.shape, element.faces);
  const { form } = element;
  const stands = form === null ? 0 : formDepth_mm(form);
  const brace_mm = form !== null && "brace" in form && form.brace !== null ? form.brace.run_mm : 0;
  const beside = inMm(formTrench_ft(0, inFt(stands + brace_mm))) / 2;
  const formed = (name: "a" | "b" | "ends"): boolean => faces.some((f) => (f.face === name || f.face === "sides") && f.against === "form");
  const wide_mm = footWide_mm(element.shape);
  return [long_mm + (formed("ends") ? 2 : 0) * beside, wide_mm + ((formed("a") ? 1 : 0) + (formed("b") ? 1 : 0)) * beside];
}

/** Across the element at its foot. */
function footWide_mm(shape: PourElement["shape"]): number {
  if (shape.kind === "wall") return footThickness_mm(shape);
  return "wide_mm" in shape ? shape.wide_mm : 0;
}
