import type { Case, Fault } from "./fault";
import { gets, goneFrom, servesUntil, stoodFrom } from "./reach";

/**
 * Inspections that stop the work. They see each of their places; nothing fills it before they are done; whoever works there is done before they begin, or
 * goes on there while the place is closed. Setting what closes it, with nobody in it and no machine, is not work there; placing what fills it never is.
 */
export function checkHoldPoints(c: Case): Fault[] {
  const { build } = c;
  const out: Fault[] = [];
  build.steps.forEach((inspection, h) => {
    for (const place of inspection.holdPoint?.places ?? []) {
      const bad = (at: number, more: Partial<Fault> = {}): void =>
        void out.push({ rule: "hold-point", step: inspection.id, place, at, ...more });
      // Where it goes to the place and nowhere else, that is a reach like any other.
      const goesThere = inspection.reaches.some((r) => r.any.every((a) => a.place === place));
      if (!goesThere && !gets(c, h, place, { kind: "sight" }, [])) bad(c.start[h]!);
      build.steps.forEach((other, s) => {
        if (s === h || !worksAt(c, s, place) || c.finish[s]! <= c.start[h]! || closedDuring(c, place, s)) return;
        bad(c.start[s]!, { other: other.id });
      });
      for (const p of build.pieces)
        if (p.fills.includes(place) && p.up >= 0 && c.start[p.up]! < c.finish[h]!) bad(c.start[p.up]!, { piece: p.id });
    }
  });
  return out;
}

function worksAt(c: Case, s: number, place: string): boolean {
  const { build } = c;
  const step = build.steps[s]!;
  const off = step.takes.flatMap((id) => build.pieces[build.at.piece.get(id)!]!.off);
  const needs = [...step.reaches, ...off].flatMap((r) => r.any.filter((a) => a.place === place).map((a) => a.need.kind));
  if (!needs.some((need) => need !== "sight")) return false;
  const puts = build.pieces.filter((p) => p.up === s);
  if (puts.some((p) => p.fills.some((id) => id === place))) return false;
  const inside = needs.includes("person") || needs.includes("machine");
  return inside || !puts.some((p) => p.closes.some((r) => r.place === place));
}

/**
 * Whether a place is closed from the start of a step to its finish: filled, or every way of it closed by a piece that is up before and comes down after, or
 * gone with a piece that made it. A piece that goes by itself closes nothing that one could rely on.
 */
function closedDuring(c: Case, place: string, s: number): boolean {
  const { build } = c;
  const [from, to] = [c.start[s]!, c.finish[s]!];
  const throughout = (p: number): boolean => {
    const { up, down, goesAfter } = build.pieces[p]!;
    return goesAfter === null && up !== s && down !== s && stoodFrom(c, p) <= from && to <= servesUntil(c, p);
  };
  if (build.pieces.some((piece, p) => piece.fills.some((id) => id === place) && throughout(p))) return true;
  const { ways } = build.places[build.at.place.get(place)!]!;
  const closed = ways.map((way) =>
    build.pieces.some((piece, p) => {
      const named = (refs: readonly { place: string; way: string }[]): boolean => refs.some((r) => r.place === place && r.way === way.id);
      return (named(piece.closes) && throughout(p)) || (named(piece.makes) && piece.down !== s && goneFrom(c, p) <= from);
    }),
  );
  return closed.length > 0 && closed.every((way) => way);
}
