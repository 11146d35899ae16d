/** Something that takes room along a row, px. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** The least clear space between two things in one row, px. */
const clear = 10;

/** Puts each span in the first row where it has clear space on both sides, taken from left to right; answers the rows in the order given. */
export function packRows(spans: readonly Span[]): { readonly rowOf: readonly number[]; readonly count: number } {
  const order = spans.map((_, index) => index).sort((a, b) => (spans[a] as Span).from - (spans[b] as Span).from || a - b);
  const ends: number[] = [];
  const rowOf = new Array<number>(spans.length).fill(0);
  for (const index of order) {
    const span = spans[index] as Span;
    let row = ends.findIndex((end) => end + clear <= span.from);
    if (row === -1) row = ends.push(0) - 1;
    ends[row] = span.to;
    rowOf[index] = row;
  }
  return { rowOf, count: ends.length };
}

/** Rows of flags counted from the bottom: a flag's name runs above the poles of later flags, so that no pole runs through a name. */
export function packFlags(spans: readonly Span[]): { readonly rowOf: readonly number[]; readonly count: number } {
  const order = spans.map((_, index) => index).sort((a, b) => (spans[b] as Span).from - (spans[a] as Span).from || b - a);
  const rowOf = new Array<number>(spans.length).fill(0);
  let count = 0;
  const done: number[] = [];
  for (const index of order) {
    const span = spans[index] as Span;
    let row = 0;
    for (const other of done) {
      if ((spans[other] as Span).from < span.to + clear) row = Math.max(row, (rowOf[other] as number) + 1);
    }
    rowOf[index] = row;
    count = Math.max(count, row + 1);
    done.push(index);
  }
  return { rowOf, count };
}
