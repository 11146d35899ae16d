let last = 0;

/** A number that no other run of this page has: the worker goes on with the run it knows, and starts afresh for another. */
export function newRun(): number {
  last += 1;
  return last;
}
