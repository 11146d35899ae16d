import type { Build } from "../../src/core/build";
import { type Rules, rulesOf } from "./rules";
import type { Done } from "./state";

export interface Answers {
  readonly possible: boolean;
  /** `may[a][b]`: some valid order has a before b. */
  readonly may: readonly (readonly boolean[])[];
}

/**
 * All orders at once: every rule looks only at which steps came before, so the sets of steps done are the states, and an order is a path from
 * none to all. Each way of settling the choices is gone through in turn. Meant for up to about 12 steps.
 */
export function brute(build: Build, rules: Rules = rulesOf(build)): Answers {
  const n = build.steps.length;
  const may = Array.from({ length: n }, () => new Array<boolean>(n).fill(false));
  const next = nextSteps(n, rules);
  let possible = false;
  for (const pairs of settled(rules)) {
    const before = new Int32Array(n);
    for (const [from, to] of pairs) before[to]! |= from === to ? 1 << n : 1 << from;
    possible = walk(n, before, next, may) || possible;
  }
  return { possible, may };
}

/** Every order that breaks nothing, by going through them one by one. Slow; the check of `brute`. */
export function* validOrders(build: Build, rules: Rules = rulesOf(build)): Generator<readonly number[]> {
  const n = build.steps.length;
  const next = nextSteps(n, rules);
  const order: number[] = [];
  function* from(done: Done): Generator<readonly number[]> {
    if (order.length === n) {
      const turn = (s: number) => order.indexOf(s);
      if (rules.choices.every((c) => c.options.some((o) => o.every(([a, b]) => turn(a) < turn(b))))) yield [...order];
    }
    for (let s = 0; s < n; s++) {
      if ((done & (1 << s)) !== 0 || (next(done) & (1 << s)) === 0) continue;
      order.push(s);
      yield* from(done | (1 << s));
      order.pop();
    }
  }
  yield* from(0);
}

/** For a set of steps done, the steps (as bits) whose rules let them come next; asked once a set. */
function nextSteps(n: number, { rules }: Rules): (done: Done) => number {
  const byStep = Array.from({ length: n }, (_, s) => rules.filter((r) => r.at === s));
  const known = new Map<Done, number>();
  return (done) => {
    let bits = known.get(done);
    if (bits === undefined) {
      bits = 0;
      for (let s = 0; s < n; s++) if ((done & (1 << s)) === 0 && byStep[s]!.every((r) => r.holds(done))) bits |= 1 << s;
      known.set(done, bits);
    }
    return bits;
  };
}

function* settled({ choices }: Rules, i = 0): Generator<readonly (readonly [number, number])[]> {
  if (i === choices.length) yield [];
  else for (const rest of settled({ rules: [], choices }, i + 1)) for (const option of choices[i]!.options) yield [...option, ...rest];
}

function walk(n: number, before: Int32Array, next: (done: Done) => number, may: boolean[][]): boolean {
  const all = 2 ** n - 1;
  const comes = (done: Done, s: number) => (next(done) & (1 << s)) !== 0 && (before[s]! & ~done) === 0;
  const reached = new Uint8Array(all + 1);
  reached[0] = 1;
  for (let done = 0; done < all; done++) {
    if (reached[done] === 0) continue;
    for (let s = 0; s < n; s++) if ((done & (1 << s)) === 0 && comes(done, s)) reached[done | (1 << s)] = 1;
  }
  if (reached[all] === 0) return false;
  const ends = new Uint8Array(all + 1);
  ends[all] = 1;
  for (let done = all - 1; done >= 0; done--) {
    if (reached[done] === 0) continue;
    for (let s = 0; s < n; s++) {
      if ((done & (1 << s)) !== 0 || ends[done | (1 << s)] === 0 || !comes(done, s)) continue;
      ends[done] = 1;
      for (let later = 0; later < n; later++) if (later !== s && (done & (1 << later)) === 0) may[s]![later] = true;
    }
  }
  return true;
}
