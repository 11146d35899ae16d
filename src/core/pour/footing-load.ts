import type { Finding } from "../base";
import type { Build, Pour, PourElement } from "../build";
import { foot_m2 } from "../concrete";
import { faultyDimension, measures } from "./element";
import { kPaOfPsf, weightOf } from "./form-units";
import { found } from "./found";

/** Weights of a house, snow, people: what somebody says stands on a footing besides this build's concrete. */
export interface StatedLoad {
  readonly name: string;
  readonly force_kN: number;
}

/** A sum and no design: the ground is for somebody who knows it. All of one footing. */
export interface FootingLoad {
  readonly own_kN: number;
  readonly above: readonly { readonly pour: number; readonly element: number; readonly force_kN: number }[];
  readonly stated: readonly StatedLoad[];
  readonly force_kN: number;
  readonly area_m2: number;
  readonly pressure_kPa: number;
  readonly findings: readonly Finding[];
}

/** The weaker classes of ground, 1,500 psf (IRC R401.4.1, from memory): stands beside the sum, it is no permission. */
const presumed_kPa = kPaOfPsf(1500);

/**
 * What stands on footing `e` of pour `p`: the concrete of every element one of whose pieces is held, directly or through others, by a piece of the footing, in
 * full even where something else helps to hold it; and the loads stated. Shared evenly where there are several footings alike. Null where its figures are none.
 */
export function footingLoad(build: Build, p: number, e: number, stated: readonly StatedLoad[] = []): FootingLoad | null {
  const pour = build.pours[p] as Pour;
  const footing = pour.elements[e] as PourElement;
  if (faultyDimension(footing.shape) !== null || !stated.every((load) => Number.isFinite(load.force_kN))) return null;
  const own_kN = weightOf(measures(footing, pour.mix.weight_kg_m3).mass_kg);
  const above = standing(build, footing).map(({ pour: q, element: f }) => {
    const other = build.pours[q] as Pour;
    const one = other.elements[f] as PourElement;
    const each_kN = faultyDimension(one.shape) === null ? weightOf(measures(one, other.mix.weight_kg_m3).mass_kg) : 0;
    return { pour: q, element: f, force_kN: (each_kN * one.number) / footing.number };
  });
  const sum = (list: readonly { readonly force_kN: number }[]) => list.reduce((total, one) => total + one.force_kN, 0);
  const force_kN = own_kN + sum(above) + sum(stated);
  const area_m2 = foot_m2(footing.shape);
  const pressure_kPa = force_kN / area_m2;
  const at = { element: footing.id };
  const lacks =
    footing.pieces.length === 0 || above.length === 0 ? "the-concrete-above" : stated.length === 0 ? "building-snow-people" : null;
  const ask = found(pour, "quantity.ask-before-you-dig", pressure_kPa > presumed_kPa ? "look" : "note", {
    ...at,
    force_kN,
    pressure_kPa,
    presumed_kPa,
  });
  const part = lacks === null ? [] : [found(pour, "quantity.footing-part", "note", { ...at, lacks }, "elements")];
  return { own_kN, above, stated, force_kN, area_m2, pressure_kPa, findings: [ask, ...part] };
}

/** Elements of the build that pieces of the footing hold; what shares a piece with it stands beside it. */
function standing(build: Build, footing: PourElement): { pour: number; element: number }[] {
  const own = new Set<string>(footing.pieces);
  const held = new Set<string>(own);
  for (let grown = true; grown; ) {
    grown = false;
    for (const piece of build.pieces) {
      if (held.has(piece.id) || !piece.heldBy.some((set) => set.some((id) => held.has(id)))) continue;
      held.add(piece.id);
      grown = true;
    }
  }
  return build.pours.flatMap((pour, p) =>
    pour.elements.flatMap((element, e) =>
      element !== footing && element.pieces.some((id) => held.has(id) && !own.has(id)) ? [{ pour: p, element: e }] : [],
    ),
  );
}

/** Findings of every footing of a pour. */
export function footingFindings(build: Build, p: number): Finding[] {
  const pour = build.pours[p] as Pour;
  return pour.elements.flatMap((element, e) => (element.shape.kind === "footing" ? (footingLoad(build, p, e)?.findings ?? []) : []));
}
