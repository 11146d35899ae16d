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

/** The same for what is made of a word or a number; what it is kept for keeps the function. */
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
