/** The list with room for more; new members are -1. */
export function longer(old: Int32Array, length: number): Int32Array {
  const list = new Int32Array(length).fill(-1);
  list.set(old);
  return list;
}
