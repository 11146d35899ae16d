import type { Clock, ElapsedMinute } from "../../src/core/base";
import type { Problem, WitnessPart } from "../../src/core/schedule";

/** Where a job may begin and end, and the minutes in which it is at work. */
interface Option {
  readonly start: number;
  readonly finish: number;
  readonly work: readonly number[];
}

/**
 * The earliest finish of a small problem, or of some of its parts, by trying every minute for every job; -1 when nothing fits within the horizon. Of a
 * clock only readings are used, and nothing of the scheduler. `any`: the finish of the first schedule that is found.
 */
export function bruteFinish(p: Problem, parts: readonly WitnessPart[], any = false): number {
  const kept = new Set(parts.map(nameOf));
  const options = Array.from({ length: p.jobs }, (_, j) => optionsOf(p, j, kept));
  // Jobs with few possibilities first: what cannot be is met early.
  const order = options.map((_, j) => j).sort((a, b) => options[a]!.length - options[b]!.length);
  const free = p.capacities.map((c) => Array.from({ length: p.horizon + 1 }, (_, t) => levelAt(c.times, c.levels, t)));
  const at: (Option | undefined)[] = new Array(p.jobs).fill(undefined);
  let best = -1;

  const place = (k: number, last: number): void => {
    if (k === p.jobs) {
      if (stocked(p, at as Option[], kept)) best = last;
      return;
    }
    const j = order[k]!;
    for (const o of options[j]!) {
      const finish = Math.max(last, o.finish);
      if (best >= 0 && (any || finish >= best)) continue;
      at[j] = o;
      if (!linked(p, j, at, kept)) continue;
      if (take(p, j, o, free, kept, 1)) place(k + 1, finish);
      take(p, j, o, free, kept, -1);
    }
    at[j] = undefined;
  };
  place(0, 0);
  return best;
}

/** One name for each part. */
export function nameOf(part: WitnessPart): string {
  if (part.kind === "link") return `${part.side} ${part.link}`;
  return `${part.kind} ${"index" in part ? part.index : part.job}`;
}

/** Every part of a problem. */
export function allParts(p: Problem): WitnessPart[] {
  const jobs = Array.from({ length: p.jobs }, (_, job) => job);
  const links = Array.from({ length: p.links.count }, (_, link) => link);
  return [
    ...jobs.flatMap((job) => (["job", "release", "due", "fixed"] as const).map((kind) => ({ kind, job }))),
    ...links.flatMap((link) => (["least", "most"] as const).map((side) => ({ kind: "link" as const, link, side }))),
    ...p.capacities.map((_, index) => ({ kind: "capacity" as const, index })),
    ...p.stocks.map((_, index) => ({ kind: "stock" as const, index })),
  ];
}

function gathered(clock: Clock, from: number, to: number): number {
  return clock.reading(to as ElapsedMinute) - clock.reading(from as ElapsedMinute);
}

function optionsOf(p: Problem, j: number, kept: ReadonlySet<string>): Option[] {
  const clock = p.clocks[p.clock[j]!]!;
  const whole = kept.has(`job ${j}`);
  const runs = (t: number): boolean => gathered(clock, t, t + 1) > 0;
  const out: Option[] = [];
  for (let start = kept.has(`release ${j}`) ? p.release[j]! : 0; start <= p.horizon; start++) {
    if (kept.has(`fixed ${j}`) && p.fixed[j]! >= 0 && p.fixed[j] !== start) continue;
    if (whole && !runs(start)) continue;
    for (let finish = start; finish <= p.horizon; finish++) {
      if (kept.has(`due ${j}`) && finish > p.due[j]!) break;
      if (whole && gathered(clock, start, finish) < p.amount[j]!) continue;
      if (!whole || p.unbroken[j] === 0 || finish - start === p.amount[j]!) {
        const minutes = Array.from({ length: finish - start }, (_, k) => start + k);
        out.push({ start, finish, work: whole ? minutes.filter(runs) : [] });
      }
      if (whole) break;
    }
  }
  if (whole) return out;
  const [startMatters, finishMatters] = mattering(p, j, kept);
  if (startMatters && finishMatters) return out;
  return distinct(out, (o) => (startMatters ? o.start : finishMatters ? o.finish : 0));
}

