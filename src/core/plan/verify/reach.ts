import type { ElapsedMinute } from "../../base";
import { type Amount, type Passage, pourOf, type Way } from "../../build";
import type { Case, Fault } from "./fault";

/** Everything a step must get to, lean on and keep held, looked at over the whole of its dates. */
export function checkReach(c: Case): Fault[] {
  const out: Fault[] = [];
  c.build.steps.forEach((step, s) => {
    const at = c.start[s]!;
    for (const reach of step.reaches) {
      if (!reach.any.some((r) => gets(c, s, r.place, r.need, [])))
        out.push({ rule: "reach", step: step.id, place: reach.any[0]!.place, at });
    }
    for (const id of step.takes) {
      for (const reach of c.build.pieces[c.build.at.piece.get(id)!]!.off) {
        if (!reach.any.some((r) => gets(c, s, r.place, r.need, []))) out.push({ rule: "off", step: step.id, piece: id, at });
      }
    }
    for (const { piece, once } of step.leansOn) {
      const p = c.build.at.piece.get(piece)!;
      const ready = once === null ? stoodFrom(c, p) : since(c, p, once);
      if (c.build.pieces[p]!.up !== s && ready > at) out.push({ rule: "leans", step: step.id, piece, at });
      if (servesUntil(c, p) < c.finish[s]!) out.push({ rule: "leans", step: step.id, piece, at: c.finish[s]! });
    }
  });
  for (const p of c.build.pieces) {
    if (p.up >= 0 && p.down >= 0 && c.finish[p.up]! > c.start[p.down]!) out.push({ rule: "up-down", piece: p.id, at: c.start[p.down]! });
  }
  return out;
}

/** Whether a need gets to a place by some way during the whole of a step; places on the walk do not vouch for themselves. */
export function gets(c: Case, s: number, place: string, need: Passage, walk: readonly string[]): boolean {
  const here = `${place} ${JSON.stringify(need)}`;
  if (walk.includes(here)) return false;
  const { build } = c;
  const clear = (p: number): boolean => build.pieces[p]!.up === s || c.finish[s]! <= putFrom(c, p) || c.start[s]! >= goneFrom(c, p);
  if (build.pieces.some((piece, p) => piece.fills.some((id) => id === place) && !clear(p))) return false;
  return build.places[build.at.place.get(place)!]!.ways.some((way) => {
    if (!lets(way, need)) return false;
    const usable = build.pieces.every((piece, p) => {
      const named = (refs: readonly { place: string; way: string }[]): boolean => refs.some((r) => r.place === place && r.way === way.id);
      if (named(piece.closes) && !clear(p)) return false;
      if (!named(piece.makes)) return true;
      return (piece.up === s || stoodFrom(c, p) <= c.start[s]!) && piece.down !== s && c.finish[s]! <= servesUntil(c, p);
    });
    return usable && (way.through === null || gets(c, s, way.through.place, way.through.need, [...walk, here]));
  });
}

/** A way's own measure, from the words of the document's format. */
function lets(way: Way, need: Passage): boolean {
  const person = way.passes.includes("person") || way.passes.includes("machine");
  if (need.kind === "machine") return way.passes.includes("machine");
  if (need.kind === "unit") {
    if (!way.passes.includes("unit") && !(person && way.opening_mm !== null)) return false;
    const sides = [need.long_mm, need.wide_mm, need.thick_mm].sort((a, b) => a - b);
    const hole = way.opening_mm === null ? [sides[0]!, sides[1]!] : [way.opening_mm.wide, way.opening_mm.high].sort((a, b) => a - b);
    const goes = sides[0]! <= hole[0]! && sides[1]! <= hole[1]!;
    return goes && sides[2]! <= (way.longest_mm ?? sides[2]!) && need.mass_kg <= (way.bears_kg ?? need.mass_kg);
  }
  if (person) return true;
  if (need.kind === "arm" || need.kind === "hand") {
    const through = way.passes.includes("arm") || (need.kind === "hand" && way.passes.includes("hand"));
    return through && need.depth_mm <= (way.depth_mm ?? need.depth_mm);
  }
  return way.passes.includes(need.kind);
}

const forever = Number.POSITIVE_INFINITY;

export function putFrom(c: Case, p: number): number {
  const piece = c.build.pieces[p]!;
  return piece.up >= 0 ? c.start[piece.up]! : piece.fromStart ? -forever : forever;
}

export function stoodFrom(c: Case, p: number): number {
  const piece = c.build.pieces[p]!;
  return piece.up >= 0 ? c.finish[piece.up]! : piece.fromStart ? -forever : forever;
}

/** When a piece has an amount: strength and warm time count from their pour; what stands from the start has had every other amount before the build began. */
export function since(c: Case, p: number, amount: Amount): number {
  const stood = stoodFrom(c, p);
  const pour = pourOf(amount.on);
  if (pour !== null) return Math.max(stood, strengthAt(c, pour, amount));
  return Number.isFinite(stood) ? c.clocks.of(amount.on).advance(stood as ElapsedMinute, amount.amount) : stood;
}

/** When the concrete of a pour has a strength, or its warm time. */
export function strengthAt(c: Case, pour: string, { on, amount }: Amount): number {
  return c.clocks.of(on).advance(c.finish[c.build.at.step.get(pour)!]! as ElapsedMinute, amount);
}

/** When it goes by itself. */
function itself(c: Case, p: number): number {
  const { goesAfter } = c.build.pieces[p]!;
  return goesAfter === null ? forever : since(c, p, goesAfter);
}

export function goneFrom(c: Case, p: number): number {
  const { down } = c.build.pieces[p]!;
  return Math.min(itself(c, p), down >= 0 ? c.finish[down]! : forever);
}

export function servesUntil(c: Case, p: number): number {
  const { down, fromStart } = c.build.pieces[p]!;
  return Math.min(fromStart ? forever : itself(c, p), down >= 0 ? c.start[down]! : forever);
}
