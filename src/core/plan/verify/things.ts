import type { Case, Fault } from "./fault";

/** Equipment, stock, room and places taken alone, counted at every instant at which something is taken. */
export function checkThings(c: Case, worked: readonly (readonly [number, number])[][]): Fault[] {
  const { build, start, finish } = c;
  const out: Fault[] = [];
  const instants = [...new Set([0, ...start, ...worked.flat().map(([a]) => a)])];
  const during = (s: number, t: number): boolean => start[s]! <= t && t < finish[s]!;
  const atWork = (s: number, t: number): boolean => worked[s]!.some(([a, b]) => a <= t && t < b);
  const arrived = (id: string, t: number): number => {
    let total = 0;
    build.deliveries.forEach((d, i) => {
      for (const b of d.brings) if (b.of === id && c.arrives[i]! <= t) total += b.number;
    });
    return total;
  };
  const outWithPieces = (id: string, t: number): number => {
    let total = 0;
    for (const p of build.pieces) {
      for (const use of p.uses) {
        if (use.of !== id || (p.up < 0 && !p.fromStart) || (p.up >= 0 && start[p.up]! > t)) continue;
        const back = p.goesAfter === null && p.down >= 0 && finish[p.down]! <= t;
        total += back ? Math.min(use.loss, use.number) : use.number;
      }
    }
    return total;
  };
  for (const t of instants) {
    for (const stock of build.stock)
      if (stock.inHand + arrived(stock.id, t) < outWithPieces(stock.id, t)) out.push({ rule: "stock", of: stock.id, at: t });
    for (const e of build.equipment) {
      let used = outWithPieces(e.id, t);
      build.steps.forEach((step, s) => {
        if (during(s, t)) for (const q of step.equipment) if (q.of === e.id) used += q.number;
      });
      if (used > e.number) out.push({ rule: "equipment", of: e.id, at: t });
    }
    build.places.forEach((place) => {
      if (place.room === null) return;
      const inside = build.steps.flatMap((_, s) => (atWork(s, t) && worksIn(c, s).includes(place.id) ? [s] : []));
      const people = inside.reduce((sum, s) => sum + peopleIn(c, s), 0);
      // One step that is too many by itself is a finding of its own.
      if (inside.length > 1 && people > place.room) out.push({ rule: "room", place: place.id, at: t });
    });
    build.steps.forEach((step, s) => {
      if (step.alone.length === 0 || !during(s, t)) return;
      const taken = new Set(step.alone.flatMap((id) => below(c, id)));
      build.steps.forEach((other, o) => {
        if (o === s || !(atWork(o, t) || (during(o, t) && other.alone.some((id) => taken.has(id))))) return;
        if (worksIn(c, o).some((id) => taken.has(id))) out.push({ rule: "alone", step: step.id, other: other.id, at: t });
      });
    });
  }
  return out;
}

function hands(c: Case, s: number): number {
  return c.build.steps[s]!.hands.reduce((total, h) => total + h.number, 0);
}

/** Reached as a person, and the place it is drawn in unless it only reaches into that one. */
function worksIn(c: Case, s: number): string[] {
  const step = c.build.steps[s]!;
  const reached = step.reaches.flatMap((r) => r.any);
  const places = new Set<string>(reached.filter((r) => r.need.kind === "person").map((r) => r.place));
  if (step.place !== null && !reached.some((r) => r.place === step.place)) places.add(step.place);
  return [...places];
}

/** The most of a step's people that can be in one of its places when each of the others that it asks for has somebody too. */
function peopleIn(c: Case, s: number): number {
  const { reaches, place } = c.build.steps[s]!;
  const asked = reaches.map((r) => r.any.filter((a) => a.need.kind === "person").map((a) => a.place as string));
  if (place !== null && reaches.every((r) => r.any.every((a) => a.place !== place))) asked.push([place]);
  const same = (a: readonly string[], b: readonly string[]): boolean => a.every((x) => b.includes(x)) && b.every((x) => a.includes(x));
  const groups = asked.filter((g, i) => g.length > 0 && asked.findIndex((h) => same(g, h)) === i).length;
  return Math.max(1, hands(c, s) - groups + 1);
}

/** A place and all that lies below it; one that lies below itself is there once. */
function below(c: Case, id: string, seen: Set<string> = new Set()): string[] {
  if (seen.has(id)) return [];
  seen.add(id);
  return [id, ...c.build.places[c.build.at.place.get(id)!]!.below.flatMap((b) => below(c, b, seen))];
}
