/**
 * The smallest number of single letters to insert, drop or change to make `b` from `a`, neighbours swapped counting once
 * (optimal string alignment, Damerau 1964); `Infinity` as soon as it must exceed `most`.
 */
export function distance(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return Number.POSITIVE_INFINITY;
  let older: number[] = [];
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    let best = i;
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let cost = Math.min((row[j - 1] as number) + (same ? 0 : 1), (row[j] as number) + 1, (next[j - 1] as number) + 1);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) cost = Math.min(cost, (older[j - 2] as number) + 1);
      next.push(cost);
      if (cost < best) best = cost;
    }
    if (best > most) return Number.POSITIVE_INFINITY;
    older = row;
    row = next;
  }
  const last = row[b.length] as number;
  return last <= most ? last : Number.POSITIVE_INFINITY;
}

/** The one of `known` that `word` was most likely meant to be (a third of its letters wrong at most, three at most), or null. */
export function nearest(word: string, known: Iterable<string>): string | null {
  let most = Math.min(3, Math.max(1, Math.floor(word.length / 3)));
  let found: string | null = null;
  for (const candidate of known) {
    const far = distance(word, candidate, most);
    if (far === Number.POSITIVE_INFINITY) continue;
    if (found === null || far < distance(word, found, most)) found = candidate;
    most = Math.min(most, far);
  }
  return found;
}
