import type { Build } from "../../core/build";
import type { Plan } from "../../core/plan";
import { textWidth, wrap } from "../text/measure";
import { type BlockSpec, bare, blockSpec } from "./blocks";
import type { Frame } from "./frame";
import { type LaneSpec, laneOfSteps, laneOrder } from "./lanes";
import type { Span } from "./rows";
import { shortest, type WaitRun, waitRuns } from "./waits";

/** Where a lane's state changes, px. */
export function edgesOf({ plan, axis }: Frame, place: number): number[] {
  return (plan.stands.places[place] ?? []).slice(1).map(({ from }) => axis.x(from));
}

const shown = (frame: Frame, step: number): boolean =>
  !frame.whole || frame.build.steps[step]!.sort === "pour" || frame.closingOf.has(step);

export interface PreparedLane {
  readonly spec: LaneSpec;
  readonly lines: readonly string[];
  readonly blocks: readonly BlockSpec[];
  /** In a dense sheet each block once more with its words before it; null where there is no room. */
  readonly lefts: readonly (BlockSpec | null)[];
  readonly runs: readonly WaitRun[];
  readonly spans: readonly Span[];
}

/** What does not depend on what is in sight: made once, used for every window. */
export interface Prepared {
  readonly frame: Frame;
  readonly lanes: readonly PreparedLane[];
  /** Waits too short for a row, by the step that starts them. */
  readonly stubs: ReadonlyMap<number, WaitRun>;
  readonly nameWidth: number;
  /** Right end of the last words, px. */
  readonly width: number;
}

/** Names wider than this are broken into lines. px */
const mostName = 160;

const nameWidthOf = (lanes: readonly { readonly lines: readonly string[] }[], text: number): number =>
  Math.ceil(lanes.reduce((most, { lines }) => Math.max(most, ...lines.map((line) => textWidth(line, text))), 60));

/** Width of the widest name of a lane, px. */
export const namesWide = (build: Build, plan: Plan, text: number): number =>
  nameWidthOf(
    laneOrder(build, plan).map(({ name }) => ({ lines: wrap(name, mostName, text) })),
    text,
  );

export function prepareLanes(frame: Frame): Prepared {
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
  const stubs = new Map<number, WaitRun>();
  if (!whole)
    for (const run of waitRuns(frame)) {
      if (run.x1 - run.x0 < shortest) stubs.set(run.from, run);
      else runs[laneAt.get(laneOf[run.from] as number) ?? 0]!.push(run);
    }
  const stubOf = (step: number) => {
    const run = stubs.get(step);
    return run ? run.x1 - run.x0 + 5 : 0;
  };
  const lanes = specs.map((spec, lane) => {
    const edges = spec.place < 0 ? [] : edgesOf(frame, spec.place);
    const blocks = steps[lane]!.map((step) => blockSpec(frame, step, edges, { stub: stubOf(step) })).map((one) =>
      whole ? bare(one) : one,
    );
    const spans: Span[] = [...blocks, ...runs[lane]!.map((run) => ({ from: run.x0, to: run.to }))];
    const lefts = blocks.map(({ step, beside }) => {
      const spec = frame.dense && beside.length > 0 ? blockSpec(frame, step, edges, { onLeft: true, stub: stubOf(step) }) : null;
      return spec && spec.from >= 0 ? spec : null;
    });
    return { spec, lines: wrap(spec.name, mostName, text), blocks, lefts, runs: runs[lane]!, spans };
  });
  const nameWidth = nameWidthOf(lanes, text);
  const width = lanes.reduce((most, { spans }) => spans.reduce((far, { to }) => Math.max(far, to + 8), most), frame.axis.width);
  return { frame, lanes, stubs, nameWidth, width };
}
