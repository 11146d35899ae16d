import type { ElapsedMinute } from "../../src/core/base";
import { type Problem, type Solution, verify } from "../../src/core/schedule";

interface Option {
  readonly start: number;
  readonly finish: number;
  /** Minutes at which the job's clock runs. */
  readonly running: readonly number[];
}

/**
 * The earliest finish of a small problem by trying every minute for every job; -1 when nothing fits within the horizon. Links and capacities are looked at
 * as soon as a job is placed, minute by minute; stock is left to `verify`, which has the last word on everything.
 */
export function enumerate(p: Problem): { readonly finish: number; readonly solution: Solution | null } {
  const start = new Int32Array(p.jobs);
  const finish = new Int32Array(p.jobs);
  const options = Array.from({ length: p.jobs }, (_, j) => optionsOf(p, j));
  const free = p.capacities.map((c) => Array.from({ length: p.horizon + 1 }, (_, t) => levelAt(c.times, c.levels, t)));
  const demands = Array.from({ length: p.jobs }, (_, j) => demandsOf(p, j));
  let best = p.horizon + 1;
  let solution: Solution | null = null;

  /** Takes what a job asks for (or gives it back); whether there was enough. */
  const take = (j: number, o: Option, sign: 1 | -1): boolean => {
    let enough = true;
    for (const d of demands[j]!) {
      const minutes = d.through ? Array.from({ length: o.finish - o.start }, (_, k) => o.start + k) : o.running;
      for (const t of minutes) {
        free[d.capacity]![t]! -= sign * d.number;
        if (free[d.capacity]![t]! < 0) enough = false;
      }
    }
    return enough;
  };

  const place = (j: number, last: number): void => {
    if (j === p.jobs) {
      if (verify(p, { start, finish }).length > 0) return;
      best = last;
      solution = { start: start.slice(), finish: finish.slice() };
      return;
    }
    for (const o of options[j]!) {
      if (Math.max(last, o.finish) >= best) break;
      start[j] = o.start;
      finish[j] = o.finish;
      if (!linked(p, j, start, finish)) continue;
      if (take(j, o, 1)) place(j + 1, Math.max(last, o.finish));
      take(j, o, -1);
    }
  };
  place(0, 0);
  return { finish: best > p.horizon ? -1 : best, solution };
}

function optionsOf(p: Problem, j: number): Option[] {
  const clock = p.clocks[p.clock[j]!]!;
  const runs = (t: number): boolean => clock.reading((t + 1) as ElapsedMinute) > clock.reading(t as ElapsedMinute);
  const out: Option[] = [];
  for (let start = p.release[j]!; start <= p.horizon; start++) {
    if (!runs(start)) continue;
    const finish: number = clock.advance(start as ElapsedMinute, p.amount[j]!);
    if (finish > p.horizon || finish > p.due[j]!) break;
    if (p.fixed[j]! >= 0 && p.fixed[j] !== start) continue;
    const running = Array.from({ length: finish - start }, (_, k) => start + k).filter(runs);
    if (p.unbroken[j] === 0 || running.length === finish - start) out.push({ start, finish, running });
  }
  return out;
}

function linked(p: Problem, j: number, start: Int32Array, finish: Int32Array): boolean {
  const l = p.links;
  for (let r = 0; r < l.count; r++) {
    if (Math.max(l.from[r]!, l.to[r]!) !== j) continue;
    const a = (l.fromEnd[r] === 0 ? start : finish)[l.from[r]!]! as ElapsedMinute;
    const b = (l.toEnd[r] === 0 ? start : finish)[l.to[r]!]!;
    const clock = p.clocks[l.clock[r]!]!;
    if (l.least[r]! >= 0 && clock.advance(a, l.least[r]!) > b) return false;
    if (l.most[r]! >= 0 && clock.advance(a, l.most[r]! + 1) <= b) return false;
  }
  return true;
}

function demandsOf(p: Problem, j: number): { capacity: number; number: number; through: boolean }[] {
  const out: { capacity: number; number: number; through: boolean }[] = [];
  for (let d = 0; d < p.demands.length; d += 3) {
    if (p.demands[d] !== j) continue;
    const c = p.capacities[p.demands[d + 1]!]!;
    const number = p.demands[d + 2]!;
    out.push({
      capacity: p.demands[d + 1]!,
      number,
      through: c.holds === "span" || (c.kind === "alone" && number >= Math.max(...c.levels)),
    });
  }
  return out;
}

function levelAt(times: Int32Array, levels: Int32Array, t: number): number {
  let level = levels[0]!;
  times.forEach((from, k) => {
    if (from <= t) level = levels[k]!;
  });
  return level;
}
