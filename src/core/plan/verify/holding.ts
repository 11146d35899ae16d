import type { Case, Fault } from "./fault";
import { goneFrom, putFrom, servesUntil, since, stoodFrom } from "./reach";

/** At every instant at which a piece begins to go up or to come down, everything that must be held is. */
export function checkHolding(c: Case): Fault[] {
  const { build } = c;
  const out: Fault[] = [];
  const instants = [
    ...new Set(
      build.pieces
        .flatMap((p) => [p.up, p.down])
        .filter((s) => s >= 0)
        .map((s) => c.start[s]!),
    ),
  ];
  build.pieces.forEach((piece, q) => {
    if (piece.heldBy.length === 0) return;
    const from = piece.fromStart ? firstTaken(c, q) : putFrom(c, q);
    const until = Math.min(goneFrom(c, q), servesUntil(c, q));
    for (const t of instants) if (from <= t && t < until && !heldAt(c, q, t)) out.push({ rule: "held", piece: piece.id, at: t });
  });
  return out;
}

function heldAt(c: Case, q: number, t: number): boolean {
  const piece = c.build.pieces[q]!;
  if (piece.holdsItself !== null && since(c, q, piece.holdsItself) <= t) return true;
  return piece.heldBy.some((set) =>
    set.every((id) => {
      const r = c.build.at.piece.get(id)!;
      const holder = c.build.pieces[r]!;
      // Put up by the very step that puts this one up, or that takes another holder of it away: one act.
      const together = holder.up >= 0 && (holder.up === piece.up || (handsOver(c, q, holder.up) && c.start[holder.up]! <= t));
      const there = stoodFrom(c, r) <= t || together;
      return holder.goesAfter === null && there && t < servesUntil(c, r);
    }),
  );
}

function handsOver(c: Case, q: number, step: number): boolean {
  return c.build.pieces[q]!.heldBy.some((set) => set.some((id) => c.build.pieces[c.build.at.piece.get(id)!]!.down === step));
}

/** What stands from the start is held by the ground until one of its holders is taken away. */
function firstTaken(c: Case, q: number): number {
  const holders = c.build.pieces[q]!.heldBy.flat().map((id) => c.build.pieces[c.build.at.piece.get(id)!]!.down);
  return Math.min(...holders.filter((s) => s >= 0).map((s) => c.start[s]!), Number.POSITIVE_INFINITY);
}

/** Inspections that stop the work: whoever works there is done before or comes after the place is closed; nothing fills it before. */
export function checkHoldPoints(c: Case): Fault[] {
  const { build } = c;
  const out: Fault[] = [];
  build.steps.forEach((inspection, h) => {
    for (const place of inspection.holdPoint?.places ?? []) {
      const shutBy = build.pieces.filter((p) => p.fills.includes(place) || p.closes.some((r) => r.place === place)).map((p) => p.up);
      const closed = closedFrom(c, place);
      build.steps.forEach((other, s) => {
        const works = [...other.reaches, ...other.takes.flatMap((id) => build.pieces[build.at.piece.get(id)!]!.off)];
        if (s === h || shutBy.includes(s) || !works.some((r) => r.any.some((a) => a.place === place && a.need.kind !== "sight"))) return;
        if (c.finish[s]! > c.start[h]! && c.start[s]! < closed)
          out.push({ rule: "hold-point", step: inspection.id, other: other.id, place, at: c.start[s]! });
      });
      for (const p of build.pieces) {
        if (p.fills.includes(place) && p.up >= 0 && c.start[p.up]! < c.finish[h]!)
          out.push({ rule: "hold-point", step: inspection.id, piece: p.id, place, at: c.start[p.up]! });
      }
    }
  });
  return out;
}

/** When a place has been filled, or every way of it closed once: from the end of putting up, or of taking down what made it. */
function closedFrom(c: Case, place: string): number {
  const { build } = c;
  const forever = Number.POSITIVE_INFINITY;
  const after = (s: number): number => (s >= 0 ? c.finish[s]! : forever);
  const filled = Math.min(forever, ...build.pieces.filter((p) => p.fills.some((id) => id === place)).map((p) => after(p.up)));
  const { ways } = build.places[build.at.place.get(place)!]!;
  const each = ways.map((way) => {
    const names = (refs: readonly { place: string; way: string }[]): boolean => refs.some((r) => r.place === place && r.way === way.id);
    return Math.min(
      forever,
      ...build.pieces.flatMap((p) => [...(names(p.closes) ? [after(p.up)] : []), ...(names(p.makes) ? [after(p.down)] : [])]),
    );
  });
  return Math.min(filled, ways.length === 0 ? forever : Math.max(...each));
}
