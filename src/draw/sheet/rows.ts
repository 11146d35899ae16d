/** Something that takes room along a row, px. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** The least clear space between two things in one row, px. */
const clear = 10;

/**
 * The same for things that may take one of two spans, words after them or words before: a row is filled with what ends soonest, so that two
 * neighbours share a row, the words of one before it and of the other after it. `side`: which span each took.
 */
export function packSides(choices: readonly (readonly [Span, Span | null])[]): {
  readonly rowOf: readonly number[];
  readonly side: readonly (0 | 1)[];
  readonly count: number;
} {
  const order = choices.map((_, index) => index).sort((a, b) => choices[a]![0].from - choices[b]![0].from || a - b);
  const ends: number[] = [];
  const rowOf = new Array<number>(choices.length).fill(0);
  const side = new Array<0 | 1>(choices.length).fill(0);
  for (const index of order) {
    const [after, before] = choices[index]!;
    const fitting = (span: Span | null) => (span === null ? -1 : ends.findIndex((end) => end + closeClear <= span.from));
    let row = fitting(before);
    let span = before;
    if (row === -1) {
      row = fitting(after);
      span = row === -1 && before !== null ? before : after;
    }
    if (row === -1) row = ends.push(0) - 1;
    side[index] = span === before && before !== null ? 1 : 0;
    ends[row] = (span ?? after).to;
    rowOf[index] = row;
  }
  return { rowOf, side, count: ends.length };
}

/** Between two things in a dense sheet; words bring their own clear space. px */
const closeClear = 3;

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

/**
 * Gives each span that has no row yet (-1) one of `count` rows: the first that is free there, going outwards from what stands; else the first of all.
 * Written into `rowOf`.
 */
export function packInto(spans: readonly Span[], rowOf: number[], count: number): void {
  const rows = Array.from({ length: Math.max(1, count) }, () => ({ from: Number.POSITIVE_INFINITY, to: Number.NEGATIVE_INFINITY }));
  spans.forEach(({ from, to }, index) => {
    const row = rows[rowOf[index] as number];
    if (!row) return;
    row.from = Math.min(row.from, from);
    row.to = Math.max(row.to, to);
  });
  const middle = rows.reduce((least, { from }) => Math.min(least, from), Number.POSITIVE_INFINITY);
  const left = spans.map((_, index) => index).filter((index) => rowOf[index] === -1 && spans[index]!.from < middle);
  const right = spans.map((_, index) => index).filter((index) => rowOf[index] === -1 && !(spans[index]!.from < middle));
  const put = (index: number, free: (row: Span) => boolean) => {
    const { from, to } = spans[index] as Span;
    const at = Math.max(0, rows.findIndex(free));
    const row = rows[at]!;
    row.from = Math.min(row.from, from);
    row.to = Math.max(row.to, to);
    rowOf[index] = at;
  };
  left.sort((a, b) => spans[b]!.to - spans[a]!.to || a - b);
  for (const index of left) put(index, (row) => row.from >= spans[index]!.to + clear);
  right.sort((a, b) => spans[a]!.from - spans[b]!.from || a - b);
  for (const index of right) put(index, (row) => row.to + clear <= spans[index]!.from);
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
