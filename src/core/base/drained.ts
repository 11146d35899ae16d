/** Goes through work in pieces to its end at once. */
export function drained<T>(work: Generator<unknown, T>): T {
  let next = work.next();
  while (next.done !== true) next = work.next();
  return next.value;
}
