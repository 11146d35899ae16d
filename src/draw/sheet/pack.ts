import { type BlockSpec, bare } from "./blocks";
import { type Frame, inSight } from "./frame";
import type { PreparedLane } from "./prepare";
import { packInto, packRows, packSides, type Span } from "./rows";
import type { WaitRun } from "./waits";

/** What stands in a lane, with its row: blocks first, then waits. */
export interface Packed {
  /** With the words they have room for. */
  readonly blocks: readonly BlockSpec[];
  readonly runs: readonly WaitRun[];
  readonly spans: readonly Span[];
  readonly rowOf: readonly number[];
  /** Rows asked for by what is in sight. */
  readonly count: number;
}

/** Rows for what is in sight. What is not stands without words in a row where it is free, and asks for none. */
export function packLane(frame: Frame, lane: PreparedLane): Packed {
  const { blocks, lefts, runs, spans } = lane;
  if (frame.whole) return { blocks, runs, spans, rowOf: spans.map(() => 0), count: 1 };
  const rowOf = spans.map(() => -1);
  const standing: BlockSpec[] = blocks.map((one) => (inSight(frame, one.from, one.to) ? one : bare(one)));
  const waiting: WaitRun[] = runs.map((run) => (inSight(frame, run.x0, run.to) ? run : wordless(run)));
  const inView = spans.map((_, index) => index).filter((index) => inSight(frame, spans[index]!.from, spans[index]!.to));
  let count = 0;
  if (frame.dense) {
    const here = inView.filter((index) => index < blocks.length);
    const start = frame.seen?.from ?? 0;
    const packed = packSides(
      here.map((index) => {
        const left = lefts[index] ?? null;
        return [airy(spans[index] as Span), left && left.from >= start ? airy(left) : null];
      }),
    );
    here.forEach((index, at) => {
      rowOf[index] = packed.rowOf[at] as number;
      if (packed.side[at] === 1) standing[index] = lefts[index]!;
    });
    count = packed.count;
    const rows = rowsOf(standing, rowOf, count);
    // A wait takes a row of its own only where there is none in which it is free; its words, only where they are.
    for (const index of inView.filter((index) => index >= blocks.length)) {
      const run = runs[index - blocks.length]!;
      const free = (span: Span) => rows.findIndex((row) => row.every((one) => one.to <= span.from || one.from >= span.to));
      const worded = free(airy({ from: run.x0, to: run.to }));
      const alone = free(runOnly(run));
      const row = worded >= 0 ? worded : alone >= 0 ? alone : rows.push([]) - 1;
      if (worded < 0 && alone >= 0) waiting[index - blocks.length] = wordless(run);
      rowOf[index] = row;
      rows[row]!.push(worded < 0 && alone >= 0 ? runOnly(run) : { from: run.x0, to: run.to });
    }
    count = rows.length;
  } else {
    const packed = packRows(inView.map((index) => spans[index] as Span));
    inView.forEach((index, at) => {
      rowOf[index] = packed.rowOf[at] as number;
    });
    count = packed.count;
  }
  const taken: Span[] = [
    ...standing,
    ...waiting.map((run) => (run.ends.some(({ labelled }) => labelled) ? { from: run.x0, to: run.to } : runOnly(run))),
  ];
  packInto(taken, rowOf, count);
  return { blocks: standing, runs: waiting, spans: taken, rowOf, count };
}

function rowsOf(blocks: readonly BlockSpec[], rowOf: readonly number[], count: number): Span[][] {
  const rows: Span[][] = Array.from({ length: count }, () => []);
  blocks.forEach((block, index) => {
    rows[rowOf[index] as number]?.push(...block.parts);
  });
  return rows;
}

/** Words keep off their neighbours, so that two names do not read as one. px */
const air = 7;
const airy = (span: Span): Span => ({ from: span.from - air, to: span.to + air });

// A wait may touch the block that starts it.
const runOnly = ({ x0, x1 }: WaitRun): Span => ({ from: x0 + 3, to: x1 });
export const wordless = (run: WaitRun): WaitRun => ({ ...run, ends: run.ends.map((end) => ({ ...end, labelled: false })) });
