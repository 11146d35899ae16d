import type { Plan } from "../plan";
import type { Case, Fault } from "./fault";
import { goneFrom, putFrom, servesUntil, stoodFrom } from "./reach";

/** The table of what stands and what is usable, asked again in the middle of every stretch in which nothing changes. */
export function checkTable(c: Case, plan: Plan): Fault[] {
  const out: Fault[] = [];
  const marks = [...new Set([0, ...c.start, ...c.finish, ...plan.stands.pieces.flatMap((p) => [p.up, p.stands, p.gone])])];
  const times = marks.filter((t) => t >= 0 && t <= plan.finish).sort((a, b) => a - b);
  for (const t of times) {
    c.build.places.forEach((place, q) => {
      const said = plan.stands.places[q]!.findLast((state) => state.from <= t);
      const filled = c.build.pieces.some((p, i) => p.fills.includes(place.id) && putFrom(c, i) <= t && t < goneFrom(c, i));
      const usable = filled ? [] : place.ways.filter((w) => usableAt(c, place.id, w.id, t, null)).map((w) => w.full);
      const state = filled ? "filled" : usable.length > 0 ? "open" : "closed";
      if (said?.state !== state || said.usableWays.join() !== usable.join()) out.push({ rule: "table", place: place.id, at: t });
    });
  }
  if (plan.finish !== Math.max(0, ...c.finish)) out.push({ rule: "finish", at: plan.finish });
  return out;
}

/** `walk`: the places gone through from the outer place on, which do not vouch for themselves; null for the way that is asked about. */
function usableAt(c: Case, place: string, way: string, t: number, walk: readonly string[] | null): boolean {
  if (walk?.includes(place)) return false;
  const named = (refs: readonly { place: string; way: string }[]): boolean => refs.some((r) => r.place === place && r.way === way);
  const { build } = c;
  for (const [p, piece] of build.pieces.entries()) {
    const inTheWay = putFrom(c, p) <= t && t < goneFrom(c, p);
    if ((named(piece.closes) || piece.fills.some((id) => id === place)) && inTheWay) return false;
    if (named(piece.makes) && !(stoodFrom(c, p) <= t && t < servesUntil(c, p))) return false;
  }
  const { through } = build.places[build.at.place.get(place)!]!.ways.find((w) => w.id === way)!;
  if (through === null) return true;
  const outer = build.places[build.at.place.get(through.place)!]!;
  return outer.ways.some((w) => usableAt(c, outer.id, w.id, t, walk === null ? [] : [...walk, place]));
}
