import { never } from "../base";
import type { Problem } from "./problem";

/** What each job asks of capacities and stocks, packed by job; made once a problem. */
export interface Needs {
  readonly at: Int32Array;
  readonly capacity: Int32Array;
  readonly number: Int32Array;
  /** 1: held through pauses. */
  readonly span: Uint8Array;
  /** 1: people. */
  readonly people: Uint8Array;
  /** By job: jobs of one kind go by the same clock, unbroken or not, and ask for the same people. */
  readonly kind: Int32Array;
  readonly kinds: readonly Kind[];
  /** By job: what it takes out of stocks at its start, and what it brings back or delivers at its finish. */
  readonly out: readonly (readonly StockMove[])[];
  readonly back: readonly (readonly StockMove[])[];
}

export interface Kind {
  readonly clock: number;
  /** The shortest job of the kind that takes any time. */
  shortest: number;
}

export interface StockMove {
  readonly stock: number;
  readonly number: number;
}

const none: readonly StockMove[] = [];

export function needsOf(p: Problem): Needs {
  const count = p.demands.length / 3;
  const at = new Int32Array(p.jobs + 1);
  for (let d = 0; d < count; d++) at[p.demands[3 * d]! + 1]!++;
  for (let j = 0; j < p.jobs; j++) at[j + 1]! += at[j]!;
  const fill = at.slice();
  const capacity = new Int32Array(count);
  const number = new Int32Array(count);
  const span = new Uint8Array(count);
  const people = new Uint8Array(count);
  for (let d = 0; d < count; d++) {
    const row = fill[p.demands[3 * d]!]!++;
    capacity[row] = p.demands[3 * d + 1]!;
    number[row] = p.demands[3 * d + 2]!;
    people[row] = p.capacities[capacity[row]!]!.kind === "people" ? 1 : 0;
    span[row] = holdsThrough(p, capacity[row]!, number[row]!) ? 1 : 0;
  }
  const out: (readonly StockMove[])[] = new Array(p.jobs).fill(none);
  const back: (readonly StockMove[])[] = new Array(p.jobs).fill(none);
  for (const s of p.spans) {
    out[s.out] = added(out[s.out]!, s.stock, s.number);
    if (s.back >= 0 && s.number > s.loss) back[s.back] = added(back[s.back]!, s.stock, s.number - s.loss);
  }
  p.stocks.forEach((stock, s) => {
    for (const a of stock.arrivals) back[a.job] = added(back[a.job]!, s, a.number);
  });
  return { at, capacity, number, span, people, ...kindsOf(p, { at, capacity, number, people }), out, back };
}

/** Every demand for people leads from one kind to another; the first is told by clock and whether the job is unbroken. */
function kindsOf(
  p: Problem,
  { at, capacity, number, people }: Pick<Needs, "at" | "capacity" | "number" | "people">,
): Pick<Needs, "kind" | "kinds"> {
  const known = new Map<number, number>();
  const kinds: Kind[] = p.clocks.flatMap((_, clock) => [0, 1].map(() => ({ clock, shortest: never })));
  const kind = new Int32Array(p.jobs);
  for (let j = 0; j < p.jobs; j++) {
    let now = 2 * p.clock[j]! + p.unbroken[j]!;
    for (let d = at[j]!; d < at[j + 1]!; d++) {
      if (people[d] === 0) continue;
      const key = (now * p.capacities.length + capacity[d]!) * 1024 + number[d]!;
      let next = known.get(key);
      if (next === undefined) {
        next = kinds.push({ clock: p.clock[j]!, shortest: never }) - 1;
        known.set(key, next);
      }
      now = next;
    }
    if (p.amount[j]! > 0) kinds[now]!.shortest = Math.min(kinds[now]!.shortest, p.amount[j]!);
    kind[j] = now;
  }
  return { kind, kinds };
}

/** Whoever takes all of a place keeps it through pauses; the others are only there while they work. */
export function holdsThrough(p: Problem, capacity: number, number: number): boolean {
  const c = p.capacities[capacity]!;
  return c.holds === "span" || (c.kind === "alone" && number >= Math.max(...c.levels));
}

function added(list: readonly StockMove[], stock: number, number: number): readonly StockMove[] {
  const known = list.findIndex((m) => m.stock === stock);
  if (known < 0) return [...list, { stock, number }];
  return list.map((m, i) => (i === known ? { stock, number: m.number + number } : m));
}
