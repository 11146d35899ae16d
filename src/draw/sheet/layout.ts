import { textWidth, wrap } from "../text/measure";
import { type BlockSpec, blockSpec } from "./blocks";
import { type Frame, touches } from "./frame";
import { type LaneSpec, laneOfSteps, laneOrder } from "./lanes";
import { packRows, type Span } from "./rows";
import { type WaitRun, waitRuns } from "./waits";

export interface Lane extends LaneSpec {
  readonly y0: number;
  readonly y1: number;
  readonly lines: readonly string[];
}

export interface Block extends BlockSpec {
  readonly lane: number;
  /** Position in `bands`. */
  readonly band: number;
  readonly y0: number;
  readonly y1: number;
}

export interface WaitPlace extends WaitRun {
  readonly lane: number;
  readonly y0: number;
  readonly y1: number;
}

/** One row of one lane, with what stands in it; below it the channel in which the chalk line and tails run. */
export interface Band {
  readonly lane: number;
  readonly y0: number;
  readonly y1: number;
  readonly channel: number;
  /** Sorted, px. */
  readonly taken: readonly Span[];
}

export interface Layout {
  readonly lanes: readonly Lane[];
  readonly blocks: ReadonlyMap<number, Block>;
  /** Blocks in sight; the rest are there for the arrow keys alone. */
  readonly visible: readonly Block[];
  readonly waits: readonly WaitPlace[];
  readonly bands: readonly Band[];
  readonly height: number;
  readonly nameWidth: number;
}

const laneGap = 8;
const groundGap = 22;
const padTop = 6;

/** Where a lane's state changes, px. */
export function edgesOf({ plan, axis }: Frame, place: number): number[] {
  return (plan.stands.places[place] ?? []).slice(1).map(({ from }) => axis.x(from));
}

const shown = (frame: Frame, step: number): boolean =>
  !frame.whole || frame.build.steps[step]!.sort === "pour" || frame.closingOf.has(step);

/** What does not depend on what is in sight: made once, used for every window. */
export interface Prepared {
  readonly frame: Frame;
  readonly lanes: readonly {
    readonly spec: LaneSpec;
    readonly lines: readonly string[];
    readonly blocks: readonly BlockSpec[];
    readonly runs: readonly WaitRun[];
    readonly spans: readonly Span[];
  }[];
  readonly nameWidth: number;
  /** Right end of the last words, px. */
  readonly width: number;
}

export function prepareLanes(frame: Frame, mostName: number): Prepared {
  const { build, plan, whole, text } = frame;
  const specs = laneOrder(build, plan);
  const laneOf = laneOfSteps(build);
  const laneAt = new Map(specs.map(({ place }, index) => [place, index]));
  const steps: number[][] = specs.map(() => []);
  plan.steps.forEach((_, step) => {
    const lane = laneAt.get(laneOf[step] as number);
    if (lane !== undefined && shown(frame, step)) steps[lane]!.push(step);
  });
  const runs: WaitRun[][] = specs.map(() => []);
  if (!whole) for (const run of waitRuns(frame)) runs[laneAt.get(laneOf[run.from] as number) ?? 0]!.push(run);
  const lanes = specs.map((spec, lane) => {
    const edges = spec.place < 0 ? [] : edgesOf(frame, spec.place);
    const blocks = steps[lane]!.map((step) => blockSpec(frame, step, edges)).map((one) => (whole ? bare(one) : one));
    const spans: Span[] = [...blocks, ...runs[lane]!.map((run) => ({ from: run.x0, to: run.to }))];
    return { spec, lines: wrap(spec.name, mostName, text), blocks, runs: runs[lane]!, spans };
  });
  const nameWidth = Math.ceil(lanes.reduce((most, { lines }) => Math.max(most, ...lines.map((line) => textWidth(line, text))), 60));
  const width = lanes.reduce((most, { spans }) => spans.reduce((far, { to }) => Math.max(far, to + 8), most), frame.axis.width);
  return { frame, lanes, nameWidth, width };
}

export function layOut(frame: Frame, prepared: Prepared): Layout {
  const { whole, text, block, row, seen } = frame;
  const lanes: Lane[] = [];
  const bands: Band[] = [];
  const blocks = new Map<number, Block>();
  const waits: WaitPlace[] = [];
  let y = 4;
  prepared.lanes.forEach(({ spec, lines, blocks: blocksHere, runs, spans }, lane) => {
    const before = prepared.lanes[lane - 1]?.spec;
    const layered = before !== undefined && spec.bracket !== null && spec.bracket === before.bracket;
    if (before && !layered) y += before.offSite === spec.offSite ? (whole ? 3 : laneGap) : groundGap;
    const { rowOf, count } = whole ? { rowOf: spans.map(() => 0), count: 1 } : packSeen(spans, seen);
    const nameHeight = lines.length * (text + 3) + 4;
    const y0 = y;
    const rows = Math.max(1, count);
    const thin = whole || count === 0;
    const height = Math.max(nameHeight, thin ? block + 8 : padTop + rows * row + 4);
    const top = (index: number) => y0 + (thin ? 4 : padTop) + index * row;
    const firstBand = bands.length;
    for (let index = 0; index < rows; index += 1) {
      const taken = spans.flatMap((span, at) =>
        rowOf[at] === index && touches(frame, span.from, span.to) ? (blocksHere[at]?.parts ?? [span]) : [],
      );
      const sorted = [...taken].sort((a, b) => a.from - b.from);
      bands.push({ lane, y0: top(index), y1: top(index) + block, channel: top(index) + block + 2.5, taken: sorted });
    }
    blocksHere.forEach((one, at) => {
      const index = rowOf[at] as number;
      blocks.set(one.step, { ...one, lane, band: firstBand + index, y0: top(index), y1: top(index) + block });
    });
    runs.forEach((run, at) => {
      const index = rowOf[blocksHere.length + at] as number;
      if (touches(frame, run.x0, run.to)) waits.push({ ...run, lane, y0: top(index), y1: top(index) + block });
    });
    lanes.push({ ...spec, y0, y1: y0 + height, lines });
    y = y0 + height;
  });
  const visible = [...blocks.values()].filter(({ from, to }) => touches(frame, from, to));
  return { lanes, blocks, visible, waits, bands, height: y + 6, nameWidth: prepared.nameWidth };
}

/** Rows for what is in sight; what is not is put into rows as well, but asks for none. */
function packSeen(spans: readonly Span[], seen: Span | null): { readonly rowOf: readonly number[]; readonly count: number } {
  if (!seen) return packRows(spans);
  const inSight = spans.map(({ from, to }) => to >= seen.from && from <= seen.to);
  const packed = packRows(spans.filter((_, index) => inSight[index]));
  let next = 0;
  let aside = 0;
  const rowOf = spans.map((_, index) => (inSight[index] ? (packed.rowOf[next++] as number) : aside++ % Math.max(1, packed.count)));
  return { rowOf, count: packed.count };
}

/** The whole build has room for the block alone. */
const bare = (spec: BlockSpec): BlockSpec => ({
  ...spec,
  beside: [],
  inside: false,
  crew: 0,
  reason: null,
  parts: [{ from: spec.x0, to: spec.x1 }],
  from: spec.x0,
  to: spec.x1,
});
