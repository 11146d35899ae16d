import type { Amount, Wait } from "../../core/build";
import { textWidth } from "../text/measure";
import { amountLabel, waitName } from "../text/names";
import { momentLabel } from "../time/labels";
import type { Awaited } from "./awaited";
import type { Frame } from "./frame";

/** One wait that lets go: when, and what is said at its tick. */
export interface WaitEnd {
  readonly row: number;
  readonly to: number;
  readonly wait: Wait | null;
  readonly ready: number;
  readonly x: number;
  readonly label: string;
  /** False where the words would run into the next tick; they stand in the table and the side sheet. */
  readonly labelled: boolean;
}

/** What starts to pass when a step starts or ends, at its true length, with a tick wherever a wait lets go, whenever the next step comes. */
export interface WaitRun {
  readonly id: string;
  readonly from: number;
  readonly begins: number;
  readonly x0: number;
  readonly x1: number;
  /** In the order of time; the last at x1. */
  readonly ends: readonly WaitEnd[];
  /** Right end of the last words, px. */
  readonly to: number;
}

/** Shorter runs have no row and no words: a hatched stub and a tick beside the block that starts them. px */
export const shortest = 14;
/** Gap between a wait's tick and its words, px. */
export const waitTextGap = 8;

export function* waitRuns(frame: Frame): Generator<WaitRun, void, void> {
  const { build, plan, axis, ground } = frame;
  const groups = new Map<string, Group>();
  for (const one of ground.waits) {
    const key = `${build.steps[one.from]!.id} ${one.fromEnd}`;
    const group = groups.get(key) ?? { from: one.from, begins: one.begins, waits: [] };
    groups.set(key, group);
    // Of several waits that let go at one instant the first is told.
    if (!group.waits.some(({ ready }) => ready === one.ready)) group.waits.push(one);
  }
  const visits = new Map<number, number[]>();
  for (const { from, at } of plan.visits) {
    const known = visits.get(from);
    if (known) known.push(axis.x(at));
    else visits.set(from, [axis.x(at)]);
  }
  for (const [key, group] of groups) yield run(frame, key, group, visits.get(group.from) ?? []);
}

/** Waits that begin together. */
interface Group {
  readonly from: number;
  readonly begins: number;
  readonly waits: Awaited[];
}

function wordsOf({ build, time, dense }: Frame, wait: Wait | null, amount: Amount, ready: number): string {
  const name = waitName(wait);
  const much = amountLabel(build, amount);
  // A dense sheet has room for how long and until when; what for stands in the side sheet and the table.
  if (dense) return `${much.split(", ")[0]}: ready ${momentLabel(time, ready)}`;
  return `${name === null ? much : `${name}, ${much}`}: ready ${momentLabel(time, ready)}`;
}

function run(frame: Frame, key: string, { from, begins, waits }: Group, visits: readonly number[]): WaitRun {
  const { axis, text } = frame;
  const ends = waits
    .map(({ row, to, wait, amount, ready }) => ({ row, to, wait, ready, x: axis.x(ready), label: wordsOf(frame, wait, amount, ready) }))
    .sort((a, b) => a.ready - b.ready);
  const last = ends[ends.length - 1]!;
  const placed = ends.map((end, index): WaitEnd => {
    const next = ends[index + 1];
    const right = end.x + waitTextGap + textWidth(end.label, text) + waitTextGap;
    return { ...end, labelled: !next || (right < next.x && !visits.some((x) => x > end.x && x < right)) };
  });
  return {
    id: `wait ${key}`,
    from,
    begins,
    x0: axis.x(begins),
    x1: last.x,
    ends: placed,
    to: last.x + waitTextGap + textWidth(last.label, text),
  };
}
