/**
 * Keeps what was made of a build and its plan as long as these are there. Both never change, so that what is made of them alone is made once, however often
 * the sheet is drawn.
 */
export function remembered<A extends object, B extends object, T>(make: (a: A, b: B) => T): (a: A, b: B) => T {
  const known = new WeakMap<A, WeakMap<B, T>>();
  return (a, b) => {
    const ofA = known.get(a) ?? new WeakMap<B, T>();
    known.set(a, ofA);
    const made = ofA.get(b) ?? make(a, b);
    ofA.set(b, made);
    return made;
  };
}

/** Keeps what was made last: of the same, however newly written, it is the same object again. Give it what is small to compare, or the same object. */
export function lastOf<A, T extends object>(make: (from: A) => T): (from: A) => T {
  let last: { readonly from: A; readonly made: T } | null = null;
  return (from) => {
    if (last === null || !equal(last.from, from)) last = { from, made: make(from) };
    return last.made;
  };
}

/** Equal in every field and member, however deep. What is the same object is not looked into. */
function equal(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return false;
  if (Array.isArray(a)) return Array.isArray(b) && a.length === b.length && a.every((one, index) => equal(one, b[index]));
  const [left, right] = [a as Record<string, unknown>, b as Record<string, unknown>];
  const keys = Object.keys(left);
  return keys.length === Object.keys(right).length && keys.every((key) => equal(left[key], right[key]));
}

/** As `remembered`, for what is made of a word or a number; what it is kept for keeps the function. */
export function each<K, T>(make: (key: K) => T): (key: K) => T {
  const known = new Map<K, T>();
  return (key) => {
    const before = known.get(key);
    if (before !== undefined || known.has(key)) return before as T;
    const made = make(key);
    known.set(key, made);
    return made;
  };
}
