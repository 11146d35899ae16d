import type { Links } from "./problem";

/** Link rows by the job they leave and by the job they enter, packed. */
export interface Adjacency {
  readonly outAt: Int32Array;
  readonly out: Int32Array;
  readonly inAt: Int32Array;
  readonly in: Int32Array;
}

export function adjacency(jobs: number, links: Links): Adjacency {
  const outAt = new Int32Array(jobs + 1);
  const inAt = new Int32Array(jobs + 1);
  for (let l = 0; l < links.count; l++) {
    outAt[links.from[l]! + 1]!++;
    inAt[links.to[l]! + 1]!++;
  }
  for (let j = 0; j < jobs; j++) {
    outAt[j + 1]! += outAt[j]!;
    inAt[j + 1]! += inAt[j]!;
  }
  const out = new Int32Array(links.count);
  const into = new Int32Array(links.count);
  const o = outAt.slice();
  const i = inAt.slice();
  for (let l = 0; l < links.count; l++) {
    out[o[links.from[l]!]!++] = l;
    into[i[links.to[l]!]!++] = l;
  }
  return { outAt, out, inAt, in: into };
}

/** Jobs so that least links lead forward where that is possible (first come, first served); members of rings follow at the end. */
export function forwardOrder(jobs: number, links: Links, adj: Adjacency): Int32Array {
  const waiting = new Int32Array(jobs);
  for (let l = 0; l < links.count; l++) if (links.least[l]! >= 0) waiting[links.to[l]!]!++;
  const order = new Int32Array(jobs);
  const taken = new Uint8Array(jobs);
  let tail = 0;
  for (let j = 0; j < jobs; j++) if (waiting[j] === 0) order[tail++] = j;
  for (let head = 0; head < tail; head++) {
    const j = order[head]!;
    taken[j] = 1;
    for (let k = adj.outAt[j]!; k < adj.outAt[j + 1]!; k++) {
      const l = adj.out[k]!;
      if (links.least[l]! >= 0 && --waiting[links.to[l]!]! === 0) order[tail++] = links.to[l]!;
    }
  }
  if (tail < jobs) for (let j = 0; j < jobs; j++) if (taken[j] === 0) order[tail++] = j;
  return order;
}
