/**
 * Rings in a graph of positions 0 to `count` - 1: of each knot of nodes that lead back to themselves, one shortest ring through its first node.
 */
export function rings(count: number, next: (node: number) => readonly number[]): number[][] {
  const knot = knots(count, next);
  const told = new Set<number>();
  const found: number[][] = [];
  for (let node = 0; node < count; node++) {
    const mine = knot[node] as number;
    if (told.has(mine)) continue;
    const ring = shortestFrom(node, next, (other) => knot[other] === mine);
    if (ring.length === 0) continue;
    told.add(mine);
    found.push(ring);
  }
  return found;
}

/** A number for each node, the same for nodes that lead to each other (Tarjan 1972, without recursion: a chain of 20,000 overflows it). */
function knots(count: number, next: (node: number) => readonly number[]): Int32Array {
  const knot = new Int32Array(count).fill(-1);
  const seen = new Int32Array(count);
  const low = new Int32Array(count);
  const done = new Int32Array(count);
  const open: number[] = [];
  let clock = 0;
  for (let root = 0; root < count; root++) {
    if (seen[root]) continue;
    const path = [root];
    for (let node = path.at(-1); node !== undefined; node = path.at(-1)) {
      if (!seen[node]) {
        clock++;
        seen[node] = clock;
        low[node] = clock;
        open.push(node);
      }
      const follower = next(node)[done[node] as number];
      if (follower !== undefined) {
        done[node] = (done[node] as number) + 1;
        if (!seen[follower]) path.push(follower);
        else if (knot[follower] === -1) low[node] = Math.min(low[node] as number, seen[follower] as number);
        continue;
      }
      path.pop();
      const before = path.at(-1);
      if (before !== undefined) low[before] = Math.min(low[before] as number, low[node] as number);
      if (low[node] !== seen[node]) continue;
      for (let member = open.pop(); member !== undefined; member = open.pop()) {
        knot[member] = node;
        if (member === node) break;
      }
    }
  }
  return knot;
}

function shortestFrom(start: number, next: (node: number) => readonly number[], within: (node: number) => boolean): number[] {
  const from = new Map<number, number>([[start, start]]);
  const queue = [start];
  for (let head = 0; head < queue.length; head++) {
    const node = queue[head] as number;
    for (const follower of next(node)) {
      if (follower === start) return trail(node, start, from);
      if (from.has(follower) || !within(follower)) continue;
      from.set(follower, node);
      queue.push(follower);
    }
  }
  return [];
}

function trail(end: number, start: number, from: ReadonlyMap<number, number>): number[] {
  const ring = [end];
  for (let node = end; node !== start; ring.push(node)) node = from.get(node) ?? start;
  return ring.reverse();
}

/**
 * Positions that never come to stand on firm ground: each has alternatives, any one of which is enough once all its members are
 * grounded; no alternatives mean grounded from the start.
 */
export function ungrounded(count: number, alternatives: (node: number) => readonly (readonly number[])[]): Uint8Array {
  const missing: number[][] = [];
  const users = new Map<number, [number, number][]>();
  const grounded = new Uint8Array(count);
  const queue: number[] = [];
  const ground = (node: number): void => {
    if (grounded[node]) return;
    grounded[node] = 1;
    queue.push(node);
  };
  for (let node = 0; node < count; node++) {
    const sets = alternatives(node);
    missing.push(sets.map((set) => set.length));
    sets.forEach((set, i) => {
      for (const member of set) {
        const list = users.get(member);
        if (list) list.push([node, i]);
        else users.set(member, [[node, i]]);
      }
    });
    if (sets.length === 0 || sets.some((set) => set.length === 0)) ground(node);
  }
  for (let node = queue.pop(); node !== undefined; node = queue.pop()) {
    for (const [user, i] of users.get(node) ?? []) {
      const left = ((missing[user] as number[])[i] as number) - 1;
      (missing[user] as number[])[i] = left;
      if (left === 0) ground(user);
    }
  }
  return grounded.map((yes) => 1 - yes);
}
