import { type ElapsedMinute, never, notEver } from "../base";
import { type Adjacency, adjacency, forwardOrder } from "./adjacency";
import { climb } from "./climb";
import { finishOf, fitFinish, fitStart, lastFit, lastStart } from "./job";
import type { Problem } from "./problem";
import { JobQueue } from "./queue";

/** Earliest times without people, equipment, room and stock, or the job at which they ran past what they may be. */
export interface Earliest {
  readonly start: Int32Array;
  readonly finish: Int32Array;
  /** -1 when all times could be met. */
  readonly broken: number;
  /** Which limit of `broken` was passed. */
  readonly by: "due" | "fixed" | "horizon";
  /** `2 * link + side` (0 least, 1 most): 1 where that side ever moved a job later. */
  readonly moved: Uint8Array;
  /** The side that set each job's start last, as above; -1: its release or the start of the build. */
  readonly parent: Int32Array;
}

/** How often a job is moved before the ring that moves it is looked for. */
const patience = 16;

/** Adjacency and order of a problem's links, made once and shared by all passes over it. */
export interface Net {
  readonly adj: Adjacency;
  readonly order: Int32Array;
}

export function netOf(p: Problem): Net {
  const adj = adjacency(p.jobs, p.links);
  return { adj, order: forwardOrder(p.jobs, p.links, adj) };
}

/**
 * Label-correcting longest paths with time-dependent arcs: every least link and, read backwards, every most link pushes a job later until nothing moves.
 * After Franck, Neumann & Schwindt (2001), OR Spektrum 23:297-324 (from memory). `atLeast` holds starts that no job may go below.
 */
export function earliest(p: Problem, net: Net, atLeast?: Int32Array): Earliest {
  const n = p.jobs;
  const { links } = p;
  const { adj } = net;
  const start = new Int32Array(n).fill(-1);
  const finish = new Int32Array(n).fill(-1);
  const needStart = atLeast === undefined ? p.release.slice() : maxOf(p.release, atLeast);
  const needFinish = new Int32Array(n).fill(-1);
  const startBy = new Int32Array(n).fill(-1);
  const finishBy = new Int32Array(n).fill(-1);
  const parent = new Int32Array(n).fill(-1);
  const moved = new Uint8Array(2 * links.count);
  const turns = new Int32Array(n);
  const queue = new JobQueue(n);
  for (let k = 0; k < n; k++) queue.push(net.order[k]!);

  const need = (code: number, job: number, end: number, t: number): void => {
    if (end === 0) {
      if (t <= needStart[job]!) return;
      needStart[job] = t;
      startBy[job] = code;
      if (start[job]! >= t) return;
    } else {
      if (t <= needFinish[job]!) return;
      needFinish[job] = t;
      finishBy[job] = code;
      if (finish[job]! >= t) return;
    }
    moved[code] = 1;
    queue.push(job);
  };

  const failed = (broken: number, by: Earliest["by"]): Earliest => ({ start, finish, broken, by, moved, parent });

  for (let j = queue.pop(); j >= 0; j = queue.pop()) {
    let s = fitStart(p, j, Math.max(0, needStart[j]!) as ElapsedMinute);
    parent[j] = startBy[j]!;
    if (needFinish[j]! >= 0 && finishOf(p, j, s) < needFinish[j]!) {
      const later = fitFinish(p, j, needFinish[j] as ElapsedMinute);
      if (later > s) {
        s = later;
        parent[j] = finishBy[j]!;
      }
    }
    if (p.fixed[j]! >= 0) {
      if (s > p.fixed[j]! || fitStart(p, j, p.fixed[j] as ElapsedMinute) !== p.fixed[j]!) return failed(j, "fixed");
      s = p.fixed[j] as ElapsedMinute;
    }
    const f = finishOf(p, j, s);
    if (s > p.horizon || f > p.horizon) return failed(j, "horizon");
    if (f > p.due[j]!) return failed(j, "due");
    if (s === start[j]! && f === finish[j]!) continue;
    start[j] = s;
    finish[j] = f;
    if (++turns[j]! % patience === 0) {
      const jump = climb(p, j, start, parent);
      if (jump > s) {
        needStart[j] = Math.min(jump, never);
        queue.push(j);
        continue;
      }
    }
    for (let k = adj.outAt[j]!; k < adj.outAt[j + 1]!; k++) {
      const l = adj.out[k]!;
      if (links.least[l]! < 0) continue;
      const end = (links.fromEnd[l] === 0 ? s : f) as ElapsedMinute;
      need(2 * l, links.to[l]!, links.toEnd[l]!, links.least[l] === 0 ? end : p.clocks[links.clock[l]!]!.advance(end, links.least[l]!));
    }
    for (let k = adj.inAt[j]!; k < adj.inAt[j + 1]!; k++) {
      const l = adj.in[k]!;
      if (links.most[l]! < 0) continue;
      const end = (links.toEnd[l] === 0 ? s : f) as ElapsedMinute;
      need(2 * l + 1, links.from[l]!, links.fromEnd[l]!, p.clocks[links.clock[l]!]!.unlimit(end, links.most[l]!));
    }
  }
  return { start, finish, broken: -1, by: "horizon", moved, parent };
}

