import { never } from "../base";

/** When the last of the first `count` jobs is done; a job that never is does not count. */
export function lastOf(finish: Int32Array, count: number): number {
  let t = 0;
  for (let j = 0; j < count; j++) if (finish[j]! > t && finish[j]! < never) t = finish[j]!;
  return t;
}
