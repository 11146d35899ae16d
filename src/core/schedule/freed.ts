import { type ElapsedMinute, never } from "../base";
import { finishOf } from "./job";
import type { Links, Problem, Solution, Span } from "./problem";

/** A small problem cut out of a large one: what is put anew, and as much of the rest as it meets. */
export interface Freed {
  readonly problem: Problem;
  /** Of the schedule it was cut from, what is in it. */
  readonly solution: Solution;
  /** The whole schedule, with the starts for what is in it. */
  whole(start: Int32Array): Solution;
}

/**
 * Some jobs of a schedule to be put anew, all of which start at or after minute `from` now and will; the others stay where they are. Of those only the ones are in
 * it that end after `from`, or that a link or a stock ties to what is put anew: what is over by then leaves nothing behind but what it took out of stocks.
 */
export function freed(p: Problem, s: Solution, isFree: (job: number) => boolean, from: number): Freed {
  const free = Uint8Array.from({ length: p.jobs }, (_, j) => (isFree(j) ? 1 : 0));
  const kept = free.map((f, j) => (f === 1 || s.start[j]! >= from || s.finish[j]! > from ? 1 : 0));
  const meet = (a: number, b: number): boolean => free[a] === 1 || free[b] === 1;
  const rows = [...Array(p.links.count).keys()].filter((l) => meet(p.links.from[l]!, p.links.to[l]!));
  for (const l of rows) kept[p.links.from[l]!] = kept[p.links.to[l]!] = 1;
  const jobs = [...kept.keys()].filter((j) => kept[j] === 1);
  const place = new Int32Array(p.jobs).fill(-1);
  jobs.forEach((j, k) => {
    place[j] = k;
  });
  const of = (list: Int32Array): Int32Array => Int32Array.from(jobs, (j) => list[j]!);
  const demands: number[] = [];
  for (let d = 0; d < p.demands.length; d += 3)
    if (kept[p.demands[d]!] === 1) demands.push(place[p.demands[d]!]!, p.demands[d + 1]!, p.demands[d + 2]!);
  return {
    problem: {
      ...p,
      jobs: jobs.length,
      clock: of(p.clock),
      amount: of(p.amount),
      unbroken: Uint8Array.from(jobs, (j) => p.unbroken[j]!),
      release: Int32Array.from(jobs, (j) => (free[j] === 1 ? Math.max(from, p.release[j]!) : 0)),
      due: Int32Array.from(jobs, (j) => (free[j] === 1 ? p.due[j]! : never)),
      fixed: Int32Array.from(jobs, (j) => (free[j] === 1 ? p.fixed[j]! : s.start[j]!)),
      rank: of(p.rank),
      links: linksOf(p.links, rows, place),
      demands: Int32Array.from(demands),
      ...stocksOf(p, s, place, from),
    },
    solution: { start: of(s.start), finish: of(s.finish) },
    whole(start) {
      const out = { start: s.start.slice(), finish: s.finish.slice() };
      jobs.forEach((j, k) => {
        out.start[j] = start[k]!;
        out.finish[j] = finishOf(p, j, start[k]! as ElapsedMinute);
      });
      return out;
    },
  };
}

function linksOf(links: Links, rows: readonly number[], place: Int32Array): Links {
  return {
    count: rows.length,
    from: Int32Array.from(rows, (l) => place[links.from[l]!]!),
    to: Int32Array.from(rows, (l) => place[links.to[l]!]!),
    fromEnd: Uint8Array.from(rows, (l) => links.fromEnd[l]!),
    toEnd: Uint8Array.from(rows, (l) => links.toEnd[l]!),
    clock: Int32Array.from(rows, (l) => links.clock[l]!),
    least: Int32Array.from(rows, (l) => links.least[l]!),
    most: Int32Array.from(rows, (l) => links.most[l]!),
  };
}

/** In hand is what there is at minute `from`; what is out then and still to come back comes like a delivery. */
function stocksOf(p: Problem, s: Solution, place: Int32Array, from: number): Pick<Problem, "stocks" | "spans"> {
  const inHand = p.stocks.map((stock) => stock.inHand);
  const toCome = (job: number): boolean => s.start[job]! >= from || s.finish[job]! > from;
  const arrivals = p.stocks.map((stock, k) =>
    stock.arrivals.flatMap(({ job, number }) => {
      if (toCome(job)) return [{ job: place[job]!, number }];
      inHand[k]! += number;
      return [];
    }),
  );
  const spans: Span[] = [];
  for (const x of p.spans) {
    if (s.start[x.out]! >= from) spans.push({ ...x, out: place[x.out]!, back: x.back < 0 ? -1 : place[x.back]! });
    else if (x.back < 0) inHand[x.stock]! -= x.number;
    else if (!toCome(x.back)) inHand[x.stock]! -= x.loss;
    else {
      inHand[x.stock]! -= x.number;
      if (x.number > x.loss) arrivals[x.stock]!.push({ job: place[x.back]!, number: x.number - x.loss });
    }
  }
  return { stocks: p.stocks.map(({ id }, k) => ({ id, inHand: inHand[k]!, arrivals: arrivals[k]! })), spans };
}
