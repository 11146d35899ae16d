import { type Problem, type Solution, withAfter } from "../schedule";
import type { Bound } from "./bound";
import type { Named } from "./names";

export type TurnKind = "people" | "equipment" | "room" | "alone" | "stock";

/** One job after another because both want the same person, thing or place: what one lets go, the other takes. */
export interface Turn {
  readonly from: number;
  readonly to: number;
  readonly kind: TurnKind;
  /** Id of the person, equipment, place or stock. */
  readonly of: string;
}

/**
 * The order in which people, equipment, places and stock are served in a plan, as finish-to-start turns: person by person, unit by unit. Two jobs that
 * take turns within each other's pauses have none; they stay where they are.
 */
export function turnsOf(bound: Bound, solution: Solution, order: Int32Array, named: Named): Turn[] {
  const { problem, build } = bound;
  const turns: Turn[] = [];
  const known = new Set<number>();
  const add = (from: number, to: number, kind: TurnKind, of: string): void => {
    if (from === to || from < 0 || solution.finish[from]! > solution.start[to]!) return;
    const key = (from * problem.jobs + to) * 8 + kinds.indexOf(kind);
    if (known.has(key)) return;
    known.add(key);
    turns.push({ from, to, kind, of });
  };
  persons(named, (from, to, i) => add(from, to, "people", build.people[i]!.id));
  const usersOf = usersBy(problem, order);
  problem.capacities.forEach((c, index) => {
    const users = usersOf[index]!;
    if (c.kind === "people") return;
    if (c.kind === "alone") alone(users, c.levels[0]!, (from, to) => add(from, to, "alone", c.id));
    else units(solution, users, c.levels[0]!, (from, to) => add(from, to, c.kind as TurnKind, c.id));
  });
  problem.stocks.forEach((stock, index) => {
    lots(problem, solution, order, index, (from, to) => add(from, to, "stock", stock.id));
  });
  return turns;
}

const kinds: readonly TurnKind[] = ["people", "equipment", "room", "alone", "stock"];

interface User {
  readonly job: number;
  readonly number: number;
}

function persons(named: Named, add: (from: number, to: number, person: number) => void): void {
  named.seats.forEach((list, i) => {
    for (let k = 1; k < list.length; k++) add(list[k - 1]!.job, list[k]!.job, i);
  });
}

/** By capacity other than people, who asks for how many of it, in the order in which they start. */
function usersBy(p: Problem, order: Int32Array): User[][] {
  const by: User[][] = p.capacities.map(() => []);
  const first = new Int32Array(p.jobs).fill(-1);
  const next = new Int32Array(p.demands.length);
  for (let d = p.demands.length - 3; d >= 0; d -= 3) {
    const job = p.demands[d]!;
    next[d] = first[job]!;
    first[job] = d;
  }
  for (let k = 0; k < order.length; k++) {
    const job = order[k]!;
    for (let d = first[job]!; d >= 0; d = next[d]!) {
      const capacity = p.demands[d + 1]!;
      if (p.capacities[capacity]!.kind !== "people") by[capacity]!.push({ job, number: p.demands[d + 2]! });
    }
  }
  return by;
}

/** Whoever takes the place alone comes after everybody before and before everybody after. */
function alone(users: readonly User[], all: number, add: (from: number, to: number) => void): void {
  users.forEach((taker, k) => {
    if (taker.number < all) return;
    for (let i = k - 1; i >= 0; i--) add(users[i]!.job, taker.job);
    for (let i = k + 1; i < users.length; i++) add(taker.job, users[i]!.job);
  });
}

/** Units are handed on: the one that has been free longest is taken first. */
function units(s: Solution, users: readonly User[], number: number, add: (from: number, to: number) => void): void {
  const last = new Int32Array(Math.max(0, number)).fill(-1);
  const freed = (u: number): number => (last[u]! < 0 ? -1 : s.finish[last[u]!]!);
  for (const { job, number: wanted } of users) {
    for (let k = 0; k < wanted; k++) {
      let longest = -1;
      for (let u = 0; u < last.length; u++) {
        if (last[u] !== job && freed(u) <= s.start[job]! && (longest < 0 || freed(u) < freed(longest))) longest = u;
      }
      if (longest < 0) break;
      add(last[longest]!, job);
      last[longest] = job;
    }
  }
}

/** What is out comes from what lay there longest. */
function lots(p: Problem, s: Solution, order: Int32Array, stock: number, add: (from: number, to: number) => void): void {
  const heap: { job: number; at: number; left: number }[] = [{ job: -1, at: -1, left: p.stocks[stock]!.inHand }];
  for (const a of p.stocks[stock]!.arrivals) heap.push({ job: a.job, at: s.finish[a.job]!, left: a.number });
  const spans = p.spans.filter((x) => x.stock === stock);
  for (const x of spans) if (x.back >= 0 && x.number > x.loss) heap.push({ job: x.back, at: s.finish[x.back]!, left: x.number - x.loss });
  heap.sort((a, b) => a.at - b.at);
  let first = 0;
  const asked = new Map<number, number>();
  for (const x of spans) asked.set(x.out, (asked.get(x.out) ?? 0) + x.number);
  for (const job of order) {
    let wanted = asked.get(job) ?? 0;
    for (let k = first; wanted > 0 && k < heap.length && heap[k]!.at <= s.start[job]!; k++) {
      const lot = heap[k]!;
      const taken = Math.min(lot.left, wanted);
      if (taken > 0) add(lot.job, job);
      lot.left -= taken;
      wanted -= taken;
      if (lot.left === 0 && k === first) first++;
    }
  }
}

/** The problem with its turns as links; their rows follow those of the links, in order. */
export function withTurns(p: Problem, turns: readonly Turn[], plain: number): Problem {
  const from = turns.map((t) => t.from);
  const to = turns.map((t) => t.to);
  return { ...p, links: withAfter(p.links, from, to, plain) };
}
