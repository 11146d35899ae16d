import type { Build } from "../../core/build";
import type { ClosingDate, Plan } from "../../core/plan";
import { textWidth, wrap } from "../text/measure";
import { stepLabel } from "../text/names";
import { type Awaited, awaited } from "./awaited";
import { type LaneSpec, laneOfSteps, laneOrder } from "./lanes";
import { gapReason } from "./reasons";
import { each, remembered } from "./remembered";

/** What a sheet takes from a build and its plan alone, whatever its scale, the width of a day and what is in sight. */
export interface Ground {
  readonly lanes: readonly LaneSpec[];
  /** Position in `lanes` by place; -1: the steps that name none. */
  readonly laneAt: ReadonlyMap<number, number>;
  /** Place of each step, as `laneOfSteps` gives it. */
  readonly laneOf: Int32Array;
  /** Steps by lane. */
  readonly stepsOf: readonly (readonly number[])[];
  readonly closingOf: ReadonlyMap<number, ClosingDate>;
  /** Position on the chalk line of each step that is on it. */
  readonly chainAt: ReadonlyMap<number, number>;
  /** Lanes that a piece shuts, whatever step puts it up. */
  readonly shutBy: ReadonlyMap<number, readonly number[]>;
  readonly waits: readonly Awaited[];
  /** What the chalk line waits for before a step. */
  reason(step: number): string | null;
  /** The names of the lanes in lines, and the widest of them in px, at a type size. */
  names(text: number): { readonly lines: readonly (readonly string[])[]; readonly wide: number };
  /** The words of a step are never longer than this altogether, px at a type size. */
  mostWords(text: number): Float64Array;
}

/** Names wider than this are broken into lines. px */
const mostName = 160;
/** Longer than any time of a closing is said, for the room that words may take. */
const longestClosing = "closes Wednesday 30 September, 12:30 a.m.";
/** Hands, gaps and marks of a step together take no more, px. */
const mostSigns = 130;

export const groundOf = remembered((build: Build, plan: Plan): Ground => {
  const lanes = laneOrder(build, plan);
  const laneOf = laneOfSteps(build);
  const laneAt = new Map(lanes.map(({ place }, index) => [place, index]));
  const stepsOf: number[][] = lanes.map(() => []);
  plan.steps.forEach((_, step) => {
    const lane = laneAt.get(laneOf[step] as number);
    if (lane !== undefined) stepsOf[lane]!.push(step);
  });
  const closingOf = new Map([...plan.closings].reverse().map((closing) => [closing.step, closing]));
  const chainAt = new Map(plan.chain.map(({ job }, index) => [job, index]));
  const reason = each((step: number): string | null => {
    const at = chainAt.get(step);
    return at === undefined ? null : gapReason(build, plan, plan.chain[at]!.holder);
  });
  const names = each((text: number) => {
    const lines = lanes.map(({ name }) => wrap(name, mostName, text));
    const widths = lines.flat().map((line) => textWidth(line, text));
    return { lines, wide: Math.ceil(widths.reduce((most, width) => Math.max(most, width), 60)) };
  });
  const mostWords = each((text: number) => {
    const closing = textWidth(longestClosing, text, 600);
    return Float64Array.from(build.steps, (step, index) => {
      const why = reason(index);
      const words = textWidth(stepLabel(step), text) + (why === null ? 0 : textWidth(why, text)) + (closingOf.has(index) ? closing : 0);
      return words + mostSigns;
    });
  });
  return {
    lanes,
    laneAt,
    laneOf,
    stepsOf,
    closingOf,
    chainAt,
    shutBy: shutBy(plan, lanes),
    waits: awaited(build, plan),
    reason,
    names,
    mostWords,
  };
});

function shutBy(plan: Plan, lanes: readonly LaneSpec[]): Map<number, number[]> {
  const out = new Map<number, number[]>();
  lanes.forEach(({ place }, lane) => {
    const pieces = new Set((plan.stands.places[place] ?? []).flatMap(({ state, by }) => (state === "open" ? [] : [by])));
    for (const piece of pieces) out.set(piece, [...(out.get(piece) ?? []), lane]);
  });
  return out;
}
