import type { Model, Shared, Task } from "./model";

/** Every two jobs are looked at: beyond so many jobs that costs more than it tells. */
const mostJobs = 500;

/**
 * Jobs of which no two can ever be at work together, by what they share or by waits between them, each list as something of which there is one: grown from
 * the jobs that take more than half of a number, the longest first (redundant disjunctive resources: Brucker, Knust, Schoo & Thiele 1998, EJOR 107:272-288;
 * Baptiste & Le Pape 2000, Constraints 5:119-139, from memory). It says nothing new of two jobs, but edge finding on it does of many.
 */
export function cliquesOf(m: Model): Shared[] {
  if (m.jobs > mostJobs) return [];
  const apart = apartOf(m);
  const jobs = Array.from({ length: m.jobs }, (_, j) => j).filter((j) => steady(m, j));
  jobs.sort((a, b) => m.maps[b]!.only - m.maps[a]!.only || a - b);
  const lists = m.shared.map((s) => {
    const clique = jobs.filter((j) => s.tasks.some((t) => whole(m, t) && t.out === j && 2 * t.number > s.level));
    const large = new Set(clique);
    for (const j of jobs) if (!large.has(j) && clique.every((i) => apart[i * m.jobs + j] === 1)) clique.push(j);
    return large.size < 2 || clique.length < 3 ? [] : clique.sort((a, b) => a - b);
  });
  const seen = new Set([""]);
  return lists.flatMap((clique) => {
    if (seen.has(clique.join())) return [];
    seen.add(clique.join());
    const tasks = clique.map((j): Task => ({ out: j, back: j, number: 1, runs: null }));
    return [{ level: 1, times: Int32Array.of(0), missing: Int32Array.of(0), tasks, implied: true }];
  });
}

function steady(m: Model, j: number): boolean {
  return m.maps[j]!.only > 0;
}

/** Whether a task holds its number all through a job of one length. */
function whole(m: Model, t: Task): boolean {
  return t.out >= 0 && t.out === t.back && t.runs === null && steady(m, t.out);
}

/** Of jobs i and j, at i * jobs + j: 1 where they can never be at work together. */
function apartOf(m: Model): Uint8Array {
  const n = m.jobs;
  const apart = new Uint8Array(n * n);
  const part = (i: number, j: number): void => {
    apart[i * n + j] = 1;
    apart[j * n + i] = 1;
  };
  for (const s of m.shared) {
    const tasks = s.tasks.filter((t) => whole(m, t));
    for (const a of tasks) for (const b of tasks) if (a.out !== b.out && a.number + b.number > s.level) part(a.out, b.out);
  }
  const after = afterOf(m);
  for (let i = 0; i < n; i++) {
    const seen = new Set(after[i]!);
    for (const j of seen) {
      part(i, j);
      for (const k of after[j]!) seen.add(k);
    }
  }
  return apart;
}

/** By job, those that waits alone keep from starting before its end. */
function afterOf(m: Model): number[][] {
  const after = Array.from({ length: m.jobs }, (): number[] => []);
  for (const { from, to, lag } of m.lags) {
    const i = from >> 1;
    const j = to >> 1;
    if ((from & 1) === 0 && i < m.jobs && j < m.jobs && steady(m, i) && lag >= m.maps[i]!.only) after[i]!.push(j);
  }
  return after;
}
