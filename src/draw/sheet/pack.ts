import type { BlockSpec } from "./blocks";
import { type Frame, inSight, touches } from "./frame";
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
  const { steps, blocks, runs } = lane;
  const n = steps.length;
  const full = steps.map((_, at) => (frame.whole ? null : blocks.inSight(at, frame)));
  const standing: BlockSpec[] = full.map((spec, at) => spec ?? blocks.bare(at, frame));
  if (frame.whole) return { blocks: standing, runs, spans: [...standing], rowOf: standing.map(() => 0), count: 1 };
  const worded = runs.map((run) => inSight(frame, run.x0, run.to));
  const rowOf = new Array<number>(n + runs.length).fill(-1);
  const here = full.flatMap((spec, at) => (spec ? [at] : []));
  const waits = worded.flatMap((seen, at) => (seen ? [at] : []));
  let count = 0;
  if (frame.dense) {
    const start = frame.seen?.from ?? 0;
    const packed = packSides(
      here.map((at) => {
        const left = blocks.left(at);
        return [airy(full[at]!), left && left.from >= start ? airy(left) : null];
      }),
    );
    here.forEach((at, index) => {
      rowOf[at] = packed.rowOf[index] as number;
      if (packed.side[index] === 1) standing[at] = blocks.left(at)!;
    });
    const rows = rowsOf(standing, rowOf, packed.count);
    // A wait takes a row of its own only where there is none in which it is free; its words, only where they are.
    for (const at of waits) {
      const run = runs[at]!;
      const free = (span: Span) => rows.findIndex((row) => row.every((one) => one.to <= span.from || one.from >= span.to));
      const withWords = free(airy({ from: run.x0, to: run.to }));
      const alone = free(runOnly(run));
      const row = withWords >= 0 ? withWords : alone >= 0 ? alone : rows.push([]) - 1;
      worded[at] = withWords >= 0 || alone < 0;
      rowOf[n + at] = row;
      rows[row]!.push(worded[at] ? { from: run.x0, to: run.to } : runOnly(run));
    }
    count = rows.length;
  } else {
    const packed = packRows([...here.map((at) => full[at]!), ...waits.map((at) => ({ from: runs[at]!.x0, to: runs[at]!.to }))]);
    here.forEach((at, index) => {
      rowOf[at] = packed.rowOf[index] as number;
    });
    waits.forEach((at, index) => {
      rowOf[n + at] = packed.rowOf[here.length + index] as number;
    });
    count = packed.count;
  }
  const spans: Span[] = [...standing, ...runs.map((run, at) => (worded[at] ? { from: run.x0, to: run.to } : runOnly(run)))];
  if (count === 0) rowOf.fill(0);
  else packInto(spans, rowOf, count);
  const waiting = runs.map((run, at) => (worded[at] || !touches(frame, run.x0, run.to) ? run : wordless(run)));
  return { blocks: standing, runs: waiting, spans, rowOf, count };
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
