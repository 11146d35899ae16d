/** The published range of one input: both ends included. `unit` is what the screen shows; `source` where the range is printed. */
export interface Range {
  readonly name: string;
  readonly least: number;
  readonly most: number;
  readonly unit: string;
  readonly source: string;
}

/** An input that leaves the range its formula was published for. The figure is withheld. */
export interface OutOfRange {
  readonly outOfRange: Range;
  readonly given: number;
}

export type Checked<T> = { readonly value: T } | { readonly refused: readonly OutOfRange[] };

/** The inputs of `given` that are not finite or leave their range, in the order of `ranges`. */
export function outside<Key extends string>(ranges: Readonly<Record<Key, Range>>, given: Readonly<Record<Key, number>>): OutOfRange[] {
  const keys = Object.keys(ranges) as Key[];
  return keys.flatMap((key) => {
    const range = ranges[key];
    const value = given[key];
    return Number.isFinite(value) && value >= range.least && value <= range.most ? [] : [{ outOfRange: range, given: value }];
  });
}

/** `make()` when every input is inside its range, otherwise what is outside. */
export function checked<Key extends string, T>(
  ranges: Readonly<Record<Key, Range>>,
  given: Readonly<Record<Key, number>>,
  make: () => T,
): Checked<T> {
  const refused = outside(ranges, given);
  return refused.length > 0 ? { refused } : { value: make() };
}
