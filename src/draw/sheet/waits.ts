import type { Amount, Wait } from "../../core/build";
import { momentLabel } from "../time/labels";
import type { Frame } from "./frame";

/** A wait at its true length: from the step that starts it until it lets go, whenever the next step comes. */
export interface WaitRun {
  readonly id: string;
  readonly row: number;
  /** Steps it leads from and to. */
  readonly from: number;
  readonly to: number;
  readonly wait: Wait | null;
  readonly begins: number;
  readonly ready: number;
  readonly x0: number;
  readonly x1: number;
  readonly label: string;
}

/** Shorter runs are not drawn: they could not be told from the edge of the block. px */
const shortest = 14;

/** When the least amount of an arc lets go: as the plan says, or reckoned here for plain elapsed time. Null where neither is to be had. */
function readyOf(frame: Frame, row: number, begins: number, amount: Amount): number | null {
  const stated = frame.plan.waits?.find((one) => one.row === row);
  if (stated) return stated.ready;
  const link = frame.plan.chain.find(({ holder }) => holder.kind === "wait" && holder.row === row);
  if (link) return link.ready;
  return amount.on.kind === "elapsed" ? begins + amount.amount : null;
}

/** One run for each step and instant: of several waits that say the same, the first. Without those that are over before one can see them. */
export function waitRuns(frame: Frame): WaitRun[] {
  const { build, plan, axis, time } = frame;
  const { arcs, amounts, statements } = plan.access;
  const runs = new Map<string, WaitRun>();
  for (let row = 0; row < arcs.count; row += 1) {
    const amount = amounts[arcs.least[row] as number];
    const from = arcs.from[row] as number;
    const dates = plan.steps[from];
    if (!amount || amount.amount === 0 || !dates) continue;
    const begins = arcs.fromEnd[row] === 0 ? dates.start : dates.finish;
    const ready = readyOf(frame, row, begins, amount);
    if (ready === null) continue;
    const [x0, x1] = [axis.x(begins), axis.x(ready)];
    if (x1 - x0 < shortest) continue;
    const statementId = statements[arcs.reason[row] as number]?.id;
    const wait = build.waits.find((one) => one.id === statementId) ?? null;
    const name = wait && !wait.plain && wait.name !== "" ? `${wait.name}, ${amount.text}` : amount.text;
    const key = `${build.steps[from]?.id} ${begins} ${ready}`;
    if (runs.has(key)) continue;
    runs.set(key, {
      id: `wait ${key}`,
      row,
      from,
      to: arcs.to[row] as number,
      wait,
      begins,
      ready,
      x0,
      x1,
      label: `${name}: ready ${momentLabel(time, ready)}`,
    });
  }
  return [...runs.values()];
}