/** Whether anything that is kept speaks of the start, or of the finish, of a job without length. */
function mattering(p: Problem, j: number, kept: ReadonlySet<string>): [boolean, boolean] {
  const l = p.links;
  const ends: [boolean, boolean] = [kept.has(`release ${j}`) || kept.has(`fixed ${j}`), kept.has(`due ${j}`)];
  for (let r = 0; r < l.count; r++) {
    if (!kept.has(`least ${r}`) && !kept.has(`most ${r}`)) continue;
    if (l.from[r] === j) ends[l.fromEnd[r]!] = true;
    if (l.to[r] === j) ends[l.toEnd[r]!] = true;
  }
  for (const x of p.spans) {
    if (!kept.has(`stock ${x.stock}`)) continue;
    if (x.out === j) ends[0] = true;
    if (x.back === j) ends[1] = true;
  }
  p.stocks.forEach((s, i) => {
    if (kept.has(`stock ${i}`) && s.arrivals.some((a) => a.job === j)) ends[1] = true;
  });
  return ends;
}

/** One option for each value, the shortest. */
function distinct(options: readonly Option[], of: (o: Option) => number): Option[] {
  const out = new Map<number, Option>();
  for (const o of options) {
    const known = out.get(of(o));
    if (known === undefined || o.finish - o.start < known.finish - known.start) out.set(of(o), o);
  }
  return [...out.values()].sort((a, b) => a.finish - b.finish);
}

function linked(p: Problem, j: number, at: readonly (Option | undefined)[], kept: ReadonlySet<string>): boolean {
  const l = p.links;
  for (let r = 0; r < l.count; r++) {
    const from = at[l.from[r]!];
    const to = at[l.to[r]!];
    if (from === undefined || to === undefined || (l.from[r] !== j && l.to[r] !== j)) continue;
    const a = l.fromEnd[r] === 0 ? from.start : from.finish;
    const b = l.toEnd[r] === 0 ? to.start : to.finish;
    const clock = p.clocks[l.clock[r]!]!;
    if (kept.has(`least ${r}`) && l.least[r]! >= 0 && (b < a || gathered(clock, a, b) < l.least[r]!)) return false;
    if (kept.has(`most ${r}`) && l.most[r]! >= 0 && gathered(clock, a, b) > l.most[r]!) return false;
  }
  return true;
}

/** Takes what a job asks for, minute by minute, or gives it back; whether there was enough. */
function take(p: Problem, j: number, o: Option, free: number[][], kept: ReadonlySet<string>, sign: 1 | -1): boolean {
  let enough = true;
  for (let d = 0; d < p.demands.length; d += 3) {
    const c = p.demands[d + 1]!;
    if (p.demands[d] !== j || !kept.has(`capacity ${c}`) || !kept.has(`job ${j}`)) continue;
    const { kind, holds, levels } = p.capacities[c]!;
    const number = p.demands[d + 2]!;
    const through = holds === "span" || (kind === "alone" && number >= Math.max(...levels));
    const minutes = through ? Array.from({ length: o.finish - o.start }, (_, k) => o.start + k) : o.work;
    for (const t of minutes) {
      free[c]![t]! -= sign * number;
      if (free[c]![t]! < 0) enough = false;
    }
  }
  return enough;
}

/** Whether at every minute there is as much of every stock as is out. */
function stocked(p: Problem, at: readonly Option[], kept: ReadonlySet<string>): boolean {
  return p.stocks.every((stock, s) => {
    if (!kept.has(`stock ${s}`)) return true;
    for (let t = 0; t <= p.horizon; t++) {
      let left = stock.inHand;
      for (const a of stock.arrivals) if (at[a.job]!.finish <= t) left += a.number;
      for (const x of p.spans) {
        if (x.stock !== s || at[x.out]!.start > t) continue;
        left -= x.back >= 0 && at[x.back]!.finish <= t ? x.loss : x.number;
      }
      if (left < 0) return false;
    }
    return true;
  });
}

function levelAt(times: Int32Array, levels: Int32Array, t: number): number {
  let level = levels[0]!;
  times.forEach((from, k) => {
    if (from <= t) level = levels[k]!;
  });
  return level;
}
