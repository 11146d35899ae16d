import { type ElapsedMinute, never } from "../base";
import type { Build } from "../build";
import type { Bought, PourDay } from "./result";
import type { PourDates } from "./shopping";

/** So many of a stock go out from an instant and, less what is lost, come back at another. */
interface Out {
  readonly number: number;
  readonly loss: number;
  readonly from: ElapsedMinute;
  readonly to: ElapsedMinute;
  readonly for: string;
}

/** One line for each stock that pieces or sacks of a pour use. Without dates everything is out at once. */
export function stockLines(build: Build, days: readonly (PourDay | null)[], dates: PourDates | null): Bought[] {
  return build.stock.flatMap((stock): Bought[] => {
    const outs = [...byPieces(build, stock.id, dates), ...bySacks(build, stock.id, days, dates)];
    if (outs.length === 0) return [];
    const ordered = build.deliveries
      .filter((d) => d.ordered)
      .flatMap((d) => d.brings)
      .reduce((sum, b) => sum + (b.of === stock.id ? b.number : 0), 0);
    const needed = outs.reduce((sum, o) => sum + o.number, 0);
    const { most, shortFrom } = peak(outs, stock.inHand + ordered);
    const sacks = build.pours.some((pour) => pour.sacks === stock.id);
    return [
      {
        what: sacks ? "cement sacks" : stock.unit === "sheet" ? "plywood" : "other",
        name: stock.name === "" ? stock.id : stock.name,
        long_mm: null,
        needed,
        inHand: stock.inHand,
        ordered,
        back: needed - most,
        toBuy: Math.max(0, most - stock.inHand - ordered),
        unit: stock.unit,
        neededBy: dates === null ? null : (shortFrom ?? earliest(outs)),
        orderBy: most > stock.inHand + ordered ? orderBy(build, stock.id, dates) : null,
        for: [...new Set(outs.map((o) => o.for))],
      },
    ];
  });
}

const earliest = (outs: readonly Out[]): ElapsedMinute => Math.min(...outs.map((o) => o.from)) as ElapsedMinute;

function byPieces(build: Build, stock: string, dates: PourDates | null): Out[] {
  const placed = build.pieces.map((piece, i) => ({ piece, i })).filter(({ i }) => (dates?.pieces[i]?.up ?? 0) < never);
  return placed.flatMap(({ piece, i }) =>
    piece.uses
      .filter((use) => use.of === stock)
      .map((use) => {
        const span = dates?.pieces[i];
        return {
          number: use.number,
          loss: use.loss,
          from: span?.up ?? (0 as ElapsedMinute),
          to: span?.gone ?? (Number.POSITIVE_INFINITY as ElapsedMinute),
          for: piece.name === "" ? piece.id : piece.name,
        };
      }),
  );
}

function bySacks(build: Build, stock: string, days: readonly (PourDay | null)[], dates: PourDates | null): Out[] {
  return build.pours.flatMap((pour, p) => {
    const sacks = days[p]?.bags ?? days[p]?.sacks ?? null;
    if (pour.sacks !== stock || sacks === null) return [];
    const from = dates?.starts[build.at.step.get(pour.step) ?? -1] ?? (0 as ElapsedMinute);
    return [{ number: sacks, loss: sacks, from, to: from, for: pour.name }];
  });
}

/** The most that is out or lost at any instant, and from when it is more than there is. What comes back at an instant can go out at it. */
function peak(outs: readonly Out[], there: number): { most: number; shortFrom: ElapsedMinute | null } {
  const changes = outs.flatMap((o): [at: ElapsedMinute, by: number][] => [
    [o.from, o.number],
    [o.to, o.loss - o.number],
  ]);
  changes.sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  let [now, most] = [0, 0];
  let shortFrom: ElapsedMinute | null = null;
  for (const [at, by] of changes) {
    now += by;
    most = Math.max(most, now);
    if (now > there && shortFrom === null) shortFrom = at;
  }
  return { most, shortFrom };
}

function orderBy(build: Build, stock: string, dates: PourDates | null): ElapsedMinute | null {
  if (dates === null) return null;
  const by = build.deliveries.flatMap((d, i) => {
    const at = dates.orderBy[i];
    return !d.ordered && at !== null && at !== undefined && d.brings.some((b) => b.of === stock) ? [at] : [];
  });
  return by.length === 0 ? null : (Math.min(...by) as ElapsedMinute);
}
