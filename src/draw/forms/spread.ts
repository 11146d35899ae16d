/** A label that would like to stand with its middle at `y`, so high. */
export interface Wish {
  readonly y: number;
  readonly high: number;
}

/**
 * Middles of labels in one column, in the order of their wishes, none over another and none beyond the ends; as near to their wishes as that allows.
 * Those that do not fit between the ends run out at the lower one.
 */
export function spread(wishes: readonly Wish[], top: number, bottom: number): number[] {
  const order = wishes.map((_, index) => index).sort((a, b) => (wishes[a] as Wish).y - (wishes[b] as Wish).y || a - b);
  const middles = new Array<number>(wishes.length).fill(0);
  let edge = top;
  for (const index of order) {
    const { y, high } = wishes[index] as Wish;
    middles[index] = Math.max(edge + high / 2, y);
    edge = (middles[index] as number) + high / 2;
  }
  let floor = Math.max(bottom, top + wishes.reduce((sum, { high }) => sum + high, 0));
  for (const index of [...order].reverse()) {
    const { high } = wishes[index] as Wish;
    middles[index] = Math.min(middles[index] as number, floor - high / 2);
    floor = (middles[index] as number) - high / 2;
  }
  return middles;
}
