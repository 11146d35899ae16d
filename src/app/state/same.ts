type Plain = object;

/** Equal in every field, one level deep; lists within are compared by their members. */
export function alike(a: Plain, b: Plain): boolean {
  const [left, right] = [a as Record<string, unknown>, b as Record<string, unknown>];
  const keys = Object.keys(left);
  return keys.length === Object.keys(right).length && keys.every((key) => alikeValues(left[key], right[key]));
}

function alikeValues(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return false;
  if (!Array.isArray(a)) return !Array.isArray(b) && alike(a, b);
  return Array.isArray(b) && a.length === b.length && a.every((value, index) => alikeValues(value, b[index]));
}

/**
 * Of things made anew at every change, those that came out as before stay the very same objects, so that whatever shows them does nothing. What has the
 * same key is taken for the same thing. Give one of these to one list.
 */
export function keepSame<T extends Plain>(keyOf: (one: T) => string): (fresh: readonly T[]) => readonly T[] {
  let known = new Map<string, T>();
  let last: readonly T[] = [];
  return (fresh) => {
    const next = new Map<string, T>();
    const kept = fresh.map((one) => {
      const key = keyOf(one);
      const before = known.get(key);
      const same = before !== undefined && (before === one || alike(before, one)) ? before : one;
      next.set(key, same);
      return same;
    });
    known = next;
    if (kept.length !== last.length || kept.some((one, index) => one !== last[index])) last = kept;
    return last;
  };
}
