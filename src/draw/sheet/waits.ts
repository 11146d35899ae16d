import type { Amount, Wait } from "../../core/build";
import { textWidth } from "../text/measure";
import { amountLabel, waitName } from "../text/names";
import { momentLabel } from "../time/labels";
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

/** Shorter runs are not drawn: they could not be told from the edge of the block. px */
const shortest = 14;
/** Gap between a wait's tick and its words, px. */
export const waitTextGap = 8;

/** When the least amount of an arc lets go: as the plan says, or reckoned here for plain elapsed time. Null where neither is to be had. */
function readyOf(frame: Frame, stated: ReadonlyMap<number, number>, row: number, begins: number, amount: Amount): number | null {
  const known = stated.get(row);
  if (known !== undefined) return known;
  const link = frame.plan.chain.find(({ holder }) => holder.kind === "wait" && holder.row === row);
  if (link) return link.ready;
  return amount.on.kind === "elapsed" ? begins + amount.amount : null;
}

export function waitRuns(frame: Frame): WaitRun[] {
  const { build, plan, axis } = frame;
  const { arcs, amounts } = plan.access;
  const stated = new Map((plan.waits ?? []).map(({ row, ready }) => [row, ready as number]));
  const waits = new Map(build.waits.map((wait) => [wait.id as string, wait]));
  const groups = new Map<string, { from: number; begins: number; ends: WaitEnd[] }>();
  for (let row = 0; row < arcs.count; row += 1) {
    const amount = amounts[arcs.least[row] as number];
    const from = arcs.from[row] as number;
    const dates = plan.steps[from];
    if (!amount || amount.amount === 0 || !dates) continue;
    const begins = arcs.fromEnd[row] === 0 ? dates.start : dates.finish;
    const ready = readyOf(frame, stated, row, begins, amount);
    if (ready === null || ready > 6_000_000) continue;
    const x = axis.x(ready);
    if (x - axis.x(begins) < shortest) continue;
    const key = `${build.steps[from]!.id} ${arcs.fromEnd[row]}`;
    const group = groups.get(key) ?? { from, begins, ends: [] };
    groups.set(key, group);
    // Of several waits that let go at one instant the first is told.
    if (group.ends.some((end) => end.ready === ready)) continue;
    group.ends.push({
      row,
      to: arcs.to[row] as number,
      wait: waits.get(plan.access.statements[arcs.reason[row] as number]?.id ?? "") ?? null,
      ready,
      x,
      label: wordsOf(frame, row, amount, ready),
      labelled: true,
    });
  }
  const visits = plan.visits.map(({ from, at }) => ({ from, x: axis.x(at) }));
  return [...groups].map(([key, group]) =>
    run(
      frame,
      key,
      group,
      visits.filter(({ from }) => from === group.from).map(({ x }) => x),
    ),
  );
}

function wordsOf({ build, plan, time }: Frame, row: number, amount: Amount, ready: number): string {
  const id = plan.access.statements[plan.access.arcs.reason[row] as number]?.id;
  const name = waitName(build.waits.find((one) => one.id === id) ?? null);
  const much = amountLabel(build, amount);
  return `${name === null ? much : `${name}, ${much}`}: ready ${momentLabel(time, ready)}`;
}

function run(
  { axis, text }: Frame,
  key: string,
  { from, begins, ends }: { from: number; begins: number; ends: WaitEnd[] },
  visits: readonly number[],
): WaitRun {
  const sorted = [...ends].sort((a, b) => a.ready - b.ready);
  const last = sorted[sorted.length - 1]!;
  const placed = sorted.map((end, index) => {
    const next = sorted[index + 1];
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
