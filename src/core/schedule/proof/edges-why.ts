import type { StartMap } from "./start-map";
import type { TimeTable } from "./time-table";
import type { Trail } from "./trail";
import type { Reasons } from "./why";

/**
 * Why a stretch of time has too little for what is asked of it: each task lies in it for so long, wherever between its bounds it starts. As few tasks, and as
 * little of each, as are needed. A task that was moved is taken to start where it then could not.
 */
export function edgeReasons(
  trail: Trail,
  maps: readonly StartMap[],
  table: TimeTable,
  { task, from, to, side, asked, move }: Edge,
  out: Reasons,
): void {
  const { tasks } = table.shared;
  const { root } = trail;
  let spare = -1 - roomIn(table, from, to);
  chosen.length = 0;
  for (let k = 0; k < tasks.length; k++) {
    const { out: x, number } = tasks[k]!;
    const length = maps[x]!.only;
    const low = trail.boundBefore(2 * x, move);
    const high = -trail.boundBefore(2 * x + 1, move);
    if (k === task) {
      const [first, last] = side === 2 * x ? [low, asked - 1] : [1 - asked, high];
      const share = Math.min(within(first, length, from, to), within(last, length, from, to));
      spare += number * share;
      if (side === 2 * x) out.add(side, from - length + share);
      else out.add(side, share - to);
      continue;
    }
    const share = Math.min(length, to - from, low + length - from, to - high);
    if (share <= 0) continue;
    spare += number * share;
    const sure = Math.max(0, Math.min(length, to - from, root[2 * x]! + length - from, to + root[2 * x + 1]!));
    if (sure >= share) continue;
    const last = Math.max(trail.moveOf(2 * x, from - length + share), trail.moveOf(2 * x + 1, share - to));
    chosen.push({ x, number, length, share, sure, last });
  }
  chosen.sort((a, b) => b.last - a.last);
  for (const c of chosen) {
    if (c.number * (c.share - c.sure) <= spare) {
      spare -= c.number * (c.share - c.sure);
      continue;
    }
    const less = Math.floor(spare / c.number);
    spare -= less * c.number;
    out.add(2 * c.x, from - c.length + c.share - less);
    out.add(2 * c.x + 1, c.share - less - to);
  }
}

/** A move of `side` to at least `asked` by edge finding over a stretch; a task of its own that is none: a clash without one. */
interface Edge {
  readonly task: number;
  readonly from: number;
  readonly to: number;
  readonly side: number;
  readonly asked: number;
  readonly move: number;
}

interface Share {
  readonly x: number;
  readonly number: number;
  readonly length: number;
  /** For how long it lies in the stretch at least, and for how long it does so without any decision. */
  readonly share: number;
  readonly sure: number;
  readonly last: number;
}

const chosen: Share[] = [];

/** For how long a task that starts at `s` lies in a stretch; less than 0 where it does not. */
function within(s: number, length: number, from: number, to: number): number {
  return Math.min(s + length, to) - Math.max(s, from);
}

/** What there is in a stretch, in number-minutes. */
function roomIn({ shared }: TimeTable, from: number, to: number): number {
  const { times, missing, level } = shared;
  let room = level * (to - from);
  for (let k = 0; k < times.length && times[k]! < to; k++) {
    const until = k + 1 < times.length ? Math.min(to, times[k + 1]!) : to;
    if (until > from) room -= missing[k]! * (until - Math.max(from, times[k]!));
  }
  return room;
}