/**
 * Latest times with every finish at or before `target` (`never`: only dues and fixed dates bind) and its own due; assumes the earliest times exist and
 * finish by `target`. `never` where nothing binds.
 */
export function latest(p: Problem, net: Net, target: ElapsedMinute): { readonly start: Int32Array; readonly finish: Int32Array } {
  const n = p.jobs;
  const { links } = p;
  const { adj } = net;
  const start = new Int32Array(n).fill(never);
  const finish = new Int32Array(n).fill(never);
  const mayStart = new Int32Array(n).fill(never);
  const mayFinish = new Int32Array(n);
  const queue = new JobQueue(n);
  for (let j = 0; j < n; j++) {
    mayFinish[j] = Math.min(target, p.due[j]!);
    if (p.fixed[j]! >= 0) mayStart[j] = p.fixed[j]!;
  }
  for (let k = n - 1; k >= 0; k--) queue.push(net.order[k]!);

  const may = (job: number, end: number, t: number): void => {
    const bound = end === 0 ? mayStart : mayFinish;
    if (t >= bound[job]!) return;
    bound[job] = t;
    if ((end === 0 ? start : finish)[job]! > t) queue.push(job);
  };

  for (let j = queue.pop(); j >= 0; j = queue.pop()) {
    if (mayFinish[j]! >= never && mayStart[j]! >= never) continue;
    let s = mayFinish[j]! >= never ? never : lastFit(p, j, mayFinish[j] as ElapsedMinute);
    if (mayStart[j]! < s) s = lastStart(p, j, mayStart[j] as ElapsedMinute);
    if (s <= notEver) s = 0 as ElapsedMinute;
    const f = finishOf(p, j, s);
    if (s >= start[j]! && f >= finish[j]!) continue;
    start[j] = s;
    finish[j] = f;
    for (let k = adj.inAt[j]!; k < adj.inAt[j + 1]!; k++) {
      const l = adj.in[k]!;
      if (links.least[l]! < 0) continue;
      const end = (links.toEnd[l] === 0 ? s : f) as ElapsedMinute;
      may(links.from[l]!, links.fromEnd[l]!, links.least[l] === 0 ? end : p.clocks[links.clock[l]!]!.retreat(end, links.least[l]!));
    }
    for (let k = adj.outAt[j]!; k < adj.outAt[j + 1]!; k++) {
      const l = adj.out[k]!;
      if (links.most[l]! < 0) continue;
      const end = (links.fromEnd[l] === 0 ? s : f) as ElapsedMinute;
      may(links.to[l]!, links.toEnd[l]!, p.clocks[links.clock[l]!]!.limit(end, links.most[l]!));
    }
  }
  return { start, finish };
}

function maxOf(a: Int32Array, b: Int32Array): Int32Array {
  const out = a.slice();
  for (let i = 0; i < out.length; i++) if (b[i]! > out[i]!) out[i] = b[i]!;
  return out;
}
