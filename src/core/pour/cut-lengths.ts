/**
 * Pieces out of stock lengths. For each stock length pieces go longest first into the first length with room (first fit decreasing, at most 11/9 of the fewest;
 * Johnson 1973, from memory), each length is then bought as short as it may be, and of all stock lengths the one with the least lumber stays.
 */
export interface Piece {
  readonly long_mm: number;
  readonly number: number;
}

export interface StockLength {
  readonly long_mm: number;
  readonly number: number;
}

/** Width of a saw cut, mm. */
const kerf_mm = 3;

/** Stock to buy, shortest first; `tooLong`: the pieces no stock length reaches. */
export function cutLengths(
  pieces: readonly Piece[],
  stock_mm: readonly number[],
): { readonly stock: readonly StockLength[]; readonly tooLong: readonly Piece[] } {
  const longest = Math.max(...stock_mm);
  const tooLong = pieces.filter((p) => p.long_mm > longest + 0.5);
  const singles = pieces
    .filter((p) => p.long_mm <= longest + 0.5)
    .flatMap((p) => Array.from({ length: p.number }, () => p.long_mm))
    .sort((a, b) => b - a);
  if (singles.length === 0) return { stock: [], tooLong };
  const rising = [...stock_mm].sort((a, b) => a - b);
  const tried = rising
    .filter((s) => s >= (singles[0] as number) - 0.5)
    .map((s) => firstFit(singles, s).map((used) => rising.find((r) => r >= used - 0.5) as number));
  const total = (bought: readonly number[]) => bought.reduce((sum, s) => sum + s, 0);
  const best = tried.reduce((least, bought) => (total(bought) < total(least) - 1e-6 ? bought : least));
  const stock = rising.map((long_mm) => ({ long_mm, number: best.filter((b) => b === long_mm).length })).filter((s) => s.number > 0);
  return { stock, tooLong };
}

/** Length used of each piece of stock. */
function firstFit(falling: readonly number[], stock: number): number[] {
  const used: number[] = [];
  for (const piece of falling) {
    const at = used.findIndex((u) => u + kerf_mm + piece <= stock + 0.5);
    if (at < 0) used.push(piece);
    else used[at] = (used[at] as number) + kerf_mm + piece;
  }
  return used;
}

/** A length that goes on over several supports, as pieces no longer than stock. */
export function inRuns(long_mm: number, longest_mm: number, number: number): Piece[] {
  const full = Math.floor(long_mm / longest_mm + 1e-9);
  const rest = long_mm - full * longest_mm;
  const runs: Piece[] = full > 0 ? [{ long_mm: longest_mm, number: full * number }] : [];
  return rest > 1 ? [...runs, { long_mm: rest, number }] : runs;
}
