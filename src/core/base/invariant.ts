/** Thrown only where our own code is wrong. Whatever a builder or a file can cause is a Finding. */
export class InvariantError extends Error {
  override readonly name = "InvariantError";
}

/** Throws an `InvariantError` unless `condition` holds. */
export function invariant(condition: unknown, what: string): asserts condition {
  if (!condition) throw new InvariantError(what);
}

/** The value, which our own code has made sure is there. */
export function present<T>(value: T | null | undefined, what: string): T {
  invariant(value !== null && value !== undefined, what);
  return value;
}
