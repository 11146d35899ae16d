import type { Task } from "./model";
import type { StartMap } from "./start-map";
import { type TimeTable, taskRoom } from "./time-table";
import type { Trail } from "./trail";
import { stepAt } from "./usage";
import type { Reasons } from "./why";

/**
 * Why too little was left at one minute for a task, or for all that is there (pointwise explanation): of the tasks that surely hold at it, as few as are
 * needed; those that do so without any decision cost nothing, so the others are left out first, then those that moved last, so that
 * a clause speaks of early decisions and goes back far.
 */
export function tableReasons(
  trail: Trail,
  maps: readonly StartMap[],
  table: TimeTable,
  code: number,
  t: number,
  side: number,
  move: number,
  out: Reasons,
): void {
  const task = code % taskRoom;
  const { shared, from, to } = table;
  const { tasks } = shared;
  let room = shared.level - stepAt(shared.times, shared.missing, t);
  if (task < tasks.length) {
    const own = tasks[task]!;
    room -= own.number;
    if ((side & 1) === 1) {
      if (own.out >= 0) out.add(2 * own.out + 1, -t);
    } else if (own.back >= 0) out.add(2 * own.back, maps[own.back]!.lastToFinish(t) + 1);
  }
  const { bound, root } = trail;
  let spare = -room - 1;
  chosen.length = 0;
  needs.length = 0;
  for (let k = 0; k < tasks.length; k++) {
    // What is not surely held by now was not then.
    if (t < from[k]! || t >= to[k]! || k === task) continue;
    const other = tasks[k]!;
    if (other.out >= 0 && bound[2 * other.out + 1]! < -t) continue;
    const need = other.back < 0 ? 0 : maps[other.back]!.lastToFinish(t) + 1;
    if (other.back >= 0 && (bound[2 * other.back]! < need || trail.boundBefore(2 * other.back, move) < need)) continue;
    if (other.out >= 0 && trail.boundBefore(2 * other.out + 1, move) < -t) continue;
    if (other.runs !== null) {
      const r = other.runs.at(t);
      if (!other.runs.has(r) || other.runs.from(r) > t) continue;
    }
    spare += other.number;
    if ((other.out < 0 || root[2 * other.out + 1]! >= -t) && (other.back < 0 || root[2 * other.back]! >= need)) continue;
    chosen.push(k);
    needs.push(need);
  }
  // With nothing to spare nobody can be left out, in whatever order.
  if (spare > 0 && chosen.length > 1) lastMovedFirst(trail, tasks, t);
  for (let c = 0; c < chosen.length; c++) {
    const other = tasks[chosen[c]!]!;
    if (other.number <= spare) {
      spare -= other.number;
      continue;
    }
    if (other.out >= 0) out.add(2 * other.out + 1, -t);
    if (other.back >= 0) out.add(2 * other.back, needs[c]!);
  }
}

/** Sorts the chosen by the later of the two moves that make each hold at `t`: by insertion, as they are few. */
function lastMovedFirst(trail: Trail, tasks: readonly Task[], t: number): void {
  for (let c = 0; c < chosen.length; c++) {
    const k = chosen[c]!;
    const need = needs[c]!;
    const { out, back } = tasks[k]!;
    const move = Math.max(out < 0 ? -1 : trail.moveOf(2 * out + 1, -t), back < 0 ? -1 : trail.moveOf(2 * back, need));
    let m = c;
    for (; m > 0 && moves[m - 1]! < move; m--) {
      chosen[m] = chosen[m - 1]!;
      needs[m] = needs[m - 1]!;
      moves[m] = moves[m - 1]!;
    }
    chosen[m] = k;
    needs[m] = need;
    moves[m] = move;
  }
}

const chosen: number[] = [];
const needs: number[] = [];
const moves: number[] = [];
