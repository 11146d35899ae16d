import { type ElapsedMinute, never } from "../base";
import type { Build } from "../build";
import { clocksOf } from "../clock";
import { cureSheet, siteAir } from "../pour";
import type { Plan } from "./plan";
import { stepTimes } from "./pour-dates";

/**
 * What is left on the site when everybody goes home, and what somebody has to do about it: an open hole, bars that stand out, forms open to the sky, a
 * scaffold or a ladder, shores with concrete on them, concrete to be kept wet, fresh concrete before a frost, a visit that a wait needs.
 */
export type Left =
  | { readonly kind: "hole" | "scaffold" | "shores" | "forms"; readonly pieces: readonly number[] }
  | { readonly kind: "bars"; readonly solid: number }
  | { readonly kind: "frost"; readonly step: number; readonly low_C: number }
  | { readonly kind: "wet"; readonly step: number; readonly until: ElapsedMinute; readonly visits: number }
  | { readonly kind: "visit"; readonly visit: number };

/** Concrete is kept from frost until it has about 500 psi, a few days (ACI 306R, from memory). */
const tender_min = 7 * 1440;

/**
 * @param from when the last of the day's work is done
 * @param until when somebody is here again; null: never by the plan
 */
export function leftBehind(build: Build, plan: Plan, from: ElapsedMinute, until: ElapsedMinute | null): readonly Left[] {
  const stands = (p: number): boolean => {
    const span = plan.stands.pieces[p];
    return span !== undefined && span.stands <= from && from < span.gone;
  };
  const standing = (sort: string): number[] => build.pieces.flatMap((piece, p) => (piece.sort === sort && stands(p) ? [p] : []));
  const filled = (id: string): boolean => {
    const states = plan.stands.places[build.at.place.get(id as never) ?? -1] ?? [];
    return states.findLast((state) => state.from <= from)?.state === "filled";
  };
  const out: Left[] = [];
  const holes = standing("hole");
  if (holes.length > 0) out.push({ kind: "hole", pieces: holes });
  build.solids.forEach((solid, at) => {
    const done = (id: string): boolean => plan.steps[build.at.step.get(id as never) ?? -1]!.finish <= from;
    const open = solid.pour === null || !done(solid.pour);
    if (solid.bars.length > 0 && solid.bars.every(done) && open) out.push({ kind: "bars", solid: at });
  });
  const forms = standing("form").filter((p) => {
    const { closes } = build.pieces[p]!;
    return closes.length > 0 && closes.every(({ place }) => !filled(place));
  });
  if (forms.length > 0) out.push({ kind: "forms", pieces: forms });
  const shores = standing("shore").filter((p) => carries(build, plan, p, from));
  if (shores.length > 0) out.push({ kind: "shores", pieces: shores });
  const scaffold = standing("scaffold");
  if (scaffold.length > 0) out.push({ kind: "scaffold", pieces: scaffold });
  out.push(...wet(build, plan, from));
  out.push(...frosts(build, plan, from, until));
  plan.visits.forEach((visit, at) => {
    if (visit.at >= from && (until === null || visit.at < until)) out.push({ kind: "visit", visit: at });
  });
  return out;
}

/** Whether concrete stands on it, directly or through others. */
function carries(build: Build, plan: Plan, shore: number, t: number): boolean {
  const seen = new Set([shore]);
  const todo = [shore];
  for (let p = todo.pop(); p !== undefined; p = todo.pop()) {
    const { id } = build.pieces[p]!;
    for (const [q, piece] of build.pieces.entries()) {
      const span = plan.stands.pieces[q];
      if (seen.has(q) || span === undefined || t < span.stands || t >= span.gone) continue;
      if (!piece.heldBy.some((set) => set.includes(id))) continue;
      if (piece.sort === "concrete") return true;
      seen.add(q);
      todo.push(q);
    }
  }
  return false;
}

/** Pours that are still to be kept wet or covered. */
function wet(build: Build, plan: Plan, from: number): Left[] {
  const dates = stepTimes(plan);
  return build.pours.flatMap(({ step, cure }, p): Left[] => {
    const s = build.at.step.get(step as never) ?? -1;
    const placed = plan.steps[s]?.finish ?? never;
    if (dates === null || placed > from || cure.how === "compound") return [];
    const { until, visits } = cureSheet(build, p, dates).wet;
    return until > from ? [{ kind: "wet", step: s, until, visits }] : [];
  });
}

/** Pours of the last days, when a night before somebody is back is expected to freeze. */
function frosts(build: Build, plan: Plan, from: number, until: number | null): Left[] {
  const air = siteAir(build);
  const { time } = clocksOf(build);
  return build.steps.flatMap((step, s): Left[] => {
    const placed = plan.steps[s]!.finish;
    if (step.pour === null || placed > from || from - placed > tender_min || placed >= never) return [];
    const end = Math.min(placed + tender_min, until ?? Number.POSITIVE_INFINITY);
    let low_C = Number.POSITIVE_INFINITY;
    for (let day = time.dayOf(from); time.startOf(day) < end; day++) {
      const given = build.site.days_C.some(({ date }) => date === time.dateOf(day));
      if (air.known || given) low_C = Math.min(low_C, air.day(day).low_C);
    }
    return low_C <= 0 ? [{ kind: "frost", step: s, low_C }] : [];
  });
}
