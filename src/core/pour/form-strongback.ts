import type { WallFormSpec } from "../build";
import { type Diagram, forcedMember, judged, kneeOf_ft, type MemberCheck, tension, thrust_lb_ft } from "../concrete";
import type { Tally } from "./form-ask";
import { atBrace } from "./form-brace";
import { type Head, thrust_kN_m, thrustAt_mm } from "./form-head";
import { sags } from "./form-stuff";
import { feet, kNOfPounds, pounds, poundsPerFoot } from "./form-units";
import { doubtsOfFastener } from "./guess";
import { member } from "./members";

/** Moment of the pressure above a level so many feet down about that level, lb ft for each foot of width. */
function momentAbove(d: Diagram, down: number): number {
  const knee = kneeOf_ft(d, down);
  const below = down - knee;
  const head = (knee ** 2 * down) / 2 - knee ** 3 / 3 + (d.over_ft ?? 0) * (knee * down - knee ** 2 / 2);
  return d.weight_pcf * head + (d.most_psf * below ** 2) / 2;
}

/** Depth at which the pressure from the top adds up to a force, ft. */
function depthOf(d: Diagram, force: number): number {
  const over = d.over_ft ?? 0;
  const knee = kneeOf_ft(d, d.height_ft);
  const head = d.weight_pcf * ((knee * knee) / 2 + over * knee);
  return force <= head ? Math.sqrt(over * over + (2 * force) / d.weight_pcf) - over : knee + (force - head) / d.most_psf;
}

/**
 * An upright on two supports, its foot and a point so far under the top, that takes the whole diagram of its width: the greatest moment between them or over the
 * upper one, and shear. Statics, closed form. Sag as of a triangle of the same sum, 0.01304 W l³ / (E I), which an even load does not exceed.
 */
function strongbackForces(d: Diagram, under: number) {
  const span = d.height_ft - under;
  const whole = thrust_lb_ft(d, 0, d.height_ft);
  const upper = momentAbove(d, d.height_ft) / span;
  const hogging = momentAbove(d, under);
  const none = Math.max(under, Math.min(d.height_ft, depthOf(d, upper)));
  const between = upper * (none - under) - momentAbove(d, none);
  const overhang = thrust_lb_ft(d, 0, under);
  return {
    upper,
    foot: whole - upper,
    moment: Math.max(hogging, between),
    shear: Math.max(whole - upper, upper - overhang, overhang),
    whole,
    span,
  };
}

/** Opposite each other, tied over the top and at the foot; or behind a one-sided form, held by a brace and at the foot. */
export function judgeStrongbacks(tally: Tally, form: WallFormSpec, head: Head, oneSided: boolean): void {
  const backs = form.strongbacks as NonNullable<WallFormSpec["strongbacks"]>;
  const stuff = tally.stuff("strongbacks", backs.stuff, "beam", false);
  if (stuff === null) return;
  const braced = oneSided && form.brace !== null;
  const under = braced && form.brace !== null ? Math.max(0, head.high_mm - form.brace.rise_mm) : 0;
  const forces = strongbackForces(head.diagram, feet(under));
  const wide = backs.spacing_mm / 304.8;
  const { section, pieces, allowed } = stuff;
  const stiff = (allowed.elasticity * section.wide_in * section.deep_in ** 3 * pieces) / 12;
  const span = forces.span * 12;
  const sagging = (0.01304 * forces.whole * wide * span ** 3) / stiff;
  const checks: MemberCheck[] = [
    ...forcedMember(section, pieces, allowed, forces.moment * wide * 12, forces.shear * wide),
    ...sags.map((sag): MemberCheck => {
      const may = sag.kind === "ratio" ? span / sag.of : sag.inches;
      return { kind: "sag", of100: (100 * sagging) / may, span_in: null };
    }),
    ...(braced ? [] : [tension(forces.upper * wide, pounds(backs.top.carries_kN))]),
    tension(footOf(head, form, oneSided, forces.foot) * wide, pounds(backs.foot.carries_kN)),
  ];
  tally.add(
    member({
      part: "strongbacks",
      stuff: stuff.label,
      pieces: stuff.pieces,
      result: judged(checks),
      span_mm: head.high_mm - under,
      load: { value: kNOfPounds(forces.whole * wide), unit: "kN" },
      documents: ["NDS"],
      doubts: [...stuff.doubts, ...doubtsOfFastener(backs.top), ...doubtsOfFastener(backs.foot)],
      source: backs.stuff.from,
    }),
  );
}

/** What the brace leaves to the foot, either way. */
function footOf(head: Head, form: WallFormSpec, oneSided: boolean, foot: number): number {
  if (!oneSided || form.brace === null) return foot;
  return Math.abs(poundsPerFoot(thrust_kN_m(head) - atBrace(thrust_kN_m(head), thrustAt_mm(head), form.brace)));
}
