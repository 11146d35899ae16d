/**
 * The numbers below `count` by a whole key each, smallest first, equal keys by number: as one number each, so that a plain sort does it. Keys times `count` must stay
 * below 2^53.
 */
export function byKey(count: number, key: (at: number) => number): Int32Array {
  const keyed = new Float64Array(count);
  for (let at = 0; at < count; at++) keyed[at] = key(at) * count + at;
  keyed.sort();
  const order = new Int32Array(count);
  for (let k = 0; k < count; k++) order[k] = keyed[k]! - Math.floor(keyed[k]! / count) * count;
  return order;
}
