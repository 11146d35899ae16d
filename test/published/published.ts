/** One published figure beside what we compute. `mark`: read in print, read in a third party's copy, computed from the stated formula, or from memory. */
export interface Published {
  readonly id: string;
  readonly source: string;
  readonly mark: "read" | "read-2nd" | "computed" | "from memory" | "common practice, no source";
  readonly expected: number;
  /** Half of the last printed digit, unless the source is coarser. */
  readonly within: number;
  readonly actual: () => number;
}

export function table(
  prefix: string,
  source: string,
  mark: Published["mark"],
  within: number,
  rows: readonly (readonly [name: string, expected: number, actual: () => number, within?: number])[],
): Published[] {
  return rows.map(([name, expected, actual, own]) => ({ id: `${prefix}/${name}`, source, mark, expected, within: own ?? within, actual }));
}

/** The value of a checked figure; a refusal is a test failure that says why. */
export function value<T>(checked: { readonly value: T } | { readonly refused: readonly unknown[] }): T {
  if ("value" in checked) return checked.value;
  throw new Error(`refused: ${JSON.stringify(checked.refused)}`);
}
