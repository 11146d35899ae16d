/** Largest k with list[k] <= t in a list that never falls; -1 before the first. */
export function lastAtMost(list: Int32Array, t: number): number {
  let low = 0;
  let high = list.length;
  while (low < high) {
    const mid = (low + high) >> 1;
    if (list[mid]! <= t) low = mid + 1;
    else high = mid;
  }
  return low - 1;
}
