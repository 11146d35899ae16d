/** Several numbers that are never passed, packed in words of 32 bits: each in a field with one bit to spare, which shows when it would be passed. */
export interface Packed {
  readonly words: number;
  /** By word: the spare bits, and all there is with the spare bits set. */
  readonly guard: Int32Array;
  readonly full: Int32Array;
  /** `words` a job. */
  readonly demand: Int32Array;
}

/** `level` by capacity; `asked` by job: what it takes of each. No level may pass 2^30. */
export function pack(level: readonly number[], asked: readonly Int32Array[]): Packed {
  const place: { word: number; shift: number; bits: number }[] = [];
  let words = 1;
  let used = 0;
  for (const number of level) {
    const bits = 33 - Math.clz32(number);
    if (used + bits > 32) {
      words++;
      used = 0;
    }
    place.push({ word: words - 1, shift: used, bits });
    used += bits;
  }
  const guard = new Int32Array(words);
  const full = new Int32Array(words);
  const demand = new Int32Array(words * asked.length);
  place.forEach(({ word, shift, bits }, r) => {
    guard[word]! |= 1 << (shift + bits - 1);
    full[word]! |= (1 << (shift + bits - 1)) | (level[r]! << shift);
    asked.forEach((numbers, j) => {
      demand[words * j + word]! |= numbers[r]! << shift;
    });
  });
  return { words, guard, full, demand };
}
