/** When the last of the first `count` jobs is done: of all, where no count is given. */
export function lastOf(finish: Int32Array, count = finish.length): number {
  let t = 0;
  for (let j = 0; j < count; j++) t = Math.max(t, finish[j]!);
  return t;
}
