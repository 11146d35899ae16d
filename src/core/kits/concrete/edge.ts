import type { Making } from "../making";

/** Dressed widths of boards by trade size, mm (lumber-sizes of the concrete room). */
const boards = [
  ["2x4", 88.9],
  ["2x6", 139.7],
  ["2x8", 184.15],
  ["2x10", 234.95],
  ["2x12", 285.75],
] as const;

/** Widths of what a European yard has in their place (lumber-sizes). */
const metricBoards = [
  ["45x95", 95],
  ["45x145", 145],
  ["45x195", 195],
  ["45x220", 220],
  ["45x245", 245],
] as const;

/** Fresh concrete as water of its weight: 150 lb/ft3, 23.6 kN/m3, full head. */
const weight_kN_m3 = 23.6;
/** A steel stake driven half its length, by the seller's sheet; with a kicker behind it, three times as much (common practice, no source). */
const stake = { us: { carries: "300 lb", kN: 1.33 }, metric: { carries: "1.3 kN", kN: 1.3 } };
const kicked = { us: { carries: "900 lb", kN: 4 }, metric: { carries: "4 kN", kN: 4 } };
const highWithout_mm = 310;

/**
 * Boards on stakes along an edge so high: the size that covers it (two on each other over the widest), stakes so close that each takes the head between its neighbours and the lowest
 * board spans no more than it may.
 */
export function edgeForm(making: Making, high_mm: number, salvaged = false): object {
  const sizes: readonly (readonly [string, number])[] = making.either<readonly (readonly [string, number])[]>(boards, metricBoards);
  const size = sizes.find(([, wide]) => wide >= high_mm - 20)?.[0] ?? making.either("2x12", "45x245");
  const { us, metric } = high_mm > highWithout_mm ? kicked : stake;
  const by = making.either(us, metric);
  const thrust_kN_m = (weight_kN_m3 * (high_mm / 1000) ** 2) / 2;
  const byStake_mm = (by.kN / thrust_kN_m) * 1000;
  // The lowest board under full head, 1.5 in thick: bending of the weakest salvaged lumber rules, about 24 in at 300 mm and less in proportion to the root of the head.
  const byBoard_mm = (salvaged ? 430 : 560) * Math.sqrt(300 / Math.max(high_mm, 60));
  const grid_mm = making.either(25.4, 10);
  const least_mm = making.either(101.6, 100);
  const spacing_mm = Math.max(least_mm, Math.floor(Math.min(byStake_mm, byBoard_mm, 914) / grid_mm) * grid_mm);
  return {
    kind: "edge",
    boards: salvaged ? { size, salvaged: true } : { size, ...making.either<object>({ grade: "SPF No 2" }, {}) },
    stakes: {
      spacing: making.mm(spacing_mm),
      by: {
        name: high_mm > highWithout_mm ? "steel stake with a kicker" : "steel stake, driven half its length",
        carries: by.carries,
        from: "own guess",
      },
    },
  };
}
