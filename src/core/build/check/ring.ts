/**
 * Rings in a graph of positions 0 to `count` - 1: one shortest ring through the first member of each knot of nodes that lead back to
 * themselves. Iterative (a chain of 20,000 overflows a recursive walk).
 */
export function rings(count: number, next: (node: number) => readonly number[]): number[][] {
  const found: number[][] = [];
  const done = new Uint8Array(count);
  const inRing = leftOver(count, next);
  for (let node = 0; node < count; node++) {
    if (!inRing[node] || done[node]) continue;
    const ring = shortestFrom(node, count, next, inRing);
    if (ring.length === 0) continue;
    found.push(ring);
    for (const reached of reachable(ring[0] as number, count, next, inRing)) done[reached] = 1;
  }
  return found;
}

/** Nodes that stay when nodes without a follower left are taken away again and again: rings and what leads into them. */
function leftOver(count: number, next: (node: number) => readonly number[]): Uint8Array {
  const before: number[][] = Array.from({ length: count }, () => []);
  const open = new Int32Array(count);
  for (let node = 0; node < count; node++) {
    for (const follower of next(node)) {
      before[follower]?.push(node);
      open[node] = (open[node] as number) + 1;
    }
  }
  const left = new Uint8Array(count).fill(1);
  const free = [...left.keys()].filter((node) => open[node] === 0);
  for (let node = free.pop(); node !== undefined; node = free.pop()) {
    left[node] = 0;
    for (const from of before[node] ?? []) {
      open[from] = (open[from] as number) - 1;
      if (open[from] === 0) free.push(from);
    }
  }
  return left;
}

function shortestFrom(start: number, count: number, next: (node: number) => readonly number[], within: Uint8Array): number[] {
  const from = new Int32Array(count).fill(-1);
  const queue = [start];
  for (let head = 0; head < queue.length; head++) {
    const node = queue[head] as number;
    for (const follower of next(node)) {
      if (follower === start) return trail(node, start, from);
      if (!within[follower] || from[follower] !== -1) continue;
      from[follower] = node;
      queue.push(follower);
    }
  }
  return [];
}

function trail(end: number, start: number, from: Int32Array): number[] {
  const ring = [end];
  for (let node = end; node !== start; node = from[node] as number) ring.push(from[node] as number);
  return ring.reverse();
}

function reachable(start: number, count: number, next: (node: number) => readonly number[], within: Uint8Array): number[] {
  const seen = new Uint8Array(count);
  const list = [start];
  seen[start] = 1;
  for (let head = 0; head < list.length; head++) {
    for (const follower of next(list[head] as number)) {
      if (seen[follower] || !within[follower]) continue;
      seen[follower] = 1;
      list.push(follower);
    }
  }
  return list;
}

/**
 * Positions that never come to stand on firm ground: each has alternatives, any one of which is enough once all its members are
 * grounded; no alternatives mean grounded from the start.
 */
export function ungrounded(count: number, alternatives: (node: number) => readonly (readonly number[])[]): Uint8Array {
  const missing: number[][] = [];
  const users: [number, number][][] = Array.from({ length: count }, () => []);
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
      for (const member of set) users[member]?.push([node, i]);
    });
    if (sets.length === 0 || sets.some((set) => set.length === 0)) ground(node);
  }
  for (let node = queue.pop(); node !== undefined; node = queue.pop()) {
    for (const [user, i] of users[node] ?? []) {
      const left = ((missing[user] as number[])[i] as number) - 1;
      (missing[user] as number[])[i] = left;
      if (left === 0) ground(user);
    }
  }
  return grounded.map((yes) => 1 - yes);
}
