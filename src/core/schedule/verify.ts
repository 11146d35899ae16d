import type { Clock, ElapsedMinute } from "../base";
import type { Problem, Solution } from "./problem";

/** What a schedule breaks: one entry a broken rule. */
export interface Broken {
  readonly rule: "start" | "finish" | "unbroken" | "release" | "due" | "fixed" | "least" | "most" | "capacity" | "stock";
  /** Job, link row, capacity or stock. */
  readonly index: number;
  readonly at: number;
}

/**
 * The slow and obvious second look at a schedule: every job minute by minute on its own clock, every link from both ends, every capacity and stock at
 * every instant at which anything changes. Uses of a clock only `reading` and `advance`, and nothing of what made the schedule.
 */
export function verify(p: Problem, s: Solution): Broken[] {
  return [...jobs(p, s), ...links(p, s), ...capacities(p, s), ...stocks(p, s)];
}

function jobs(p: Problem, s: Solution): Broken[] {
  const out: Broken[] = [];
  for (let j = 0; j < p.jobs; j++) {
    const clock = p.clocks[p.clock[j]!]!;
    const start = s.start[j]!;
    const finish = s.finish[j]!;
    const add = (rule: Broken["rule"], at: number): void => void out.push({ rule, index: j, at });
    if (start < 0 || !runs(clock, start)) add("start", start);
    if (clock.advance(start as ElapsedMinute, p.amount[j]!) !== finish) add("finish", finish);
    // Minute by minute would be 1,440 a day; a run is whole exactly when as much passed on the clock as in time.
    if (p.unbroken[j] === 1 && amount(clock, start, finish) !== finish - start) add("unbroken", start);
    if (start < p.release[j]!) add("release", start);
    if (finish > p.due[j]!) add("due", finish);
    if (p.fixed[j]! >= 0 && start !== p.fixed[j]!) add("fixed", start);
  }
  return out;
}

function links(p: Problem, s: Solution): Broken[] {
  const out: Broken[] = [];
  const l = p.links;
  for (let r = 0; r < l.count; r++) {
    const a = (l.fromEnd[r] === 0 ? s.start : s.finish)[l.from[r]!]!;
    const b = (l.toEnd[r] === 0 ? s.start : s.finish)[l.to[r]!]!;
    const clock = p.clocks[l.clock[r]!]!;
    if (l.least[r]! >= 0 && clock.advance(a as ElapsedMinute, l.least[r]!) > b) out.push({ rule: "least", index: r, at: b });
    // Too late once more than the most is there.
    if (l.most[r]! >= 0 && clock.advance(a as ElapsedMinute, l.most[r]! + 1) <= b) out.push({ rule: "most", index: r, at: b });
  }
  return out;
}

function capacities(p: Problem, s: Solution): Broken[] {
  const out: Broken[] = [];
  p.capacities.forEach((c, index) => {
    const users: { job: number; number: number; through: boolean }[] = [];
    const instants = new Set<number>();
    const highest = c.levels.reduce((a, b) => Math.max(a, b), 0);
    for (let d = 0; d < p.demands.length; d += 3) {
      if (p.demands[d + 1] !== index) continue;
      const job = p.demands[d]!;
      const number = p.demands[d + 2]!;
      users.push({ job, number, through: c.holds === "span" || (c.kind === "alone" && number >= highest) });
      instants.add(s.start[job]!);
      for (const t of resumes(p, job, s)) instants.add(t);
    }
    const last = users.reduce((t, u) => Math.max(t, s.finish[u.job]!), 0);
    for (const t of c.times) if (t < last) instants.add(t);
    for (const t of instants) {
      let used = 0;
      for (const u of users) {
        const inside = s.start[u.job]! <= t && t < s.finish[u.job]!;
        if (inside && (u.through || runs(p.clocks[p.clock[u.job]!]!, t))) used += u.number;
      }
      if (used > 0 && used > level(c.times, c.levels, t)) out.push({ rule: "capacity", index, at: t });
    }
  });
  return out;
}

/** The minutes inside a job at which its clock goes on after a pause, found from readings alone. */
function resumes(p: Problem, job: number, s: Solution): number[] {
  const clock = p.clocks[p.clock[job]!]!;
  const out: number[] = [];
  const finish = s.finish[job]!;
  let t = s.start[job]!;
  while (t < finish) {
    // The furthest minute up to which nothing paused, by halving.
    let low = t;
    let high = finish;
    while (low < high) {
      const mid = low + Math.ceil((high - low) / 2);
      if (amount(clock, t, mid) === mid - t) low = mid;
      else high = mid - 1;
    }
    if (low >= finish) break;
    t = clock.advance(low as ElapsedMinute, 1) - 1;
    out.push(t);
  }
  return out;
}

function stocks(p: Problem, s: Solution): Broken[] {
  const out: Broken[] = [];
  p.stocks.forEach((stock, index) => {
    const spans = p.spans.filter((x) => x.stock === index);
    const instants = new Set<number>([0, ...spans.map((x) => s.start[x.out]!)]);
    for (const t of instants) {
      let left = stock.inHand;
      for (const a of stock.arrivals) if (s.finish[a.job]! <= t) left += a.number;
      for (const x of spans) {
        if (s.start[x.out]! > t) continue;
        left -= x.back >= 0 && s.finish[x.back]! <= t ? x.loss : x.number;
      }
      if (left < 0) out.push({ rule: "stock", index, at: t });
    }
  });
  return out;
}

function amount(clock: Clock, from: number, to: number): number {
  return clock.reading(to as ElapsedMinute) - clock.reading(from as ElapsedMinute);
}

function runs(clock: Clock, t: number): boolean {
  return amount(clock, t, t + 1) > 0;
}

function level(times: Int32Array, levels: Int32Array, t: number): number {
  let value = levels[0] ?? 0;
  for (let i = 0; i < times.length && times[i]! <= t; i++) value = levels[i]!;
  return value;
}
