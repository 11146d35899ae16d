import type { Build } from "../../core/build";
import type { Plan } from "../../core/plan";
import { type BlockSpec, bareSpec, blockSpec } from "./blocks";
import { type Frame, inSight, touches } from "./frame";
import { groundOf } from "./ground";
import type { LaneSpec } from "./lanes";
import type { Slices } from "./slices";
import { shortest, type WaitRun, waitRuns } from "./waits";

export interface PreparedLane {
  readonly spec: LaneSpec;
  readonly lines: readonly string[];
  /** Where its state changes, px. */
  readonly edges: readonly number[];
  readonly steps: readonly number[];
  readonly runs: readonly WaitRun[];
  /** Its blocks, made when one asks for them: most of a large build is never in sight. */
  readonly blocks: Blocks;
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

/** Width of the widest name of a lane, px. */
export const namesWide = (build: Build, plan: Plan, text: number): number => groundOf(build, plan).names(text).wide;

const shown = (frame: Frame, step: number): boolean =>
  !frame.whole || frame.build.steps[step]!.sort === "pour" || frame.ground.closingOf.has(step);

/** The blocks of one lane at one width of a day, by their position among its steps. */
class Blocks {
  readonly #frame: Frame;
  readonly #steps: readonly number[];
  readonly #edges: readonly number[];
  readonly #stubs: ReadonlyMap<number, WaitRun>;
  readonly #most: Float64Array;
  readonly #full: (BlockSpec | undefined)[] = [];
  readonly #paused: (BlockSpec | undefined)[] = [];
  readonly #plain: (BlockSpec | undefined)[] = [];
  readonly #lefts: (BlockSpec | null | undefined)[] = [];

  constructor(frame: Frame, steps: readonly number[], edges: readonly number[], stubs: ReadonlyMap<number, WaitRun>) {
    this.#frame = frame;
    this.#steps = steps;
    this.#edges = edges;
    this.#stubs = stubs;
    this.#most = frame.ground.mostWords(frame.text);
  }

  #stub(step: number): number {
    const run = this.#stubs.get(step);
    return run ? run.x1 - run.x0 + 5 : 0;
  }

  /** With its words. */
  full(at: number): BlockSpec {
    const step = this.#steps[at]!;
    this.#full[at] ??= this.#frame.whole ? this.bare(at) : blockSpec(this.#frame, step, this.#edges, { stub: this.#stub(step) });
    return this.#full[at];
  }

  /** In a dense sheet with its words before it; null where there is no room. */
  left(at: number): BlockSpec | null {
    const known = this.#lefts[at];
    if (known !== undefined) return known;
    const step = this.#steps[at]!;
    const spec =
      this.#frame.dense && this.full(at).beside.length > 0
        ? blockSpec(this.#frame, step, this.#edges, { onLeft: true, stub: this.#stub(step) })
        : null;
    this.#lefts[at] = spec && spec.from >= 0 ? spec : null;
    return this.#lefts[at];
  }

  /** Without words; its pauses only within what is drawn of `frame`. */
  bare(at: number, frame: Frame = this.#frame): BlockSpec {
    const plain = this.#unpaused(at);
    if (!touches(frame, plain.x0, plain.x1)) return plain;
    const step = this.#steps[at]!;
    this.#paused[at] ??= bareSpec(this.#frame, step, { stub: this.#stub(step), paused: true });
    return this.#paused[at];
  }

  #unpaused(at: number): BlockSpec {
    const step = this.#steps[at]!;
    this.#plain[at] ??= bareSpec(this.#frame, step, { stub: this.#stub(step), paused: false });
    return this.#plain[at];
  }

  /** With its words where it is in sight, else null. */
  inSight(at: number, frame: Frame): BlockSpec | null {
    const { x0, x1 } = this.#unpaused(at);
    const most = this.#most[this.#steps[at]!]!;
    if (!inSight(frame, x0 - most, x1 + most)) return null;
    const full = this.full(at);
    return inSight(frame, full.from, full.to) ? full : null;
  }

  /** Right end of the last words, px, where that is beyond `least`. */
  farthest(least: number): number {
    let far = least;
    this.#steps.forEach((step, at) => {
      if (this.#unpaused(at).x1 + this.#most[step]! + 8 > far) far = Math.max(far, this.full(at).to + 8);
    });
    return far;
  }
}

export function* prepareLanes(frame: Frame): Slices<Prepared> {
  const { whole, text, ground, axis, plan } = frame;
  const { lanes: specs, laneAt, laneOf } = ground;
  const runs: WaitRun[][] = specs.map(() => []);
  const stubs = new Map<number, WaitRun>();
  if (!whole)
    for (const run of waitRuns(frame)) {
      if (run.x1 - run.x0 < shortest) stubs.set(run.from, run);
      else runs[laneAt.get(laneOf[run.from] as number) ?? 0]!.push(run);
      yield;
    }
  const { lines, wide: nameWidth } = ground.names(text);
  const lanes = specs.map((spec, lane): PreparedLane => {
    const edges = (plan.stands.places[spec.place] ?? []).slice(1).map(({ from }) => axis.x(from));
    const steps = whole ? ground.stepsOf[lane]!.filter((step) => shown(frame, step)) : ground.stepsOf[lane]!;
    return { spec, lines: lines[lane]!, edges, steps, runs: runs[lane]!, blocks: new Blocks(frame, steps, edges, stubs) };
  });
  let width = axis.width;
  for (const { blocks, runs: own } of lanes) {
    width = own.reduce((far, { to }) => Math.max(far, to + 8), blocks.farthest(width));
    yield;
  }
  return { frame, lanes, stubs, nameWidth, width };
}
