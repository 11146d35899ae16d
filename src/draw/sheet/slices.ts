/** Work in slices: whatever runs it may stop after each and let the page draw in between. What it comes to is the same, however it is run. */
export type Slices<T> = Generator<void, T, void>;

export function atOnce<T>(slices: Slices<T>): T {
  for (;;) {
    const { done, value } = slices.next();
    if (done) return value;
  }
}
